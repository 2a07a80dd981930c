import type { Cell, CellValue } from '../model/comparison.ts';
import type { CellChange } from '../model/difference.ts';
import { alignColumns } from './align-columns.ts';
import { showCell, showHorizon, showReason, showValue } from './show-cell.ts';

/** Cells that change, under the outcome and time they belong to: what was shown → what would be, and why. */
export function showCellChanges(changes: readonly CellChange[]): readonly string[] {
  return groupRows(changes).flatMap(showRow);
}

/** Records set aside for another reason, or more of them, while what is shown stays. */
export function isOnlySetAside({ what }: CellChange): boolean {
  return what.length > 0 && what.every((name) => name === 'setAside');
}

interface Row {
  readonly cell: Cell;
  readonly changes: CellChange[];
}

/** Outcomes in the order in which they are first met, their times from early to late. */
function groupRows(changes: readonly CellChange[]): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const change of changes) {
    const cell = change.after ?? change.before;
    if (cell === null) continue;
    const name = `${cell.outcome} ${showHorizon(cell.asked)}`;
    const row = rows.get(name) ?? { cell, changes: [] };
    row.changes.push(change);
    rows.set(name, row);
  }
  const outcomes = [...new Set([...rows.values()].map(({ cell }) => cell.outcome))];
  const place = ({ cell }: Row): number => outcomes.indexOf(cell.outcome) * 10_000 + (cell.asked.months ?? 0);
  return [...rows.values()].sort((a, b) => place(a) - place(b));
}

/** A line for the value, and one for the records where there are any. */
function showRow({ cell, changes }: Row): readonly string[] {
  const lines = alignColumns(
    changes.filter(isTold).flatMap((change) => {
      const why = explain(change);
      const option = (change.after ?? change.before)?.option ?? '';
      return [[option, showValues(change)], ...(why === '' ? [] : [['', why]])];
    }),
    '    ',
  );
  return [`  ${cell.outcome}, ${showHorizon(cell.asked)}${sayShown(changes)}`, ...lines];
}

/** Whether the row is on the pages in one case only: its topic has no place for it, or no option has a figure. */
function sayShown(changes: readonly CellChange[]): string {
  const hidden = changes.find((change) => change.hidden !== undefined)?.hidden;
  return hidden === undefined ? '' : hidden === 'after' ? ' (no longer shown)' : ' (now shown)';
}

/** Of a row that goes, what was not known before and is not now is no news. */
function isTold({ before, after, hidden }: CellChange): boolean {
  return hidden !== 'after' || after?.state === 'known' || nameValue(before) !== nameValue(after);
}

function showValues({ before, after, what }: CellChange): string {
  const [was, is] = [nameValue(before), nameValue(after)];
  if (was !== is) return `${was} → ${is}`;
  const [a, b] = [valueOf(before), valueOf(after)];
  if (a === undefined || b === undefined || !what.includes('value')) return is;
  // Rounded as usual they look alike.
  return a.kind === 'weight' && b.kind === 'weight'
    ? `${a.averageKg.toFixed(2)} kg → ${b.averageKg.toFixed(2)} kg`
    : `${is} (differs in digits not shown)`;
}

function nameValue(cell: Cell | null): string {
  if (cell === null) return 'not in the table';
  if (cell.state === 'known') return showValue(cell.value);
  return cell.state === 'not-known' ? `not known: ${showReason(cell.reason)}` : 'not possible';
}

function valueOf(cell: Cell | null): CellValue | undefined {
  return cell?.state === 'known' ? cell.value : undefined;
}

/** The record that leads, and whatever beside the value is not as it was. */
function explain({ before, after }: CellChange): string {
  const [was, is] = [describeLead(before), describeLead(after)];
  if (was.record === 'none' && is.record === 'none') return '';
  const record = was.record === is.record ? is.record : `${was.record} → ${is.record}`;
  const rest = (['people', 'ledBy', 'others', 'own'] as const).flatMap((part) =>
    was[part] === is[part] ? [] : [`${labels[part]}${was[part]} → ${is[part]}`],
  );
  // Beside a figure that appears or goes there is nothing to compare.
  const isBoth = was.record !== 'none' && is.record !== 'none';
  return [record, ...(isBoth ? rest : [])].join('; ');
}

const labels = { people: '', ledBy: 'leads by ', others: 'others ', own: 'own ' } as const;

type Described = Readonly<Record<'record' | keyof typeof labels, string>>;

function describeLead(cell: Cell | null): Described {
  const none = 'none';
  if (cell?.state !== 'known') return { record: none, people: none, ledBy: none, others: none, own: none };
  const [, people = '', , , record = '', more = ''] = showCell(cell);
  const find = (start: string): string =>
    more
      .split('; ')
      .find((part) => part.startsWith(start))
      ?.slice(start.length) ?? none;
  return { record, people, ledBy: cell.lead.ledBy, others: find('others '), own: find('own ') };
}
