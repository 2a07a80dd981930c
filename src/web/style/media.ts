import { palette } from '../../pictures/palette.ts';

/**
 * A narrow page, or a wide one with large text: what stands in columns is stacked, each cell after the head of its
 * column, and of a calendar the days on which something happens are listed. The limit is in em, so that it counts letters.
 */
export const narrowStyle = `
@media (max-width: 47em) {
  body { overflow-wrap: anywhere; }
  .frame-head .phone { white-space: normal; }
  .boxed li > *, .item > div, .write-in > div, .frame-head ul { min-inline-size: 0; }
  .strip li, .people .shown, .range .shown, .key { display: block; }
  .strip li, .people li, .range li { padding-block: 1.125rem; border-block-start: .0625rem solid ${palette.line}; }
  .strip li:first-child { border-block-start: 0; padding-block-start: .25rem; }
  .strip .name, .people .name, .range .name { padding-block: 0 .375rem; }
  .people li + li .name, .range li + li .name, .people li + li .words, .range li + li .words { border-block-start: 0; }
  .people .words, .range .words { padding-block: .5rem 0; }
  .strip .name p.strong { font-size: 1.1875rem; }
  .people .field.empty, .range .field.empty { display: none; }
  .people .field, .range .field { inline-size: 18rem; max-inline-size: 100%; border-start-start-radius: 1.25rem; border-end-end-radius: 1.25rem; }
  .axis-row { display: none; }
  .axis-again { display: block; inline-size: 18rem; max-inline-size: 100%; }
  .axis-again p { text-align: center; }
  .key ul { display: block; margin-block-start: .5rem; }
  .key li { padding-block: .25rem; max-inline-size: none; }
  .key li svg { inline-size: 3.75rem; block-size: 2.25rem; }

  .stacked, .stacked tbody, .stacked tr, .stacked tbody th, .stacked td { display: block; }
  .stacked thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .stacked tbody tr { padding-block: .875rem; }
  .stacked tbody tr + tr, .stacked tbody + tbody tr:first-child { border-block-start: .0625rem solid ${palette.line}; }
  .stacked tbody th, .stacked tbody td, .stacked.boxes td, .stacked.talk td { padding: .125rem 0; inline-size: auto; border: 0; text-align: start; }
  .stacked tbody th { padding-block-end: .25rem; }
  .choices tbody th p, .dense tbody th p { font-weight: 700; }
  .stacked td[data-label] { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); column-gap: 1rem; grid-template-rows: repeat(3, min-content) 1fr; }
  .stacked.choices td[data-label] { padding-block: .25rem; }
  .stacked.choices th + td[data-label]:last-child { grid-template-columns: fit-content(50%) minmax(0, 1fr); }
  .stacked td[data-label]::before { content: attr(data-label); line-height: 1.35; grid-row: 1 / -1; }
  .stacked td[data-label] > * { grid-column: 2; }
  .stacked.dense td[data-label] { grid-template-columns: minmax(0, 1fr); padding-block: .25rem; }
  .stacked.dense td[data-label] > * { grid-column: 1; }
  .stacked.dense td[data-label]::before { font-weight: 600; grid-row: 1; }
  .stacked.boxes td[data-label] { grid-template-columns: 1.75rem minmax(0, 1fr); column-gap: .75rem; padding-block: .25rem; }
  .stacked.boxes td[data-label] > * { grid-column: 1; grid-row: 1; }
  .stacked.boxes td[data-label]::before { grid-column: 2; grid-row: 1; }
  .stacked.talk td[data-label] { grid-template-columns: 1.75rem minmax(0, 1fr); column-gap: .75rem; }
  .stacked.talk td[data-label] > * { grid-column: 1; grid-row: 1; }
  .stacked.talk td[data-label]::before { grid-column: 2; grid-row: 1; }
  .stacked.talk td[data-label]:last-child { grid-template-columns: auto minmax(6rem, 1fr); align-items: end; }
  .stacked.talk td:last-child > * { grid-column: 2; }
  .stacked.talk td:last-child::before { grid-column: 1; }
  .stacked .group { padding-block: 0; }
  .stacked td:empty { display: none; }
  .stacked tbody .group th { padding: .375rem .5rem; }

  .fields { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  .clinician .facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 9rem), 1fr)); gap: .75rem 1rem; }
  .fields .signature, .fields .name { grid-column: 1 / -1; }
  .frame-head li { justify-content: flex-start; }

  .calendar, .calendar tbody, .calendar .week, .calendar .week > td { display: block; }
  .calendar thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .calendar tbody { padding-block: .5rem .75rem; border-block-start: .0625rem solid ${palette.line}; }
  .calendar tbody tr:first-child > * { border-block-start: 0; }
  .calendar .week > td { block-size: auto; border: 0; padding: .25rem 0; display: grid; grid-template-columns: minmax(4.25rem, max-content) minmax(0, 1fr); column-gap: .75rem; font-size: 1.125rem; }
  .calendar .week > td.quiet { display: none; }
  .calendar .week > td::before { content: attr(data-label); grid-row: 1; }
  .calendar .week > td > .date { justify-self: start; }
  .calendar .week > td > .note { grid-column: 2; }
  .calendar .ribbon { display: flex; inline-size: 100%; }
  .calendar tbody tr.ribbon > td { flex: 1 1 0; block-size: auto; min-block-size: 1.75rem; }
  .calendar tbody tr.ribbon > .days-2 { flex-grow: 2; }
  .calendar tbody tr.ribbon > .days-3 { flex-grow: 3; }
  .calendar tbody tr.ribbon > .days-4 { flex-grow: 4; }
  .calendar tbody tr.ribbon > .days-5 { flex-grow: 5; }
  .calendar tbody tr.ribbon > .days-6 { flex-grow: 6; }
  .calendar tbody tr.ribbon > .days-7 { flex-grow: 7; }
  .calendar .piece span { position: relative; display: inline-block; inset: 0; margin: .0625rem .25rem; white-space: normal; line-height: 1.4; }
}
/* Letters so large that a line has hardly room for a word: lines end where they can. */
@media (max-width: 18em) {
  .whole { white-space: normal; }
}
@media (min-width: 66em) {
  main:has(.clinician) { max-inline-size: 64rem; }
  main > article.patient { max-inline-size: 46rem; margin-inline: auto; }
}
`;

