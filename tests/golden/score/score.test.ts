import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { expectedText } from '../../../src/model/tree-text.ts';
import { scoreDocuments } from '../../../src/score/index.ts';
import { exampleCases } from '../../helpers/example-packets.ts';
import { describeScore, outcomesOf, scoreInputOf } from '../../helpers/score-example.ts';

const update = process.env['UPDATE'] === '1';
if (update && (process.env['CI'] ?? '') !== '')
  throw new Error('UPDATE=1 is refused when CI is set: goldens are read by a person first');

const folder = import.meta.dirname;

describe('the score of an example packet', () => {
  it.each(exampleCases)('%s is what it was when it was last read, item by item', async (reference) => {
    const english = describeScore(await scoreInputOf(reference, 'en'));
    const before = new Set(english.map(withoutPlaces));
    const spanish = describeScore(await scoreInputOf(reference, 'es')).filter(
      (line) => !before.has(withoutPlaces(line)),
    );
    const text = ['en', ...english, '', 'es, where it differs', ...spanish, ''].join('\n');
    const golden = join(folder, `${reference}.txt`);
    if (update) writeFileSync(golden, text);
    expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(text);
  });

  it('is there for every example and nothing else', () => {
    const goldens = readdirSync(folder).filter((name) => name.endsWith('.txt'));
    expect(goldens.map((name) => name.replace('.txt', '')).sort()).toEqual([...exampleCases].sort());
  });

  it.each(exampleCases)('%s names a place for whatever it calls met', async (reference) => {
    const { items } = scoreDocuments(await scoreInputOf(reference, 'en'));
    const met = items.filter(({ outcome }) => outcome === 'met');
    expect(met.length).toBeGreaterThan(15);
    expect(met.filter(({ places }) => places.length === 0).map(({ criterion }) => criterion.id)).toEqual([]);
  });

  it.each(exampleCases)('%s is printed on its clinician sheet, line by line', async (reference) => {
    const input = await scoreInputOf(reference, 'en');
    const { items, sets } = scoreDocuments(input);
    const sheet = input.documents.find(({ kind }) => kind === 'clinician-sheet');
    const said = sheet === undefined ? [] : expectedText(sheet).map(({ text }) => text);
    const clear = sets['clear-communication'];
    const line = `Clear communication (CDC): ${String(clear.met)} of ${String(clear.applicable)} (`;
    expect(said.some((text) => text.startsWith(line))).toBe(sheet !== undefined);
    const owed = items.filter(({ outcome }) => outcome !== 'met' && outcome !== 'not-applicable');
    const words = owed.map(({ criterion: { says } }) => `${says.slice(0, 1).toUpperCase()}${says.slice(1)}`);
    expect(words.filter((text) => said.includes(text))).toEqual(sheet === undefined ? [] : words);
  });

  it('calls nothing met that only a study, or nobody, could bring', async () => {
    const score = scoreDocuments(await scoreInputOf('QB-1041', 'en'));
    const outcomes = outcomesOf(score);
    const beyond = score.items.filter(({ criterion: { by } }) => by === 'study' || by === 'none');
    expect(beyond).toHaveLength(8 + 9);
    expect(beyond.filter(({ criterion }) => outcomes.get(criterion.id) === 'met')).toEqual([]);
  });
});

/** Headings differ between languages; sets keep their counts. */
function withoutPlaces(line: string): string {
  return /^[a-z]-\d/u.test(line) ? (line.split(': ')[0] ?? line) : line;
}
