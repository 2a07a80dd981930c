import { textWidth } from '../measure-text.ts';
import { measureLines } from '../text.tsx';
import type { TypeRole } from '../theme.ts';
import { runsFor } from './primitives.tsx';

/** Width of the widest word, in points. */
export function widestWord(words: string, role: TypeRole): number {
  return Math.max(0, ...words.split(' ').map((word) => textWidth(word, role)));
}

/** Width of words on one line, in points. */
export function widthOnLine(words: string, role: TypeRole): number {
  const runs = runsFor(words, role);
  return measureLines({ runs, size: role.size, width: 10_000, setting: 'filled' }).width;
}

/** Narrowest measure in which words take no more than so many lines. */
export function widthInLines(words: string, lines: number, role: TypeRole): number {
  const runs = runsFor(words, role);
  const natural = widthOnLine(words, role);
  for (let width = Math.max(widestWord(words, role), natural / lines); width < natural; width += 2) {
    const set = measureLines({ runs, size: role.size, width, setting: 'balanced' });
    if (set.lines <= lines) return set.width + 1;
  }
  return natural + 1;
}
