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
