import { describe, expect, it } from 'vitest';

import { buildTopicRow } from '../../../src/compare/build-topic-row.ts';
import { firstMonth, laterWindows } from '../../../src/compare/weigh-time.ts';
import type { TimeWindow } from '../../../src/compare/weigh-time.ts';
import type { Cell } from '../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../src/model/evidence-record.ts';
import type { TopicPlans } from '../../../src/model/topic-plan.ts';
import { makeEvidence, makeRecord } from '../../helpers/compare-inputs.ts';
import { makeDesks } from '../../helpers/make-desks.ts';

const { topics } = makeEvidence([]);
const year = laterWindows.find(({ asked }) => asked.months === 12) ?? firstMonth;

const early = (outcome: string, events: number): EvidenceRecord =>
  makeRecord({ id: outcome, study: outcome, outcome, value: { events, n: 1000 } });

/** Any complication after a sleeve, as a row of its own. */
function complications(
  records: readonly EvidenceRecord[],
  window: TimeWindow,
  plans: TopicPlans = topics,
): Cell | undefined {
  const desks = makeDesks(records, ['sleeve', 'bypass']);
  return buildTopicRow(desks, plans, { outcome: 'any-complication', window }).cells[0];
}

describe('a row that no page shows', () => {
  const leaks = early('leak', 32);

  it('of complications of the first month leaves out a figure below that of leaks alone, as the page would', () => {
    expect(complications([leaks, early('any-complication', 8)], firstMonth)).toMatchObject({
      state: 'not-known',
      reason: { code: 'contradicted' },
    });
    expect(complications([leaks, early('any-complication', 40)], firstMonth)?.state).toBe('known');
  });

  it('of later complications keeps it: those may be counted from the first month on', () => {
    const late = makeRecord({ ...early('any-complication', 8), time: { months: 12, basis: 'by' } });
    expect(complications([leaks, late], year)?.state).toBe('known');
  });

  it('keeps it where the first month draws something else', () => {
    const plans = { ...topics, 'first-month': { ...topics['first-month'], picture: ['major-complication'] } };
    expect(complications([leaks, early('any-complication', 8)], firstMonth, plans)?.state).toBe('known');
  });
});
