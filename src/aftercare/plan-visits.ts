import type { Grounds, LaterVisit, Visit } from '../model/aftercare-plan.ts';
import { protocolOf } from '../model/protocol-of.ts';
import type { Practice } from '../model/protocol-of.ts';
import { byDate, daysOf } from './due-days.ts';
import { clinicGrounds, entryAt, guidelineGrounds } from './grounds.ts';
import type { JudgedFact, Setting } from './setting.ts';

export interface VisitPlan {
  readonly visits: readonly Visit[];
  readonly laterVisits: readonly LaterVisit[];
}

/** The clinic's visits; without any, what guidelines agree on. */
export function planVisits(setting: Setting, rules: readonly JudgedFact[]): VisitPlan {
  const written = protocolOf(setting.clinic.protocol, 'follow_up', setting.option);
  const series =
    written === undefined
      ? rules.flatMap(({ fact }) => yearlyVisits(setting, fact))
      : written.practice.map((visit, index) => {
          const entry = entryAt('follow_up', written.option, index);
          return clinicVisits(setting, visit, clinicGrounds(setting, entry, isVisit));
        });
  return {
    visits: series.flatMap(({ visits }) => visits).sort(byDate),
    laterVisits: series.flatMap(({ laterVisits }) => laterVisits),
  };
}

function isVisit({ subject }: { readonly subject: string }): boolean {
  return subject === 'clinic-visits' || subject === 'first-contact';
}

type ClinicVisit = Practice<'follow_up'>[number];

function clinicVisits(
  { clinic, date }: Setting,
  { after, every, until, weekdays, with: staff, way }: ClinicVisit,
  grounds: Grounds,
): VisitPlan {
  const rhythm = { after, every: every ?? null, until: until ?? null };
  const { due, then } = daysOf(rhythm, { date, visiting: clinic.clinic.visiting, weekdays });
  const meeting = { ...grounds, with: staff, way };
  return {
    visits: due.map((one, index) => ({ ...meeting, ...one, isRepeat: index > 0 })),
    laterVisits: then === null ? [] : [{ ...meeting, then }],
  };
}

/** A check each year; other facts on visits say no day. */
function yearlyVisits({ clinic, date }: Setting, fact: JudgedFact['fact']): readonly VisitPlan[] {
  const { timing } = fact;
  const [months, start] = [timing?.every_months, timing?.from_month];
  if (typeof months !== 'number' || start === undefined) return [];
  const rhythm = {
    after: { count: start, unit: 'month' },
    every: { count: months, unit: 'month' },
    until: null,
  } as const;
  const { due, then } = daysOf(rhythm, { date, visiting: clinic.clinic.visiting });
  const meeting = { ...guidelineGrounds([fact]), with: [], way: 'in-person' } as const;
  return [
    {
      visits: due.map((one, index) => ({ ...meeting, ...one, isRepeat: index > 0 })),
      laterVisits: then === null ? [] : [{ ...meeting, then }],
    },
  ];
}
