import type { WeightPoint } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { chooseEnds } from '../choose-ticks.ts';
import type { AxisEnds } from '../choose-ticks.ts';
import { doseName } from './say-dose.ts';
import { followedInWords } from './say-followed.ts';
import { sayLength } from './say-time.ts';
import { drawnWeights, shortWeight, unitsPerKg, weightInWords } from './say-weight.ts';
import type { NamedOption, Scene } from './scene.ts';
import { count, group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { ticksOf } from './view-weight.ts';
import { joined } from './words.ts';

const tickShape = group({ at: count, label: text });

export const lineBoardShape = group({
  intro: markup,
  lines: list(
    group({
      name: text,
      min: count,
      max: count,
      today: count,
      todayLabel: text,
      points: list(
        group({
          months: count,
          at: count,
          label: text,
          cell: text,
          record: text,
          low: optional(count),
          high: optional(count),
        }),
      ),
      timeTicks: list(tickShape),
      valueTicks: list(tickShape),
      unknownAfter: text,
      alt: text,
    }),
  ),
  /** Who was still measured where each line ends. */
  followed: list(markup),
});
export type LineBoardView = Viewed<typeof lineBoardShape>;

/** A small picture over time for each option that one study followed; all on the same scales. */
export function viewLines(scene: Scene): LineBoardView | null {
  const { courses } = scene.comparison.weight;
  const drawn = scene.options.flatMap((option) => {
    const course = courses.find(({ option: code }) => code === option.code);
    return course === undefined ? [] : [{ option, points: course.points }];
  });
  if (drawn.length === 0) return null;
  const values = drawn.flatMap(({ points }) => points.flatMap(({ value }) => drawnWeights(value)));
  const ends = chooseEnds([scene.comparison.person.weightKg, ...values], [unitsPerKg(scene.unit)]);
  return {
    intro: introOf(
      scene,
      drawn.flatMap(({ points }) => points),
    ),
    lines: drawn.map(({ option, points }) => lineOfOption(scene, option, { points, ends })),
    followed: drawn
      .map(({ option, points }) => followedInWords(scene, option, points.at(-1)))
      .filter((words) => words !== null),
  };
}

/** What the line is; what the band is, where any point has a spread of people. */
function introOf(scene: Scene, points: readonly WeightPoint[]): Markup {
  const { words } = scene;
  const intro = words.say('comparison.lines.intro', { unit: words.plain(`common.units.${scene.unit}`) });
  const banded = points.some(({ value }) => value.spread !== undefined);
  const { courses } = scene.comparison.weight;
  const without = scene.options.filter(({ code }) => courses.every(({ option }) => option !== code));
  const options = scene.format.list(
    without.map(({ inText }) => inText),
    'nor',
  );
  return joined(
    intro,
    ...(banded ? [words.say('comparison.lines.band')] : []),
    ...(without.length === 0 ? [] : [words.say('comparison.lines.without', { options })]),
  );
}

/** Months between the end of a course and the last time asked that are worth a word. */
const shortfall = 6;

interface Drawn {
  readonly points: readonly WeightPoint[];
  readonly ends: AxisEnds;
}

function lineOfOption(
  scene: Scene,
  option: NamedOption,
  { points, ends }: Drawn,
): LineBoardView['lines'][number] {
  const { words, comparison } = scene;
  const asked = comparison.weight.over.map((row) => row.asked.months ?? 0);
  const lastMonth = Math.max(...points.map(({ months }) => months));
  const stops = lastMonth < Math.max(...asked) - shortfall;
  const time = sayLength(scene, { months: lastMonth });
  return {
    name: nameOf(scene, option, points),
    ...ends,
    today: comparison.person.weightKg,
    todayLabel: words.plain('common.you_today'),
    points: points.map((point) => pointOf(scene, point)),
    timeTicks: [0, ...asked].map((months) => ({
      at: months,
      label: scene.format.number(Math.round(months / 12)),
    })),
    valueTicks: ticksOf(scene, ends, scene.unit),
    unknownAfter: stops ? words.plain('common.weight.not_followed_after', { time }) : '',
    alt: words.plain(stops ? 'common.alt.line_stops' : 'common.alt.line', {
      option: option.name,
      points: scene.format.list(
        points.map((point) => sayPoint(scene, point)),
        'and',
      ),
      time,
      today: weightInWords(scene, comparison.person.weightKg),
    }),
  };
}

/** All points of a course are of one dose. */
function nameOf(scene: Scene, option: NamedOption, [first]: readonly WeightPoint[]): string {
  const dose = first === undefined ? null : doseName(scene, scene.records.get(first.record)?.dose);
  return dose === null ? option.name : scene.words.plain('common.dose.named', { option: option.name, dose });
}

function sayPoint(scene: Scene, { months, value }: WeightPoint): string {
  const time = sayLength(scene, { months });
  return scene.words.plain('common.alt.point', { weight: shortWeight(scene, value.averageKg), time });
}

function pointOf(
  scene: Scene,
  { months, value, cell, record }: WeightPoint,
): LineBoardView['lines'][number]['points'][number] {
  const { averageKg, spread } = value;
  const label = scene.format.number(Math.round(averageKg * unitsPerKg(scene.unit)));
  return { months, at: averageKg, label, cell, record, low: spread?.low ?? null, high: spread?.high ?? null };
}
