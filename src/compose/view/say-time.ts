import type { Cell, Horizon, RecordUse } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';

interface Length {
  readonly unit: 'days' | 'months' | 'years';
  readonly count: number;
}

/** Months within this distance of a whole year are said as years. */
const yearTolerance = 1;

/** A length of time in the unit people use for it; null for a time without a number. */
export function lengthOf(horizon: Horizon): Length | null {
  const { months } = horizon;
  if (months === undefined)
    return horizon.days === undefined ? null : { unit: 'days', count: Math.round(horizon.days) };
  const years = Math.round(months / 12);
  if (years >= 1 && Math.abs(months - years * 12) <= yearTolerance) return { unit: 'years', count: years };
  return { unit: 'months', count: Math.max(1, Math.round(months)) };
}

/** "5 years". */
export function sayLength(scene: Scene, horizon: Horizon): string {
  const length = lengthOf(horizon);
  if (length === null) return scene.words.plain('codes.time.not_stated');
  // A number stays on the line of its unit.
  return scene.words.plain(`codes.time.${length.unit}`, { count: length.count }).replace(' ', '\u00a0');
}

/** "within 5 years", "after 5 years", "on average 5 years later", "around the operation". */
export function sayTime(scene: Scene, horizon: Horizon, basis: string): string {
  const length = lengthOf(horizon);
  if (basis === 'peri-operative') return scene.words.plain('codes.time.around_operation');
  if (length === null) return scene.words.plain('codes.time.not_stated');
  return scene.words.plain(`codes.time.${prepositions[basis] ?? 'unclear'}_${length.unit}`, {
    count: length.count,
  });
}

const prepositions: Readonly<Record<string, string>> = {
  by: 'within',
  at: 'after',
  'mean-follow-up': 'about',
  unclear: 'unclear',
};

/** The first 30 days are a month to a reader. */
export function isFirstMonth(horizon: Horizon): boolean {
  return horizon.days === 30 || (horizon.days === undefined && horizon.months === 1);
}

/** The time that a row asks about: "in the first month", "within 5 years", or for what is measured then "after 5 years". */
export function sayAsked(scene: Scene, asked: Horizon, basis: 'by' | 'at'): string {
  return isFirstMonth(asked) ? scene.words.plain('codes.time.first_month') : sayTime(scene, asked, basis);
}

/** The real time of a figure where it is not the one asked for; null where the heading says it already. */
export function otherTime(scene: Scene, asked: Horizon, use: RecordUse): string | null {
  const plain = use.timeBasis === 'by' || use.timeBasis === 'at';
  return plain && sameLength(asked, use.horizon) ? null : sayTime(scene, use.horizon, use.timeBasis);
}

/** That some figures of a row are of another time than the one asked for, and why; nothing where none is. */
export function ownTimes(scene: Scene, cells: readonly (Cell | undefined)[]): readonly Markup[] {
  const apart = cells.some(
    (cell) => cell?.state === 'known' && otherTime(scene, cell.asked, cell.lead) !== null,
  );
  return apart ? [scene.words.say('common.own_time')] : [];
}

function sameLength(a: Horizon, b: Horizon): boolean {
  if (isFirstMonth(a)) return isFirstMonth(b);
  const [first, second] = [lengthOf(a), lengthOf(b)];
  return first !== null && first.unit === second?.unit && first.count === second.count;
}
