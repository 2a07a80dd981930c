import { palette } from '../../pictures/palette.ts';

/**
 * The face is that of the reader's device: it costs nothing to load, is there for every script, and is the one in which
 * its reader is used to reading. The text is 1.125 rem, and nothing that a patient reads is under 1 rem.
 */
export const baseStyle = `
:root { color-scheme: light only; }
*, *::before, *::after { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; scroll-padding-block-start: 1rem; }
body {
  margin: 0; background: ${palette.white}; color: ${palette.ink};
  font: 1.125rem/1.5 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", Arial, sans-serif;
  overflow-wrap: break-word;
}
header, main, footer { max-inline-size: 48rem; margin-inline: auto; padding-inline: 1rem; }
p, ul, ol, dl, dd, figure, h1, h2, h3 { margin: 0; padding: 0; }
/* Korean has spaces: a line ends between words. */
:lang(ko) { word-break: keep-all; }
h1, h2, h3 { line-height: 1.22; text-wrap: balance; font-weight: 700; }
h1 { font-size: 2rem; margin-block: 0 .75rem; }
h1.decision { font-size: clamp(2rem, 1.4rem + 2.6vw, 2.75rem); line-height: 1.15; margin-block: 1.25rem .75rem; }
h2 { font-size: 1.5rem; margin-block: 0 .5rem; }
h3 { font-size: 1.25rem; margin-block: 0 .5rem; }
h3.lean { font-size: 1.375rem; line-height: 1.35; }
main:focus { outline: none; }
.strong, strong { font-weight: 700; }
.label { font-weight: 600; }
.lead { font-size: 1.25rem; }
.small { font-size: 1rem; line-height: 1.4; }
.number { font-size: 1.375rem; line-height: 1.25; font-weight: 700; }
p.body, p.small, .plain, dd, .foot p, footer p { max-inline-size: 34em; }
p.lead { max-inline-size: 32em; }
p + p { margin-block-start: .5rem; }
p.number + p { margin-block-start: .125rem; }
/* Words in another language keep to the column they stand in; a whole paragraph of them begins at its own side. */
p[dir="ltr"] { text-align: right; }
p[dir="rtl"] { text-align: left; }
.body > [dir], .topic > [dir] { text-align: start; }
.ends { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1.5rem; }
.ends p + p { margin: 0; }
.ends + h1, .head .ends { margin-block-end: 1rem; }
.unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }

a { color: ${palette.ink}; text-decoration-thickness: .08em; text-underline-offset: .18em; }
a:hover { text-decoration-thickness: .16em; }
:focus-visible { outline: .1875rem solid ${palette.ink}; outline-offset: .1875rem; border-radius: .125rem; }
.phone { white-space: nowrap; direction: ltr; unicode-bidi: isolate; }
.whole { white-space: nowrap; }
.skip { position: absolute; inset-block-start: 0; inset-inline-start: 1rem; padding: .75rem 1rem; background: ${palette.ink}; color: ${palette.white}; transform: translateY(-120%); z-index: 1; }
.skip:focus { transform: none; outline-color: ${palette.white}; outline-offset: -.375rem; }

header { padding-block: 1rem; }
.clinic { font-weight: 600; }
#documents ul { list-style: none; margin-block-start: .25rem; }
#documents li { padding-block: .375rem; }
details { margin-block-end: 1.5rem; border-block: .0625rem solid ${palette.line}; }
summary { padding-block: .625rem; font-weight: 600; cursor: pointer; }
details ul { list-style: none; padding-block-end: .75rem; }
details li { padding-block: .375rem; }

article { padding-block: 0 3rem; }
article + article { border-block-start: .1875rem solid ${palette.ink}; padding-block-start: 0; }
.tab { display: inline-block; margin-block-end: 1rem; padding: .25rem 1rem .375rem; background: ${palette.ink}; color: ${palette.white}; font-size: 1rem; font-weight: 700; border-end-end-radius: .875rem; }
.head:empty { display: none; }
.foot { margin-block-start: 2.5rem; padding-block-start: .75rem; border-block-start: .0625rem solid ${palette.line}; }
.foot p + p { margin-block-start: .25rem; }
.up { margin-block-start: 1rem; }
.up a { display: inline-block; padding-block: .375rem; }
footer { padding-block: 1.5rem 3rem; border-block-start: .0625rem solid ${palette.line}; font-size: 1rem; }
footer p + p { margin-block-start: .125rem; }

.cover { background: ${palette.pale}; margin-inline: -1rem; padding: 1.25rem 1rem 1.5rem; border-start-start-radius: 3rem; border-end-end-radius: 3rem; padding-inline: 1.5rem; }
.topic { margin-block-start: 2.5rem; padding-block-start: .75rem; border-block-start: .25rem solid ${palette.leaf}; }
.body > * + * , .topic > * + * { margin-block-start: .75rem; }
.body > * + .topic { margin-block-start: 2.75rem; }
.topic > h2 + *, .body > h1 + * { margin-block-start: 0; }
.body > * + .question { margin-block-start: 2.75rem; padding-block-start: .75rem; border-block-start: .25rem solid ${palette.leaf}; }
.body > * + .small-heading, .topic > * + .small-heading { margin-block-start: 1.75rem; }

.plain { padding-inline-start: 1.5rem; }
ol.plain { padding-inline-start: 2rem; }
.plain > li + li { margin-block-start: .5rem; }
ul.plain { list-style: none; }
ul.plain > li { position: relative; }
ul.plain > li::before { content: ""; position: absolute; inset-block-start: .55em; inset-inline-start: -1.25rem; inline-size: .5rem; block-size: .5rem; background: ${palette.leaf}; border-start-start-radius: .25rem; border-end-end-radius: .25rem; }
.plain > li::marker { font-weight: 700; }
.notes { font-size: 1rem; }
.notes > li + li { margin-block-start: .25rem; }
`;
