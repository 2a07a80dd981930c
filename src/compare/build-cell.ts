import type { Cell, Horizon, KnownCell, RecordUse, SetAside } from '../model/comparison.ts';
import { writeDose } from '../model/medicine-dose.ts';
import type { Candidate, Refusal } from './assess-record.ts';
import { assessRecord } from './assess-record.ts';
import { explainLead, rankCandidates } from './choose-lead.ts';
import { collectOthers } from './collect-others.ts';
import type { OptionDesk } from './describe-option.ts';
import { explainMissing } from './explain-missing.ts';
import { findContradiction } from './find-contradiction.ts';
import type { Floor } from './find-contradiction.ts';
import { findOwnResult } from './own-results.ts';
import { countsOf, poolShares } from './pool-shares.ts';
import { peopleOf } from './size-of-study.ts';
import type { TimeWindow } from './weigh-time.ts';

/** All records of one option for an outcome at a time, judged, before one of them leads. */
export interface Assessed {
  readonly desk: OptionDesk;
  readonly outcome: string;
  readonly window: TimeWindow;
  readonly candidates: readonly Candidate[];
  readonly refusals: readonly Refusal[];
}

/** One option, one outcome, one time: the figure that leads, those beside it, and every record set aside. */
export function buildCell(desk: OptionDesk, outcome: string, window: TimeWindow): Cell {
  return finishCell(assessCell(desk, outcome, window));
}

/** Judges the records; none where the outcome cannot follow from the option. */
export function assessCell(desk: OptionDesk, outcome: string, window: TimeWindow): Assessed {
  const judged = isPossible(desk, outcome)
    ? assessAll(desk, outcome, window)
    : { candidates: [], refusals: [] };
  return { desk, outcome, window, ...judged };
}

/** Sets aside the shares below a floor: a whole cannot be less than its part. */
export function raiseTo(assessed: Assessed, floor: Floor | undefined): Assessed {
  if (floor === undefined) return assessed;
  const isBelow = ({ value }: Candidate): boolean => value.kind === 'proportion' && value.value < floor.share;
  const reason = { code: 'contradicted', by: floor.record } as const;
  const below = assessed.candidates.filter(isBelow);
  return {
    ...assessed,
    candidates: assessed.candidates.filter((candidate) => !isBelow(candidate)),
    refusals: [
      ...assessed.refusals,
      ...below.map(({ record }): Refusal => ({ record, stage: 'value', reason, inTime: true, fits: true })),
    ],
  };
}

/** @param common the study that leads because it covers several options of the row */
export function finishCell(assessed: Assessed, common?: string): Cell {
  const { desk, outcome, window, candidates, refusals } = assessed;
  const base = {
    id: cellId(desk.code, outcome, window.asked),
    option: desk.code,
    outcome,
    asked: window.asked,
  };
  if (!isPossible(desk, outcome)) return { ...base, setAside: [], state: 'not-possible' };
  const own = findOwnResult(desk, outcome, window);
  const more = own === undefined ? base : { ...base, own };
  const refused = refusals.map(({ record, reason }) => ({ record: record.id, reason }));
  const context = { preferred: desk.preferred, common };
  const ranking = rankCandidates(candidates, context);
  const [lead, ...rest] = ranking;
  if (lead === undefined) {
    const reason = desk.subject.person.pregnantNow
      ? ({ code: 'pregnancy' } as const)
      : explainMissing(refusals);
    return { ...more, setAside: inOrder(refused), state: 'not-known', reason };
  }
  const { others, setAside } = collectOthers(lead, rest);
  const cell: KnownCell = {
    ...more,
    setAside: inOrder([...refused, ...setAside]),
    state: 'known',
    value: lead.value,
    lead: describeUse(lead, explainLead(ranking, context)),
  };
  if (others === undefined) return cell;
  const beside = ranking.filter(({ record }) => others.records.includes(record.id));
  // A mean of the others alone would stand beside a figure that is no part of it.
  const pooled = countsOf([lead]).length > 0 ? poolShares(countsOf([lead, ...beside])) : undefined;
  return { ...cell, others, ...(pooled === undefined ? {} : { pooled }) };
}

function assessAll(
  desk: OptionDesk,
  outcome: string,
  window: TimeWindow,
): { readonly candidates: readonly Candidate[]; readonly refusals: readonly Refusal[] } {
  const candidates: Candidate[] = [];
  const refusals: Refusal[] = [];
  for (const record of desk.records.get(outcome) ?? []) {
    const assessment = assessRecord(record, desk, window);
    const by = assessment.usable ? findContradiction(assessment.candidate, desk) : undefined;
    if (!assessment.usable) refusals.push(assessment.refusal);
    else if (by === undefined) candidates.push(assessment.candidate);
    else
      refusals.push({
        record,
        stage: 'value',
        reason: { code: 'contradicted', by },
        inTime: true,
        fits: true,
      });
  }
  return { candidates, refusals };
}

/** For example `sleeve/leak/30d`, `bypass/weight-loss/60m`, `sleeve/hospital-stay/stay`. */
function cellId(option: string, outcome: string, asked: Horizon): string {
  const time =
    asked.days === undefined ? (asked.months === undefined ? 'stay' : `${asked.months}m`) : `${asked.days}d`;
  return `${option}/${outcome}/${time}`;
}

/**
 * Whether the outcome can follow from this kind of option. After an earlier operation everything can that an
 * operation can cause, since what was done then may still do so; without a gallbladder nothing can happen to it.
 */
export function isPossible(desk: OptionDesk, outcome: string): boolean {
  const definition = desk.outcomes.get(outcome);
  if (definition === undefined) return true;
  const { never_after: event } = definition;
  if (event !== undefined && desk.subject.pastEvents.has(event)) return false;
  if (definition.applies_to.includes(desk.kind)) return true;
  const recovery = definition.group.includes('stay-and-recovery');
  return desk.subject.operatedBefore && definition.applies_to.includes('operation') && !recovery;
}

function describeUse(candidate: Candidate, ledBy: RecordUse['ledBy']): RecordUse {
  const { record, study, match } = candidate;
  const n = peopleOf(candidate);
  const { days, months, basis } = record.time;
  return {
    record: record.id,
    study: study.id,
    match: match.level === 'like-you' ? 'like-you' : 'near',
    reasons: match.reasons,
    bmiBasis: match.bmiBasis,
    covered: match.covered,
    ledBy,
    ...(n === undefined ? {} : { n }),
    ...(record.dose === undefined ? {} : { dose: writeDose(record.dose) }),
    certainty: record.certainty,
    horizon: { ...(days === undefined ? {} : { days }), ...(months === undefined ? {} : { months }) },
    timeBasis: basis,
  };
}

function inOrder(list: readonly SetAside[]): readonly SetAside[] {
  return [...list].sort((a, b) => (a.record < b.record ? -1 : a.record > b.record ? 1 : 0));
}
