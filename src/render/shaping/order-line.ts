import bidiFactory from 'bidi-js';
import type { Bidi } from 'bidi-js';
import { isLeftToRight, leftToRightSpans } from '../../model/left-to-right.ts';
import type { TextSpan } from '../../model/left-to-right.ts';
import type { Run } from '../run.ts';
import type { Direction } from '../theme.ts';

/** A line as it was broken. */
export interface ParagraphLine {
  readonly runs: readonly Run[];
  readonly spaceAfter: boolean;
}

// Its types describe a module of the other kind, in which the factory would be one level deeper.
const bidi = (bidiFactory as unknown as () => Bidi)();

const isolate = { leftToRight: '\u2066', byFirstLetter: '\u2068', close: '\u2069' } as const;

/**
 * Embedding level of every character of a paragraph, by the Unicode bidirectional algorithm (UAX #9): even from left to
 * right, odd from right to left. Numbers and Latin phrases are isolated, and so are the parts given (words of another
 * language), each with the direction of its own first letter. A paragraph that is read from left to right as a whole keeps
 * its order, also among others that run from right to left.
 */
export function levelsOf(
  text: string,
  direction: Direction,
  isolated: readonly TextSpan[] = [],
): readonly number[] {
  if (direction === 'rtl' && isLeftToRight(text)) return new Array<number>(text.length).fill(0);
  const inner = leftToRightSpans(text, isolated).map((span) => ({ ...span, open: isolate.leftToRight }));
  const outer = isolated
    .filter(({ start, end }) => !isLeftToRight(text.slice(start, end)))
    .map((span) => ({ ...span, open: isolate.byFirstLetter }));
  const marked: string[] = [];
  const places: number[] = [];
  for (let at = 0; at <= text.length; at += 1) {
    for (const { end } of [...inner, ...outer]) if (end === at) marked.push(isolate.close);
    for (const { start, open } of [...outer, ...inner]) if (start === at) marked.push(open);
    places.push(marked.length);
    marked.push(text.charAt(at));
  }
  const { levels } = bidi.getEmbeddingLevels(marked.join(''), direction);
  return places.slice(0, text.length).map((place) => levels[place] ?? 0);
}

/** The same for each line of a paragraph: where a phrase goes on in the next line, its marks stay on their side. */
export function levelsOfLines(
  lines: readonly ParagraphLine[],
  direction: Direction,
): readonly (readonly number[])[] {
  const texts = lines.map(
    ({ runs, spaceAfter }) => runs.map(({ text }) => text).join('') + (spaceAfter ? ' ' : ''),
  );
  const levels = levelsOf(texts.join(''), direction, foreignSpans(lines));
  let at = 0;
  return texts.map((text) => levels.slice(at, (at += text.length)));
}

/** Where a paragraph is in another language than the document; parts with nothing but a space between them are one. */
function foreignSpans(lines: readonly ParagraphLine[]): readonly TextSpan[] {
  const spans: (TextSpan & { readonly language: string })[] = [];
  let at = 0;
  let gap = 0;
  for (const { runs, spaceAfter } of lines) {
    for (const { text, language } of runs) {
      const last = spans.at(-1);
      const start = at;
      at += text.length;
      if (language === undefined || text === '') continue;
      if (last !== undefined && last.language === language && last.end + gap === start)
        spans[spans.length - 1] = { ...last, end: at };
      else spans.push({ start, end: at, language });
      gap = 0;
    }
    gap = spaceAfter ? 1 : 0;
    at += gap;
  }
  return spans;
}

/** Items in the order in which they stand from left to right (UAX #9, L2). `levels` has one level for each. */
export function visualOrder<Item extends { readonly level: number }>(
  items: readonly Item[],
): readonly Item[] {
  const ordered = [...items];
  const highest = Math.max(0, ...items.map(({ level }) => level));
  for (let level = highest; level > 0; level -= 1) {
    let start = 0;
    while (start < ordered.length) {
      if ((ordered[start]?.level ?? 0) < level) {
        start += 1;
        continue;
      }
      let end = start;
      while (end < ordered.length && (ordered[end]?.level ?? 0) >= level) end += 1;
      ordered.splice(start, end - start, ...ordered.slice(start, end).reverse());
      start = end;
    }
  }
  return ordered;
}
