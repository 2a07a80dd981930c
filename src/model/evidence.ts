import { z } from 'zod';

import type { AftercareFact, AftercareSource } from './aftercare.ts';
import type { ConsentElement } from './consent-element.ts';
import type { CopySite } from './copy-sites.ts';
import type { Criterion } from './criterion.ts';
import type {
  Caution,
  CautionCoverage,
  Definition,
  Reversibility,
  RiskFactor,
  Standing,
} from './evidence-rules.ts';
import type { EvidenceRecord, OptionCode } from './evidence-record.ts';
import { MaturitySchema } from './release.ts';
import type { Changes, EarlierRelease, Maturity } from './release.ts';
import type { ReasonRule } from './reason-rules.ts';
import type { LocalText } from './scalars.ts';
import type { Study, StudyId } from './study.ts';
import type { TopicPlans } from './topic-plan.ts';

const code = z.string().regex(/^[a-z0-9-]+$/i);

export const OptionKindSchema = z
  .enum(['operation', 'endoscopic', 'medicine', 'programme', 'none'])
  .describe('what sort of treatment');
export type OptionKind = z.infer<typeof OptionKindSchema>;

export const OptionDefinitionSchema = z
  .strictObject({
    code: code.describe('code that records and cases use'),
    name: z.string().min(1).describe('name in the trade'),
    kind: OptionKindSchema,
    meaning: z.string().min(1).describe('what is done, in a line'),
    choosable: z.boolean().describe('whether a case may name it'),
    maturity: MaturitySchema,
    figures_from: code.describe('option whose records, cautions and reversibility it uses; mostly itself'),
  })
  .describe('something a person may choose, or that records measure');
export type OptionDefinition = z.infer<typeof OptionDefinitionSchema>;

export const OutcomeGroupSchema = z
  .enum(['early-harm', 'late-harm', 'living-with-it', 'benefit', 'weight', 'stay-and-recovery', 'pregnancy'])
  .describe('where it is shown');

/** What is counted in a part cannot be missing from the whole: a figure that says so counts something else. */
const OutcomePartsSchema = z
  .strictObject({
    outcomes: z
      .array(z.string().min(1))
      .min(1)
      .describe('who has one of these has the outcome too, so there can be no fewer of it than of these'),
    held_against: z
      .enum(['records', 'first-month'])
      .describe(
        'records: any figure of a part in such people, by then or sooner, that is more for certain; first-month: the figures that the table of the first month shows',
      ),
    after: z
      .array(OptionKindSchema)
      .min(1)
      .optional()
      .describe('kinds of option for which it holds, if not all'),
  })
  .describe('outcomes that are part of another');

export const OutcomeDefinitionSchema = z
  .strictObject({
    code: code.describe('code that records use'),
    group: z
      .array(OutcomeGroupSchema)
      .min(1)
      .describe('with early and late harm the time decides: up to 90 days and peri-operative are early'),
    better: z.enum(['lower', 'higher', 'none']).describe('which way is better'),
    meaning: z.string().min(1).describe('what is counted'),
    applies_to: z
      .array(OptionKindSchema)
      .min(1)
      .describe('kinds of option that can lead to it in a person never operated on; see isPossible'),
    plain: z.literal(true).optional().describe('its name says it all, so a table does not explain it'),
    new_without: z
      .string()
      .min(1)
      .optional()
      .describe('condition without which people were counted: not the figure of a person who has it'),
    never_after: z
      .string()
      .min(1)
      .optional()
      .describe('past event, a code of the case file, after which it cannot happen any more'),
    parts: z.array(OutcomePartsSchema).min(1).optional().describe('outcomes that are part of this one'),
    pressing: z
      .literal(true)
      .optional()
      .describe('as trouble after an earlier operation it may not wait for weeks'),
  })
  .describe('something that may happen or change');
export type OutcomeDefinition = z.infer<typeof OutcomeDefinitionSchema>;

export const MetricDefinitionSchema = z
  .strictObject({
    code: z.string().min(1).describe('code that records use'),
    unit: z.string().min(1).describe('its unit'),
    meaning: z.string().min(1).describe('what it counts'),
  })
  .describe('what a weight, a score or a difference is counted in');
