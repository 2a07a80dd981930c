import type { Study, StudyDesign } from '../model/study.ts';
import type { Candidate } from './assess-record.ts';
import { peopleOf } from './size-of-study.ts';

const series = 3;

const tiers: Readonly<Record<StudyDesign, number>> = {
  'randomised-trial': 0,
  // Stands for what it pools: mostly cohorts and series. One of trials is ranked with trials.
  'meta-analysis': 2,
  registry: 1,
  'matched-cohort': 2,
  cohort: 2,
  'case-series': series,
  'systematic-review': 4,
  survey: 4,
  guideline: 4,
  label: 4,
};

/**
 * Events that a study must be able to expect before its design counts for its share. Common practice: a rare event
 * needs many people. 15 events are 5 of 100 among 300 people, or 1 of 1,000 among 15,000.
 */
const enoughEvents = 15;

/** Rank of a design, 0 best; `share`: see `typicalShare`. */
export function tierOf(candidate: Candidate, share: number | undefined): number {
  const { record, study } = candidate;
  const tier = record.design === undefined && poolsTrials(study) ? 0 : tiers[record.design ?? study.design];
  return isTooSmall(candidate, share) ? Math.max(tier, series) : tier;
}

/** Whether a study counts too few people to tell a share of this size. */
export function isTooSmall(candidate: Candidate, share: number | undefined): boolean {
  const people = peopleOf(candidate);
  const few = share !== undefined && people !== undefined && people * share < enoughEvents;
  return few && candidate.value.kind === 'proportion';
}

/**
 * The share found by the largest study, 0 to 1. A small one cannot say how rare an event is: with one event by
 * chance it would call it common.
 */
export function typicalShare(candidates: readonly Candidate[]): number | undefined {
  const largest = Math.max(...candidates.map((candidate) => peopleOf(candidate) ?? 0));
  const shares = candidates
    .filter((candidate) => (peopleOf(candidate) ?? 0) === largest)
    .flatMap(({ value }) => (value.kind === 'proportion' ? [value.value] : []));
  return largest > 0 && shares.length > 0 ? Math.min(...shares) : undefined;
}

function poolsTrials(study: Study): boolean {
  return study.design === 'meta-analysis' && /\btrials\b/.test(study.design_note ?? '');
}
