import type { Due, Repetition, TestPlan, Visit } from '../model/aftercare-plan.ts';
import type { AftercareTiming } from '../model/aftercare.ts';
import { addMonths } from '../model/calendar-day.ts';
import { protocolOf } from '../model/protocol-of.ts';
import type { Practice } from '../model/protocol-of.ts';
import type { Span } from '../model/span.ts';
import { byDate, daysOf } from './due-days.ts';
import type { Counting } from './due-days.ts';
import { clinicGrounds, entryAt, guidelineGrounds } from './grounds.ts';
import { isForOther, peopleLeft, testsOf } from './plan-rules.ts';
import type { JudgedFact, Setting } from './setting.ts';

/** The clinic's tests; without any, what guidelines agree on. Days move as those of visits do. */
export function planTests(
  setting: Setting,
  rules: readonly JudgedFact[],
  visits: readonly Visit[],
): readonly TestPlan[] {
  const written = protocolOf(setting.clinic.protocol, 'blood_tests', setting.option);
  if (written === undefined) return rules.map((rule) => guidelineTest(setting, rule, visits));
  return written.practice.flatMap((line, index) => {
    if (isForOther(setting, line.for)) return [];
    const place = entryAt('blood_tests', written.option, index);
    return [
      {
        ...clinicGrounds(setting, place, (fact) => testsOf(fact).some((test) => line.tests.includes(test))),
        tests: line.tests,
        who: peopleLeft(setting, line.for),
        atEachVisit: false,
        ...clinicDays(setting, line),
      },
    ];
  });
}

type Line = Practice<'blood_tests'>[number];
interface Days {
  readonly due: readonly Due[];
  readonly then: Repetition | null;
}

function clinicDays({ clinic, date }: Setting, { at, every, until }: Line): Days {
  const counting = { date, visiting: clinic.clinic.visiting };
  return daysFrom({ at, every: every ?? null, until: until ?? null }, counting);
}

interface Times {
  readonly at: readonly Span[];
  readonly every: Span | null;
  readonly until: Span | null;
}

/** On each of the times, and after the last of them again and again. */
function daysFrom({ at, every, until }: Times, counting: Counting): Days {
  const once = at.slice(0, -1).flatMap((after) => daysOf({ after, every: null, until }, counting).due);
  const last = at.at(-1) ?? null;
  if (last === null && every === null) return { due: [], then: null };
  const { due, then } = daysOf({ after: last, every, until }, counting);
  return { due: [...once, ...due].sort(byDate), then };
}

function guidelineTest(setting: Setting, { fact, isFor }: JudgedFact, visits: readonly Visit[]): TestPlan {
  const who = isFor === 'yes' ? 'adults' : fact.who;
  const common = { ...guidelineGrounds([fact]), tests: testsOf(fact), who };
  if (fact.timing?.every !== 'visit')
    return { ...common, atEachVisit: false, ...guidelineDays(setting, fact.timing) };
  const due = visits
    .filter(({ way }) => way === 'in-person')
    .map(({ after, counted, date }) => ({ after, counted, date, earliest: null }));
  return { ...common, atEachVisit: true, due, then: null };
}

function guidelineDays({ clinic, date }: Setting, timing: AftercareTiming | undefined): Days {
  const interval = timing?.every_months;
  const [soonest, latest] = typeof interval === 'object' ? interval : [interval, interval];
  const months = (count: number): Span => ({ count, unit: 'month' });
  const times = {
    at: (timing?.at_months ?? []).map(months),
    every: latest === undefined ? null : months(latest),
    until: null,
  };
  const { due, then } = daysFrom(times, { date, visiting: clinic.clinic.visiting });
  if (soonest === undefined || soonest === latest) return { due, then };
  // From so many to so many months: due by the later day, and from the earlier one on.
  const early = (one: Due): Due => ({
    ...one,
    earliest: addMonths(one.counted, soonest - (latest ?? soonest)),
  });
  return { due: due.map(early), then: then === null ? null : { ...then, next: early(then.next) } };
}
