import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { z } from 'zod';

import type { CautionHit, ComparisonTable } from '../../src/model/comparison.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import { compareWell, readShippedEvidence } from './compare-inputs.ts';
import type { CaseChanges } from './compare-inputs.ts';

const part = z.record(z.string(), z.unknown());
const PersonSchema = z.strictObject({
  patient: part.optional(),
  health: part.optional(),
  decision: part.optional(),
});
export type Person = z.infer<typeof PersonSchema>;

/** What a caution must say and must not say, written by a person from its words. */
const CautionPairSchema = z.strictObject({
  rule: z.string(),
  /** The option that all cases here ask about. */
  option: z.string(),
  when: z.tuple([PersonSchema], PersonSchema),
  not_when: PersonSchema.array().nonempty(),
  /** Options that the first case of `when` must not call it up for. */
  not_for: z.string().array().nonempty(),
});
export type CautionPair = z.infer<typeof CautionPairSchema>;

const folder = join(import.meta.dirname, '../unit/compare/caution-pairs');

export function readCautionPairs(): readonly CautionPair[] {
  return readdirSync(folder)
    .sort((a, b) => (a < b ? -1 : 1))
    .flatMap((name) => CautionPairSchema.array().parse(parse(readFileSync(join(folder, name), 'utf8'))));
}

/** The shipped evidence without its records: no caution looks at them, and they take most of the time. */
export function withoutRecords(evidence: EvidenceBase): EvidenceBase {
  return { ...evidence, records: [], recordsByOption: new Map() };
}

/** The comparison for a person of a pair, with the cautions that are shipped. */
export function comparePerson(person: Person, options: readonly string[]): ComparisonTable {
  const { patient = {}, health = {}, decision = {} } = person;
  const changes: CaseChanges = { patient, health, decision: { ...decision, options } };
  return compareWell(withoutRecords(readShippedEvidence()), changes);
}

/** What the rule says of an option to this person; undefined if it says nothing. */
export function hitOf(table: ComparisonTable, rule: string, option: string): CautionHit | undefined {
  return table.cautions.find(({ id, options }) => id === rule && options.includes(option));
}
