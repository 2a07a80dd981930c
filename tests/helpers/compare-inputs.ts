import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';

import { describeSubject } from '../../src/compare/describe-person.ts';
import { compareOptions } from '../../src/compare/index.ts';
import type { MatchedOption, Subject } from '../../src/compare/subject.ts';
import type { Case } from '../../src/model/case.ts';
import { CaseSchema } from '../../src/model/case.ts';
import type { ClinicProfile } from '../../src/model/clinic.ts';
import { ClinicProfileSchema } from '../../src/model/clinic.ts';
import type { ComparisonTable } from '../../src/model/comparison.ts';
import { OptionDefinitionSchema, OutcomeDefinitionSchema } from '../../src/model/evidence.ts';
import type { EvidenceBase, OutcomeDefinition } from '../../src/model/evidence.ts';
import { EvidenceRecordSchema } from '../../src/model/evidence-record.ts';
import type { EvidenceRecord } from '../../src/model/evidence-record.ts';
import {
  CautionSchema,
  DefinitionSchema,
  ReversibilitySchema,
  RiskFactorSchema,
  StandingSchema,
} from '../../src/model/evidence-rules.ts';
import type { Caution, Definition, Standing } from '../../src/model/evidence-rules.ts';
import { StudySchema } from '../../src/model/study.ts';
import { ReasonRuleSchema } from '../../src/model/reason-rules.ts';
import { TopicPlansSchema } from '../../src/model/topic-plan.ts';
import type { Study } from '../../src/model/study.ts';

/** A day on which all people of these tests have their age. */
export const today = '2026-11-25';

export interface CaseChanges {
  readonly patient?: Readonly<Record<string, unknown>>;
  readonly health?: Readonly<Record<string, unknown>>;
  readonly decision?: Readonly<Record<string, unknown>>;
  readonly plan?: Readonly<Record<string, unknown>>;
}

/** An invented woman of 45, 163 cm, 114.5 kg (BMI 43.1), who asks about a first operation. */
export function makeCase(changes: CaseChanges = {}): Case {
  return CaseSchema.parse({
    plainleaf: 1,
    case: 'T-1',
    languages: ['en'],
    patient: {
      name: 'Ilsa Marchetti-Boone',
      born: '1981-06-02',
      sex: 'female',
      height: '163 cm',
      weight: '114.5 kg',
      ...changes.patient,
    },
    health: { smoking: 'never', ...changes.health },
    decision: {
      asked: 'first-operation',
      options: ['sleeve', 'bypass', 'no-operation'],
      ...changes.decision,
    },
    plan: { surgeon: 'surgeon-1', ...changes.plan },
  });
}

export function makeClinic(changes: Readonly<Record<string, unknown>> = {}): ClinicProfile {
  return ClinicProfileSchema.parse({
    plainleaf: 1,
    clinic: {
      name: 'Harbour Lane Clinic',
      address: '1 Harbour Lane',
      jurisdiction: 'US',
      phones: { day: '555 0100', out_of_hours: '555 0101', emergency: '911' },
      paper: 'letter',
      units: 'both',
    },
    surgeons: [{ id: 'surgeon-1', name: 'Dr. A. Example', results: changes['results'] ?? [] }],
    ...(changes['prefer'] === undefined ? {} : { prefer: changes['prefer'] }),
    ...(changes['cautions'] === undefined ? {} : { cautions: changes['cautions'] }),
    ...(changes['protocol'] === undefined ? {} : { protocol: changes['protocol'] }),
  });
}

/** A record of 1,000 people like the woman of `makeCase`, changed as asked. */
export function makeRecord(changes: Readonly<Record<string, unknown>> = {}): EvidenceRecord {
  return EvidenceRecordSchema.parse({
    id: 'sleeve.leak.30d.study-a',
    study: 'study-a',
    option: 'sleeve',
    outcome: 'leak',
    kind: 'risk',
    people: {
      indication: 'first-operation',
      bmi: { low: 35, high: 60 },
      age: { low: 18, high: 65 },
      diabetes: 'mixed',
    },
    time: { days: 30, basis: 'by' },
    value: { events: 10, n: 1000 },
    certainty: 'moderate',
    seen: 'page',
    ...changes,
  });
}

export function makeWeightRecord(changes: Readonly<Record<string, unknown>> = {}): EvidenceRecord {
  return makeRecord({
    id: 'sleeve.weight-loss.60m.study-a',
    outcome: 'weight-loss',
    kind: 'weight',
    time: { months: 60, basis: 'at' },
    value: { metric: 'TWL', estimate: 25, unit: '%', n: 200, reference: 'before-this-operation' },
    ...changes,
  });
}

export function makeStudy(id: string, changes: Readonly<Record<string, unknown>> = {}): Study {
  return StudySchema.parse({
    id,
    design: 'cohort',
    cohort: id,
    citation: { authors: 'Example A', year: 2020, title: 'An example', journal: 'J Ex 2020' },
    seen_at: ['https://example.org/'],
    ...changes,
  });
}

const data = join(import.meta.dirname, '../../src/evidence/data');

function readYaml(path: string): unknown {
  return parse(readFileSync(path, 'utf8'));
}

