import type { OutcomeRow } from '../model/comparison.ts';
import { assessCell, finishCell, raiseTo } from './build-cell.ts';
import type { Assessed } from './build-cell.ts';
import type { OptionDesk } from './describe-option.ts';
import type { Floor } from './find-contradiction.ts';
import { findCommonStudies } from './find-common-studies.ts';
import { fiveYears, laterWindows } from './weigh-time.ts';
import type { TimeWindow } from './weigh-time.ts';

/** One outcome at one time over all options, from studies that compare them side by side where there are such. */
export function buildRow(desks: readonly OptionDesk[], outcome: string, window: TimeWindow): OutcomeRow {
  return finishRow(
    desks.map((desk) => assessCell(desk, outcome, window)),
    { outcome, asked: window.asked },
  );
}

/** The same for an outcome of which others are a part, whose shares it cannot be below. */
export function buildWholeRow(
  desks: readonly OptionDesk[],
  { outcome, window }: { readonly outcome: string; readonly window: TimeWindow },
  floorOf: (desk: OptionDesk) => Floor | undefined,
): OutcomeRow {
  return finishRow(
    desks.map((desk) => raiseTo(assessCell(desk, outcome, window), floorOf(desk))),
    { outcome, asked: window.asked },
  );
}

function finishRow(
  assessed: readonly Assessed[],
  { outcome, asked }: Pick<OutcomeRow, 'outcome' | 'asked'>,
): OutcomeRow {
  const common = findCommonStudies(
    assessed.map(({ candidates, desk }) => ({ candidates, preferred: desk.preferred })),
  );
  return {
    outcome,
    asked,
    cells: assessed.map((one, index) => finishCell(one, common[index])),
  };
}

/**
 * One outcome of the later years at the one time at which most options have a figure, so that a row never mixes times;
 * of equals at the longest. Without any figure the row is asked at five years.
 */
export function buildBestRow(desks: readonly OptionDesk[], outcome: string): OutcomeRow {
  const rows = laterWindows.map((window) => buildRow(desks, outcome, window));
  const most = Math.max(...rows.map(countKnown));
  const best = rows.find((row) => most > 0 && countKnown(row) === most);
  return best ?? buildRow(desks, outcome, fiveYears);
}

/** In how many options the outcome is known. */
export function countKnown(row: OutcomeRow): number {
  return row.cells.filter(({ state }) => state === 'known').length;
}

/** The rows with a figure, at most `limit`: those known for most options, in their own order. */
export function keepBestRows(rows: readonly OutcomeRow[], limit: number): readonly OutcomeRow[] {
  const known = rows.filter((row) => countKnown(row) > 0);
  const kept = new Set([...known].sort((a, b) => countKnown(b) - countKnown(a)).slice(0, limit));
  return known.filter((row) => kept.has(row));
}

/** The first rows with a figure, at most `limit`. */
export function keepFirstRows(rows: readonly OutcomeRow[], limit: number): readonly OutcomeRow[] {
  return rows.filter((row) => countKnown(row) > 0).slice(0, limit);
}

/** 1,000 when any share is under 1 in 100, else 100: one denominator for the whole table. */
export function chooseDenominator(rows: readonly OutcomeRow[]): 100 | 1000 {
  const shares = rows.flatMap(({ cells }) =>
    cells.flatMap((cell) => (cell.state === 'known' ? sharesOf(cell) : [])),
  );
  return shares.some((share) => share < 0.01) ? 1000 : 100;
}

/** The figure, and what other studies found unless they saw nobody with it. */
function sharesOf(
  cell: Extract<OutcomeRow['cells'][number], { readonly state: 'known' }>,
): readonly number[] {
  if (cell.value.kind !== 'proportion') return [];
  const others = cell.others === undefined ? [] : [cell.others.low, cell.others.high];
  return [cell.value.value, ...others.filter((share) => share > 0)];
}
