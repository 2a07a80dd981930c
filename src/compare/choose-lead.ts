import type { RecordUse } from '../model/comparison.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import type { Candidate } from './assess-record.ts';
import { isTooSmall, tierOf, typicalShare } from './rank-design.ts';
import { enoughPeople } from './enough-people.ts';
import { peopleOf } from './size-of-study.ts';

interface Criterion {
  readonly name: RecordUse['ledBy'];
  /** Lower goes first. */
  readonly weigh: (candidate: Candidate) => number;
}

/** What else a ranking depends on. */
export interface RankingContext {
  /** Record ids that the clinic wants to lead. */
  readonly preferred: ReadonlySet<string>;
  /** The study that gives this figure for several options of the row, see `findCommonStudies`. */
  readonly common?: string | undefined;
}

/** Candidates in the order in which they lead. */
export function rankCandidates(
  candidates: readonly Candidate[],
  context: RankingContext,
): readonly Candidate[] {
  const criteria = makeCriteria(candidates, context);
  return [...candidates].sort((a, b) => {
    for (const { weigh } of criteria) {
      const difference = weigh(a) - weigh(b);
      if (difference !== 0) return difference;
    }
    return a.record.id < b.record.id ? -1 : a.record.id > b.record.id ? 1 : 0;
  });
}

/** The first criterion on which the first of a ranking beat the second. */
export function explainLead(ranking: readonly Candidate[], context: RankingContext): RecordUse['ledBy'] {
  const [first, second] = ranking;
  if (first === undefined || second === undefined) return 'only-one';
  return makeCriteria(ranking, context).find(({ weigh }) => weigh(first) !== weigh(second))?.name ?? 'id';
}

/** True when no candidate of the ranking's first is a better fit: a common study may then stand in for it. */
export function fitsAsWell(candidate: Candidate, best: Candidate, preferred: ReadonlySet<string>): boolean {
  const criteria = [...matchCriteria(preferred), ...timeCriteria, ...measureCriteria];
  return criteria.every(({ weigh }) => weigh(candidate) <= weigh(best));
}

/** Whether it is known, not only assumed, that the people of a record had a BMI that covers this person's. */
export function statesBmi({ match }: Candidate): boolean {
  return match.bmiBasis !== 'assumed' && match.bmiBasis !== 'unknown';
}

/** How well the people of a record fit the person. */
function matchCriteria(preferred: ReadonlySet<string>): readonly Criterion[] {
  return [
    { name: 'clinic-preference', weigh: ({ record }) => (preferred.has(record.id) ? 0 : 1) },
    { name: 'match', weigh: ({ match }) => (match.level === 'like-you' ? 0 : 1) },
    // What is too few to tell in a surgeon's own count is too few here, unless nothing else is known.
    { name: 'size', weigh: (candidate) => ((peopleOf(candidate) ?? enoughPeople) < enoughPeople ? 1 : 0) },
    { name: 'match', weigh: ({ match }) => match.apart },
  ];
}

/** How near the time is to the one asked. */
const timeCriteria: readonly Criterion[] = [
  { name: 'time', weigh: ({ steps }) => steps },
  { name: 'time', weigh: ({ rank }) => rank },
];

/** How directly a record measures. */
const measureCriteria: readonly Criterion[] = [
  // A percent of an unknown number of people leads only where nothing better is known.
  { name: 'size', weigh: ({ value }) => (value.kind === 'proportion' && value.n === undefined ? 1 : 0) },
  { name: 'measure', weigh: ({ value }) => (value.kind === 'weight' && value.computed ? 1 : 0) },
];

/**
 * Of several doses the highest, the one that trials of a medicine raise people to (common practice), before one to
 * which only some were raised. So weight and side effects are mostly those of one dose; which one, the page says.
 */
const doseCriteria: readonly Criterion[] = [
  { name: 'dose', weigh: ({ record }) => -Math.max(...amountsOf(record)) },
  { name: 'dose', weigh: ({ record }) => -Math.min(...amountsOf(record)) },
];

/** Milligrams; of a dose that is not stated none, so that it comes last. */
function amountsOf({ dose }: EvidenceRecord): readonly number[] {
  return dose === undefined || dose === 'unstated' ? [0] : dose.mg;
}

function makeCriteria(
  candidates: readonly Candidate[],
  { preferred, common }: RankingContext,
): readonly Criterion[] {
  const share = typicalShare(candidates);
  // A study too small to tell is no better for stating its BMI.
  const allState = candidates.every(statesBmi);
  const isSure = (candidate: Candidate): boolean =>
    allState || (statesBmi(candidate) && !isTooSmall(candidate, share));
  return [
    ...matchCriteria(preferred),
    ...timeCriteria,
    // It fits as well as the best, see `findCommonStudies`. It may be silent on BMI: then all options are read so.
    { name: 'side-by-side', weigh: ({ study }) => (study.id === common ? 0 : 1) },
    { name: 'match', weigh: (candidate) => (isSure(candidate) ? 0 : 1) },
    ...measureCriteria,
    { name: 'design', weigh: (candidate) => tierOf(candidate, share) },
    ...doseCriteria,
    { name: 'size', weigh: (candidate) => -(peopleOf(candidate) ?? 0) },
    { name: 'year', weigh: ({ study }) => -(study.citation.year ?? 0) },
  ];
}
