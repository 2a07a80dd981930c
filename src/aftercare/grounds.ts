import type { Grounds, ProtocolEntry } from '../model/aftercare-plan.ts';
import type { AftercareFact } from '../model/aftercare.ts';
import { isPrintable } from '../model/evidence.ts';
import type { AfterTopic } from '../model/protocol-of.ts';
import type { Setting } from './setting.ts';

/** What a guideline's item stands on. */
export function guidelineGrounds(facts: readonly AftercareFact[]): Grounds {
  return { from: 'guideline', entry: null, ...namesOf(facts) };
}

/**
 * What a clinic's item stands on: its entry, and beside it the facts on the same matter that were read about this option,
 * whether or not they agree with it.
 */
export function clinicGrounds(
  { facts, option }: Setting,
  entry: ProtocolEntry,
  isSame: (fact: AftercareFact) => boolean,
): Grounds {
  const beside = facts
    .map(({ fact }) => fact)
    .filter((fact) => isPrintable(fact) && fact.options.includes(option) && isSame(fact));
  return { from: 'clinic', entry, ...namesOf(beside) };
}

export function entryAt(topic: AfterTopic, option: string, index: number | null): ProtocolEntry {
  return { topic, option, index };
}

export function sourcesOf(facts: readonly AftercareFact[]): readonly string[] {
  return [...new Set(facts.map(({ source }) => source))];
}

function namesOf(facts: readonly AftercareFact[]): Pick<Grounds, 'facts' | 'sources'> {
  return { facts: facts.map(({ id }) => id), sources: sourcesOf(facts) };
}
