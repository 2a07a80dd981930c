import type { ShareValue } from '../../model/evidence-record.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A count alone says nothing: it needs the people it came from, or the percent that they made. */
export const shareHasDenominator: EvidenceRule = {
  name: 'share-has-denominator',
  description: 'a share of people has a number of people or a percent, a rate has its time',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      if (record.kind !== 'risk' && record.kind !== 'benefit') return [];
      const message = faultOf(record.value);
      if (message === undefined) return [];
      const hint = 'Write events and n, percent, rate with per and unit, or a range of percents.';
      return [faultIn(evidence, record, { code: 'EVIDENCE_NO_DENOMINATOR', message, hint, at: ['value'] })];
    }),
};

function faultOf(value: ShareValue): string | undefined {
  if (value.n_is !== undefined && value.n === undefined) return 'n_is stands without n';
  if (value.rate !== undefined) return rateFault(value);
  if (value.per !== undefined || value.unit !== undefined) return 'per and unit stand without a rate';
  return plainFault(value);
}

function plainFault({ events, n, percent, interval }: ShareValue): string | undefined {
  if (percent !== undefined) return undefined;
  if (events !== undefined) return n === undefined ? 'events without a number of people' : undefined;
  return interval === 'range' ? undefined : 'there is no count, percent or rate';
}

function rateFault({ events, percent, per, unit }: ShareValue): string | undefined {
  if (events !== undefined || percent !== undefined) return 'a rate stands beside a count or percent';
  return per === undefined || unit === undefined ? 'a rate without its time (per and unit)' : undefined;
}
