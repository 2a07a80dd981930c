import { describe, expect, it } from 'vitest';

import { sayNear } from '../../../../src/compose/view/say-reason.ts';
import { makeCase, makeRecord } from '../../../helpers/compare-inputs.ts';
import { month, shareCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function said(
  stages: string | undefined,
  plan: Readonly<Record<string, unknown>>,
): Promise<string | null> {
  const cell = shareCell({ option: 'sleeve', outcome: 'leak', asked: month }, [5, 1000]);
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
    expect(await said('one', {})).toBe('These people had the band out in the same operation.');
    expect(await said('two', {})).toBe('These people had the band out in an operation before.');
    expect(await said('either', {})).toMatch(/^Some of these people/);
  });

  it('is not said where it is as planned, or not stated', async () => {
    expect(await said('one', { stages: 'one' })).toBeNull();
    expect(await said(undefined, {})).toBeNull();
  });
});
