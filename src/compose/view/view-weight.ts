import type { Cell, OutcomeRow } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { chooseEnds, chooseTicks } from '../choose-ticks.ts';
import type { AxisEnds } from '../choose-ticks.ts';
import { doseInWords, withDose } from './say-dose.ts';
import { sourceOf } from './say-share.ts';
import { soundnessInWords, withMark } from './say-soundness.ts';
import { sayMissing, sayNear, whyUnknown } from './say-reason.ts';
import { otherTime, ownTimes, sayLength } from './say-time.ts';
import {
  changeInWords,
  computedInWords,
  drawnWeights,
  isWeight,
  otherWeights,
  spreadInWords,
  unitsPerKg,
  warningInWords,
  weightInWords,
  weightRange,
} from './say-weight.ts';
import type { WeightCell } from './say-weight.ts';
import type { NamedOption, Scene } from './scene.ts';
import { count, group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape } from './shared-shapes.ts';
import type { Row } from './shared-shapes.ts';
import { coveredLine } from './say-covered.ts';
import { timesLine } from './say-weight-times.ts';
import { bold, figure, joined } from './words.ts';

const scaleShape = group({ unit: text, ticks: list(group({ at: count, label: text })) });

export const weightShape = group({
  question: text,
  /** The same question for the column of the short table. */
  time: text,
  intro: markup,
  /** Absent where no weight is known: then there is nothing to draw, and the rows are words alone. */
  axis: optional(group({ min: count, max: count, today: count, label: text, scales: list(scaleShape) })),
  rows: list(rowShape),
  marks: list(group({ kind: text, words: text })),
  covered: optional(markup),
});
export type WeightView = Viewed<typeof weightShape>;

/** The strip of weights at the main horizon. */
export function viewWeight(scene: Scene): WeightView {
  const { main, mainMonths } = scene.comparison.weight;
  const time = sayLength(scene, { months: mainMonths });
  const cells = scene.options.map((option, index) => ({ option, cell: main.cells[index] }));
  const question = scene.words.plain('comparison.weight.question', { time });
  if (main.cells.every(({ state }) => state !== 'known')) {
    return {
      question,
      time,
      intro: scene.words.say('comparison.weight.intro_unknown'),
      axis: null,
      rows: cells.map(({ option, cell }) => wordsRow(scene, option, cell)),
      marks: [],
      covered: null,
    };
  }
  const weight = weightInWords(scene, scene.comparison.person.weightKg);
  return {
    question,
    time,
    intro: joined(scene.words.say('comparison.weight.intro', { weight }), ...ownTimes(scene, main.cells)),
    axis: axisOf(scene, main),
    rows: cells.map(({ option, cell }) => weightRow(scene, option, cell)),
    marks: marksOf(scene, main),
    // Who was measured for what is drawn: a weight at another time beside "not known" has no bar.
    covered: coveredLine(scene, main.cells),
  };
}

/** Where no option has a weight: no empty pictures, and the sentence above has said for whom it is not known. */
function wordsRow(scene: Scene, option: NamedOption, cell: Cell | undefined): Row {
  const unknown = bold(scene.words.say('common.sentence', { text: scene.words.say('common.not_known') }));
  const why = cell?.state === 'not-known' ? [sayMissing(scene, cell)] : [];
  return plainRow(option, [body(joined(unknown, ...why)), ...timesLine(scene, option)]);
}

function weightRow(scene: Scene, option: NamedOption, cell: Cell | undefined): Row {
  if (cell?.state === 'known' && isWeight(cell)) return knownRow(scene, option, cell);
  const words = [
    lineOf('number', scene.words.say('common.not_known')),
    ...(cell?.state === 'not-known' ? [body(whyUnknown(scene, cell))] : []),
    ...timesLine(scene, option),
  ];
  const alt = scene.words.plain('common.alt.not_known', { option: option.name });
  return { ...plainRow(option, words), unknown: { of: 'range', alt } };
}

function knownRow(scene: Scene, option: NamedOption, cell: WeightCell): Row {
  const { value } = cell;
  const drawn = value.spread ?? value.uncertainty;
  const meaning =
    value.spread !== undefined ? 'spread' : value.uncertainty !== undefined ? 'uncertainty' : 'none';
  const warning = warningInWords(scene, cell);
  const time = otherTime(scene, { months: scene.comparison.weight.mainMonths }, cell.lead);
  const facts = [
    changeInWords(scene, cell),
    time === null ? null : scene.words.say('common.measured', { time }),
    doseInWords(scene, cell),
    spreadInWords(scene, cell),
    soundnessInWords(scene, cell),
    sayNear(scene, cell),
    computedInWords(scene, cell),
    // Last, so that "these people" above are those of the figure.
    otherWeights(scene, cell),
  ];
  const lines = [
    lineOf('number', figure(weightInWords(scene, value.averageKg), sourceOf(cell))),
    ...facts.filter((fact) => fact !== null).map(body),
    ...timesLine(scene, option),
    ...(warning === null ? [] : [lineOf('strong', warning)]),
  ];
  const range = {
    average: value.averageKg,
    low: drawn?.low ?? null,
    high: drawn?.high ?? null,
    meaning,
    alt: altOf(scene, option, cell),
  };
  return { ...plainRow(option, lines), range };
}

