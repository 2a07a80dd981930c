import type { Amount, SetAsideReason } from '../model/comparison.ts';
import type { RecordOf } from '../model/evidence-record.ts';
import { standardErrors95 } from './score-interval.ts';

/** A length of time as published, in its own unit, or why it is no figure. */
export function readAmount({ value }: RecordOf<'duration'>): Amount | SetAsideReason {
  if (value.estimate === undefined) return { code: 'other-measure', kind: 'range' };
  return { kind: 'amount', value: value.estimate, unit: value.unit, ...boundsOf(value, value.estimate) };
}

function boundsOf(
  value: RecordOf<'duration'>['value'],
  estimate: number,
): Pick<Amount, 'low' | 'high' | 'meaning'> {
  const { low, high, interval, sd, se } = value;
  if (sd !== undefined) return { low: Math.max(0, estimate - sd), high: estimate + sd, meaning: 'spread' };
  if (low !== undefined && high !== undefined) return { low, high, meaning: meaningOf(interval) };
  if (se === undefined) return {};
  return {
    low: estimate - standardErrors95 * se,
    high: estimate + standardErrors95 * se,
    meaning: 'uncertainty',
  };
}

function meaningOf(interval: RecordOf<'duration'>['value']['interval']): NonNullable<Amount['meaning']> {
  if (interval === 'iqr' || interval === 'range') return 'spread';
  return interval === undefined || interval === 'unstated' ? 'unknown' : 'uncertainty';
}
