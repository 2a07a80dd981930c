import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import type { CriterionOutcome } from '../../src/model/document-score.ts';
import { scoreDocuments } from '../../src/score/index.ts';
import type { ScoreInput } from '../../src/score/index.ts';
import { outcomesOf, scoreInputOf } from '../helpers/score-example.ts';

const tags = readdirSync(new URL('../../locales', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'en')
  .map(({ name }) => name);

/** What the words of a language decide: by a formula for how hard it is to read, or by its list of passive verbs. */
const everydayWords = ['u-3', 'm-7'];
const readingLevel = ['k-21'];
const activeVoice = ['u-5', 'm-6'];

/** Those that a language without formula or list cannot have, and one whose words are long by its own formulas. */
function decidedIn({ readings, locale }: ScoreInput): ReadonlyMap<string, CriterionOutcome> {
  const results = readings.flatMap((reading) => reading.results);
  const isEasy = results.every(({ passes }) => passes);
  const everyday = results.length === 0 ? 'person' : isEasy ? 'met' : 'not-met';
  return new Map<string, CriterionOutcome>([
    ...everydayWords.map((id): [string, CriterionOutcome] => [id, everyday]),
    ...(results.length > 0 ? [] : readingLevel.map((id): [string, CriterionOutcome] => [id, 'not-met'])),
    ...(locale.passive === null ? activeVoice.map((id): [string, CriterionOutcome] => [id, 'person']) : []),
  ]);
}

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
      const decided = [...decidedIn(input)].filter(([id]) => english.get(id) === 'met');
      const expected = new Map([...english, ...decided]);
      expect([...outcomesOf(scoreDocuments(input))]).toEqual([...expected]);
    },
    120_000,
  );
});