function altOf(scene: Scene, option: NamedOption, cell: WeightCell): string {
  const { value, lead } = cell;
  const parts = {
    option: option.name,
    average: weightInWords(scene, value.averageKg),
    time: sayLength(scene, lead.horizon),
    today: weightInWords(scene, scene.comparison.person.weightKg),
  };
  if (value.spread === undefined) return scene.words.plain('common.alt.weight', parts);
  const share = { 'two-in-three': 'two_in_three', half: 'half', all: 'all' }[value.spread.share];
  return scene.words.plain(`common.alt.weight_${share}`, {
    ...parts,
    range: weightRange(scene, value.spread),
  });
}

function axisOf(scene: Scene, row: OutcomeRow): NonNullable<WeightView['axis']> {
  const { units } = scene.clinic.clinic;
  const shown = units === 'both' ? (['us', 'metric'] as const) : [scene.unit];
  const today = scene.comparison.person.weightKg;
  const ends = chooseEnds([today, ...valuesOf(row.cells)], shown.map(unitsPerKg));
  const scales = shown.map((unit) => ({
    unit: scene.words.plain(`common.units.${unit}`),
    ticks: ticksOf(scene, ends, unit),
  }));
  return { ...ends, today, label: scene.words.plain('common.you_today'), scales };
}

/** Round numbers of a unit on an axis in kilograms. */
export function ticksOf(
  scene: Scene,
  ends: AxisEnds,
  unit: 'metric' | 'us',
): readonly { at: number; label: string }[] {
  const scale = unitsPerKg(unit);
  return chooseTicks(ends, scale).map((tick) => ({ at: tick / scale, label: scene.format.number(tick) }));
}

/** Every weight that a picture of these cells draws, in kilograms. */
function valuesOf(cells: readonly Cell[]): readonly number[] {
  return cells
    .filter((cell) => cell.state === 'known')
    .filter(isWeight)
    .flatMap(({ value }) => drawnWeights(value));
}

function marksOf(scene: Scene, row: OutcomeRow): WeightView['marks'] {
  const values = row.cells
    .filter((cell) => cell.state === 'known')
    .filter(isWeight)
    .map((cell) => cell.value);
  const spreads = values.flatMap((value) => (value.spread === undefined ? [] : [value.spread.share]));
  const whiskers = values.some((value) => value.spread === undefined && value.uncertainty !== undefined);
  const spreadKey = spreads.every((share) => share === 'two-in-three') ? 'spread' : 'spread_mixed';
  const kinds = [
    ...(spreads.length > 0 ? [{ kind: 'spread', key: spreadKey }] : []),
    ...(values.length > 0
      ? [
          { kind: 'average', key: 'average' },
          { kind: 'change', key: 'change' },
        ]
      : []),
    ...(whiskers ? [{ kind: 'uncertainty', key: 'uncertainty' }] : []),
    { kind: 'today', key: 'today' },
  ];
  return kinds.map(({ kind, key }) => ({ kind, words: scene.words.plain(`common.key.${key}`) }));
}

/**
 * Weight at the main horizon for the short table on the first page, else at the longest time known. Like the line of
 * other times, it leaves out what was worked out from another measure: a short cell has no room to say so.
 */
export function weightInShort(
  scene: Pick<Scene, 'comparison'>,
  option: Pick<NamedOption, 'code'>,
): WeightCell | undefined {
  const { main, over } = scene.comparison.weight;
  return [main, ...over.toReversed()]
    .map(({ cells }) => cells.find((cell) => cell.option === option.code))
    .find(
      (cell, index): cell is WeightCell =>
        cell?.state === 'known' && isWeight(cell) && (index === 0 || !cell.value.computed),
    );
}

/** Whether some weight of the short table is of another time than the one asked: then each says its own, and the head none. */
export function saysShortTimes(scene: Scene): boolean {
  const { asked } = scene.comparison.weight.main;
  return scene.options
    .map((option) => weightInShort(scene, option))
    .some((cell) => cell !== undefined && otherTime(scene, asked, cell.lead) !== null);
}

export function shortWeightCell(scene: Scene, option: NamedOption): Markup {
  const known = weightInShort(scene, option);
  if (known === undefined) return scene.words.say('common.table.not_known');
  const weight = figure(weightInWords(scene, known.value.averageKg), sourceOf(known));
  const time = sayLength(scene, known.lead.horizon);
  const words = saysShortTimes(scene)
    ? scene.words.say('common.weight.short_after', { weight, time })
    : weight;
  return withMark(scene, known, withDose(scene, words, known));
}
