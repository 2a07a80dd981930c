import { palette } from '../../pictures/palette.ts';

/** Call-outs, frames of warning signs, what is filled in by hand, and the calendar. */
export const careStyle = `
.callout, .panel, .frame { border: .0625rem solid ${palette.ink}; border-start-start-radius: 1.5rem; border-end-end-radius: 1.5rem; padding: 1rem 1.25rem 1.125rem; }
.panel { padding: 1.25rem; border-start-start-radius: 2.25rem; border-end-end-radius: 2.25rem; }
.say { background: ${palette.pale}; padding: 1rem 1.25rem 1.25rem; border-start-start-radius: 1.5rem; border-end-end-radius: 1.5rem; }
.columns { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 14rem), 1fr)); gap: 1.25rem 2rem; margin-block: 1rem; }
.columns .strong { margin-block-end: .375rem; }
.bare { list-style: none; }
.bare li + li { margin-block-start: .5rem; }

.frames > * + * { margin-block-start: 1.25rem; }
.frame { padding: 0; overflow: hidden; }
.frame.now { border-width: .25rem; }
.frame.today { border-width: .1875rem; }
.frame-head { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: center; gap: .5rem 1.5rem; padding: .75rem 1.25rem; border-block-end: .0625rem solid ${palette.ink}; }
.frame-head > div { flex: 1 1 12rem; }
.frame-head .first { flex: 1 1 100%; font-weight: 700; max-inline-size: none; }
.frame-head ul { list-style: none; }
.frame-head li { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: flex-end; gap: 0 .75rem; }
.frame-head h2, .frame-head h3 { font-size: 1.75rem; margin: 0; }
.frame-head .phone { font-size: 1.625rem; font-weight: 700; line-height: 1.4; }
.frame.now .frame-head { background: ${palette.ink}; color: ${palette.white}; }
.frame.now .phone { color: ${palette.white}; font-size: 2rem; }
.frame.now a:focus-visible { outline-color: ${palette.white}; }
.frame > ul { padding-block: .875rem 1rem; padding-inline: 2.5rem 1.25rem; max-inline-size: none; columns: 17rem auto; column-gap: 2.5rem; }
.frame > ul > li { break-inside: avoid; font-size: 1.1875rem; }

.box { flex: none; }
.boxed { list-style: none; display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 13rem), 1fr)); gap: .625rem 1.5rem; }
.boxed.one-column { grid-template-columns: minmax(0, 1fr); }
.boxed li, .with-box, .write-in { display: flex; gap: .75rem; align-items: flex-start; }
.boxed .box, .with-box .box, .write-in .box { margin-block-start: .125rem; }
.write-in > div { flex: 1; }
.write-in + .write-in { margin-block-start: 1rem; }
.writing .line { border-block-end: .0625rem solid ${palette.ink}; block-size: 2rem; }
.on-paper { display: none; }
.unasked .line { block-size: 1.5rem; }
.sentence .blank { display: inline-block; inline-size: 8rem; max-inline-size: 100%; border-block-end: .0625rem solid ${palette.ink}; block-size: 1.1em; margin-inline: .375rem; }
.sentence { line-height: 1.9; }
.boxed .sentence { line-height: 1.5; }
.checklist ul { list-style: none; }
.checklist li { padding-block: .75rem; border-block-start: .0625rem solid ${palette.line}; }
.checklist > ul:first-child > li:first-child { border-block-start: 0; }
.item p + p { margin-block-start: .125rem; }
.teach-back { list-style: none; }
.teach-back > li + li { margin-block-start: 1.5rem; }
.teach-back .boxed { margin-block-start: .5rem; }
.interpreter .boxed { margin-block-end: .75rem; }
.fields { list-style: none; display: grid; grid-template-columns: minmax(0, 3fr) minmax(0, 1.3fr) minmax(0, 1fr); gap: 1rem; }
.callout .fields { margin-block-start: 1rem; grid-template-columns: repeat(auto-fit, minmax(min(100%, 14rem), 1fr)); }
/* Lines of one row stand level, whatever is in their rooms or under them. */
@supports (grid-template-rows: subgrid) {
  .fields { row-gap: .125rem; margin-block-start: -.875rem; }
  .callout .fields { margin-block-start: .125rem; }
  .fields li { display: grid; grid-row: span 2; grid-template-rows: subgrid; }
  .fields .room { margin-block-start: .875rem; }
}
.signatures > * + * { margin-block-start: .5rem; }
.room { min-block-size: 3rem; border-block-end: .0625rem solid ${palette.ink}; display: flex; align-items: center; justify-content: center; }
/* However long the words of a draft are, hatching is seen on all sides of them. */
.hatched { padding: .5rem 1rem; background: repeating-linear-gradient(-45deg, ${palette.white} 0 .5rem, ${palette.line} .5rem .5625rem); }
.hatched p { background: ${palette.white}; padding: .125rem .5rem; text-align: center; line-height: 1.35; text-wrap: balance; }
.room + p { margin-block-start: .125rem; }

.calendar { table-layout: fixed; }
.calendar th, .calendar td { padding: .375rem .25rem .25rem .375rem; line-height: 1.25; }
.calendar thead th { padding-block-end: .25rem; }
.calendar .week > td { block-size: 5rem; border-inline-start: .0625rem solid ${palette.line}; font-size: 1rem; }
.calendar .week > td:first-child { border-inline-start: 0; }
.calendar tbody tr.ribbon > td { position: relative; block-size: 1.75rem; padding: 0; border: 0; }
.calendar .piece svg { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; overflow: hidden; }
.calendar .piece > span { position: absolute; inset-block: .0625rem; inset-inline-start: .5rem; padding-inline: .375rem; background: ${palette.white}; font-size: 1rem; font-weight: 600; line-height: 1.55; white-space: nowrap; }
.calendar .date { font-weight: 600; }
.note { overflow-wrap: anywhere; }
.note + .note { margin: 0; }
.comes-in .date { display: inline-block; padding: 0 .375rem; margin-inline-start: -.125rem; background: ${palette.ink}; color: ${palette.white}; border-start-start-radius: .5rem; border-end-end-radius: .5rem; }
.comes-in .note { font-weight: 600; }
.stage-key { list-style: none; margin-block-end: .75rem; }
.stage-key li { display: flex; gap: .75rem; align-items: center; }
.stage-key svg { flex: none; }
`;
