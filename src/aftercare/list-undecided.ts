import { urgencies } from '../model/aftercare-codes.ts';
import type { AftercareTopic } from '../model/aftercare-codes.ts';
import type { AftercarePlan, Undecided, UndecidedReason } from '../model/aftercare-plan.ts';
import type { OptionKind } from '../model/evidence.ts';
import { afterTopics, protocolOf } from '../model/protocol-of.ts';
import type { AfterTopic } from '../model/protocol-of.ts';
import { sourcesOf } from './grounds.ts';
import { keyOf, testsOf } from './plan-rules.ts';
import { isSupplement } from './plan-supplements.ts';
import type { JudgedFact, Setting } from './setting.ts';

type Made = Omit<AftercarePlan, 'undecided'>;

export interface Sorted {
  /** Facts that print. */
  readonly rules: readonly JudgedFact[];
  /** Facts that neither print nor are decided by the clinic. */
  readonly open: readonly JudgedFact[];
  /** Facts that would print if the clinic did not decide, or that only another source contradicts. */
  readonly overruled: readonly JudgedFact[];
}

/** What the clinic still has to decide, for the clinician: never for a patient page. */
export function listUndecided(setting: Setting, sorted: Sorted, made: Made): readonly Undecided[] {
  return [
    ...missingTopics(setting, made),
    ...openFacts(sorted),
    ...notListed(sorted, made),
    ...slowerSigns(setting, made),
  ];
}

/** All but what is not a question of its own: further advice, and the numbers to call. */
const forOperations: readonly (AfterTopic | 'stay')[] = [
  'stay',
  ...afterTopics.filter((topic) => topic !== 'advice' && topic !== 'call'),
];

/** What a person needs to be told after a treatment of each kind. */
const needed: Readonly<Record<OptionKind, readonly (AfterTopic | 'stay')[]>> = {
  operation: forOperations,
  endoscopic: forOperations.filter((topic) => topic !== 'wound'),
  medicine: ['follow_up', 'medicines_after', 'blood_tests', 'warnings'],
  programme: ['follow_up'],
  none: [],
};

function missingTopics(
  { clinic: { protocol }, evidence, option }: Setting,
  made: Made,
): readonly Undecided[] {
  const kind = evidence.options.find(({ code }) => code === option)?.kind ?? 'none';
  const isSaid = (topic: AfterTopic | 'stay'): boolean =>
    topic === 'stay' ? made.stay !== null : protocolOf(protocol, topic, option) !== undefined;
  return needed[kind]
    .filter((topic) => !isSaid(topic))
    .map((topic) => ({ topic, subject: null, who: 'adults', reason: 'no-entry', facts: [], sources: [] }));
}

/** The weightiest first. */
const weights: readonly UndecidedReason[] = [
  'conflict',
  'not-for-person',
  'prescriber',
  'confirm',
  'extrapolated',
  'replaced',
  'unread',
];

/** One entry a subject and people, unless another fact on the same prints. */
function openFacts({ open, rules }: Sorted): readonly Undecided[] {
  const printed = new Set(rules.map(({ fact }) => keyOf(fact)));
  return inGroups(open.filter(({ fact }) => !printed.has(keyOf(fact)))).flatMap(describeGroup);
}

function inGroups(facts: readonly JudgedFact[]): readonly (readonly JudgedFact[])[] {
  const groups = new Map<string, readonly JudgedFact[]>();
  for (const one of facts) groups.set(keyOf(one.fact), [...(groups.get(keyOf(one.fact)) ?? []), one]);
  return [...groups.values()];
}

function describeGroup(group: readonly JudgedFact[]): readonly Undecided[] {
  const reasons = group.flatMap(({ withheld }) => withheld);
  const reason = weights.find((one) => reasons.includes(one));
  return reason === undefined ? [] : entryOf(group, reason);
}

function entryOf(group: readonly JudgedFact[], reason: UndecidedReason): readonly Undecided[] {
  const [first] = group;
  if (first === undefined) return [];
  const { topic, subject, who } = first.fact;
  const facts = group.map(({ fact, withheld }) => ({ id: fact.id, reasons: withheld }));
  return [{ topic, subject, who, reason, facts, sources: sourcesOf(group.map(({ fact }) => fact)) }];
}

/** What a guideline would have a person like this take, be tested for or come to, and the clinic's own list does not name. */
function notListed({ overruled }: Sorted, made: Made): readonly Undecided[] {
  const supplements = new Set<string>(made.supplements.map(({ supplement }) => supplement));
  const tests = new Set(made.tests.flatMap((plan) => plan.tests));
  const lacksTest = ({ fact }: JudgedFact): boolean => testsOf(fact).some((test) => !tests.has(test));
  const isLacking: Readonly<Partial<Record<AftercareTopic, (one: JudgedFact) => boolean>>> = {
    // How to take things the clinic says in its own words, but not which form of a vitamin may harm an unborn child.
    supplement: (one) =>
      one.fact.subject === 'vitamin-a-form' || (isSupplement(one) && !supplements.has(one.fact.subject)),
    'blood-test': lacksTest,
    'other-test': lacksTest,
    'follow-up': ({ fact }) => fact.subject === 'yearly-check' && made.laterVisits.length === 0,
  };
  const lacking = overruled.filter((one) => one.isFor === 'yes' && isLacking[one.fact.topic]?.(one) === true);
  return inGroups(lacking).flatMap((group) => entryOf(group, 'not-listed'));
}

/** Signs that the clinic lets wait for longer than a source that was read does. */
function slowerSigns({ facts }: Setting, { warnings }: Made): readonly Undecided[] {
  return urgencies.flatMap((urgency, rank) =>
    warnings[urgency].flatMap(({ from, sign, facts: beside }) => {
      const faster = facts.filter(
        ({ fact }) =>
          beside.includes(fact.id) && fact.urgency !== undefined && urgencies.indexOf(fact.urgency) < rank,
      );
      return from === 'clinic' && sign !== null ? entryOf(faster, 'slower') : [];
    }),
  );
}
