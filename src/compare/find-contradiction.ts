import type { Cell, OutcomeRow, Proportion } from '../model/comparison.ts';
import type { OutcomeDefinition } from '../model/evidence.ts';
import { sameDose } from '../model/medicine-dose.ts';
import { assessRecord } from './assess-record.ts';
import type { Candidate } from './assess-record.ts';
import type { OptionDesk } from './describe-option.ts';
import { anyTime, monthsOf } from './weigh-time.ts';

/**
 * The record of the same kind of people that cannot be true together with a candidate: more people had a part of its
 * outcome, and sooner, than are said to have had the outcome itself. Which outcomes are part of which is data.
 */
export function findContradiction(candidate: Candidate, desk: OptionDesk): string | undefined {
  const { record, value } = candidate;
  if (value.kind !== 'proportion') return undefined;
  // Nothing is known to be sooner than what has no time.
  const months = monthsOf(record.time) ?? -Infinity;
  const sooner = partsOf(record.outcome, desk, 'records')
    .flatMap((outcome) => desk.records.get(outcome) ?? [])
    .filter(({ time, dose }) => (monthsOf(time) ?? Infinity) <= months && sameDose(dose, record.dose))
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

type HeldAgainst = NonNullable<OutcomeDefinition['parts']>[number]['held_against'];

/** The outcomes of which each is the whole too, for this kind of option. */
function partsOf(whole: string, { outcomes, kind }: OptionDesk, against: HeldAgainst): readonly string[] {
  const parts = outcomes.get(whole)?.parts ?? [];
  return parts
    .filter((part) => part.held_against === against && (part.after ?? [kind]).includes(kind))
    .flatMap((part) => part.outcomes);
}

/** A share (0 to 1) that another cannot be below, and the record it comes from. */
export interface Floor {
  readonly share: number;
  readonly record: string;
}

/** The highest share of an option among the parts of an outcome in the first month, as they lead there. */
export function findFloor(rows: readonly OutcomeRow[], whole: string, desk: OptionDesk): Floor | undefined {
  const parts = partsOf(whole, desk, 'first-month');
  return rows
    .filter(({ outcome }) => parts.includes(outcome))
    .flatMap(({ cells }) => cells)
    .filter((cell) => cell.option === desk.code)
    .flatMap(floorOf)
    .sort((a, b) => b.share - a.share || (a.record < b.record ? -1 : 1))[0];
}

function floorOf(cell: Cell): readonly Floor[] {
  if (cell.state !== 'known' || cell.value.kind !== 'proportion') return [];
  return [{ share: cell.value.value, record: cell.lead.record }];
}
