import type { RecordUse } from '../model/comparison.ts';
import type { StudyDesign } from '../model/study.ts';
import type { Candidate } from './assess-record.ts';

interface Criterion {
  readonly name: RecordUse['ledBy'];
  /** Lower goes first. */
  readonly weigh: (candidate: Candidate) => number;
}

const tiers: Readonly<Record<StudyDesign, number>> = {
  'randomised-trial': 0,
  'meta-analysis': 0,
  registry: 1,
  'matched-cohort': 2,
  cohort: 2,
  'case-series': 3,
  'systematic-review': 4,
  survey: 4,
  guideline: 4,
  label: 4,
};

/** A harm in under 5 of 100 people is rare. */
const rareShare = 0.05;
/** When none of 300 people has an event the true figure may still be 1 in 100 (3/n): fewer say little of a rare harm. */
const enoughForRare = 300;

/** Candidates in the order in which they lead. */
export function rankCandidates(
  candidates: readonly Candidate[],
  preferred: ReadonlySet<string>,
): readonly Candidate[] {
  const criteria = makeCriteria(candidates, preferred);
  return [...candidates].sort((a, b) => {
    for (const { weigh } of criteria) {
      const difference = weigh(a) - weigh(b);
      if (difference !== 0) return difference;
    }
    return a.record.id < b.record.id ? -1 : a.record.id > b.record.id ? 1 : 0;
  });
}

/** The first criterion on which the first of a ranking beat the second. */
export function explainLead(
  ranking: readonly Candidate[],
  preferred: ReadonlySet<string>,
): RecordUse['ledBy'] {
  const [first, second] = ranking;
  if (first === undefined || second === undefined) return 'only-one';
  return makeCriteria(ranking, preferred).find(({ weigh }) => weigh(first) !== weigh(second))?.name ?? 'id';
}

function makeCriteria(
  candidates: readonly Candidate[],
  preferred: ReadonlySet<string>,
): readonly Criterion[] {
  const rare = isRareHarm(candidates);
  return [
    { name: 'clinic-preference', weigh: ({ record }) => (preferred.has(record.id) ? 0 : 1) },
    { name: 'match', weigh: ({ match }) => (match.level === 'like-you' ? 0 : 1) },
    { name: 'time', weigh: ({ steps }) => steps },
    { name: 'time', weigh: ({ rank }) => rank },
    // A percent of an unknown number of people may lead only where nothing better is known.
    { name: 'size', weigh: ({ value }) => (value.kind === 'proportion' && value.n === undefined ? 1 : 0) },
    { name: 'measure', weigh: ({ value }) => (value.kind === 'weight' && value.computed ? 1 : 0) },
    { name: 'design', weigh: (candidate) => tierOf(candidate, rare) },
    { name: 'size', weigh: (candidate) => -(peopleOf(candidate) ?? 0) },
    { name: 'year', weigh: ({ study }) => -(study.citation.year ?? 0) },
  ];
}

/** Judged by the largest study, because a small one with one event by chance would call the harm common. */
function isRareHarm(candidates: readonly Candidate[]): boolean {
  const harms = candidates.filter(({ record }) => record.kind === 'risk');
  const people = Math.max(...harms.map((candidate) => peopleOf(candidate) ?? 0));
  const largest = harms.filter((candidate) => (peopleOf(candidate) ?? 0) === people);
  return largest.some(({ value }) => value.kind === 'proportion' && value.value < rareShare);
}

/** A small trial counts as a series where the harm is rare: a rare event needs many people, whatever the design. */
function tierOf(candidate: Candidate, rare: boolean): number {
  const tier = tiers[candidate.record.design ?? candidate.study.design];
  const small = (peopleOf(candidate) ?? 0) < enoughForRare;
  return rare && small && candidate.record.kind === 'risk' ? Math.max(tier, tiers['case-series']) : tier;
}

/** People behind the figure, as stated. */
export function peopleOf({ record }: Candidate): number | undefined {
  return 'n' in record.value ? record.value.n : undefined;
}
