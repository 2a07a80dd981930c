import { chooseEnds } from '../choose-ticks.ts';
import type { AxisEnds } from '../choose-ticks.ts';
import { sayLength } from './say-time.ts';
import { isWeight, shortWeight, unitsPerKg, weightInWords } from './say-weight.ts';
import type { WeightCell } from './say-weight.ts';
import type { NamedOption, Scene } from './scene.ts';
import { count, group, list, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { ticksOf, valuesOf } from './view-weight.ts';

const tickShape = group({ at: count, label: text });

export const lineBoardShape = group({
  /** "pounds" or "kilograms". */
  unit: text,
  lines: list(
    group({
      name: text,
      min: count,
      max: count,
      today: count,
      todayLabel: text,
      points: list(
        group({ months: count, at: count, label: text, low: optional(count), high: optional(count) }),
      ),
      timeTicks: list(tickShape),
      valueTicks: list(tickShape),
      unknownAfter: text,
      alt: text,
    }),
  ),
});
export type LineBoardView = Viewed<typeof lineBoardShape>;

/** A small picture over time for each option with two or more known times; all on the same scales. */
export function viewLines(scene: Scene): LineBoardView | null {
  const drawn = scene.options
    .map((option) => ({ option, cells: knownOver(scene, option) }))
    .filter(({ cells }) => cells.length >= 2);
  if (drawn.length === 0) return null;
  const today = scene.comparison.person.weightKg;
  const ends = chooseEnds(
    [today, ...drawn.flatMap(({ cells }) => valuesOf(cells))],
    [unitsPerKg(scene.unit)],
  );
  return {
    unit: scene.words.plain(`common.units.${scene.unit}`),
    lines: drawn.map(({ option, cells }) => lineOfOption(scene, option, { cells, ends })),
  };
}

/** Known weights of an option in order of their real time, one a time. */
function knownOver(scene: Scene, option: NamedOption): readonly WeightCell[] {
  const cells = scene.comparison.weight.over
    .map((row) => row.cells.find((cell) => cell.option === option.code))
    .filter((cell): cell is WeightCell => cell?.state === 'known' && isWeight(cell))
    .sort((a, b) => monthsOf(a) - monthsOf(b));
  return cells.filter((cell, index) => index === 0 || monthsOf(cell) !== monthsOf(cells[index - 1] ?? cell));
}

function monthsOf(cell: WeightCell): number {
  return cell.lead.horizon.months ?? cell.asked.months ?? 0;
}

interface Drawn {
  readonly cells: readonly WeightCell[];
  readonly ends: AxisEnds;
}

function lineOfOption(
  scene: Scene,
  option: NamedOption,
  { cells, ends }: Drawn,
): LineBoardView['lines'][number] {
  const { words } = scene;
  const last = cells.at(-1);
  const asked = scene.comparison.weight.over.map((row) => row.asked.months ?? 0);
  const end = Math.max(...asked);
  const lastMonth = last === undefined ? 0 : monthsOf(last);
  const known = cells.map((cell) =>
    words.plain('common.alt.point', {
      weight: shortWeight(scene, cell.value.averageKg),
      time: sayLength(scene, cell.lead.horizon),
    }),
  );
  const stops = lastMonth < end - 6;
  const lastTime = sayLength(scene, last?.lead.horizon ?? {});
  return {
    name: option.name,
    ...ends,
    today: scene.comparison.person.weightKg,
    todayLabel: words.plain('common.you_today'),
    points: cells.map((cell) => pointOf(scene, cell)),
    timeTicks: [0, ...asked].map((months) => ({
      at: months,
      label: scene.format.number(Math.round(months / 12)),
    })),
    valueTicks: ticksOf(scene, ends, scene.unit),
    unknownAfter: stops ? words.plain('common.weight.not_known_after', { time: lastTime }) : '',
    alt: words.plain(stops ? 'common.alt.line_stops' : 'common.alt.line', {
      option: option.name,
      points: scene.format.list(known, 'and'),
      time: lastTime,
      today: weightInWords(scene, scene.comparison.person.weightKg),
    }),
  };
}

function pointOf(scene: Scene, cell: WeightCell): LineBoardView['lines'][number]['points'][number] {
  const { averageKg, spread } = cell.value;
  const label = scene.format.number(Math.round(averageKg * unitsPerKg(scene.unit)));
  return {
    months: monthsOf(cell),
    at: averageKg,
    label,
    low: spread?.low ?? null,
    high: spread?.high ?? null,
  };
}
