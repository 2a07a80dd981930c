import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import type { CriterionOutcome } from '../../src/model/document-score.ts';
import { scoreDocuments } from '../../src/score/index.ts';
import { outcomesOf, scoreInputOf } from '../helpers/score-example.ts';

const tags = readdirSync(new URL('../../locales', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'en')
  .map(({ name }) => name);

/** What only the words of a language decide: there is no formula for how hard it is to read, no list of passive verbs. */
const byFormula = new Map<string, CriterionOutcome>([
  ['k-21', 'not-met'],
  ['u-3', 'person'],
  ['m-7', 'person'],
]);
const byPassive = new Map<string, CriterionOutcome>([
  ['u-5', 'person'],
  ['m-6', 'person'],
]);

/** An example case in every language, as its patient would have it. */
function inAll(text: string): string {
  return text.replace(/^languages:.*$/m, `languages: [en, ${tags.join(', ')}]`);
}

describe.each(['QB-1041', 'QB-1128'])('the score of %s', (reference) => {
  it.each(tags)(
    'is that of English where the words of the language do not decide: %s',
    async (tag) => {
      const english = outcomesOf(scoreDocuments(await scoreInputOf(reference, 'en', inAll)));
      const input = await scoreInputOf(reference, tag, inAll);
      const hasFormula = input.readings.some(({ results }) => results.length > 0);
      const expected = new Map([
        ...english,
        ...(hasFormula ? [] : [...byFormula].filter(([id]) => english.get(id) === 'met')),
        ...(input.locale.passive === null ? [...byPassive].filter(([id]) => english.get(id) === 'met') : []),
      ]);
      expect([...outcomesOf(scoreDocuments(input))]).toEqual([...expected]);
    },
    120_000,
  );
});
