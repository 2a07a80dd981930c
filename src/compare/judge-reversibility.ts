import type { ReversibilityOf } from '../model/comparison.ts';
import type { Reversibility } from '../model/evidence-rules.ts';

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
