import type { ReversibilityOf } from '../model/comparison.ts';
import type { Reversibility } from '../model/evidence-rules.ts';

export function judgeReversibility(entry: Reversibility | undefined): ReversibilityOf {
  if (entry === undefined) return { possible: 'not-known', changeTo: [], weightAfterKnown: false };
  const { possible, weight_after: weightAfter } = entry.undo;
  return { possible, changeTo: entry.change_to, weightAfterKnown: weightAfter.basis === 'page' };
}
