import type { Bounds, KnownCell, OutcomeRow } from '../../model/comparison.ts';
import type { WeightAt } from '../../model/comparison-value.ts';
import type { TopicPlans } from '../../model/topic-plan.ts';
import { buildTopicRow } from '../build-topic-row.ts';
import type { OptionDesk } from '../describe-option.ts';
import { differenceInterval } from '../difference-interval.ts';
import type { Estimate } from '../difference-interval.ts';
import { standardErrors95 } from '../score-interval.ts';
import { monthsOf } from '../weigh-time.ts';
import type { TimeWindow } from '../weigh-time.ts';
import type { Hint } from './hint.ts';
import type { DeskPair } from './read-contrasts.ts';

/** Rows that the figures of a pair may be read from. */
export interface RowSource {
  /** All options of the case, so that the figures are those of the pages. */
  readonly desks: readonly OptionDesk[];
  readonly plans: TopicPlans;
}

/**
 * The figures of two options at each time: those of the pages, unless they come from two studies and one study gives
 * both; of an option that is none of the case, such as doing nothing more, no page shows any. Times at which one of the
 * two is not known say nothing.
 */
export function readFigures(
  pair: DeskPair,
  outcome: string,
  { source, windows }: { readonly source: RowSource; readonly windows: readonly TimeWindow[] },
): readonly Hint[] {
  const both = [pair.mine, pair.theirs];
  return windows.flatMap((window) => {
    const read = (desks: readonly OptionDesk[]): Hint | undefined =>
      hintOf(pair, buildTopicRow(desks, source.plans, { outcome, window }));
    if (both.some((desk) => !source.desks.includes(desk))) return read(both) ?? [];
    const shown = read(source.desks);
    if (shown === undefined || shown.stands.basis === 'one-study') return shown ?? [];
    const alone = read(both);
    return alone?.stands.basis === 'one-study' ? alone : shown;
  });
}

function hintOf({ mine, theirs }: DeskPair, { asked, cells }: OutcomeRow): Hint | undefined {
  const find = (code: string): KnownCell | undefined =>
    cells.filter((cell) => cell.state === 'known').find(({ option }) => option === code);
  const [a, b] = [find(mine.code), find(theirs.code)];
  if (a === undefined || b === undefined) return undefined;
  const isOne = a.lead.study === b.lead.study;
  return {
    direction: isOne ? compareFigures(a, b) : compareRanges(a, b),
    asked,
    months: monthsOf(a.lead.horizon) ?? 0,
    records: [a.lead.record, b.lead.record],
    stands: { basis: isOne ? 'one-study' : 'two-studies', mine: a.value, theirs: b.value },
  };
}

/** Two figures of one study: their difference is clear when its 95 % interval leaves out nought. */
function compareFigures(a: KnownCell, b: KnownCell): Hint['direction'] {
  const [first, second] = [estimateOf(a), estimateOf(b)];
  if (first === undefined || second === undefined) return 'unclear';
  const { low, high } = differenceInterval(first, second);
  return low > 0 ? 'more' : high < 0 ? 'fewer' : 'unclear';
}

/** Figures of two studies: clear only when no study of the one comes near any of the other, intervals and all. */
function compareRanges(a: KnownCell, b: KnownCell): Hint['direction'] {
  const [first, second] = [rangeOf(a), rangeOf(b)];
  if (first === undefined || second === undefined) return 'unclear';
  return first.low > second.high ? 'more' : first.high < second.low ? 'fewer' : 'unclear';
}

function rangeOf(cell: KnownCell): Bounds | undefined {
  const own = estimateOf(cell);
  if (own === undefined || cell.others === undefined) return own;
  const others = cell.value.kind === 'weight' ? asLoss(cell.others, cell.value) : cell.others;
  return { low: Math.min(own.low, others.low), high: Math.max(own.high, others.high) };
}

/** The figure with its 95 % interval; weights as kilograms lost. Undefined where no interval is known. */
function estimateOf({ value, lead }: KnownCell): Estimate | undefined {
  switch (value.kind) {
    case 'proportion': {
      const bounds = value.zero === undefined ? value.interval : { low: 0, high: value.zero.upper };
      return bounds && { value: value.value, ...bounds };
    }
    case 'weight': {
      const bounds = boundsOfWeight(value, lead.n);
      return bounds && { value: -value.changeKg, ...asLoss(bounds, value) };
    }
    case 'amount':
      return undefined;
  }
}

/** How sure an average weight is; from a spread of people only where their number is known. */
function boundsOfWeight(value: WeightAt, n: number | undefined): Bounds | undefined {
  const { uncertainty, spread, averageKg } = value;
  if (uncertainty !== undefined || spread?.basis !== 'sd' || n === undefined) return uncertainty;
  const half = (standardErrors95 * (spread.high - spread.low)) / 2 / Math.sqrt(n);
  return { low: averageKg - half, high: averageKg + half };
}

/** Bounds of a weight in kg as bounds of what is lost of today's weight. */
function asLoss({ low, high }: Bounds, { averageKg, changeKg }: WeightAt): Bounds {
  const today = averageKg - changeKg;
  return { low: today - high, high: today - low };
}
