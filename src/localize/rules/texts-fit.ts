import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { widthInCharacters } from '../text-lengths.ts';
import type { LongestOf } from '../text-lengths.ts';
import type { Words } from '../words.ts';
import { faultAt } from './rule.ts';

/** A warning for each text that has more characters than lengths.yaml gives it room for. */
export function textsTooLong(words: Words, longestOf: LongestOf): readonly Diagnostic[] {
  return [...words.entries.values()].flatMap((entry) => {
    const longest = longestOf(entry.key);
    const width = widthInCharacters(entry.text);
    if (longest === null || width <= longest) return [];
    return [
      faultAt(entry, {
        code: 'LOCALE_WORDING',
        severity: 'warning',
        message: `${entry.key} has ${String(width)} characters, the page has room for ${String(longest)}`,
        hint: 'Say it in fewer or shorter words.',
      }),
    ];
  });
}
