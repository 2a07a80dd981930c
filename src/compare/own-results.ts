import type { ClinicResult } from '../model/clinic.ts';
import type { OwnResult } from '../model/comparison.ts';
import type { OptionDesk } from './describe-option.ts';
import { scoreInterval } from './score-interval.ts';
import { enoughPeople } from './enough-people.ts';
import type { TimeWindow } from './weigh-time.ts';

const daysPerMonth = 365.25 / 12;

/**
 * The count of this case's surgeon for an outcome at about this time. Counts are of an option without saying what
 * people had before, so they stand only beside first operations.
 */
export function findOwnResult(desk: OptionDesk, outcome: string, window: TimeWindow): OwnResult | undefined {
  if (desk.subject.operatedBefore || window.unit === 'any') return undefined;
  const surgeon = desk.clinic.surgeons.find(({ id }) => id === desk.surgeon);
  if (surgeon === undefined) return undefined;
  const [nearest] = surgeon.results
    .filter(
      (result) => result.option === desk.code && result.outcome === outcome && isInside(result.days, window),
    )
    .sort((a, b) => distance(a, window) - distance(b, window) || compareText(b.to, a.to) || b.n - a.n);
  if (nearest === undefined) return undefined;
  const { events, n, days, from, to } = nearest;
  return {
    events,
    n,
    days,
    from,
    to,
    surgeon: surgeon.id,
    tooFew: n < enoughPeople,
    score: scoreInterval(events, n),
  };
}

function isInside(days: number, window: TimeWindow): boolean {
  const unit = window.unit === 'months' ? daysPerMonth : 1;
  return days >= window.from * unit && days <= window.to * unit;
}

function distance({ days }: ClinicResult, { asked }: TimeWindow): number {
  return Math.abs(days - (asked.days ?? (asked.months ?? 0) * daysPerMonth));
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
