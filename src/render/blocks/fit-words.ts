import type { Label } from '../../model/document.ts';
import { labelText } from '../../model/text-piece.ts';
import { textWidth } from '../measure-text.ts';
import { splitChinese } from '../../model/split-chinese.ts';
import { measureLines } from '../text.tsx';
import type { TypeRole } from '../theme.ts';
import { runsFor } from './primitives.tsx';

/** A Chinese label of so few characters is one word to its reader. */
const shortLabel = 6;

/** Width of the widest piece that no line may be parted in, in points: a word, a character or two of Chinese. */
export function widestWord(words: Label, role: TypeRole): number {
  const pieces = labelText(words)
    .split(' ')
    .flatMap((word) => (word.length <= shortLabel ? [word] : splitChinese(word)));
  return Math.max(0, ...pieces.map((word) => textWidth(word, role)));
}

/** Width of words on one line, in points. */
export function widthOnLine(words: Label, role: TypeRole): number {
  const runs = runsFor(words, role);
  return measureLines({ runs, size: role.size, width: 10_000, setting: 'filled' }).width;
}

/** Narrowest measure in which words take no more than so many lines. */
export function widthInLines(words: Label, lines: number, role: TypeRole): number {
  const runs = runsFor(words, role);
  const natural = widthOnLine(words, role);
  for (let width = Math.max(widestWord(words, role), natural / lines); width < natural; width += 2) {
    const set = measureLines({ runs, size: role.size, width, setting: 'balanced' });
    if (set.lines <= lines) return set.width + 1;
  }
  return natural + 1;
}
