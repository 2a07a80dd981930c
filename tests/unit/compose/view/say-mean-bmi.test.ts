import { describe, expect, it } from 'vitest';

import { remarksOf } from '../../../../src/compose/view/table-cells.ts';
import { viewWeight } from '../../../../src/compose/view/view-weight.ts';
import type { RecordUse } from '../../../../src/model/comparison.ts';
import { makeRecord } from '../../../helpers/compare-inputs.ts';
import {
  fiveOptions,
  fiveYears,
  makeComparison,
  rowOf,
  shareCell,
  weightCell,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

describe('people of whose BMI a mean and an SD are known', () => {
  /** What is said beside such a figure to a person with a BMI of 43.1. */
  async function said(bmi: object, use: Partial<RecordUse> = {}): Promise<readonly string[]> {
    const record = makeRecord({ people: { indication: 'first-operation', diabetes: 'mixed', bmi } });
    const scene = await sceneFor('en');
    const cell = shareCell({ option: 'sleeve', outcome: 'leak', asked: fiveYears }, [5, 1000], {
      record: record.id,
      bmiBasis: 'mean-sd',
      ...use,
    });
    if (cell.value.kind !== 'proportion') throw new Error('no share');
    const table = { notes: null, denominator: 1000, sameDose: true } as const;
    return remarksOf({ ...scene, records: new Map([[record.id, record]]) }, cell, table).map(({ markup }) =>
      plain(markup),
    );
  }

  const far = 'These people had a BMI of 57 on average. Yours is 43.';

  it('are said to be heavier or lighter on average where this person is more than one SD away', async () => {
    expect(await said({ mean: 56.8, sd: 10.9 })).toEqual([far]);
    expect(await said({ mean: 35.2, sd: 5 })).toEqual([
      'These people had a BMI of 35 on average. Yours is 43.',
    ]);
    expect(await said({ mean: 46, sd: 5 })).toEqual([]);
  });

  it('are said so beside another difference, and not where a difference in BMI is said or limits are stated', async () => {
    const near = (code: 'indication-unknown' | 'bmi-unknown'): Partial<RecordUse> => ({
      match: 'near',
      reasons: [{ code }],
    });
    expect(await said({ mean: 56.8, sd: 10.9 }, near('indication-unknown'))).toEqual([
      'The study does not say if this was a first operation.',
      far,
    ]);
    expect(await said({ mean: 56.8, sd: 10.9 }, near('bmi-unknown'))).toEqual([
      'The study does not state the BMI of the people.',
    ]);
    expect(await said({ mean: 56.8, sd: 10.9, low: 35 }, { bmiBasis: 'stated-range' })).toEqual([]);
  });
});

describe('the line on who was measured for the bars of weight', () => {
  it('is about the studies of the bars alone, not about a weight at another time beside "not known"', async () => {
    const comparison = makeComparison(fiveOptions);
    const row = (months: number, option: string, study: string) =>
      rowOf(fiveOptions, ['weight-loss', { months }], {
        [option]: (place) => {
          const cell = weightCell(place, 93);
          return { ...cell, lead: { ...cell.lead, study, record: `${option}.${study}` } };
        },
      });
    const main = row(60, 'sleeve', 'study-a');
    const over = [row(24, 'semaglutide', 'study-b'), main];
    const records = [
      makeRecord({ id: 'sleeve.study-a', people: people({ low: 35 }) }),
      makeRecord({ id: 'semaglutide.study-b', people: people({ low: 27 }) }),
    ];
    const weight = { ...comparison.weight, main, over, courses: [] };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight } });
    const view = viewWeight({ ...scene, records: new Map(records.map((one) => [one.id, one])) });
    const beside = view.rows.flatMap(({ lines }) => lines.map(({ words }) => plain(words.markup)));
    expect(beside.join(' ')).toContain('Known for another time: ');
    expect(plain(view.covered?.markup ?? '')).toBe(
      'Sleeve: The main number comes from one study. This study took people with a BMI of 35 or more. Your BMI is 43.',
    );
  });

  const people = (bmi: object): { indication: 'first-operation'; diabetes: 'mixed'; bmi: object } => ({
    indication: 'first-operation',
    diabetes: 'mixed',
    bmi,
  });
});
