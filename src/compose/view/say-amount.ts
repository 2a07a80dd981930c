import type { KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { shareInWords, sourceOf } from './say-share.ts';
import { weightInWords } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { roundShare } from '../round-counts.ts';
import { figure } from './words.ts';

/** Units that the words know as a count; others are printed as they are. */
const countedUnits = ['days', 'hours', 'points', 'nights'];

/** A length of time, or a change in a score as "2.1 points down": never a share of people. */
export function amountInWords(scene: Scene, cell: KnownCell): Markup {
  const { value } = cell;
  if (value.kind === 'weight') return figure(weightInWords(scene, value.averageKg), sourceOf(cell));
  if (value.kind === 'proportion')
    return figure(shareInWords(scene, roundShare(value, 1000), 1000), sourceOf(cell));
  const size = Math.abs(value.value);
  const amount = figure(sizeInWords(scene, size, value.unit), sourceOf(cell));
  if (value.metric === undefined) return scene.words.say('common.amount.plain', { amount });
  const key = value.value < 0 ? 'down' : 'up';
  return scene.words.say(`common.amount.${key}`, { amount });
}

function sizeInWords(scene: Scene, size: number, unit: string): string {
  const decimals = Number.isInteger(size) ? 0 : 1;
  const number = scene.format.number(size, decimals);
  if (countedUnits.includes(unit) && Number.isInteger(size))
    return scene.words.plain(`codes.units.${unit}`, { count: size });
  if (scene.words.has(`common.amount.units.${unit}`))
    return scene.words.plain(`common.amount.units.${unit}`, { number });
  return `${number}\u00a0${unit}`;
}
