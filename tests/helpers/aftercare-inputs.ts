import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { parse } from 'yaml';

import type { AftercareInput } from '../../src/aftercare/index.ts';
import { AftercareFactSchema, AftercareSourceSchema } from '../../src/model/aftercare.ts';
import type { AftercareFact, AftercareSource } from '../../src/model/aftercare.ts';
import { ProtocolSchema, VisitingSchema } from '../../src/model/clinic-protocol.ts';
import { OptionDefinitionSchema } from '../../src/model/evidence.ts';
import { makeCase, makeClinic } from './compare-inputs.ts';
import type { CaseChanges } from './compare-inputs.ts';

/** A dose of a vitamin after a sleeve that was read on a page, changed as asked. */
export function makeFact(changes: Readonly<Record<string, unknown>> = {}): AftercareFact {
  return AftercareFactSchema.parse({
    id: 'supplement.thiamine.guideline-a',
    options: ['sleeve'],
    topic: 'supplement',
    subject: 'thiamine',
    use: 'rule',
    value: { low: 12, high: null, unit: 'mg/day' },
    who: 'adults',
    timing: { phase: 'after-operation', every: 'day', to: 'lifelong' },
    source: 'guideline-a',
    seen: 'page',
    ...changes,
  });
}

export function makeAftercareSource(
  id: string,
  changes: Readonly<Record<string, unknown>> = {},
): AftercareSource {
  return AftercareSourceSchema.parse({
    id,
    kind: 'guideline',
    citation: { authors: 'Example A', year: 2020, title: 'An example', journal: 'J Ex 2020' },
    seen_at: ['https://example.org/'],
    ...changes,
  });
}

const data = join(import.meta.dirname, '../../src/evidence/data');

function readYaml(path: string): unknown {
  return parse(readFileSync(join(data, path), 'utf8'));
}

/** The facts on aftercare that are shipped, read straight from their files. */
export function readShippedFacts(): readonly AftercareFact[] {
  const names = readdirSync(join(data, 'aftercare')).sort((a, b) => (a < b ? -1 : 1));
  return AftercareFactSchema.array().parse(
    names.flatMap((name) => readYaml(`aftercare/${name}`) as unknown[]),
  );
}

export function readShippedSources(): ReadonlyMap<string, AftercareSource> {
  const sources = AftercareSourceSchema.array().parse(readYaml('aftercare-sources.yaml'));
  return new Map(sources.map((source) => [source.id, source]));
}

const optionList = OptionDefinitionSchema.array().parse(readYaml('options.yaml'));

export interface AftercareChanges {
  /** As in a clinic profile. */
  readonly protocol?: Readonly<Record<string, unknown>>;
  readonly visiting?: Readonly<Record<string, unknown>>;
  readonly asked?: CaseChanges;
  /** None unless given. */
  readonly facts?: readonly AftercareFact[];
  readonly sources?: ReadonlyMap<string, AftercareSource>;
  readonly option?: string;
  readonly date?: string;
}

/** An invented woman of 45 who has a sleeve on a Monday, in a clinic that says nothing, with no facts; changed as asked. */
export function aftercareInput(changes: AftercareChanges = {}): AftercareInput {
  const { protocol, visiting, asked, facts = [], sources = new Map(), option = 'sleeve' } = changes;
  const profile = makeClinic();
  const clinic = {
    ...profile,
    protocol: ProtocolSchema.parse(protocol ?? {}),
    clinic: { ...profile.clinic, visiting: VisitingSchema.parse(visiting ?? {}) },
  };
  const evidence = { aftercare: facts, aftercareSources: sources, options: optionList };
  return { case: makeCase(asked), clinic, evidence, option, date: changes.date ?? '2026-12-14' };
}
