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
  const { events, n, percent, rate, per, unit } = value;
  if (value.n_is !== undefined && n === undefined) return 'n_is stands without n';
  if (rate !== undefined) return rateFault(value);
  if (per !== undefined || unit !== undefined) return 'per and unit stand without a rate';
  if (events !== undefined)
    return n === undefined && percent === undefined ? 'events without a number of people' : undefined;
  if (percent !== undefined) return undefined;
  return value.interval === 'range' ? undefined : 'there is no count, percent or rate';
}

function rateFault({ events, percent, per, unit }: ShareValue): string | undefined {
  if (events !== undefined || percent !== undefined) return 'a rate stands beside a count or percent';
  return per === undefined || unit === undefined ? 'a rate without its time (per and unit)' : undefined;
}
