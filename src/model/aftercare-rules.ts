import type { AftercareTopic } from './aftercare-codes.ts';
import type { AftercareFact, AftercareSource } from './aftercare.ts';
import type { OptionCode } from './evidence-record.ts';
import { isPrintable } from './evidence.ts';

/** Why a fact may not print on a patient page as the rule of its source. */
export type WithheldReason =
  'unread' | 'conflict' | 'extrapolated' | 'replaced' | 'prescriber' | 'confirm' | 'context';

type Replaced = Pick<AftercareSource, 'replaced'> | undefined;

/** The only gate for rules of guidelines: empty if the fact may print as the rule of its source for this option. */
export function whyWithheld(
  fact: AftercareFact,
  source: Replaced,
  option: OptionCode,
): readonly WithheldReason[] {
  return [
    ...whyNeverPrinted(fact, source),
    ...(fact.options.includes(option) ? [] : (['extrapolated'] as const)),
  ];
}

/** Whether it may print as the rule of its source for the options that the source speaks of. */
export function mayPrintAsRule(fact: AftercareFact, source: Replaced): boolean {
  return whyNeverPrinted(fact, source).length === 0;
}

/** The same whatever the option is. */
export function whyNeverPrinted(fact: AftercareFact, source: Replaced): readonly WithheldReason[] {
  return [
    ...(isPrintable(fact) ? [] : (['unread'] as const)),
    ...(fact.conflict_with === undefined ? [] : (['conflict'] as const)),
    ...(source?.replaced === true ? (['replaced'] as const) : []),
    ...(fact.use === 'rule' ? [] : [fact.use]),
  ];
}

export function isWarning(topic: AftercareTopic): boolean {
  return topic === 'warning-emergency' || topic === 'warning-clinic';
}
