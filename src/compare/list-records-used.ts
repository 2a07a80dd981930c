import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Cell, ComparisonTable } from '../model/comparison.ts';
import { isPrintable } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';

type Cells = Pick<ComparisonTable, 'options' | 'weight' | 'topics' | 'furtherHarms'>;

/** Every cell of a table, whatever its topic. */
export function listCells(table: Cells): readonly Cell[] {
  const rows = [
    table.weight.main,
    ...table.weight.over,
    ...table.topics.flatMap(({ picture, rows: own }) => (picture === null ? own : [picture, ...own])),
  ];
  return [
    ...table.options.map(({ stay }) => stay),
    ...rows.flatMap(({ cells }) => cells),
    ...table.furtherHarms,
  ];
}

/** Ids of all records that stand behind a printed figure, sorted, each once. */
export function listRecordsUsed(table: Cells): readonly string[] {
  const ids = listCells(table).flatMap((cell) =>
    cell.state === 'known' ? [cell.lead.record, ...(cell.others?.records ?? [])] : [],
  );
  const courses = table.weight.courses.flatMap(({ points }) => points.map(({ record }) => record));
  return [...new Set([...ids, ...courses])].sort((a, b) => (a < b ? -1 : 1));
}

/**
 * The last gate: whatever the steps before did, a table that holds a figure nobody read at its source is refused.
 * Two records with one id are both looked at.
 */
export function refuseUnverified(table: ComparisonTable, evidence: EvidenceBase): Result<ComparisonTable> {
  const used = new Set(listRecordsUsed(table));
  const known = evidence.records.filter(({ id }) => used.has(id));
  const unread = known.filter((record) => !isPrintable(record)).map(({ id }) => id);
  const strange = [...used].filter((id) => !known.some((record) => record.id === id));
  const faults = [...new Set([...unread, ...strange])].map((id): Diagnostic => ({
    code: 'EVIDENCE_UNVERIFIED',
    severity: 'error',
    message: `the figure ${id} was about to be shown, but nobody has read it at its source`,
    hint: 'Read the source, or leave it out.',
  }));
  return faults.length === 0 ? success(table) : failure(faults);
}
