import type { TranslationUnit } from '../model/translation.ts';
import { askedKey, countedKeys, pluralLocale, sourcesIn } from './words.ts';
import type { Words } from './words.ts';
import type { LongestOf } from './text-lengths.ts';

export interface UnitsInput {
  readonly base: Words;
  /** Null: a language that has no words yet. */
  readonly words: Words | null;
  readonly tag: string;
  readonly notes: ReadonlyMap<string, string>;
  readonly longestOf: LongestOf;
  readonly isReviewed: (key: string) => boolean;
}

/**
 * Every text of the base language as one to translate, in its order. A counted text has one for each plural form of the
 * language translated into; a form that the base language has not comes from its form `other`.
 */
export function listUnits({
  base,
  words,
  tag,
  notes,
  longestOf,
  isReviewed,
}: UnitsInput): readonly TranslationUnit[] {
  const counted = countedKeys([base]);
  const sourceOf = sourcesIn(base);
  const forms = new Intl.PluralRules(words === null ? tag : pluralLocale(words)).resolvedOptions()
    .pluralCategories;
  const asked = new Set([...base.entries.keys()].map((key) => askedKey(key, counted)));
  const keys = [...asked].flatMap((key) =>
    counted.has(key) ? forms.map((form) => `${key}_${form}`) : [key],
  );
  return keys.map((key) => {
    const source = sourceOf(key);
    const target = words?.entries.get(key)?.text ?? null;
    return {
      key,
      source: source?.text ?? '',
      target,
      note: notes.get(source?.key ?? key) ?? '',
      longest: longestOf(key),
      reviewed: target !== null && isReviewed(key),
    };
  });
}
