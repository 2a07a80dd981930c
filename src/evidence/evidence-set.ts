import { z } from 'zod';

import type { SourceSpan } from '../diagnostics/diagnostic.ts';
import { AftercareFactSchema, AftercareSourceSchema } from '../model/aftercare.ts';
import { ConsentElementSchema } from '../model/consent-element.ts';
import { CopySiteSchema } from '../model/copy-sites.ts';
import { CriterionSchema } from '../model/criterion.ts';
import { EvidenceRecordSchema } from '../model/evidence-record.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import {
  CautionCoverageSchema,
  CautionSchema,
  DefinitionSchema,
  ReversibilitySchema,
  RiskFactorSchema,
  StandingSchema,
} from '../model/evidence-rules.ts';
import {
  MetricDefinitionSchema,
  OptionDefinitionSchema,
  OutcomeDefinitionSchema,
} from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { ReasonRuleSchema } from '../model/reason-rules.ts';
import { ReleaseSchema } from '../model/release.ts';
import { StudySchema } from '../model/study.ts';
import { TopicPlansSchema } from '../model/topic-plan.ts';
import type { DataPath } from './parse-data-file.ts';
import { arithmeticCheckNames } from './rules/arithmetic-checks.ts';

/** A figure that the arithmetic rule would refuse, kept as its source prints it. */
export const ArithmeticExceptionSchema = z
  .strictObject({
    record: z.string().describe('id of the record'),
    check: z.enum(arithmeticCheckNames).describe('the check that it does not pass'),
    reason: z.string().min(1).describe('why it is kept'),
  })
  .describe('a doubtful figure, kept as printed');

/** Every list of the data, as it stands in the files. */
export const EvidenceListsSchema = z.strictObject({
  release: ReleaseSchema,
  options: z.array(OptionDefinitionSchema),
  outcomes: z.array(OutcomeDefinitionSchema),
  metrics: z.array(MetricDefinitionSchema),
  topics: TopicPlansSchema,
  studies: z.array(StudySchema),
  records: z.array(EvidenceRecordSchema),
  reversibility: z.array(ReversibilitySchema),
  cautions: z.array(CautionSchema),
  cautionCoverage: z.array(CautionCoverageSchema),
  standing: z.array(StandingSchema),
  riskFactors: z.array(RiskFactorSchema),
  definitions: z.array(DefinitionSchema),
  reasons: z.array(ReasonRuleSchema),
  criteria: z.array(CriterionSchema),
  consentElements: z.array(ConsentElementSchema),
  aftercare: z.array(AftercareFactSchema),
  aftercareSources: z.array(AftercareSourceSchema),
  copySites: z.array(CopySiteSchema),
  arithmeticExceptions: z.array(ArithmeticExceptionSchema),
});
export type EvidenceLists = z.infer<typeof EvidenceListsSchema>;

/** What the data rules look at: the lists, and where each entry stands. */
export interface EvidenceSet extends EvidenceLists {
  /** Place of an entry of a list, or of a value in it. */
  readonly place: (entry: object, path?: DataPath) => SourceSpan | undefined;
}

/** The form in which all other stages see the evidence. */
export function buildEvidenceBase(lists: EvidenceLists, digest: string): EvidenceBase {
  const { release, options, outcomes, metrics, topics, records, cautions, cautionCoverage } = lists;
  const { standing, riskFactors, definitions, reasons, criteria, consentElements, aftercare } = lists;
  const recordsByOption = new Map<string, EvidenceRecord[]>();
  for (const record of records) {
    recordsByOption.set(record.option, [...(recordsByOption.get(record.option) ?? []), record]);
  }
  return {
    version: release.version,
    date: release.date,
    nextReview: release.next_review,
    reviewMonths: release.review_months,
    changes: release.changes,
    earlier: release.earlier,
    madeBy: release.made_by,
    paidBy: release.paid_by,
    digest,
    options,
    outcomes,
    metrics,
    topics,
    studies: new Map(lists.studies.map((study) => [study.id, study])),
    records,
    recordsByOption,
    reversibility: new Map(lists.reversibility.map((entry) => [entry.option, entry])),
    cautions,
    cautionCoverage,
    standing,
    riskFactors,
    definitions,
    reasons,
    criteria,
    consentElements,
    aftercare,
    aftercareSources: new Map(lists.aftercareSources.map((source) => [source.id, source])),
    copySites: lists.copySites,
  };
}
