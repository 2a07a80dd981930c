import type { Cell, ComparisonTable, Horizon } from '../model/comparison.ts';
import type { CellChange, TableDifference } from '../model/difference.ts';
import { buildTopicRow } from './build-topic-row.ts';
import type { CompareInput } from './compare-options.ts';
import { compareTables } from './compare-tables.ts';
import { describeOption } from './describe-option.ts';
import type { OptionDesk } from './describe-option.ts';
import { describeSubject } from './describe-person.ts';
import { anyTime, firstMonth, laterWindows, weightWindows } from './weigh-time.ts';
import type { TimeWindow } from './weigh-time.ts';

/** A comparison and what it was made from. */
export interface Compared {
  readonly input: CompareInput;
  readonly table: ComparisonTable;
}

/**
 * In what two comparisons differ. A topic shows only some rows, so that a cell may be in one table alone although both
 * cases have the option: such a cell is worked out for the other case too, and marked as not shown there, so that its
 * reason can be told.
 */
export function compareCases(before: Compared, after: Compared): TableDifference {
  const difference = compareTables(before.table, after.table);
  const [was, is] = [describeDesks(before.input), describeDesks(after.input)];
  const cells = difference.cells.map((change): CellChange => {
    const shown = change.before ?? change.after;
    if (shown === null || (change.before !== null && change.after !== null)) return change;
    return change.before === null
      ? fill(change, 'before', buildHidden(was, before.input, shown))
      : fill(change, 'after', buildHidden(is, after.input, shown));
  });
  return { ...difference, cells };
}

function fill(change: CellChange, hidden: 'before' | 'after', cell: Cell | undefined): CellChange {
  return cell === undefined ? change : { ...change, [hidden]: cell, hidden };
}

function describeDesks({ case: given, clinic, evidence, date }: CompareInput): readonly OptionDesk[] {
  const subject = describeSubject(given, evidence, date);
  const setting = { subject, evidence, clinic, surgeon: given.plan.surgeon };
  return given.decision.options.flatMap((code) => describeOption(code, setting) ?? []);
}

/** The cell as its row would have it; undefined where the case does not have the option. */
function buildHidden(
  desks: readonly OptionDesk[],
  { evidence }: CompareInput,
  { option, outcome, asked }: Cell,
): Cell | undefined {
  if (desks.every(({ code }) => code !== option)) return undefined;
  const row = buildTopicRow(desks, evidence.topics, { outcome, window: findWindow(outcome, asked) });
  return row.cells.find((cell) => cell.option === option);
}

function findWindow(outcome: string, asked: Horizon): TimeWindow {
  if (asked.days !== undefined) return firstMonth;
  const windows = outcome === 'weight-loss' ? weightWindows : laterWindows;
  return windows.find((window) => window.asked.months === asked.months) ?? anyTime;
}
