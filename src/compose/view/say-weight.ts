import type { KnownCell, WeightAt } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { kilogramsPerPound } from '../../model/quantity.ts';
import { roundedChange } from '../round-counts.ts';
import { sourceOf } from './say-share.ts';
import type { Scene } from './scene.ts';
import { figure } from './words.ts';

/** A cell whose value is a weight at a time. */
export type WeightCell = KnownCell & { readonly value: WeightAt };

export function isWeight(cell: KnownCell): cell is WeightCell {
  return cell.value.kind === 'weight';
}

/** The weights in kg that a picture of this value draws. */
export function drawnWeights(value: WeightAt): readonly number[] {
  const drawn = value.spread ?? value.uncertainty;
  return drawn === undefined ? [value.averageKg] : [value.averageKg, drawn.low, drawn.high];
}

/** Units of the page's first unit in a kilogram. */
export function unitsPerKg(unit: 'metric' | 'us'): number {
  return unit === 'us' ? 1 / kilogramsPerPound : 1;
}

/** A weight in the unit(s) of the clinic: "206 lb (93 kg)". */
export function weightInWords(scene: Scene, kg: number): string {
  return scene.format.weight(kg, scene.clinic.clinic.units);
}

/** A weight in the page's first unit alone: "206 lb". */
export function shortWeight(scene: Scene, kg: number): string {
  return scene.format.weight(kg, scene.unit);
}

/** "180 to 232 lb": the unit stands once. */
export function weightRange(scene: Scene, range: { readonly low: number; readonly high: number }): string {
  const low = shortWeight(scene, range.low);
  if (low === shortWeight(scene, range.high)) return low;
  return scene.format.weightRange(range.low, range.high, scene.unit);
}

/** "62 lb less than today.", such that the reader's own subtraction agrees. */
export function changeInWords(scene: Scene, cell: WeightCell): Markup {
  const scale = unitsPerKg(scene.unit);
  const change = roundedChange(scene.comparison.person.weightKg * scale, cell.value.averageKg * scale);
  if (change === 0) return scene.words.say('common.weight.same');
  const amount = figure(shortWeight(scene, Math.abs(change) / scale), sourceOf(cell));
  return scene.words.say(change < 0 ? 'common.weight.less' : 'common.weight.more', { change: amount });
}

/** Where most people end up (only from a spread of people), else how sure the average is; null if neither is known. */
export function spreadInWords(scene: Scene, cell: WeightCell): Markup | null {
  const { spread, uncertainty } = cell.value;
  const source = sourceOf(cell);
  if (spread !== undefined) {
    const key = { 'two-in-three': 'two_in_three', half: 'half', all: 'all' }[spread.share];
    return scene.words.say(`common.weight.${key}`, { range: figure(weightRange(scene, spread), source) });
  }
  if (uncertainty === undefined) return null;
  return scene.words.say('common.weight.average_could_be', {
    range: figure(weightRange(scene, uncertainty), source),
  });
}

/** "Other studies: 190 to 212 lb.": averages in other people. */
export function otherWeights(scene: Scene, cell: WeightCell): Markup | null {
  const { others } = cell;
  if (others === undefined) return null;
  const [low, high] = [shortWeight(scene, others.low), shortWeight(scene, others.high)];
  const range = low === high ? low : weightRange(scene, others);
  const value = figure(range, { cell: cell.id, records: others.records });
  return scene.words.say('common.weight.others', { range: value, count: others.records.length });
}

/** What was worked out from another measure than percent of weight, said as such. */
export function computedInWords(scene: Scene, cell: WeightCell): Markup | null {
  if (!cell.value.computed) return null;
  const metric = scene.words.plain(`codes.metrics.${cell.value.metric}`);
  return scene.words.say('common.weight.computed', { metric });
}

/** Plain warning where the average would end under a healthy weight. */
export function warningInWords(scene: Scene, cell: WeightCell): Markup | null {
  const { warning } = cell.value;
  if (warning === undefined) return null;
  return scene.words.say(warning === 'under-18-5' ? 'common.weight.under_18_5' : 'common.weight.under_20');
}
