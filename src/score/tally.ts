import { criterionSets } from '../model/criterion.ts';
import type { CriterionSet } from '../model/criterion.ts';
import type { DocumentScore, ScoredCriterion, SetScore } from '../model/document-score.ts';

/**
 * A point for each criterion that is met, out of those that apply: 100 × met / applicable. What does not apply leaves
 * the count; counted as nought it would pull the score down.
 */
export function tally(items: readonly Pick<ScoredCriterion, 'outcome'>[]): SetScore {
  const applying = items.filter(({ outcome }) => outcome !== 'not-applicable');
  const count = (wanted: ScoredCriterion['outcome']): number =>
    applying.filter(({ outcome }) => outcome === wanted).length;
  const met = count('met');
  const applicable = applying.length;
  return {
    met,
    applicable,
    person: count('person'),
    percent: applicable === 0 ? null : (100 * met) / applicable,
  };
}

export function tallySets(items: readonly ScoredCriterion[]): DocumentScore['sets'] {
  const each = criterionSets.map((set): readonly [CriterionSet, SetScore] => [
    set,
    tally(items.filter(({ criterion }) => criterion.set === set)),
  ]);
  return Object.fromEntries(each) as Record<CriterionSet, SetScore>;
}
