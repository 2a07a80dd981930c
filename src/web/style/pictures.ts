import { palette } from '../../pictures/palette.ts';

/** Strips, weight lines, bodies and keys: name, picture and words begin at the same three places in every strip. */
export const pictureStyle = `
svg { display: block; max-inline-size: 100%; block-size: auto; overflow: visible; direction: ltr; }
svg text { font-size: 12px; fill: ${palette.ink}; }
svg text.strong { font-weight: 700; }
.drawn-once { position: absolute; }

.strip ul { list-style: none; }
.strip li { display: grid; grid-template-columns: 9rem minmax(0, 1fr); column-gap: 1rem; }
.strip .name p { line-height: 1.3; text-wrap: balance; }
.strip .words p + p { margin-block-start: 0; }
.text .words p + p, .way-back .words p + p { margin-block-start: .25rem; }
.strip.text li { grid-template-columns: 10.5rem minmax(0, 1fr); }
.text li, .way-back li { padding-block: .75rem; border-block-start: .0625rem solid ${palette.line}; }
.text li:first-child, .way-back li:first-child { border-block-start: 0; padding-block-start: 0; }
.text.strip p { max-inline-size: 34em; }
.way-back .shown { display: grid; grid-template-columns: 5.5rem minmax(0, 1fr); }
.way-back .field { padding-block-start: .25rem; }

.people .shown, .range .shown { display: grid; grid-template-columns: 18rem minmax(0, 1fr); column-gap: 1.25rem; }
.people .name, .range .name, .people .words, .range .words { padding-block: .5rem 1rem; }
.people .name, .range .name { padding-block-start: .625rem; }
.people li + li .name, .range li + li .name, .people li + li .words, .range li + li .words { border-block-start: .0625rem solid ${palette.line}; }
.people .field, .range .field { position: relative; background: ${palette.pale}; padding-block: .75rem 1rem; }
.people .field { padding-inline: .5625rem; }
.range .field { padding-block: 1rem; }
.range .field > svg { position: relative; }
.strip li:first-child .field { border-start-start-radius: 1.25rem; }
.strip li:last-child .field { border-end-end-radius: 1.25rem; }
.way-back .field { border-radius: 0; }
.range .field > .axis-lines { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; }
.axis-row { display: grid; grid-template-columns: 18rem minmax(0, 1fr); column-gap: 1.25rem; margin-inline-start: 10rem; align-items: end; }
.axis-row.upper { margin-block-end: .25rem; }
.axis-row.lower p { align-self: start; padding-block-start: .25rem; }
.axis-again { display: none; }

.key { display: grid; grid-template-columns: 9rem minmax(0, 1fr); column-gap: 1rem; padding-block-start: .75rem; border-block-start: .0625rem solid ${palette.line}; }
.key p { line-height: 1.3; }
.key ul { list-style: none; display: flex; flex-wrap: wrap; gap: .75rem 2rem; }
.key li { display: flex; gap: .75rem; align-items: flex-start; max-inline-size: 17rem; }
.key svg { flex: none; }

.line-board { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr)); gap: 1.75rem 1.5rem; }
.line-board figcaption, .drawing figcaption { margin-block-end: .5rem; }
.weight-line svg { inline-size: 100%; max-inline-size: 24rem; }
.drawing { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr)); gap: 1.75rem 1.5rem; }

@media (forced-colors: active) {
  svg, .field { forced-color-adjust: none; background: ${palette.white}; }
  .field svg { background: none; }
  .axis-row svg, .axis-again svg, .weight-line svg, .drawing svg { box-shadow: 0 0 0 .75rem ${palette.white}; }
  .key svg { box-shadow: 0 0 0 .25rem ${palette.white}; }
  .plain > li::before { forced-color-adjust: none; background: CanvasText; }
  .tab, .comes-in .date { outline: .125rem solid CanvasText; }
}
`;
