import type { AftercareSubject } from '../model/aftercare-codes.ts';
import type { SupplementPlan } from '../model/aftercare-plan.ts';
import { protocolOf } from '../model/protocol-of.ts';
import type { Practice } from '../model/protocol-of.ts';
import { addSpan } from '../model/span.ts';
import type { Span } from '../model/span.ts';
import { daysOf } from './due-days.ts';
import { clinicGrounds, entryAt, guidelineGrounds } from './grounds.ts';
import { amountsOf, groupFacts, isForOther, lastDayOf, peopleLeft } from './plan-rules.ts';
import type { JudgedFact, Setting } from './setting.ts';

const everyDay = { count: 1, unit: 'day' } as const;

/** The clinic's list; without one, what guidelines agree on. Amounts stand side by side and are never added. */
export function planSupplements(setting: Setting, rules: readonly JudgedFact[]): readonly SupplementPlan[] {
  const written = protocolOf(setting.clinic.protocol, 'supplements', setting.option);
  if (written === undefined) return guidelineSupplements(setting, rules);
  return written.practice.flatMap((entry, index) => {
    if (isForOther(setting, entry.for)) return [];
    const place = entryAt('supplements', written.option, index);
    const grounds = clinicGrounds(
      setting,
      place,
      ({ topic, subject }) => topic === 'supplement' && subject === entry.supplement,
    );
    return [{ ...grounds, ...clinicSupplement(setting, entry) }];
  });
}

type Line = Practice<'supplements'>[number];

function clinicSupplement(
  setting: Setting,
  line: Line,
): Omit<SupplementPlan, 'from' | 'entry' | 'facts' | 'sources'> {
  const { date } = setting;
  const { every = everyDay, from, until } = line;
  const { due, then } = isSpaced(every)
    ? daysOf({ after: from ?? null, every, until: until ?? null }, { date })
    : { due: [], then: null };
  return {
    supplement: line.supplement,
    who: peopleLeft(setting, line.for),
    dose: line.dose ?? null,
    timesADay: line.times_a_day ?? 1,
    amounts: [],
    every,
    starts: from === undefined ? date : addSpan(date, from),
    lastDay: lastDayOf(date, until),
    due,
    then,
  };
}

/** Far enough apart for each day of taking to be worth a line. */
function isSpaced({ count, unit }: Span): boolean {
  return unit === 'month' || unit === 'year' || count * (unit === 'week' ? 7 : 1) >= 28;
}

/** Subjects that say how to take something and are no supplement are advice. */
export function isSupplement({ fact: { subject } }: JudgedFact): boolean {
  return !handling.some((code) => code === subject);
}

const handling = [
  'iron-helper',
  'iron-calcium-gap',
  'calcium-single-dose',
  'vitamin-a-form',
  'zinc-copper-balance',
  'dose-source',
] as const satisfies readonly AftercareSubject[];

function guidelineSupplements({ date }: Setting, rules: readonly JudgedFact[]): readonly SupplementPlan[] {
  return groupFacts(rules.filter(isSupplement)).map(({ facts, who }) => {
    const [{ subject }] = facts;
    return {
      ...guidelineGrounds(facts),
      supplement: subject,
      who,
      dose: null,
      timesADay: 1,
      amounts: amountsOf(facts),
      every: everyDay,
      starts: date,
      lastDay: null,
      due: [],
      then: null,
    };
  });
}
