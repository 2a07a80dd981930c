import { describe, expect, it } from 'vitest';

import type { KnownCell, MatchReason } from '../../../../src/model/comparison.ts';
import { sharedExchange } from '../../../../src/compose/view/say-exchange.ts';
import { sayNear } from '../../../../src/compose/view/say-reason.ts';
import { makeCase, makeRecord } from '../../../helpers/compare-inputs.ts';
import { month, shareCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function said(
  stages: string | undefined,
  plan: Readonly<Record<string, unknown>>,
  reason?: MatchReason,
): Promise<string | null> {
  const found = shareCell({ option: 'sleeve', outcome: 'leak', asked: month }, [5, 1000]);
  const cell: KnownCell =
    reason === undefined ? found : { ...found, lead: { ...found.lead, match: 'near', reasons: [reason] } };
  const people = {
    indication: 'after-band',
    diabetes: 'unknown',
    ...(stages === undefined ? {} : { stages }),
  };
  const record = makeRecord({ id: cell.lead.record, people });
  const scene = await sceneFor('en', { case: makeCase({ plan }) });
  return sayNear({ ...scene, records: new Map([[record.id, record]]) }, cell)?.markup ?? null;
}

describe('how a band was exchanged', () => {
  it('is said where it is open how this person’s will be', async () => {
    expect(await said('one', {})).toBe('The people counted here had the band out in the same operation.');
    expect(await said('two', {})).toBe('The people counted here had the band out in an operation before.');
    expect(await said('either', {})).toMatch(/^Some of the people counted here/);
  });

  it('is said too where it was some of each, or where nobody states it, whatever is planned', async () => {
    for (const plan of [{}, { stages: 'one' }, { stages: 'two' }]) {
      expect(await said('either', plan)).toMatch(/^Some of the people counted here/);
      expect(await said('unstated', plan)).toMatch(/^The study does not say if the band came out/);
    }
  });

  it('stands behind another difference of the people', async () => {
    const both = await said('one', {}, { code: 'bmi-unknown' });
    expect(both).toMatch(/^The study does not state the BMI.*had the band out in the same operation\.$/);
  });

  it('is the difference itself where it is planned otherwise, with what the surgeon plans', async () => {
    const one = await said('one', { stages: 'two' }, { code: 'stages', theirs: 'one' });
    expect(one).toMatch(/in the same operation\. Your surgeon plans two operations\. We have no number/);
    const two = await said('two', { stages: 'one' }, { code: 'stages', theirs: 'two' });
    expect(two).toMatch(/in an operation before\. Your surgeon plans a single one\. We have no number/);
  });

  it('is not said where it is as planned, or not stated', async () => {
    expect(await said('one', { stages: 'one' })).toBeNull();
    expect(await said(undefined, {})).toBeNull();
  });
});

describe('how the bands of a whole strip were exchanged', () => {
  it('is said once where it is true of each figure, and not at all where it is not', async () => {
    expect(await sharedOf(['one', 'one'])).toBe(
      'The people counted here had the band out in the same operation.',
    );
    expect(await sharedOf(['one', 'two'])).toBeNull();
    expect(await sharedOf(['one', undefined])).toBeNull();
    expect(await sharedOf([])).toBeNull();
  });
});

async function sharedOf(stages: readonly (string | undefined)[]): Promise<string | null> {
  const options = ['sleeve', 'bypass'];
  const told = stages.map((theirs, index) => {
    const option = options[index] ?? '';
    const cell = shareCell({ option, outcome: 'leak', asked: month }, [5, 1000]);
    const lead = { ...cell.lead, record: `${option}.leak` };
    const people = {
      indication: 'after-band',
      diabetes: 'unknown',
      ...(theirs === undefined ? {} : { stages: theirs }),
    };
    return { cell: { ...cell, lead }, record: makeRecord({ id: lead.record, option, people }) };
  });
  const scene = await sceneFor('en', { case: makeCase({ plan: {} }) });
  const records = new Map(told.map(({ record }) => [record.id, record]));
  return (
    sharedExchange(
      { ...scene, records },
      told.map(({ cell }) => cell),
    )?.markup ?? null
  );
}
