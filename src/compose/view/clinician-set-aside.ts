import type { Cell, SetAside } from '../../model/comparison.ts';
import { cellsShown } from './cells-shown.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import { saySetAside } from './say-reason.ts';
import { sayLength, lengthOf } from './say-time.ts';
import type { Scene } from './scene.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup } from './words.ts';

const columns = [
  { key: 'outcome', width: 24 },
  { key: 'shown', width: 12 },
  { key: 'records', width: 64 },
];

/** Ids named for each reason; the rest are counted. The command `plainleaf compare` lists them all. */
const mostIds = 2;

/**
 * Records set aside, cell by cell, by reason. Where the page says "not known" each reason names ids, because a
 * clinician may want to look; where a figure is shown, reasons are counted.
 */
export function clinicianSetAside(scene: Scene): TableView {
  const cells = cellsShown(scene.comparison).map(({ cell }) => cell);
  const rows = scene.options.flatMap((option) => {
    const mine = cells.filter((cell) => cell.option === option.code && cell.setAside.length > 0);
    if (mine.length === 0) return [];
    return [groupRow(option.name), ...mine.map((cell) => ({ group: '', cells: cellsOf(scene, cell) }))];
  });
  return denseTable(labels(scene, 'set_aside', columns), rows);
}

function cellsOf(scene: Scene, cell: Cell): readonly ReturnType<typeof asMarkup>[] {
  const outcome = scene.words.plain(`outcomes.${cell.outcome}.name`);
  const time = lengthOf(cell.asked) === null ? '' : `, ${sayLength(scene, cell.asked)}`;
  const shown = scene.words.plain(cell.state === 'known' ? 'clinician-sheet.set_aside.figure_shown' : 'common.table.not_known');
  return [asMarkup(`${outcome}${time}`), asMarkup(shown), asMarkup(reasonsOf(scene, cell))];
}

function reasonsOf(scene: Scene, cell: Cell): string {
  const byReason = new Map<string, SetAside[]>();
  for (const entry of cell.setAside) {
    const code = entry.reason.code;
    byReason.set(code, [...(byReason.get(code) ?? []), entry]);
  }
  return [...byReason.values()].map((entries) => reasonLine(scene, entries, cell.state === 'known')).join('; ');
}

function reasonLine(scene: Scene, entries: readonly SetAside[], countOnly: boolean): string {
  const { words, format } = scene;
  const [first] = entries;
  if (first === undefined) return '';
  const named = countOnly ? [] : entries.slice(0, mostIds).map((entry) => shortId(entry.record));
  const more = entries.length - named.length;
  const rest = more === 0 ? [] : [words.plain('clinician-sheet.set_aside.more', { n: format.number(more), count: more })];
  return words.plain('clinician-sheet.set_aside.reason', {
    reason: saySetAside(scene, first.reason),
    ids: [...named, ...rest].join(', '),
  });
}

/** Option and outcome stand in the row already: `30d.mbsaqip-2015-2020`. */
function shortId(record: string): string {
  return record.split('.').slice(2).join('.');
}
