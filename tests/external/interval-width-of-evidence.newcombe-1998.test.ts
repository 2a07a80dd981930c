// Newcombe RG. Two-sided confidence intervals for the single proportion. Stat Med 1998;17:857-872, table I, method 3
// (score interval without continuity correction): limits for 81/263, 15/148, 0/20 and 1/29. Numbers only.
import { describe, expect, it } from 'vitest';

import { EvidenceRecordSchema } from '../../src/model/evidence-record.ts';
import { arithmeticChecks } from '../../src/evidence/rules/arithmetic-checks.ts';

const published = [
  { events: 81, n: 263, low: 0.2553, high: 0.3662 },
  { events: 15, n: 148, low: 0.0624, high: 0.1605 },
  { events: 1, n: 29, low: 0.0061, high: 0.1718 },
];

/** A record that prints an interval of `share` times the published width round the published middle. */
function recordWith({ events, n, low, high }: (typeof published)[number], share: number) {
  const middle = 50 * (low + high);
  const half = 50 * (high - low) * share;
  return EvidenceRecordSchema.parse({
    id: 'a.b.30d.c',
    study: 'c',
    option: 'a',
    outcome: 'b',
    kind: 'risk',
    people: { indication: 'first-operation', diabetes: 'unknown' },
    time: { days: 30, basis: 'by' },
    value: { percent: (100 * events) / n, n, low: middle - half, high: middle + half, interval: 'ci95' },
    certainty: 'low',
    seen: 'page',
  });
}

describe('the narrowest interval that a share may have, half of the published one', () => {
  it.each(published)('accepts the published interval of $events in $n', (row) => {
    expect(arithmeticChecks['interval-width'](recordWith(row, 1), 'cohort')).toBeUndefined();
  });

  it.each(published)('lies at half the published width of $events in $n, to one part in a hundred', (row) => {
    expect(arithmeticChecks['interval-width'](recordWith(row, 0.505), 'cohort')).toBeUndefined();
    expect(arithmeticChecks['interval-width'](recordWith(row, 0.495), 'cohort')).toMatch(/less than half/);
  });
});
