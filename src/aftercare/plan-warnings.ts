import { isForAll } from '../model/aftercare-plan.ts';
import type { AftercarePlan, Contact, Threshold, WarningSign } from '../model/aftercare-plan.ts';
import { urgencies } from '../model/aftercare-codes.ts';
import type { Urgency } from '../model/aftercare-codes.ts';
import { protocolOf } from '../model/protocol-of.ts';
import type { Practice } from '../model/protocol-of.ts';
import { clinicGrounds, entryAt, guidelineGrounds } from './grounds.ts';
import { groupFacts, isForOther, peopleLeft } from './plan-rules.ts';
import type { JudgedFact, Setting } from './setting.ts';

/** Signs by how fast to call: the clinic's first, then those of guidelines that it does not name. */
export function planWarnings(setting: Setting, rules: readonly JudgedFact[]): AftercarePlan['warnings'] {
  const written = protocolOf(setting.clinic.protocol, 'warnings', setting.option);
  const own = withoutRepeats(urgencies.map((urgency) => clinicSigns(setting, written, urgency)));
  const theirs = urgencies.map((urgency) => guidelineSigns(rules, urgency, written?.practice));
  const [now, today, visit] = urgencies.map((_, index) => [...(own[index] ?? []), ...(theirs[index] ?? [])]);
  return { now: now ?? [], today: today ?? [], visit: visit ?? [] };
}

type Warnings = Practice<'warnings'>;
export const warningKeys = { now: 'now', today: 'today', visit: 'at_visit' } as const;

function clinicSigns(
  setting: Setting,
  written: { readonly option: string; readonly practice: Warnings } | undefined,
  urgency: Urgency,
): readonly WarningSign[] {
  if (written === undefined) return [];
  const { option, practice } = written;
  return practice[warningKeys[urgency]].flatMap((sign, index): readonly WarningSign[] => {
    if (isForOther(setting, sign.for)) return [];
    const code = 'code' in sign ? sign.code : null;
    return [
      {
        ...clinicGrounds(setting, entryAt('warnings', option, index), ({ subject }) => subject === code),
        sign: code,
        who: peopleLeft(setting, sign.for),
        threshold: thresholdOf(code, practice),
        days: null,
      },
    ];
  });
}

/** A coded sign that is more urgent for this person than for others stands only where it is most urgent. */
function withoutRepeats(lists: readonly (readonly WarningSign[])[]): readonly (readonly WarningSign[])[] {
  return lists.map((signs, rank) => {
    const sooner = lists.slice(0, rank).flat();
    const isRepeat = (code: WarningSign['sign']): boolean =>
      code !== null && sooner.some(({ sign, who }) => sign === code && isForAll(who));
    return signs.filter(({ sign }) => !isRepeat(sign));
  });
}

function guidelineSigns(
  rules: readonly JudgedFact[],
  urgency: Urgency,
  warnings: Warnings | undefined,
): readonly WarningSign[] {
  return groupFacts(rules.filter(({ fact }) => fact.urgency === urgency)).map(({ facts, who }) => {
    const [{ subject, timing }] = facts;
    return {
      ...guidelineGrounds(facts),
      sign: subject,
      who,
      threshold: thresholdOf(subject, warnings),
      days: timing === undefined ? null : daysOfTiming(timing),
    };
  });
}

function daysOfTiming(timing: NonNullable<JudgedFact['fact']['timing']>): WarningSign['days'] {
  const { from_day: fromDay, to_day: toDay, from_week: fromWeek, to_week: toWeek } = timing;
  const from = fromDay ?? (fromWeek === undefined ? undefined : fromWeek * 7);
  const to = toDay ?? (toWeek === undefined ? undefined : toWeek * 7);
  return from === undefined ? null : { from, to: to ?? null };
}

/** Numbers come from the clinic only: those that were read were not made for people at home. */
function thresholdOf(code: string | null, warnings: Warnings | undefined): Threshold | null {
  const { fever, pulse } = warnings ?? {};
  if (code === 'fever' && fever !== undefined) return { value: fever.celsius, unit: 'celsius' };
  if (code === 'fast-heartbeat' && pulse !== undefined) return { value: pulse, unit: 'beats/minute' };
  return null;
}

/** The clinic's own list of whom to call; without one, its phones. */
export function planCalls({ clinic, option }: Setting): readonly Contact[] {
  const written = protocolOf(clinic.protocol, 'call', option);
  if (written === undefined) {
    return [
      { urgency: 'now', entry: null, phone: 'emergency' },
      { urgency: 'today', entry: null, phone: 'day' },
      { urgency: 'today', entry: null, phone: 'out_of_hours' },
      { urgency: 'visit', entry: null, phone: 'day' },
    ];
  }
  return urgencies.flatMap((urgency) =>
    written.practice.flatMap((line, index): readonly Contact[] =>
      line.urgency.includes(urgency)
        ? [{ urgency, entry: entryAt('call', written.option, index), phone: null }]
        : [],
    ),
  );
}
