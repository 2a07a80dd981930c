import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { joined } from './words.ts';

interface Limits {
  readonly low?: number;
  readonly high?: number;
}

/**
 * Who was measured, over all figures of a strip: BMI and age from the lowest to the highest that any of the studies
 * covered, beside the person's own BMI. Null where no study says.
 */
export function coveredLine(scene: Scene, cells: readonly Cell[]): Markup | null {
  const uses = cells.filter((cell) => cell.state === 'known').map((cell) => cell.lead.covered);
  const bmi = sayLimits(scene, spanOf(uses.map((use) => limits(use.bmiLow, use.bmiHigh))));
  const age = sayLimits(scene, spanOf(uses.map((use) => limits(use.ageLow, use.ageHigh))));
  const mixed = comesFromSeveral(cells) ? [scene.words.say('common.covered.different')] : [];
  if (bmi === null && age === null) return mixed[0] ?? null;
  const yours = scene.format.number(scene.comparison.person.bmi, 1);
  const key = bmi === null ? 'age' : age === null ? 'bmi' : 'both';
  const years = scene.format.number(scene.comparison.person.age);
  const covered = scene.words.say(`common.covered.${key}`, {
    ...(bmi === null ? {} : { bmi, yours }),
    ...(age === null ? {} : { age, years }),
  });
  return joined(...mixed, covered);
}

/** Figures of different studies may differ by what was counted alone; whoever compares them has to know. */
function comesFromSeveral(cells: readonly Cell[]): boolean {
  return new Set(cells.flatMap((cell) => (cell.state === 'known' ? [cell.lead.study] : []))).size > 1;
}

function limits(low: number | undefined, high: number | undefined): Limits | null {
  if (low === undefined && high === undefined) return null;
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}

/** The widest span; an end that one study leaves open stays open. */
function spanOf(all: readonly (Limits | null)[]): Limits | null {
  const stated = all.filter((one) => one !== null);
  if (stated.length === 0) return null;
  const lows = stated.flatMap((one) => (one.low === undefined ? [] : [one.low]));
  const highs = stated.flatMap((one) => (one.high === undefined ? [] : [one.high]));
  return {
    ...(lows.length === stated.length ? { low: Math.min(...lows) } : {}),
    ...(highs.length === stated.length ? { high: Math.max(...highs) } : {}),
  };
}

function sayLimits(scene: Scene, span: Limits | null): string | null {
  if (span === null) return null;
  const low = span.low === undefined ? null : sayLimit(scene, span.low);
  const high = span.high === undefined ? null : sayLimit(scene, span.high);
  if (low !== null && high !== null) return scene.format.range(low, high);
  if (low !== null) return scene.words.plain('common.or_more', { low });
  return high === null ? null : scene.words.plain('common.or_less', { high });
}

/** One decimal where the limit is not whole, so that nobody is rounded into a study. */
function sayLimit(scene: Scene, limit: number): string {
  const rounded = Math.round(limit * 10) / 10;
  return scene.format.number(rounded, Number.isInteger(rounded) ? 0 : 1);
}
