import type { TranslationUnit } from '../model/translation.ts';
import { askedKey, countedKeys, pluralLocale } from './words.ts';
import type { Entry, Words } from './words.ts';
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
  const forms = new Intl.PluralRules(words === null ? tag : pluralLocale(words)).resolvedOptions()
    .pluralCategories;
  const seen = new Set<string>();
  return [...base.entries.values()].flatMap((entry) => {
    const asked = askedKey(entry.key, counted);
    if (seen.has(asked)) return [];
    seen.add(asked);
    const keys = counted.has(asked) ? forms.map((form) => `${asked}_${form}`) : [asked];
    return keys.map((key) => {
      const source = base.entries.get(key) ?? base.entries.get(`${asked}_other`) ?? entry;
      return makeUnit({ key, source, target: words?.entries.get(key)?.text ?? null });
    });
  });

  function makeUnit({
    key,
    source,
    target,
  }: {
    key: string;
    source: Entry;
    target: string | null;
  }): TranslationUnit {
    return {
      key,
      source: source.text,
      target,
      note: notes.get(source.key) ?? '',
      longest: longestOf(key),
      reviewed: target !== null && isReviewed(key),
    };
  }
}
