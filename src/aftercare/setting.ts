import { whyWithheld } from '../model/aftercare-rules.ts';
import type { AftercareFact, AftercareSource } from '../model/aftercare.ts';
import type { UndecidedReason } from '../model/aftercare-plan.ts';
import type { Case } from '../model/case.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { OptionCode } from '../model/evidence-record.ts';
import { judgeWho } from './judge-who.ts';
import type { IsFor } from './judge-who.ts';

export interface AftercareInput {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  readonly evidence: Pick<EvidenceBase, 'aftercare' | 'aftercareSources' | 'options'>;
  readonly option: OptionCode;
  /** Day 0, ISO: the day of the operation, or of the first dose of a medicine. */
  readonly date: string;
}

/** A fact that may be about this person and this option, and why it prints no rule for them, if so. */
export interface JudgedFact {
  readonly fact: AftercareFact;
  readonly isFor: Exclude<IsFor, 'no'>;
  readonly withheld: readonly UndecidedReason[];
}

/** The input, with the facts that are about this person and option. */
export interface Setting extends AftercareInput {
  readonly facts: readonly JudgedFact[];
}

export function openSetting(input: AftercareInput): Setting {
  const { evidence } = input;
  return {
    ...input,
    facts: evidence.aftercare.flatMap((fact) =>
      judgeFact(fact, evidence.aftercareSources.get(fact.source), input),
    ),
  };
}

function judgeFact(
  fact: AftercareFact,
  source: AftercareSource | undefined,
  { case: asked, option, date }: AftercareInput,
): readonly JudgedFact[] {
  const isAbout = fact.options.includes(option) || fact.extrapolated_to?.includes(option) === true;
  const isFor = judgeWho(fact.who, asked, date);
  if (!isAbout || isFor === 'no' || fact.use === 'context') return [];
  const withheld = whyWithheld(fact, source, option).filter((reason) => reason !== 'context');
  return [
    {
      fact,
      isFor,
      withheld: [...withheld, ...(isExcepted(fact, asked) ? (['not-for-person'] as const) : [])],
    },
  ];
}

function isExcepted({ not_for: notFor = [] }: AftercareFact, { health }: Case): boolean {
  const { now, planned_within_months: months } = health.pregnancy;
  return notFor.some((group) =>
    group === 'pregnancy' ? now || months !== null : health.medicines.includes('blood-thinner'),
  );
}
