import { describe, expect, it } from 'vitest';

import { soundnessInWords, unsureInWords } from '../../../../src/compose/view/say-soundness.ts';
import { viewPeople } from '../../../../src/compose/view/view-people.ts';
import { viewTables } from '../../../../src/compose/view/view-table.ts';
import { viewWeight } from '../../../../src/compose/view/view-weight.ts';
import type { Cell, KnownCell, RecordUse, Topic } from '../../../../src/model/comparison.ts';
import type { Study } from '../../../../src/model/study.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { makeStudy } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveYears,
  makeComparison,
  rowOf,
  shareCell,
  weightCell,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const options = ['sleeve', 'bypass'];
const place = { option: 'sleeve', outcome: 'ulcer', asked: fiveYears };

const plain = (words: { readonly markup: string } | null | undefined): string | null =>
  words === null || words === undefined
    ? null
    : words.markup.replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');

async function sceneWith(study: Partial<Study>, tag = 'en'): ReturnType<typeof sceneFor> {
  const comparison = makeComparison(options);
  const studies = new Map([['study-a', { ...makeStudy('study-a'), ...study }]]);
  return sceneFor(tag, { comparison, evidence: { ...evidenceFor(comparison), studies } });
}

const cellOf = (certainty: string, n = 1000): KnownCell => shareCell(place, [n / 10, n], { certainty });
const published = (year: number | undefined): Partial<Study> => ({
  citation: { authors: 'Example A', title: 'An example', journal: 'J Ex', ...(year && { year }) },
});

describe('a figure that is weak or old', () => {
  it.each([
    ['high', null],
    ['moderate', null],
    ['low', 'This number is not very sure.'],
    ['very-low', 'This number is very unsure.'],
  ])('is called so where its certainty is %s', async (certainty, said) => {
    expect(plain(unsureInWords(await sceneWith({}), cellOf(certainty)))).toBe(said);
  });

  it.each<[string, Partial<Study>, boolean]>([
    ['treated until 2005', { years: { from: 1992, to: 2005 } }, true],
    ['treated until 2006', { years: { from: 1992, to: 2006 } }, false],
    ['treated until 2001 in a late publication', { ...published(2020), years: { to: 2001 } }, true],
    ['published in 2005', published(2005), true],
    ['published in 2006', published(2006), false],
    ['of no known year', published(undefined), false],
  ])('is old where its people were %s: %o is %s', async (_, study, isOld) => {
    const said = plain(unsureInWords(await sceneWith(study), cellOf('high')));
    expect(said).toBe(isOld ? 'It is an old number, from 2005 or before.' : null);
  });

  it('says first how few people it stands on, in both languages', async () => {
    const old = { years: { to: 1999 } };
    expect(plain(soundnessInWords(await sceneWith(old), cellOf('low', 50)))).toBe(
      'Only 50 people were counted. This number is not very sure. It is an old number, from 2005 or before.',
    );
    expect(plain(soundnessInWords(await sceneWith(old, 'es'), cellOf('low')))).toBe(
      'Este número no es muy seguro. Es un número antiguo, de 2005 o antes.',
    );
    expect(soundnessInWords(await sceneWith({}), cellOf('high'))).toBeNull();
  });

  it.each(allLanguages)(
    'is said of one or of several, of a study or of studies, in a note in %s',
    async (tag) => {
      const notes = async (uses: readonly Partial<RecordUse>[]): Promise<readonly string[]> => {
        const scene = await sceneWith({}, tag);
        const [first = {}, second] = uses;
        const row = rowOf(options, ['ulcer', fiveYears], {
          sleeve: (at) => shareCell(at, [100, 1000], first),
          ...(second === undefined ? {} : { bypass: (at) => shareCell(at, [200, 1000], second) }),
        });
        const other = rowOf(options, ['gallstones', fiveYears], {
          sleeve: (at) => shareCell(at, [100, 1000]),
        });
        const [table] = viewTables(scene, [row, other], 100);
        return (table?.notes ?? []).map(({ words }) => (plain(words) ?? '').replace(/^.*?[:：] ?/u, ''));
      };
      const weak = { certainty: 'low' };
      expect(await notes([weak])).not.toEqual(await notes([weak, weak]));
      const silent = { match: 'near', reasons: [{ code: 'bmi-unknown' }] } as const;
      const [one] = await notes([silent]);
      expect(await notes([silent, silent])).toEqual([one]);
      expect(await notes([silent, { ...silent, study: 'study-b' }])).not.toEqual([one]);
    },
  );

  it('is called so in strips beside the number, and in tables in one note for all', async () => {
    const scene = await sceneWith({});
    const weak = (cell: KnownCell): Cell => ({ ...cell, lead: { ...cell.lead, certainty: 'low' } });
    const row = rowOf(options, ['ulcer', fiveYears], {
      sleeve: (at) => weak(shareCell(at, [100, 1000])),
      bypass: (at) => weak(shareCell(at, [200, 1000])),
    });
    const topic: Topic = {
      id: 'later-years',
      denominator: 100,
      rows: [],
      picture: { ...row, denominator: 100 },
    };
    const lines = (viewPeople(scene, topic)?.rows ?? []).map((one) =>
      one.lines.map(({ words }) => plain(words)),
    );
    for (const said of lines) expect(said).toContain('This number is not very sure.');
    const other = rowOf(options, ['gallstones', fiveYears], { sleeve: (at) => shareCell(at, [100, 1000]) });
    const [table] = viewTables(scene, [row, other], 100);
    const both = 'Sleeve (An ulcer), Gastric bypass (An ulcer): ';
    expect(table?.notes.map(({ words }) => plain(words))).toEqual([
      both + 'These numbers are not very sure.',
    ]);
    const cells = (table?.rows ?? []).map(({ cells: own }) =>
      own.slice(1).map((cell) => cell.lines.map(({ words }) => plain(words)).join(' | ')),
    );
    expect(cells).toEqual([
      ['10 | note 1', '10'],
      ['20 | note 1', 'not known'],
    ]);
    const main = rowOf(options, ['weight-loss', fiveYears], { sleeve: (at) => weak(weightCell(at, 90)) });
    const weight = { mainMonths: 60, main, over: [main], courses: [] };
    const strip = viewWeight({ ...scene, comparison: { ...scene.comparison, weight } });
    expect(strip.rows[0]?.lines.map(({ words }) => plain(words))).toContain('This number is not very sure.');
  });
});
