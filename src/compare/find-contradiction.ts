import type { Cell, OutcomeRow, Proportion } from '../model/comparison.ts';
import { assessRecord } from './assess-record.ts';
import type { Candidate } from './assess-record.ts';
import type { OptionDesk } from './describe-option.ts';
import { anyTime, monthsOf } from './weigh-time.ts';

/** Each of these is a further operation too, so there can be no fewer further operations than of these. */
const furtherOperations = ['conversion', 'removal'] as const;

/**
 * The record of the same kind of people that cannot be true together with a candidate: more people had another
 * weight-loss operation, and sooner, than are said to have had any further operation at all. Some series count
 * only operations for complications; shown beside full counts they would look many times safer.
 */
export function findContradiction(candidate: Candidate, desk: OptionDesk): string | undefined {
  const { record, value } = candidate;
  const months = monthsOf(record.time);
  if (record.outcome !== 'reoperation' || desk.kind !== 'operation' || months === undefined) return undefined;
  if (value.kind !== 'proportion') return undefined;
  const sooner = furtherOperations
    .flatMap((outcome) => desk.records.get(outcome) ?? [])
    .filter(({ time }) => (monthsOf(time) ?? Infinity) <= months)
    .flatMap((other) => {
      const assessment = assessRecord(other, desk, anyTime);
      return assessment.usable ? [assessment.candidate] : [];
    });
  return sooner
    .filter((other) => other.value.kind === 'proportion' && atLeast(other.value) > atMost(value))
    .map((other) => other.record.id)
    .sort((a, b) => (a < b ? -1 : 1))[0];
}

function atLeast({ interval, value, zero }: Proportion): number {
  return zero === undefined ? (interval?.low ?? value) : 0;
}

function atMost({ interval, value, zero }: Proportion): number {
  return zero?.upper ?? interval?.high ?? value;
}

/** Each of these in the first month is a serious complication, so these cannot be more people than those. */
const seriousOutcomes: ReadonlySet<string> = new Set(['leak', 'reoperation', 'death']);

/** A share (0 to 1) that another cannot be below, and the record it comes from. */
export interface Floor {
  readonly share: number;
  readonly record: string;
}

/** The highest share of an option among the serious outcomes of the first month, as they lead there. */
export function findFloor(rows: readonly OutcomeRow[], option: string): Floor | undefined {
  return rows
    .filter(({ outcome }) => seriousOutcomes.has(outcome))
    .flatMap(({ cells }) => cells)
    .filter((cell) => cell.option === option)
    .flatMap(floorOf)
    .sort((a, b) => b.share - a.share || (a.record < b.record ? -1 : 1))[0];
}

function floorOf(cell: Cell): readonly Floor[] {
  if (cell.state !== 'known' || cell.value.kind !== 'proportion') return [];
  return [{ share: cell.value.value, record: cell.lead.record }];
}
