import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Case } from '../model/case.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import type { ComparisonTable, OptionColumn } from '../model/comparison.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { buildCell } from './build-cell.ts';
import { describeOption } from './describe-option.ts';
import type { OptionDesk } from './describe-option.ts';
import { describeSubject } from './describe-person.ts';
import { findConflicts } from './find-conflicts.ts';
import { findFurtherHarms } from './find-further-harms.ts';
import { differAfterwards, findGone, judgeReversibility } from './judge-reversibility.ts';
import { judgeStanding } from './judge-standing.ts';
import { listCells, listRecordsUsed, refuseUnverified } from './list-records-used.ts';
import { noteThresholds } from './note-thresholds.ts';
import { checkReasons } from './reasons/check-reasons.ts';
import { scoreMortality } from './score-mortality.ts';
import { tabulateTopics } from './tabulate-topics.ts';
import { tabulateWeight } from './tabulate-weight.ts';
import { triggerCautions } from './trigger-cautions.ts';
import { warnOfReview } from './warn-of-review.ts';
import { anyTime } from './weigh-time.ts';

export interface CompareInput {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  readonly evidence: EvidenceBase;
  /** The day on which the person has their age, ISO. */
  readonly date: string;
}

/**
 * What is known of each option for this person, and why the rest is not. The same input gives the same table, in
 * whatever order the evidence lists its records. Fails on an option that cannot be chosen, and if a figure that
 * nobody read at its source would be shown.
 */
export function compareOptions(input: CompareInput): Result<ComparisonTable> {
  const { case: given, clinic, evidence } = input;
  const subject = describeSubject(given, evidence, input.date);
  const setting = { subject, evidence, clinic, surgeon: given.plan.surgeon };
  const described = given.decision.options.map((code) => describeOption(code, setting));
  const unknown = described.flatMap((desk, index) => (desk === undefined ? [reportUnknown(index)] : []));
  if (unknown.length > 0) return failure(unknown);
  const desks = described.filter((desk) => desk !== undefined);
  const options = desks.map((desk) => ({ desk, column: describeColumn(desk, input) }));
  const topics = tabulateTopics(desks, subject, evidence.topics);
  const parts = {
    options: options.map(({ column }) => column),
    weight: tabulateWeight(desks),
    topics,
    furtherHarms: findFurtherHarms({ case: given, desks, topics }, evidence.topics),
  };
  const cautions = triggerCautions(evidence.cautions, { health: given.health, subject, desks, clinic });
  const table: ComparisonTable = {
    person: subject.person,
    evidence: {
      version: evidence.version,
      date: evidence.date,
      nextReview: evidence.nextReview,
      digest: evidence.digest,
    },
    ...parts,
    cautions,
    conflicts: findConflicts(cautions),
    mortalityScore: scoreMortality({ health: given.health, subject, desks, evidence }),
    reasons: checkReasons({ given, evidence, desks, options }),
    notes: noteThresholds(subject),
    recordsUsed: listRecordsUsed(parts),
  };
  const checked = refuseUnverified(table, evidence);
  if (!checked.ok) return checked;
  const review = warnOfReview(evidence, { recordsUsed: table.recordsUsed, date: input.date });
  return success(checked.value, [...warnOfEmpty(table), ...review]);
}

function describeColumn(desk: OptionDesk, { case: given, evidence }: CompareInput): OptionColumn {
  const { code, figuresFrom, kind, indication } = desk;
  // A medicine changes nothing of what an operation took out, and stopping it brings back the day before it.
  const isProcedure = kind === 'operation' || kind === 'endoscopic';
  const gone = isProcedure ? findGone(given.health.earlier_operations, evidence.reversibility) : [];
  const undoing = evidence.reversibility.get(figuresFrom);
  const differs = differAfterwards(desk, undoing);
  return {
    code,
    figuresFrom,
    kind,
    indication,
    standing: judgeStanding(evidence.standing, figuresFrom, desk.clinic.clinic.jurisdiction),
    reversibility: {
      ...judgeReversibility(undoing, gone),
      ...(differs === undefined ? {} : { weightAfterDiffers: differs }),
    },
    stay: buildCell(desk, 'hospital-stay', anyTime),
  };
}

function reportUnknown(index: number): Diagnostic {
  return {
    code: 'CASE_UNKNOWN_OPTION',
    severity: 'error',
    message: 'this option is not one of those that can be compared',
    hint: 'Choose one of the listed codes.',
    path: `decision.options[${index}]`,
  };
}

/** An option of which no figure at all is known for this person: right to print, worth telling the clinic. */
function warnOfEmpty(table: ComparisonTable): readonly Diagnostic[] {
  const known = new Set(listCells(table).flatMap((cell) => (cell.state === 'known' ? [cell.option] : [])));
  return table.options
    .filter(({ code }) => !known.has(code))
    .map(({ code }) => ({
      code: 'COMPARE_EVIDENCE_MISSING',
      severity: 'warning',
      message: `no figure for ${code} was measured in people like this person`,
      hint: 'Nothing to do: every page says "not known", with the reason.',
    }));
}
