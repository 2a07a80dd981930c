import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { OutcomeDefinition } from '../../model/evidence.ts';
import { isPrintable } from '../../model/evidence.ts';
import type { NamedOption, Scene } from './scene.ts';
import { isProcedure } from './view-people.ts';

export const riskTimes = ['early', 'later'] as const;
export type RiskTime = (typeof riskTimes)[number];

/**
 * The harms that can follow from an option, of those that the topics may show, in their order. In the first month those
 * that this kind of procedure can lead to; else those that happened in people who had this very option, whoever they
 * were: a kind says too little there, since only a band slips. None without a procedure or a medicine: what happens to
 * people who have nothing done is not its doing.
 */
export function possibleHarms(scene: Scene, option: NamedOption, when: RiskTime): readonly string[] {
  const { topics, outcomes } = scene.evidence;
  if (!isProcedure(option) && option.column.kind !== 'medicine') return [];
  const early = when === 'early';
  const listed = early
    ? topics['first-month'].rows
    : [...topics['later-years'].rows, ...topics['living-with-it'].rows];
  const seen = seenIn(scene, option);
  return listed.filter((code) => {
    const outcome = outcomes.find((one) => one.code === code);
    if (outcome === undefined || !canStillHappen(scene, outcome)) return false;
    return early && isProcedure(option) ? outcome.applies_to.includes(option.column.kind) : seen.has(code);
  });
}

function seenIn(scene: Scene, { column }: NamedOption): ReadonlySet<string> {
  const records = scene.evidence.recordsByOption.get(column.figuresFrom) ?? [];
  return new Set(records.filter(didHappen).map(({ outcome }) => outcome));
}

/** Somebody had it, by a figure that was read on a page. */
function didHappen(record: EvidenceRecord): boolean {
  if (record.kind !== 'risk' || !isPrintable(record)) return false;
  const { events, percent, rate } = record.value;
  return [events, percent, rate].some((count) => count !== undefined && count > 0);
}

/** Not after an event that rules it out, nor as new in a person who has it already. */
function canStillHappen(scene: Scene, { never_after, new_without }: OutcomeDefinition): boolean {
  const { history, conditions } = scene.case.health;
  const over = never_after !== undefined && history.some((event) => event === never_after);
  return !over && !conditions.some((condition) => condition === new_without);
}
