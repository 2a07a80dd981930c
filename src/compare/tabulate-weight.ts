import type { WeightTopic } from '../model/comparison.ts';
import { assessCell } from './build-cell.ts';
import { buildRow, countKnown } from './choose-rows.ts';
import type { OptionDesk } from './describe-option.ts';
import { followWeight } from './follow-weight.ts';
import { standInMonths, weightWindows } from './weigh-time.ts';

/** Months at which weight is mainly shown. */
const mainMonths = 60;

/** Weight at every horizon; the main one is 5 years, else the longest with a figure. */
export function tabulateWeight(desks: readonly OptionDesk[]): WeightTopic {
  const rows = weightWindows.map((window) => buildRow(desks, 'weight-loss', window));
  const atMain = rows.find(({ asked }) => asked.months === mainMonths);
  const knownAtMain = atMain !== undefined && countKnown(atMain) > 0;
  const over = rows.filter(
    (row) => row.asked.months !== standInMonths || (!knownAtMain && countKnown(row) > 0),
  );
  const known = over.filter((row) => countKnown(row) > 0);
  const main = known.find((row) => row === atMain) ??
    known.at(-1) ??
    atMain ?? { outcome: 'weight-loss', asked: {}, cells: [] };
  const courses = desks.flatMap((desk) => {
    const assessed = weightWindows.map((window) => assessCell(desk, 'weight-loss', window));
    return followWeight(desk.code, assessed, main) ?? [];
  });
  return { mainMonths: main.asked.months ?? mainMonths, main, over, courses };
}
