import { describe, expect, it } from 'vitest';

import { followedInWords } from '../../../../src/compose/view/say-followed.ts';
import type { WeightPoint } from '../../../../src/model/comparison.ts';
import { makeWeightRecord } from '../../../helpers/compare-inputs.ts';
import { fiveYears, weightCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function saidOf(changes: Readonly<Record<string, unknown>>, tag = 'en'): Promise<string | null> {
  const scene = await sceneFor(tag);
  const record = makeWeightRecord(changes);
  const [option] = scene.options;
  if (option === undefined) throw new Error('the scene has no option');
  const { value, id } = weightCell({ option: 'sleeve', outcome: 'weight-loss', asked: fiveYears }, 90);
  if (value.kind !== 'weight') throw new Error('not a weight');
  const point: WeightPoint = { months: 60, value, record: record.id, cell: id };
  const words = followedInWords({ ...scene, records: new Map([[record.id, record]]) }, option, point);
  return words?.markup.replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ') ?? null;
}

const weight = { metric: 'TWL', estimate: 25, unit: '%', reference: 'before-this-operation' };

describe('who was still measured', () => {
  it('is said as people seen of people who began, where both are stated', async () => {
    expect(await saidOf({ value: { ...weight, n: 80 }, followed: { seen: 80, of: 180 } })).toBe(
      'Sleeve: after 5 years 80 of 180 people were still measured.',
    );
  });

  it('is said as a part of 100 of those who began, where a percent is stated', async () => {
    expect(
      await saidOf({ value: { ...weight, n: 180, n_is: 'start' }, followed: { percent: 70.9, of: 180 } }),
    ).toBe('Sleeve: after 5 years about 71 out of 100 of the 180 people were still measured.');
  });

  it('never takes those who began for those who were measured', async () => {
    expect(await saidOf({ value: { ...weight, n: 180, n_is: 'start' } })).toBe(
      'Sleeve: the study does not state how many of its 180 people were still measured after 5 years.',
    );
    expect(await saidOf({ value: { ...weight, n: 180 } })).toBe(
      'Sleeve: after 5 years 180 people were measured.',
    );
  });

  it('is left out where the study says nothing', async () => {
    expect(await saidOf({ value: weight })).toBeNull();
  });

  it('stands in the reader’s language', async () => {
    expect(await saidOf({ value: { ...weight, n: 80 }, followed: { seen: 80, of: 180 } }, 'es')).toBe(
      'Manga gástrica: después de 5 años todavía se midió a 80 de 180 personas.',
    );
  });
});
