import type { Candidate } from './assess-record.ts';
import { fitsAsWell, rankCandidates, statesBmi } from './choose-lead.ts';
import { isTooSmall, tierOf, typicalShare } from './rank-design.ts';
import { peopleOf } from './size-of-study.ts';

/** The candidates of one option in a row, and what its clinic prefers. */
export interface Runner {
  readonly candidates: readonly Candidate[];
  readonly preferred: ReadonlySet<string>;
}

/**
 * For each option of a row, the study that leads because it gives the same figure for other options too. Two figures
 * from one study were counted in the same way, at the same time: their difference is that of the treatments. Two
 * from different studies may differ by what was counted alone (common practice in comparing treatments).
 * A study stands in only where it fits the person and the time as well as the best record of that option.
 */
export function findCommonStudies(runners: readonly Runner[]): readonly (string | undefined)[] {
  const chosen = new Map<number, string>();
  const fitting = runners.map(findFitting);
  for (;;) {
    const open = fitting.map((candidates, index) => (chosen.has(index) ? [] : candidates));
    const best = pickStudy(open);
    if (best === undefined) return runners.map((_, index) => chosen.get(index));
    open.forEach((candidates, index) => {
      if (candidates.some(({ study }) => study.id === best)) chosen.set(index, best);
    });
  }
}

/** One candidate a study: those that may lead as well as the best, and count enough people to tell. */
function findFitting({ candidates, preferred }: Runner): readonly Candidate[] {
  const ranking = rankCandidates(candidates, { preferred });
  const [best] = ranking;
  if (best === undefined) return [];
  const share = typicalShare(candidates);
  const fitting = ranking.filter(
    (candidate) => fitsAsWell(candidate, best, preferred) && !isTooSmall(candidate, share),
  );
  return fitting.filter(
    (candidate, index) => fitting.findIndex(({ study }) => study.id === candidate.study.id) === index,
  );
}

/** The study that covers most options, two at least; of equals by stated BMI, design, size, year and id. */
function pickStudy(open: readonly (readonly Candidate[])[]): string | undefined {
  const groups = new Map<string, Candidate[]>();
  for (const candidate of open.flat())
    groups.set(candidate.study.id, [...(groups.get(candidate.study.id) ?? []), candidate]);
  const ranked = [...groups]
    .filter(([, group]) => group.length > 1)
    .map(([id, group]) => ({ id, weights: weigh(group) }))
    .sort((a, b) => compareWeights(a.weights, b.weights) || (a.id < b.id ? -1 : 1));
  return ranked[0]?.id;
}

/** Lower goes first, one after the other. */
function weigh(group: readonly Candidate[]): readonly number[] {
  const people = group.reduce((sum, candidate) => sum + (peopleOf(candidate) ?? 0), 0);
  const worst = Math.max(...group.map((candidate) => tierOf(candidate, undefined)));
  const assumed = group.every(statesBmi) ? 0 : 1;
  return [-group.length, assumed, worst, -people, -(group[0]?.study.citation.year ?? 0)];
}

function compareWeights(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((value, position) => value !== b[position]);
  return index < 0 ? 0 : (a[index] ?? 0) - (b[index] ?? 0);
}
