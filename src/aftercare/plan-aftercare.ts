import type { AftercareTopic } from '../model/aftercare-codes.ts';
import { isWarning } from '../model/aftercare-rules.ts';
import type { AftercarePlan } from '../model/aftercare-plan.ts';
import { medicineTopics } from '../model/protocol-codes.ts';
import { decidedFacts } from './decided-facts.ts';
import { listUndecided } from './list-undecided.ts';
import type { Sorted } from './list-undecided.ts';
import { planDiet } from './plan-diet.ts';
import { planActivity, planAdvice, planMedicines } from './plan-rules.ts';
import { isSupplement, planSupplements } from './plan-supplements.ts';
import { planTests } from './plan-tests.ts';
import { planVisits } from './plan-visits.ts';
import { planCalls, planWarnings } from './plan-warnings.ts';
import { openSetting } from './setting.ts';
import type { AftercareInput, JudgedFact, Setting } from './setting.ts';

/**
 * What to do when, before and after a treatment. The clinic's own protocol wins. Where it says nothing a guideline's rule
 * stands in if it was read on a page about this option, nothing contradicts it, and nobody has to prescribe or confirm it;
 * whatever else is known is listed as undecided. Pure: the same input gives the same plan.
 */
export function planAftercare(input: AftercareInput): AftercarePlan {
  const setting = openSetting(input);
  const sorted = sortFacts(setting);
  const of = (choose: (one: JudgedFact) => boolean): readonly JudgedFact[] => sorted.rules.filter(choose);
  const { visits, laterVisits } = planVisits(setting, of(isAbout('follow-up')));
  const made = {
    option: setting.option,
    date: setting.date,
    stay: stayOf(setting),
    ...planAdvice(setting, of(isAdvice)),
    diet: planDiet(setting),
    visits,
    laterVisits,
    activity: planActivity(setting),
    medicines: planMedicines(setting, of(isAbout(...medicineTopics))),
    supplements: planSupplements(setting, of(isAbout('supplement'))),
    tests: planTests(setting, of(isAbout('blood-test', 'other-test')), visits),
    warnings: planWarnings(
      setting,
      of(({ fact }) => isWarning(fact.topic)),
    ),
    calls: planCalls(setting),
  };
  return { ...made, undecided: listUndecided(setting, sorted, made) };
}

/** Facts by what becomes of them. */
function sortFacts(setting: Setting): Sorted {
  const decided = decidedFacts(setting);
  const isRule = ({ withheld }: JudgedFact): boolean => withheld.length === 0;
  const left = setting.facts.filter(({ fact }) => !decided.has(fact.id));
  return {
    rules: left.filter(isRule),
    open: left.filter((one) => !isRule(one)),
    overruled: setting.facts.filter(
      ({ fact, withheld }) => decided.has(fact.id) && withheld.every((reason) => reason === 'conflict'),
    ),
  };
}

function isAbout(...topics: readonly string[]): (one: JudgedFact) => boolean {
  return ({ fact }) => topics.includes(fact.topic);
}

/** Topics that have a part of their own in a plan; what is no supplement among the supplements is advice. */
const apart: readonly string[] = [
  'diet-stage',
  'emergency-first',
  'lifting',
  'driving',
  'work',
  'blood-test',
  'other-test',
  ...medicineTopics,
] satisfies readonly (AftercareTopic | (typeof medicineTopics)[number])[];

function isAdvice(one: JudgedFact): boolean {
  const { topic, timing } = one.fact;
  if (topic === 'supplement') return !isSupplement(one);
  // A check that has months is a visit.
  if (topic === 'follow-up') return timing?.every_months === undefined;
  return !apart.includes(topic) && !isWarning(topic);
}

function stayOf({ clinic: { protocol }, option }: Setting): AftercarePlan['stay'] {
  return Object.hasOwn(protocol.stay, option) ? { topic: 'stay', option, index: null } : null;
}
