import type { DatedRule, Grounds } from '../model/aftercare-plan.ts';
import type { AftercareFact, AftercareTiming } from '../model/aftercare.ts';
import type { TestCode, WhoCode } from '../model/aftercare-codes.ts';
import { addDays, addMonths } from '../model/calendar-day.ts';
import { adviceSubjects } from '../model/protocol-codes.ts';
import { protocolOf } from '../model/protocol-of.ts';
import { addSpan } from '../model/span.ts';
import type { Span } from '../model/span.ts';
import { clinicGrounds, entryAt, guidelineGrounds } from './grounds.ts';
import { judgeWho } from './judge-who.ts';
import type { JudgedFact, Setting } from './setting.ts';

/** Lifting, driving, work, walking, wounds: as the clinic writes them. */
export function planActivity(setting: Setting): readonly DatedRule[] {
  const { clinic, option } = setting;
  return (['lifting', 'driving', 'work', 'walking', 'wound'] as const).flatMap((topic) => {
    const written = protocolOf(clinic.protocol, topic, option);
    const facts = topic === 'walking' ? 'activity' : topic;
    return (written?.practice ?? []).map((entry, index) => ({
      ...clinicGrounds(
        setting,
        entryAt(topic, written?.option ?? option, index),
        (fact) => fact.topic === facts,
      ),
      ...clinicRule(setting, entry),
      topic,
      about: null,
    }));
  });
}

/** Medicines as the clinic writes them; then what guidelines say of those it does not name. */
export function planMedicines(setting: Setting, rules: readonly JudgedFact[]): readonly DatedRule[] {
  const written = protocolOf(setting.clinic.protocol, 'medicines_after', setting.option);
  const own = (written?.practice ?? []).flatMap((entry, index) =>
    isForOther(setting, entry.for)
      ? []
      : [
          {
            ...clinicGrounds(
              setting,
              entryAt('medicines_after', written?.option ?? setting.option, index),
              ({ topic }) => topic === entry.about,
            ),
            ...clinicRule(setting, entry),
            topic:
              entry.about === 'sickness-medicine' || entry.about === 'other'
                ? ('medicines_after' as const)
                : entry.about,
            about: null,
          },
        ],
  );
  return [...own, ...guidelineRules(setting, rules)];
}

export interface AdvicePlan {
  readonly before: readonly DatedRule[];
  readonly advice: readonly DatedRule[];
}

/** Everything else, apart for the time before the treatment. */
export function planAdvice(setting: Setting, rules: readonly JudgedFact[]): AdvicePlan {
  const written = protocolOf(setting.clinic.protocol, 'advice', setting.option);
  const own = (written?.practice ?? []).flatMap((entry, index): readonly DatedRule[] => {
    if (isForOther(setting, entry.for)) return [];
    const subjects: readonly string[] = adviceSubjects[entry.about];
    const place = entryAt('advice', written?.option ?? setting.option, index);
    return [
      {
        ...clinicGrounds(setting, place, ({ subject }) => subjects.includes(subject)),
        ...clinicRule(setting, entry),
        topic: 'advice',
        about: entry.about,
      },
    ];
  });
  const all = [...own, ...guidelineRules(setting, rules)];
  return {
    before: all.filter(({ phase }) => phase === 'before-operation'),
    advice: all.filter(({ phase }) => phase !== 'before-operation'),
  };
}

/** Whether a line of the protocol is for people that this one is not among. */
export function isForOther({ case: asked, date }: Setting, who: WhoCode | undefined): boolean {
  return who !== undefined && judgeWho(who, asked, date) === 'no';
}

/** For whom a line is, as far as the case does not tell. */
export function peopleLeft({ case: asked, date }: Setting, who: WhoCode | undefined): WhoCode {
  return who === undefined || judgeWho(who, asked, date) === 'yes' ? 'adults' : who;
}

interface ClinicLine {
  readonly before?: Span | undefined;
  readonly from?: Span | undefined;
  readonly until?: Span | undefined;
  readonly for?: WhoCode | undefined;
}

type Dated = Omit<DatedRule, keyof Grounds | 'topic' | 'about'>;

/** What is "until 2 weeks" holds for the last time on the day before. What is before the operation ends the day before it. */
function clinicRule(setting: Setting, { before, from, until, for: who }: ClinicLine): Dated {
  const { date } = setting;
  const common = { who: peopleLeft(setting, who), amounts: [], tests: [] } as const;
  if (before !== undefined) {
    const starts = addSpan(date, before, -1);
    return { ...common, phase: 'before-operation', starts, lastDay: addDays(date, -1) };
  }
  return {
    ...common,
    phase: 'after-operation',
    starts: from === undefined ? date : addSpan(date, from),
    lastDay: lastDayOf(date, until),
  };
}

/** Null: no end. */
export function lastDayOf(date: string, until: Span | undefined): string | null {
  return until === undefined ? null : addDays(addSpan(date, until), -1);
}

/** One rule a subject and people, with all that guidelines say of it and that does not conflict. */
export function guidelineRules({ date }: Setting, rules: readonly JudgedFact[]): readonly DatedRule[] {
  return groupFacts(rules).map(({ facts, who }) => {
    const [{ topic, subject, timing }] = facts;
    const phase = timing?.phase ?? 'after-operation';
    return {
      ...guidelineGrounds(facts),
      topic,
      about: subject,
      who,
      phase,
      starts: phase === 'pregnancy' ? null : dayOf(date, timing, 'from'),
      lastDay: phase === 'pregnancy' ? null : dayOf(date, timing, 'to'),
      amounts: amountsOf(facts),
      tests: facts.flatMap(testsOf),
    };
  });
}

interface FactGroup {
  readonly facts: readonly [AftercareFact, ...AftercareFact[]];
  readonly who: WhoCode;
}

/** Facts on the same subject and people together, of alternatives the first only, in file order. */
export function groupFacts(rules: readonly JudgedFact[]): readonly FactGroup[] {
  const groups = new Map<string, FactGroup>();
  const taken = new Set<string>();
  for (const { fact, isFor } of rules) {
    if (fact.one_of !== undefined && taken.has(fact.one_of)) continue;
    if (fact.one_of !== undefined) taken.add(fact.one_of);
    const key = keyOf(fact);
    const group = groups.get(key);
    const who = isFor === 'yes' ? 'adults' : fact.who;
    groups.set(
      key,
      group === undefined ? { facts: [fact], who } : { ...group, facts: [...group.facts, fact] },
    );
  }
  return [...groups.values()];
}

/** What makes two facts be about the same. */
export function keyOf({ topic, subject, who }: AftercareFact): string {
  return [topic, subject, who].join(' ');
}

export function testsOf({ value }: AftercareFact): readonly TestCode[] {
  return typeof value === 'object' && 'tests' in value ? value.tests : [];
}

export function amountsOf(facts: readonly AftercareFact[]): DatedRule['amounts'] {
  return facts.flatMap(({ value }) => (typeof value === 'object' && 'unit' in value ? [value] : []));
}

/** The day of a timing's beginning or end; weeks of a pregnancy are counted from another day. */
function dayOf(date: string, timing: AftercareTiming | undefined, end: 'from' | 'to'): string | null {
  const [days, weeks, months] = [timing?.[`${end}_day`], timing?.[`${end}_week`], timing?.[`${end}_month`]];
  if (days !== undefined) return addDays(date, days);
  if (weeks !== undefined) return addDays(date, weeks * 7);
  return months === undefined ? null : addMonths(date, months);
}