/**
 * A table of many columns where the page is not wide enough for them: each row is a board of its own, every value under
 * the head of its column.
 */
export const boardStyle = `
@media screen and (max-width: 65.99em) {
  .wide, .wide tbody, .wide tbody th, .wide tbody td { display: block; }
  .wide colgroup { display: none; }
  .wide thead { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .wide tbody tr { display: grid; grid-template-columns: repeat(auto-fill, minmax(7rem, 1fr)); gap: .25rem 1rem; padding-block: .625rem; }
  .wide tbody tr + tr, .wide tbody + tbody tr:first-child { border-block-start: .0625rem solid ${palette.line}; }
  .wide tbody th, .wide tbody td { padding: 0; border: 0; text-align: start; }
  .wide tbody th { grid-column: 1 / -1; }
  .wide tbody th p { font-weight: 700; }
  .wide tbody tr.group { display: block; padding: 0; }
  .wide tbody tr.group + tr { border: 0; }
  .wide tbody .group th { padding: .375rem .5rem; }
  .wide td::before { content: attr(data-label); display: block; font-weight: 600; }
  .wide td:empty { display: none; }
}
`;

/**
 * On paper: no ways around the page, black on white, nothing that belongs together parted. Small print is for clinicians
 * alone, as in the printed edition.
 */
export const printStyle = `
@media print {
  @page { margin: 16mm; }
  body { font-size: 12pt; }
  header, main, footer { max-inline-size: none; padding-inline: 0; }
  .cover { margin-inline: 0; }
  .skip, header nav, article > nav, .up { display: none; }
  article + article { break-before: page; border: 0; }
  .topic, .body > * + .topic, .body > * + .question { margin-block-start: 2rem; }
  .foot { margin-block-start: 1.5rem; }
  h1, h2, h3, .topic > p:not(:last-child), .group, .axis-row.upper { break-after: avoid; }
  .axis-row.lower { break-before: avoid; }
  h1, h2, h3, .topic > p, li, tr, figure, .callout, .panel, .frame, .say, .fields, .foot { break-inside: avoid; }
  .people, .range, .choices, .boxes, .key { break-inside: avoid; }
  .on-paper { display: block; }
  a { text-decoration: none; }
  .clinician, .clinician .dense, .clinician .small, .clinician .notes, .clinician .facts dt { font-size: 8.5pt; }
  .clinician .dense p, .clinician .dense th { font-size: inherit; }
  .clinician .dense th, .clinician .dense td { padding-block: .1875rem; padding-inline: 0 .375rem; }
  .clinician .topic { margin-block-start: 1rem; }
  .clinician p { max-inline-size: none; }
  .cover, .field, .tab, .frame-head, .say, .group th, .date, .plain > li::before, .hatched { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;
