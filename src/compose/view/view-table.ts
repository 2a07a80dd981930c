import type { Cell, OutcomeRow } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Denominator } from '../round-counts.ts';
import { createNotes } from './notes.ts';
import { sharedDose } from './say-dose.ts';
import { outcomeMeanings } from './say-meanings.ts';
import { noteInWords } from './say-note.ts';
import { sayMissing } from './say-reason.ts';
import { ownTimes, sayAsked, sayLength } from './say-time.ts';
import type { Scene } from './scene.ts';
import { body, lineOf } from './shared-shapes.ts';
import type { ChoiceTableView } from './shared-shapes.ts';
import { isShare } from './say-share.ts';
import { cellLines, keepsCount } from './table-cells.ts';
import { untoldView } from './view-untold.ts';
import { asMarkup, joined } from './words.ts';

/** Columns that fit beside the names and stay readable. */
const mostColumns = 4;

/**
 * Tables of outcomes, options as rows, at most four columns a table. A sentence above says the denominator, and the
 * time where all outcomes share it; else the head of each column says its time.
 */
export function viewTables(
  scene: Scene,
  rows: readonly OutcomeRow[],
  denominator: Denominator,
): readonly ChoiceTableView[] {
  const told = rows.filter(({ cells }) => cells.some(({ state }) => state === 'known'));
  const times = new Set(told.map((row) => sayLength(scene, row.asked)));
  const mixed = told.some(ofSeveralStudies);
  const setting = { denominator, sameTime: times.size <= 1, outcomes: told.length, mixed };
  const tables = shareOut(told).reduce<readonly ChoiceTableView[]>((done, columns) => {
    const notesBefore = done.flatMap(({ notes }) => notes).length;
    return [...done, tableOf(scene, columns, { ...setting, first: done.length === 0, notesBefore })];
  }, []);
  const untold = rows.filter((row) => !told.includes(row));
  if (untold.length === 0) return tables;
  const outcomes = untold.map(({ outcome }) => outcome);
  return [...tables, untoldView(scene, outcomes, whyNone(scene, untold))];
}

/** Whether choices stand one under another whose figures come from different studies. */
function ofSeveralStudies({ cells }: OutcomeRow): boolean {
  return new Set(cells.flatMap((cell) => (cell.state === 'known' ? [cell.lead.study] : []))).size > 1;
}

/** The reason where all cells share it, else that no figure holds: never a reason that is true of some only. */
function whyNone(scene: Scene, rows: readonly OutcomeRow[]): Markup {
  const unknown = rows.flatMap(({ cells }) => cells.filter((cell) => cell.state === 'not-known'));
  const reasons = unknown.map((cell) => sayMissing(scene, cell));
  const [first] = reasons;
  const shared = first !== undefined && reasons.every(({ markup }) => markup === first.markup);
  return shared ? first : scene.words.say('common.table.none_holds');
}

/** Five columns become three and two, not four and one. */
function shareOut(rows: readonly OutcomeRow[]): readonly (readonly OutcomeRow[])[] {
  if (rows.length === 0) return [];
  const tables = Math.ceil(rows.length / mostColumns);
  const each = Math.ceil(rows.length / tables);
  return Array.from({ length: tables }, (_, index) => rows.slice(index * each, (index + 1) * each));
}

interface TableSetting {
  readonly denominator: Denominator;
  readonly sameTime: boolean;
  /** Outcomes over all tables of the topic. */
  readonly outcomes: number;
  readonly first: boolean;
  /** Whether a column of the topic holds figures of different studies. */
  readonly mixed: boolean;
  /** Notes under the tables before it. */
  readonly notesBefore: number;
}

function tableOf(scene: Scene, columns: readonly OutcomeRow[], setting: TableSetting): ChoiceTableView {
  const { denominator, notesBefore } = setting;
  const notes = createNotes(notesBefore);
  const built = scene.options.map((option, index) => {
    const cells = columns.map((column) => column.cells[index]);
    const dose = sharedDose(scene, cells);
    const table = { notes: columns.length > 1 ? notes : null, denominator, sameDose: dose !== null };
    const name = [lineOf('strong', asMarkup(option.name)), ...(dose === null ? [] : [lineOf('small', dose)])];
    const told = cells.map((cell) => ({ lines: cellLines(scene, cell, table) }));
    const row = { group: '', tag: option.tag, cells: [{ lines: name }, ...told] };
    return { row, notesSoFar: notes.all().length };
  });
  const heads = columns.map((column) => headOf(scene, column, setting));
  const meanings = joined(
    ...outcomeMeanings(
      scene,
      columns.map(({ outcome }) => outcome),
    ),
  );
  return {
    lead: [body(leadOf(scene, columns, setting)), ...(meanings.markup === '' ? [] : [body(meanings)])],
    columns: ['', ...heads].map((label) => ({ label, width: '', align: 'start' })),
    rows: built.map(({ row }) => row),
    firstNote: notesBefore + 1,
    notes: notes.all().map((note, at) => ({
      row: built.findIndex(({ notesSoFar }) => notesSoFar > at),
      words: noteInWords(scene, note),
    })),
  };
}

function headOf(scene: Scene, { outcome, asked }: OutcomeRow, { sameTime }: TableSetting): string {
  const name = scene.words.plain(`outcomes.${outcome}.name`);
  return sameTime
    ? name
    : scene.words.plain('common.table.head', { outcome: name, time: sayLength(scene, asked) });
}

/** "Out of 1,000 people, in the first month."; over the first table also what the numbers leave unsaid. */
function leadOf(scene: Scene, columns: readonly OutcomeRow[], setting: TableSetting): Markup {
  const { words, format } = scene;
  const of = format.number(setting.denominator);
  const asked = columns[0]?.asked ?? {};
  const time = sayAsked(scene, asked, 'by');
  const cells = columns.flatMap((column) => column.cells);
  const bases = basesOf(cells);
  // Over cells that all keep the count of their study another number of people would be wrong.
  const form = bases === 'counted' ? 'lead_counted' : 'lead';
  const counted = joined(
    words.say(`common.table.${form}${setting.sameTime ? '' : '_times'}`, { of, time }),
    ...(bases === 'both' ? [words.say('common.table.as_counted')] : []),
  );
  const apart = ownTimes(scene, cells);
  if (!setting.first) return joined(counted, ...apart);
  const more = setting.outcomes > 1;
  return joined(
    counted,
    words.say('common.table.rest'),
    ...(more ? [words.say('common.table.several')] : []),
    ...apart,
    ...(setting.mixed ? [words.say('common.covered.different')] : []),
    ...(more ? [words.say('common.table.no_note')] : []),
  );
}

/** Whether the shares of a table are out of its own number of people, out of those that each study counted, or both. */
function basesOf(cells: readonly Cell[]): 'table' | 'counted' | 'both' {
  const kept = cells.flatMap((cell) => (cell.state === 'known' && isShare(cell) ? [keepsCount(cell)] : []));
  if (!kept.includes(true)) return 'table';
  return kept.includes(false) ? 'both' : 'counted';
}