export type MetricDefinition = z.infer<typeof MetricDefinitionSchema>;

/** What a contrast may compare an option with, besides another option. */
export const comparisonGroups = [
  'control',
  'general-population',
  'before-surgery',
  'under-65',
  'bmi-35-to-50',
  'bmi-22-to-25',
] as const;

/** Everything that is known, with where it was read. Made by `loadEvidence`; never changed afterwards. */
export interface EvidenceBase {
  /** Year and month of the release, for example `2026.11`. */
  readonly version: string;
  /** ISO date of the release. */
  readonly date: string;
  /** ISO date by which it is to be read again. */
  readonly nextReview: string;
  /** Months after which the source of a figure is read again. */
  readonly reviewMonths: Readonly<Record<Maturity, number>>;
  /** What the release changed; null in the first. */
  readonly changes: Changes | null;
  /** Releases before this one, the newest first. */
  readonly earlier: readonly EarlierRelease[];
  readonly madeBy: LocalText;
  readonly paidBy: LocalText;
  /** SHA-256 over all data files in path order, 64 hex digits. */
  readonly digest: string;
  readonly options: readonly OptionDefinition[];
  readonly outcomes: readonly OutcomeDefinition[];
  readonly metrics: readonly MetricDefinition[];
  readonly topics: TopicPlans;
  readonly studies: ReadonlyMap<StudyId, Study>;
  readonly records: readonly EvidenceRecord[];
  /** By the option written in the record; follow `figures_from` first (see `recordsFor`). */
  readonly recordsByOption: ReadonlyMap<OptionCode, readonly EvidenceRecord[]>;
  readonly reversibility: ReadonlyMap<OptionCode, Reversibility>;
  readonly cautions: readonly Caution[];
  readonly cautionCoverage: readonly CautionCoverage[];
  readonly standing: readonly Standing[];
  readonly riskFactors: readonly RiskFactor[];
  readonly definitions: readonly Definition[];
  /** What the coded reasons of a surgeon claim. */
  readonly reasons: readonly ReasonRule[];
  /** What the patient documents are held against. */
  readonly criteria: readonly Criterion[];
  /** What a consent must hold. */
  readonly consentElements: readonly ConsentElement[];
  /** What sources say of the time before and after a treatment; see `whyWithheld` for what may print. */
  readonly aftercare: readonly AftercareFact[];
  readonly aftercareSources: ReadonlyMap<string, AftercareSource>;
  /** Sites of copies: their addresses are for clinicians. */
  readonly copySites: readonly CopySite[];
}

/** The option whose records, cautions and reversibility stand for this one; itself if it is not defined. */
export function figuresFrom(evidence: EvidenceBase, option: OptionCode): OptionCode {
  return evidence.options.find((definition) => definition.code === option)?.figures_from ?? option;
}

/** All records that speak for an option, printable or not, in file order. */
export function recordsFor(evidence: EvidenceBase, option: OptionCode): readonly EvidenceRecord[] {
  return evidence.recordsByOption.get(figuresFrom(evidence, option)) ?? [];
}

/** The only gate to a patient page: the figure itself was read on a page of its source. */
export function isPrintable(record: Pick<EvidenceRecord, 'seen'>): boolean {
  return record.seen === 'page';
}

/**
 * Whether two figures count partly the same people, as far as is known: then they are never added or pooled.
 * A record's own cohort wins over its study's.
 */
export function samePeople(
  studyA: Study,
  studyB: Study,
  recordCohorts: { readonly a?: string | undefined; readonly b?: string | undefined } = {},
): boolean {
  if ((recordCohorts.a ?? studyA.cohort) === (recordCohorts.b ?? studyB.cohort)) return true;
  return (studyA.overlaps ?? []).includes(studyB.id) || (studyB.overlaps ?? []).includes(studyA.id);
}

/**
 * Whether an outcome can follow a kind of option at all. After an earlier operation everything counts as possible,
 * since what was done then can still cause it.
 */
export function isPossible(
  outcome: Pick<OutcomeDefinition, 'applies_to'>,
  kind: OptionKind,
  earlierOperation: boolean,
): boolean {
  return earlierOperation || outcome.applies_to.includes(kind);
}
