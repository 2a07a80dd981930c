import type { Indication } from '../model/comparison.ts';
import type { People } from '../model/evidence-record.ts';
import type { Subject } from './subject.ts';
import type { Difference } from './subject.ts';

/** Differences in what was done to people before. */
export function differInHistory(people: People, subject: Subject, yours: Indication): readonly Difference[] {
  const theirs = people.indication;
  if (!fitsHistory(theirs, subject, yours)) {
    // Of a person operated before the page names that operation, not that a medicine needs none.
    const said = subject.operatedBefore && yours === 'none' ? subject.history : yours;
    return [{ reason: { code: 'indication', theirs, yours: said }, excludes: true }];
  }
  return [
    ...(theirs === yours ? [] : [theirs === 'unknown' ? unknown : mixed]),
    ...(yours.startsWith('after-') ? differInStage(subject) : []),
    ...differInExchange(people.stages, subject),
  ];
}

const mixed: Difference = { reason: { code: 'indication-mixed' }, excludes: false };
const unknown: Difference = { reason: { code: 'indication-unknown' }, excludes: false };

/** Mixed people may include this person; those of whom nothing is said only include people never operated on. */
function fitsHistory(theirs: People['indication'], subject: Subject, yours: Indication): boolean {
  if (!subject.operatedBefore) return theirs === yours || theirs === 'mixed' || theirs === 'unknown';
  return yours !== 'none' && (theirs === yours || theirs === 'mixed');
}

/** Second operations were mostly studied in people with one earlier operation still in place. */
function differInStage(subject: Subject): readonly Difference[] {
  return [
    ...(subject.removed ? [{ reason: { code: 'removed-before' }, excludes: false } as const] : []),
    ...(subject.operations > 1
      ? [{ reason: { code: 'several-operations', count: subject.operations }, excludes: false } as const]
      : []),
  ];
}

/** A band out and the new operation at once, or in two operations: the risks are not the same. */
function differInExchange(theirs: People['stages'], { stages }: Subject): readonly Difference[] {
  if ((theirs !== 'one' && theirs !== 'two') || stages === undefined || theirs === stages) return [];
  return [{ reason: { code: 'stages', theirs }, excludes: false }];
}

/** New trouble is counted in people who did not have it: never the figure of those who do. */
export function differInOutcome(outcome: string, { alreadyHas }: Subject): Difference | undefined {
  const condition = alreadyHas.get(outcome);
  return condition === undefined ? undefined : { reason: { code: 'already-has', condition }, excludes: true };
}
