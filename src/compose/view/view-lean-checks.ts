import type { Markup } from '../../model/locale.ts';
import type { ReasonCheck } from '../../model/reason-check.ts';
import { denseTable, groupRow } from './dense-table.ts';
import { whyOfReason } from './say-reason-check.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
import type { TableView } from './shared-shapes.ts';

/** For clinicians alone: no template of a patient document may name it. */
export const leanChecksShape = group({
  /** Whether the surgeon has written a coded reason. */
  any: flag,
  /** That reasons are not borne out; empty where all are. */
  flagged: list(markup),
  table: tableShape,
});
export type LeanChecksView = Viewed<typeof leanChecksShape>;

/** How far the case and the evidence bear out the surgeon's coded reasons, option by option. */
export function viewLeanChecks(scene: Scene): LeanChecksView {
  const { reasons } = scene.comparison;
  const count = reasons.filter(({ verdict }) => verdict !== 'supported').length;
  return {
    any: reasons.length > 0,
    flagged: count === 0 ? [] : [scene.words.say('reason-checks.flagged', { count })],
    table: denseTable(columnsOf(scene), rowsOf(scene, reasons)),
  };
}

const widths = { reason: 26, verdict: 14, why: 60 } as const;

function columnsOf({ words }: Scene): TableView['columns'] {
  return Object.entries(widths).map(([key, width]) => ({
    label: words.plain(`reason-checks.columns.${key}`),
    width: String(width),
    align: 'start',
  }));
}

/** A band for what is said of each option, and under it a row a reason. */
function rowsOf(scene: Scene, reasons: readonly ReasonCheck[]): ReturnType<typeof groupRow>[] {
  return reasons.flatMap((check, index) => {
    const before = reasons[index - 1];
    const isNew = before?.option !== check.option || before.stance !== check.stance;
    const row = { group: '', cells: cellsOf(scene, check) };
    return isNew ? [groupRow(headOf(scene, check)), row] : [row];
  });
}

function headOf({ words }: Scene, { stance, option }: ReasonCheck): string {
  return words.plain(`reason-checks.stance.${stance}`, { option: words.plain(`options.${option}.in_text`) });
}

function cellsOf(scene: Scene, check: ReasonCheck): readonly Markup[] {
  return [
    scene.words.say(`codes.reasons.${check.code}`),
    scene.words.say(`reason-checks.verdict.${check.verdict}`),
    whyOfReason(scene, check),
  ];
}
