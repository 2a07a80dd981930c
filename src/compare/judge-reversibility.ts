import type { MatchReason, ReversibilityOf } from '../model/comparison.ts';
import type { Reversibility } from '../model/evidence-rules.ts';
import { isOfStopped } from './assess-record.ts';
import type { OptionDesk } from './describe-option.ts';
import { listDifferences } from './match-people.ts';

/** What the evidence says of one option. */
export function judgeReversibility(
  entry: Reversibility | undefined,
  goneBefore: ReversibilityOf['goneBefore'] = [],
): ReversibilityOf {
  if (entry === undefined)
    return { possible: 'not-known', changeTo: [], weightAfterKnown: false, goneBefore };
  const { possible, weight_after: weightAfter } = entry.undo;
  return { possible, changeTo: entry.change_to, weightAfterKnown: weightAfter.basis === 'page', goneBefore };
}

/**
 * Of these operations, oldest first, those that took something out, each once. Whether one was changed or undone since
 * makes no difference: what was taken out does not come back.
 */
export function findGone(
  earlier: readonly { readonly operation: string }[],
  reversibility: ReadonlyMap<string, Reversibility>,
): ReversibilityOf['goneBefore'] {
  const tookOut = earlier
    .map(({ operation }) => operation)
    .filter((operation) => reversibility.get(operation)?.undo.takes_out !== undefined);
  return [...new Set(tookOut)];
}

/** What a study does not state is no difference that anyone knows of. */
const unstated: readonly MatchReason['code'][] = [
  'bmi-assumed',
  'bmi-unknown',
  'age-unknown',
  'indication-unknown',
];

/**
 * The most important way in which the people whose weight was followed once they had stopped differ from this person.
 * Undefined where they do not, and where no record says who they were.
 */
export function differAfterwards(
  desk: OptionDesk,
  entry: Reversibility | undefined,
): MatchReason | undefined {
  const study = entry?.undo.weight_after.study;
  const record = [...desk.records.values()].flat().find((one) => one.study === study && isOfStopped(one));
  if (record === undefined) return undefined;
  const known = listDifferences(record, desk.subject, desk).filter(
    ({ reason }) => !unstated.includes(reason.code),
  );
  return (known.find(({ excludes }) => excludes) ?? known[0])?.reason;
}
