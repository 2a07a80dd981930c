import type { ClinicProfile } from '../model/clinic.ts';
import type { Indication } from '../model/comparison.ts';
import { figuresFrom } from '../model/evidence.ts';
import type { EvidenceBase, OutcomeDefinition } from '../model/evidence.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import type { Study } from '../model/study.ts';
import type { OptionKind, Subject } from './subject.ts';
import { findIndication } from './find-indication.ts';

/** Everything that cells of one option are made from. */
export interface OptionDesk {
  readonly code: string;
  readonly figuresFrom: string;
  readonly kind: OptionKind;
  readonly indication: Indication;
  readonly subject: Subject;
  readonly records: ReadonlyMap<string, readonly EvidenceRecord[]>;
  /** Those that count it as one with other operations; only a record of the talk looks there. */
  readonly together: ReadonlyMap<string, readonly EvidenceRecord[]>;
  readonly studies: ReadonlyMap<string, Study>;
  readonly outcomes: ReadonlyMap<string, OutcomeDefinition>;
  /** Record ids that the clinic wants to lead. */
  readonly preferred: ReadonlySet<string>;
  readonly clinic: ClinicProfile;
  /** Id of the surgeon of this case. */
  readonly surgeon: string;
}

/** What all options of a comparison share. */
export interface Setting {
  readonly subject: Subject;
  readonly evidence: EvidenceBase;
  readonly clinic: ClinicProfile;
  readonly surgeon: string;
}

/** Undefined for an option that the evidence does not define or that nobody can choose. */
export function describeOption(code: string, setting: Setting): OptionDesk | undefined {
  const { evidence, subject, clinic, surgeon } = setting;
  const definition = evidence.options.find((option) => option.code === code);
  if (definition?.choosable !== true) return undefined;
  const source = figuresFrom(evidence, code);
  return {
    code,
    figuresFrom: source,
    kind: definition.kind,
    indication: findIndication(subject, definition),
    subject,
    records: groupByOutcome(evidence.records.filter((record) => record.option === source)),
    together: groupByOutcome(evidence.records.filter((record) => record.together?.includes(source))),
    studies: evidence.studies,
    outcomes: new Map(evidence.outcomes.map((outcome) => [outcome.code, outcome])),
    preferred: new Set(clinic.prefer.map(({ record }) => record)),
    clinic,
    surgeon,
  };
}

function groupByOutcome(records: readonly EvidenceRecord[]): ReadonlyMap<string, readonly EvidenceRecord[]> {
  const groups = new Map<string, EvidenceRecord[]>();
  for (const record of records) groups.set(record.outcome, [...(groups.get(record.outcome) ?? []), record]);
  return groups;
}