const options = OptionDefinitionSchema.array().parse(readYaml(join(data, 'options.yaml')));
const outcomes = OutcomeDefinitionSchema.array().parse(readYaml(join(data, 'outcomes.yaml')));
const reasons = ReasonRuleSchema.array().parse(readYaml(join(data, 'reasons.yaml')));
const topics = TopicPlansSchema.parse(readYaml(join(data, 'topics.yaml')));

/** Evidence of the given records; studies that are not given are made up. */
export function makeEvidence(
  records: readonly EvidenceRecord[],
  parts: Partial<Pick<EvidenceBase, 'cautions' | 'standing' | 'reversibility' | 'riskFactors'>> & {
    readonly studies?: readonly Study[];
    /** In place of the shipped ones of the same code. */
    readonly outcomes?: readonly OutcomeDefinition[];
  } = {},
): EvidenceBase {
  const given = new Map((parts.studies ?? []).map((study) => [study.id, study]));
  const studies = new Map(records.map(({ study }) => [study, given.get(study) ?? makeStudy(study)]));
  const recordsByOption = new Map<string, EvidenceRecord[]>();
  for (const record of records) {
    recordsByOption.set(record.option, [...(recordsByOption.get(record.option) ?? []), record]);
  }
  return {
    version: '2026.11',
    date: '2026-11-25',
    nextReview: '2027-11-25',
    reviewMonths: { established: 24, newer: 12, 'under-study': 6 },
    changes: null,
    earlier: [],
    madeBy: { en: 'nobody' },
    paidBy: { en: 'nobody' },
    digest: '0'.repeat(64),
    options,
    outcomes: outcomes.map((one) => parts.outcomes?.find(({ code }) => code === one.code) ?? one),
    metrics: [],
    topics,
    studies: new Map([...given, ...studies]),
    records,
    recordsByOption,
    reversibility: parts.reversibility ?? new Map(),
    cautions: parts.cautions ?? [],
    cautionCoverage: [],
    standing: parts.standing ?? [],
    riskFactors: parts.riskFactors ?? [],
    definitions: [],
    reasons,
    criteria: [],
    consentElements: [],
    aftercare: [],
    aftercareSources: new Map(),
    copySites: [{ site: 'copies.example', what: 'copies for tests' }],
  };
}

function readFolder(folder: string): unknown[] {
  return readdirSync(join(data, folder))
    .sort((a, b) => (a < b ? -1 : 1))
    .flatMap((name) => readYaml(join(data, folder, name)) as unknown[]);
}

let shipped: EvidenceBase | undefined;

/** The evidence that is shipped, read straight from its files. */
export function readShippedEvidence(): EvidenceBase {
  shipped ??= makeEvidence(EvidenceRecordSchema.array().parse(readFolder('records')), {
    studies: StudySchema.array().parse(readFolder('studies')),
    cautions: CautionSchema.array().parse(readYaml(join(data, 'cautions.yaml'))),
    standing: StandingSchema.array().parse(readYaml(join(data, 'standing.yaml'))),
    riskFactors: RiskFactorSchema.array().parse(readYaml(join(data, 'risk-factors.yaml'))),
    reversibility: new Map(
      ReversibilitySchema.array()
        .parse(readYaml(join(data, 'reversibility.yaml')))
        .map((entry) => [entry.option, entry]),
    ),
  });
  return shipped;
}

export function readDefinitions(): readonly Definition[] {
  return DefinitionSchema.array().parse(readYaml(join(data, 'definitions.yaml')));
}

/** A caution of reflux with a sleeve, changed as asked. */
export function makeCaution(changes: Readonly<Record<string, unknown>> = {}): Caution {
  return CautionSchema.parse({
    id: 'reflux-sleeve',
    when: { condition: 'reflux' },
    options: ['sleeve'],
    effect: 'extra-risk',
    statement: 'Reflux may get worse.',
    strength: 'moderate',
    basis: 'page',
    sources: [{ url: 'https://example.org/', seen: 'page' }],
    seen: 'page',
    ...changes,
  });
}

export function makeStanding(changes: Readonly<Record<string, unknown>> = {}): Standing {
  return StandingSchema.parse({
    id: 'sleeve.us.2025',
    option: 'sleeve',
    standing: 'endorsed-by-society',
    maturity: 'established',
    jurisdiction: 'US',
    body: 'A society',
    date: '2025-07-24',
    statement: 'On the list.',
    source: 'https://example.org/',
    seen: 'page',
    ...changes,
  });
}

/** The person of `makeCase`, as matching sees her. */
export function makeSubject(changes: CaseChanges = {}): Subject {
  return describeSubject(makeCase(changes), makeEvidence([]), today);
}

export const firstSleeve: MatchedOption = { kind: 'operation', indication: 'first-operation' };

/** The table, where it must be made. */
export function compareWell(
  records: readonly EvidenceRecord[] | EvidenceBase,
  changes: CaseChanges = {},
  clinic: ClinicProfile = makeClinic(),
): ComparisonTable {
  const evidence = 'records' in records ? records : makeEvidence(records);
  const result = compareOptions({ case: makeCase(changes), clinic, evidence, date: today });
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}
