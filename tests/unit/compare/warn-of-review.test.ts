import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../../src/compare/index.ts';
import { warnOfReview } from '../../../src/compare/warn-of-review.ts';
import type { EvidenceBase } from '../../../src/model/evidence.ts';
import { makeCase, makeClinic, makeEvidence, makeRecord } from '../../helpers/compare-inputs.ts';

/** Warnings about reviews when a table is made on a day. */
function warningsOn(date: string, evidence: EvidenceBase): readonly string[] {
  const made = compareOptions({ case: makeCase(), clinic: makeClinic(), evidence, date });
  if (!made.ok) throw new Error('the table must be made');
  return made.warnings.flatMap(({ code, severity, message }) =>
    code === 'EVIDENCE_PAST_REVIEW' ? [`${severity}: ${message}`] : [],
  );
}

const shown = makeRecord({ review_by: '2027-01-15' });
const alsoShown = makeRecord({ id: 'sleeve.death.30d.study-a', outcome: 'death', review_by: '2027-01-10' });
const notShown = makeRecord({
  id: 'sleeve.leak.30d.study-b',
  study: 'study-b',
  seen: 'memory',
  review_by: '2026-12-01',
});
const inTime = makeRecord({ id: 'bypass.leak.30d.study-c', option: 'bypass', study: 'study-c' });

describe('a figure whose source was to be read again', () => {
  const evidence = makeEvidence([shown, alsoShown, notShown, inTime]);

  it('is no warning up to that day', () => {
    expect(warningsOn('2027-01-10', evidence)).toEqual([]);
  });

  it('is one warning a study from the next day on, with the earliest day and the figures concerned', () => {
    expect(warningsOn('2027-01-11', evidence)).toEqual([
      'warning: study-a was to be read again by 2027-01-10; on it stands sleeve.death.30d.study-a',
    ]);
    expect(warningsOn('2027-01-16', evidence)).toEqual([
      'warning: study-a was to be read again by 2027-01-10; on it stands sleeve.leak.30d.study-a, sleeve.death.30d.study-a',
    ]);
    expect(warningsOn('2027-01-16', makeEvidence([alsoShown, shown]))).toEqual([
      'warning: study-a was to be read again by 2027-01-10; on it stands sleeve.death.30d.study-a, sleeve.leak.30d.study-a',
    ]);
  });

  it('is named with its own study only, where two are to be read again', () => {
    const other = makeRecord({ ...inTime, review_by: '2027-01-12' });
    expect(warningsOn('2027-01-16', makeEvidence([shown, other]))).toEqual([
      'warning: study-a was to be read again by 2027-01-15; on it stands sleeve.leak.30d.study-a',
      'warning: study-c was to be read again by 2027-01-12; on it stands bypass.leak.30d.study-c',
    ]);
  });

  it('is still shown', () => {
    const made = compareOptions({ case: makeCase(), clinic: makeClinic(), evidence, date: '2027-01-16' });
    expect(made.ok && made.value.recordsUsed).toContain(shown.id);
  });

  it('is no warning where it is not shown', () => {
    expect(warningsOn('2027-01-09', evidence)).toEqual([]);
  });
});

describe('a release whose own review is past', () => {
  it('is a warning beside those of its figures', () => {
    const evidence = makeEvidence([inTime]);
    expect(warningsOn('2027-11-25', evidence)).toEqual([]);
    expect(warningsOn('2027-11-26', evidence)).toEqual([
      'warning: the evidence 2026.11 was to be looked over by 2027-11-25',
    ]);
  });

  it('says what to do', () => {
    const warnings = warnOfReview(makeEvidence([shown]), { recordsUsed: [shown.id], date: '2027-11-26' });
    expect(warnings.map(({ hint }) => hint)).toEqual([
      expect.stringContaining('Install a newer release') as string,
      expect.stringContaining('plainleaf evidence due --by 2027-01-15') as string,
    ]);
  });
});
