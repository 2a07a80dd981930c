import type { CautionConflict, CautionHit } from '../model/comparison.ts';

/** Where one caution points: to an option, away from others (by code). */
interface Pull {
  readonly hit: CautionHit;
  readonly to: string;
  readonly from: readonly string[];
}

/**
 * Cautions of a case that pull in different directions: one holds up an option of the case as better, others warn of
 * that option. In the order of `hits`. What the clinic struck says nothing, and what stands on usual practice only
 * asks. Two cautions that point to each other's options are told once.
 */
export function findConflicts(hits: readonly CautionHit[]): readonly CautionConflict[] {
  const said = hits.filter(({ clinic }) => clinic !== 'struck');
  const read = said.filter(({ basis }) => basis === 'page');
  const conflicts: CautionConflict[] = [];
  for (const { hit, to, from } of read.flatMap(pullsOf)) {
    const against = read
      .filter((other) => pullsBack(other, { hit, to, from }, said))
      .map(({ id }) => id)
      .filter((id) => !isTold(conflicts, id, hit.id));
    if (against.length > 0) conflicts.push({ caution: hit.id, to, from, against });
  }
  return conflicts;
}

function pullsOf(hit: CautionHit): readonly Pull[] {
  const { favours = [], options } = hit;
  const from = options.filter((option) => !favours.includes(option)).sort((a, b) => (a < b ? -1 : 1));
  return from.length === 0 ? [] : favours.map((to) => ({ hit, to, from }));
}

/**
 * Whether a caution warns of the option that another points to, and not of those it points away from as well. Rows on
 * one and the same cause are not against each other: together they say how the options compare.
 */
function pullsBack(other: CautionHit, { hit, to, from }: Pull, said: readonly CautionHit[]): boolean {
  if (sharesCause(other, hit) || !other.options.includes(to) || touches(other, from)) return false;
  if (other.effect !== 'needs-check' || touches({ options: other.favours ?? [] }, from)) return true;
  // What is only to be checked speaks against one option if its cause has nothing to be checked with the others.
  return !said.some((row) => sharesCause(row, other) && touches(row, from));
}

function sharesCause(a: CautionHit, b: CautionHit): boolean {
  return a.triggers.some((trigger) => b.triggers.includes(trigger));
}

function touches({ options }: Pick<CautionHit, 'options'>, wanted: readonly string[]): boolean {
  return options.some((option) => wanted.includes(option));
}

function isTold(conflicts: readonly CautionConflict[], caution: string, against: string): boolean {
  return conflicts.some((conflict) => conflict.caution === caution && conflict.against.includes(against));
}
