import { foldText } from '../normalize-text.ts';
import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** What a program prints when it has no words: template brackets, and the names of empty values. */
const placeholders: readonly { readonly name: string; readonly pattern: RegExp }[] = [
  { name: 'template brackets', pattern: /\{\{|\}\}|\{\w+\}/ },
  { name: 'an object in place of words', pattern: /\[object\b/ },
  { name: 'undefined', pattern: /\bundefined\b/ },
  { name: 'NaN', pattern: /\bNaN\b/ },
];

/** First parts of the locales' keys: the file names of a locale folder. */
const namespaces =
  'options|outcomes|cautions|codes|missing|common|comparison|questions|sources|clinician-sheet';
const keyLike = /(?<![\p{L}\p{N}/@._-])[a-z][a-z0-9-]*(?:\.[a-z0-9_-]+)+/gu;
const namespaced = new RegExp(`^(?:${namespaces})\\.`);

/** No key or placeholder is printed in place of words. Record ids and addresses have dots too and are let be. */
export const noUnresolvedKey: Rule = ({ documents, locale }) =>
  documents.flatMap(({ tree, pages }) =>
    pages.flatMap(({ text, number }) => {
      const folded = foldText(text);
      const names = placeholders.filter(({ pattern }) => pattern.test(folded)).map(({ name }) => name);
      const keys = (folded.match(keyLike) ?? []).filter(
        (word) => namespaced.test(word) || locale.translator.has(word),
      );
      return [...names, ...keys.map((key) => `key ${key}`)].map((detail) =>
        finding('VERIFY_UNRESOLVED_KEY', { tree, page: number, detail }),
      );
    }),
  );
