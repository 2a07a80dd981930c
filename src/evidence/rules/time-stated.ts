import type { EvidenceRecord } from '../../model/evidence-record.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const timeStated: EvidenceRule = {
  name: 'time-stated',
  description: 'a figure says when it was measured, in days or in months',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      const message = faultOf(record);
      if (message === undefined) return [];
      const hint = 'Write days or months and what they mean (basis).';
      return [faultIn(evidence, record, { code: 'EVIDENCE_NO_TIME', message, hint, at: ['time'] })];
    }),
};

function faultOf({ time }: EvidenceRecord): string | undefined {
  const stated = time.days !== undefined || time.months !== undefined;
  if (time.days !== undefined && time.months !== undefined) return 'the time is given in days and in months';
  if (time.basis === 'peri-operative' && stated) return 'peri-operative has no number of days or months';
  if (!stated && time.basis !== 'peri-operative' && time.basis !== 'unclear') {
    return `the time says "${time.basis}", but no number of days or months`;
  }
  return undefined;
}
