import type { Case, EarlierOperation } from '../model/case.ts';
import { ageOn } from '../model/quantity.ts';
import { isPlainMap } from './walk-schema.ts';

/** Something of a case that a what-if changes, before and after; a birth date is said as an age in whole years. */
export interface CaseChange {
  readonly field: string;
  readonly before: ChangedValue;
  readonly after: ChangedValue;
}
/** Null: nothing is there. */
export type ChangedValue = string | number | readonly string[] | null;

interface Reading {
  readonly case: Case;
  /** The case as it was written, for weights and heights in the words of the clinic. */
  readonly written: unknown;
}

/** How one field is told apart, and how it is said. */
interface Said {
  readonly field: string;
  readonly same: unknown;
  readonly said: ChangedValue;
}

/** The fields that differ in meaning: a weight in other units, or a list in another order, is the same. */
export function describeChanges(before: Reading, after: Reading, today: string): readonly CaseChange[] {
  const later = sayAll(after, today);
  return sayAll(before, today).flatMap(({ field, same, said }, index) => {
    const now = later[index];
    if (now === undefined || JSON.stringify(now.same) === JSON.stringify(same)) return [];
    return [{ field, before: said, after: now.said }];
  });
}

function sayAll({ case: given, written }: Reading, today: string): readonly Said[] {
  const { patient, health, decision, plan } = given;
  return [
    { field: 'weight', same: patient.weight.kg, said: asWritten(written, 'weight') },
    { field: 'height', same: patient.height.m, said: asWritten(written, 'height') },
    one('age', ageOn(patient.born, today)),
    one('sex', patient.sex),
    one('ancestry_threshold', patient.ancestry_threshold),
    one('smoking', health.smoking),
    list('conditions', health.conditions),
    list('medicines', health.medicines),
    list('history', health.history),
    one('pregnancy', sayPregnancy(health.pregnancy)),
    {
      field: 'earlier_operations',
      same: health.earlier_operations,
      said: health.earlier_operations.map(sayOperation),
    },
    one('asked', decision.asked),
    one('stages', plan.stages ?? null),
    list('options', decision.options),
    one('leaning', decision.leaning?.option ?? null),
    list(
      'advised_against',
      decision.advised_against.map(({ option }) => option),
    ),
    one('chosen', decision.chosen),
  ];
}

function sayPregnancy({ now, planned_within_months: months }: Case['health']['pregnancy']): string {
  return now ? 'now' : months === null ? 'none' : `within ${String(months)} months`;
}

/** As a what-if writes it. */
function sayOperation({ operation, status }: EarlierOperation): string {
  return status === 'in-place' ? operation : `${operation}:${status}`;
}

function one(field: string, said: string | number | null): Said {
  return { field, same: said, said };
}

function list(field: string, said: readonly string[]): Said {
  return { field, same: [...said].sort((a, b) => (a < b ? -1 : 1)), said };
}

function asWritten(written: unknown, key: 'weight' | 'height'): string {
  const patient = isPlainMap(written) ? written['patient'] : undefined;
  const text = isPlainMap(patient) ? patient[key] : undefined;
  return typeof text === 'string' ? text : '';
}
