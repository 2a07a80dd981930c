import type { Amount, Bounds, KnownCell, Proportion, WeightAt } from '../../model/comparison.ts';
import { outcomeName, shortTime } from './clinician-ids.ts';
import type { ShownCell } from './cells-shown.ts';
import { withUnit } from './published-figure.ts';
import { isShare } from './say-share.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';

type Shown = ShownCell<KnownCell>;

/** The figure to one decimal place, as its interval beside it: "39.5/1,000", "0 of 212", "99.5 kg", "3.1 d". */
export function exactValue(scene: Scene, { cell, denominator }: Shown): string {
  const { format, words } = scene;
  if (isWeight(cell)) return exactWeight(scene, cell.value);
  if (!isShare(cell))
    return cell.value.kind === 'amount' ? withUnit(scene, cell.value.value, cell.value.unit) : '';
  const { zero, value } = cell.value;
  if (zero !== undefined)
    return words.plain('common.share.counted', { events: '0', n: format.number(zero.n) });
  return `${format.number(value * denominator, 1)}${perOf(scene, { cell, denominator })}`;
}

/** What follows the number of a share: "/1,000"; nothing after other figures. */
export function perOf({ format }: Scene, { cell, denominator }: Shown): string {
  return isShare(cell) ? `/${format.number(denominator)}` : '';
}

export function exactWeight({ format, words }: Scene, { averageKg }: WeightAt): string {
  return words.plain('clinician-sheet.units.kg', { n: format.number(averageKg, 1) });
}

/** "weight (TWL)", "leak", "hospital stay". */
export function measured(scene: Scene, cell: KnownCell): string {
  if (!isWeight(cell)) return outcomeName(scene, cell.outcome);
  return scene.words.plain('clinician-sheet.outcome_weight', { metric: cell.value.metric });
}

/** When the people of the record that leads were counted. */
export function measuredAt(scene: Scene, { cell }: Shown): string {
  return shortTime(scene, cell.lead.horizon, cell.lead.timeBasis);
}

export function intervalOf(scene: Scene, { cell, denominator }: Shown): string {
  const none = scene.words.plain('clinician-sheet.not_stated');
  if (isWeight(cell)) return weightInterval(scene, cell.value) ?? none;
  if (isShare(cell)) return shareInterval(scene, cell.value, denominator) ?? none;
  return (cell.value.kind === 'amount' ? amountInterval(scene, cell.value) : null) ?? none;
}

export function weightInterval(scene: Scene, { spread, uncertainty }: WeightAt): string | null {
  if (spread !== undefined) return sayInterval(scene, spread.basis, spread);
  return uncertainty === undefined ? null : sayInterval(scene, 'uncertainty', uncertainty);
}

function shareInterval(scene: Scene, { interval, zero }: Proportion, denominator: number): string | null {
  if (zero !== undefined) {
    return scene.words.plain('clinician-sheet.interval.zero', {
      upper: scene.format.number(zero.upper * denominator, 1),
    });
  }
  if (interval === undefined) return null;
  return sayInterval(scene, interval.basis, {
    low: interval.low * denominator,
    high: interval.high * denominator,
  });
}

function amountInterval(scene: Scene, { low, high, meaning }: Amount): string | null {
  return low === undefined || high === undefined
    ? null
    : sayInterval(scene, meaning ?? 'unknown', { low, high });
}

function sayInterval(scene: Scene, kind: string, { low, high }: Bounds): string {
  const { format, words } = scene;
  return words.plain(`clinician-sheet.interval.${kind}`, {
    range: format.range(format.number(low, 1), format.number(high, 1)),
  });
}
