import type { Case } from '../model/case.ts';
import type { CautionWhen } from '../model/evidence-rules.ts';
import type { Subject } from './subject.ts';

/**
 * Codes of the case that make a caution fire, for example `condition:reflux` or `bmi`; undefined if one of its keys
 * does not hold. BMI and age: `low` and over, under `below`.
 */
export function findTriggers(
  when: CautionWhen,
  health: Case['health'],
  subject: Subject,
): readonly string[] | undefined {
  if (!isMeant(when, subject)) return undefined;
  const found = [
    anyOf('condition', when.condition, subject.conditions),
    anyOf('medicine', when.medicine, new Set(health.medicines)),
    anyOf('history', when.history, pastOf(health, subject)),
    anyOf('smoking', when.smoking, new Set([health.smoking])),
    anyOf('pregnancy', when.pregnancy, pregnancyOf(health)),
    within('bmi', when.bmi, subject.bmi),
    within('age', when.age, subject.person.age),
  ].filter((triggers) => triggers !== undefined);
  return found.every((triggers) => triggers.length > 0) ? found.flat() : undefined;
}

/** Whether the caution speaks of people with this question and these BMI cut-offs. It is not called up by them. */
function isMeant({ asked, threshold }: CautionWhen, { person }: Subject): boolean {
  return (asked ?? person.asked) === person.asked && (threshold ?? person.threshold) === person.threshold;
}

/** Undefined if the caution does not ask; empty if it does and the case does not say so. */
function anyOf(
  key: string,
  wanted: string | readonly string[] | undefined,
  said: ReadonlySet<string>,
): readonly string[] | undefined {
  return wanted === undefined
    ? undefined
    : [wanted]
        .flat()
        .filter((code) => said.has(code))
        .map((code) => `${key}:${code}`);
}

function within(key: string, limits: CautionWhen['bmi'], value: number): readonly string[] | undefined {
  if (limits === undefined) return undefined;
  return value >= (limits.low ?? -Infinity) && value < (limits.below ?? Infinity) ? [key] : [];
}

/** An earlier weight-loss operation is a stomach operation too, and what it gave trouble with has happened. */
function pastOf(health: Case['health'], subject: Subject): ReadonlySet<string> {
  return new Set([
    ...health.history,
    ...health.earlier_operations.flatMap(({ trouble }) => trouble ?? []),
    ...(subject.operations > 0 ? ['stomach-operation'] : []),
  ]);
}

/** A pregnancy planned within some months may come in any of them, so every plan counts, however far it reaches. */
function pregnancyOf({ pregnancy }: Case['health']): ReadonlySet<string> {
  return new Set([
    ...(pregnancy.now ? ['now'] : []),
    ...(pregnancy.planned_within_months === null ? [] : ['planned']),
  ]);
}
