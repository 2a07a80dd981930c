import { describe, expect, it } from 'vitest';

import { isPastReview, reviewOf } from '../../../src/model/review.ts';
import { makeEvidence, makeRecord, makeStudy } from '../../helpers/compare-inputs.ts';

type Changes = Readonly<Record<string, unknown>>;

/** The review of one record; changes of the record, of its study and of the evidence. */
function reviewWith(record: Changes = {}, study: Changes = {}, evidence: Changes = {}) {
  const made = makeRecord(record);
  const studies = [makeStudy('study-a', study)];
  return reviewOf({ ...makeEvidence([made], { studies }), ...evidence }, made);
}

describe('when a figure is read again', () => {
  it.each([
    ['established', 'sleeve', '2028-11-25'],
    ['newer', 'semaglutide', '2027-11-25'],
    ['under study', 'plication', '2027-05-25'],
  ])('hangs on how settled the knowledge is: %s', (_what, option, by) => {
    expect(reviewWith({ option })).toEqual({ by, setBy: 'interval', readOn: '2026-11-25' });
  });

  it('takes the shortest interval for an option that is not defined', () => {
    expect(reviewWith({ option: 'nowhere' }).by).toBe('2027-05-25');
  });

  it('counts from the day on which the study was read, and before that from the day of the figure', () => {
    expect(reviewWith({}, { seen_on: '2026-03-10' })).toMatchObject({
      by: '2028-03-10',
      readOn: '2026-03-10',
    });
    expect(reviewWith({ seen_on: '2026-09-01' }, { seen_on: '2026-03-10' })).toMatchObject({
      by: '2028-09-01',
      readOn: '2026-09-01',
    });
  });

  it('follows a day that the study names, and before that one that the figure names', () => {
    expect(reviewWith({}, { review_by: '2027-01-31' })).toMatchObject({ by: '2027-01-31', setBy: 'study' });
    expect(reviewWith({ review_by: '2027-01-15' }, { review_by: '2027-01-31' })).toMatchObject({
      by: '2027-01-15',
      setBy: 'record',
    });
  });

  it('is not put off by a new release: what nobody has read again counts from the first', () => {
    const first = { version: '2025.12', date: '2025-12-01', digest: '0'.repeat(64), changes: null };
    const second = { ...first, version: '2026.05', date: '2026-05-01' };
    expect(reviewWith({}, {}, { earlier: [second, first] }).by).toBe('2027-12-01');
  });

  it('falls on the last day of a month that is too short', () => {
    expect(reviewWith({ option: 'plication', seen_on: '2026-08-31' }).by).toBe('2027-02-28');
    expect(reviewWith({ option: 'plication', seen_on: '2027-08-30' }).by).toBe('2028-02-29');
    expect(reviewWith({ option: 'plication', seen_on: '2026-12-31' }).by).toBe('2027-06-30');
    expect(reviewWith({ option: 'plication', seen_on: '2026-06-30' }).by).toBe('2026-12-30');
  });

  it('is past from the day after', () => {
    const record = makeRecord({ review_by: '2027-01-15' });
    const evidence = makeEvidence([record]);
    expect(isPastReview(evidence, record, '2027-01-15')).toBe(false);
    expect(isPastReview(evidence, record, '2027-01-16')).toBe(true);
  });
});
