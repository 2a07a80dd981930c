import { baseStyle } from './base.ts';
import { careStyle } from './care.ts';
import { boardStyle, narrowStyle, printStyle } from './media.ts';
import { pictureStyle } from './pictures.ts';
import { tableStyle } from './tables.ts';

/** Rules in one line each, without what only we read. */
function shorten(style: string): string {
  return style
    .replace(/\/\*[^]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,]) ?/g, '$1')
    .trim();
}

/**
 * The style sheet of every page. Lengths are in rem or em, so that a page grows with the text size of its reader; edges
 * are start and end, so that it turns with its language.
 */
export const styleSheet = shorten(
  [baseStyle, pictureStyle, tableStyle, careStyle, narrowStyle, boardStyle, printStyle].join('\n'),
);

/**
 * What is not final says so on every sheet that it is printed on, as far as the browser sets anything in the margins of
 * paper. The words come from outside the style sheet: all but plain letters and digits are escaped.
 */
export function markOnPaper(marks: readonly string[]): string {
  if (marks.length === 0) return '';
  const quoted = marks
    .join(' · ')
    .replace(/[^A-Za-z0-9 ]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `);
  return `@media print{@page{@top-center{content:"${quoted}";font:700 12pt sans-serif}}}`;
}
