import type { WeightTopic } from '../model/comparison.ts';
import { buildRow, countKnown } from './choose-rows.ts';
import type { OptionDesk } from './describe-option.ts';
import { weightWindows } from './weigh-time.ts';

/** Months at which weight is mainly shown. */
const mainMonths = 60;

/** Weight at every horizon; the main one is 5 years, else the longest with a figure. */
export function tabulateWeight(desks: readonly OptionDesk[]): WeightTopic {
  const over = weightWindows.map((window) => buildRow(desks, 'weight-loss', window));
  const atMain = over.find(({ asked }) => asked.months === mainMonths);
  const known = over.filter((row) => countKnown(row) > 0);
  const main = known.find((row) => row === atMain) ?? known.at(-1) ?? atMain;
  return {
    mainMonths: main?.asked.months ?? mainMonths,
    main: main ?? { outcome: 'weight-loss', asked: {}, cells: [] },
    over,
  };
}
