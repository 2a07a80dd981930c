import type { Cell, OutcomeRow } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { sharedDose, withDose } from './say-dose.ts';
import { sourceOf } from './say-share.ts';
import { withMark } from './say-soundness.ts';
import { sayLength } from './say-time.ts';
import { isWeight, shortWeight } from './say-weight.ts';
import type { WeightCell } from './say-weight.ts';
import type { NamedOption, Scene } from './scene.ts';
import { body } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { figure, joined, sentence, series } from './words.ts';

/**
 * Weights at the other times asked, in one line: "1 year: 195 lb; 2 years: 190 lb." An option with a line over time
 * has them there, all from one study; here they may come from others.
 */
export function timesLine(scene: Scene, option: NamedOption): readonly Line[] {
  const shown = weightsAtOtherTimes(scene, option);
  const main = cellOf(option, scene.comparison.weight.main);
  const dose = sharedDose(scene, [main, ...shown]);
  const isMainKnown = main?.state === 'known';
  const parts = shown.map((cell): Markup => {
    const average = figure(shortWeight(scene, cell.value.averageKg), sourceOf(cell));
    const weight = withMark(scene, cell, dose === null ? withDose(scene, average, cell) : average);
    const key = isMainKnown ? 'at_time' : 'short_after';
    return scene.words.say(`common.weight.${key}`, { time: sayLength(scene, cell.lead.horizon), weight });
  });
  // One dose for all stands beside the main figure, where there is one.
  const last = dose === null || isMainKnown ? [] : [scene.words.say('common.dose.fact', { dose })];
  const weights = series(scene.words, 'clauses', parts);
  // Right below "not known", which a weight alone would seem to take back.
  const all = isMainKnown ? weights : scene.words.say('common.weight.known_elsewhen', { weights });
  const said = sentence(scene.words, all);
  return parts.length === 0 ? [] : [body(joined(said, ...last))];
}

/** The weights that this line gives. */
function weightsAtOtherTimes(scene: Scene, option: NamedOption): readonly WeightCell[] {
  const { over, mainMonths, courses } = scene.comparison.weight;
  if (courses.some((course) => course.option === option.code)) return [];
  return over
    .filter((row) => row.asked.months !== mainMonths)
    .map((row) => cellOf(option, row))
    .filter((cell): cell is WeightCell => cell?.state === 'known' && isWeight(cell))
    .filter((cell) => !cell.value.computed);
}

function cellOf({ code }: NamedOption, { cells }: OutcomeRow): Cell | undefined {
  return cells.find((cell) => cell.option === code);
}
