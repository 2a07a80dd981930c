import type { Cell, KnownCell, OutcomeRow } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import type { Denominator } from '../round-counts.ts';
import { createNotes } from './notes.ts';
import type { Notes } from './notes.ts';
import { amountInWords } from './say-amount.ts';
import { doseInWords, sharedDose } from './say-dose.ts';
import { sayMissing, sayNear, unknownNote } from './say-reason.ts';
import { couldBeOutOf, fewPeopleInWords, isShare, restInWords, shareInTable, sourceOf } from './say-share.ts';
import type { ShareCell } from './say-share.ts';
import { isFirstMonth, otherTime, sayLength, sayTime } from './say-time.ts';
import type { Scene } from './scene.ts';
import { body, lineOf } from './shared-shapes.ts';
import type { Line, TableView } from './shared-shapes.ts';
import { asMarkup, bold, figure, joined } from './words.ts';

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
): readonly TableView[] {
  const told = rows.filter(({ cells }) => cells.some(({ state }) => state === 'known'));
  const times = new Set(told.map((row) => sayLength(scene, row.asked)));
  const setting = { denominator, sameTime: times.size <= 1, outcomes: told.length };
  const tables = shareOut(told).map((columns, index) =>
    tableOf(scene, columns, { ...setting, first: index === 0 }),
  );
  const untold = rows.filter((row) => !told.includes(row));
  return untold.length === 0 ? tables : [...tables, untoldView(scene, untold)];
}

/** Outcomes that are not known for any option take a sentence, not a table of gaps. */
function untoldView(scene: Scene, rows: readonly OutcomeRow[]): TableView {
  const names = rows.map(({ outcome }) => scene.words.plain(`outcomes.${outcome}.name`));
  const outcomes = scene.format.list(
    names.map((name) => scene.words.plain('common.quote', { words: name })),
    'and',
  );
  return {
    lead: [body(joined(scene.words.say('common.table.none_known', { outcomes }), whyNone(scene, rows)))],
    columns: [],
    rows: [],
    notes: [],
  };
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
}

function tableOf(scene: Scene, columns: readonly OutcomeRow[], setting: TableSetting): TableView {
  const notes = createNotes();
  const { denominator } = setting;
  const rows = scene.options.map((option, index) => {
    const cells = columns.map((column) => column.cells[index]);
    const dose = sharedDose(scene, cells);
    const table = { notes, denominator, sameDose: dose !== null };
    const name = [lineOf('strong', asMarkup(option.name)), ...(dose === null ? [] : [lineOf('small', dose)])];
    return {
      group: '',
      tag: option.tag,
      cells: [{ lines: name }, ...cells.map((cell) => ({ lines: cellLines(scene, cell, table) }))],
    };
  });
  const heads = columns.map((column) => headOf(scene, column, setting));
  const meanings = meaningsOf(scene, columns);
  return {
    lead: [body(leadOf(scene, columns, setting)), ...(meanings.markup === '' ? [] : [body(meanings)])],
    columns: ['', ...heads].map((label) => ({ label, width: '', align: 'start' })),
    rows,
    notes: notes.all(),
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
  const time = isFirstMonth(asked) ? words.plain('codes.time.first_month') : sayTime(scene, asked, 'by');
  const lead = setting.sameTime
    ? words.say('common.table.lead', { of, time })
    : words.say('common.table.lead_times', { of });
  if (!setting.first) return lead;
  const several = setting.outcomes > 1 ? [words.say('common.table.several')] : [];
  return joined(lead, words.say('common.table.rest'), ...several, words.say('common.table.no_note'));
}

function meaningsOf(scene: Scene, columns: readonly OutcomeRow[]): Markup {
  const { words, evidence } = scene;
  const plain = new Set(evidence.outcomes.filter((outcome) => outcome.plain).map(({ code }) => code));
  return joined(
    ...columns
      .filter(({ outcome }) => !plain.has(outcome))
      .flatMap(({ outcome }) => [
        bold(words.say('common.table.meaning', { outcome: words.plain(`outcomes.${outcome}.name`) })),
        words.say(`outcomes.${outcome}.explained`),
      ]),
  );
}

interface InTable {
  readonly notes: Notes;
  readonly denominator: Denominator;
  /** All figures of the row are of one dose of a medicine, which its name says. */
  readonly sameDose: boolean;
}

function cellLines(scene: Scene, cell: Cell | undefined, table: InTable): readonly Line[] {
  const notKnown = body(scene.words.say('common.table.not_known'));
  // That no study was found needs no note: the sentence over the table says it.
  if (cell === undefined || (cell.state === 'not-known' && cell.reason.code === 'no-record'))
    return [notKnown];
  switch (cell.state) {
    case 'not-possible':
      return [body(scene.words.say('common.table.not_possible'))];
    case 'not-known':
      return [unknownWithNote(scene, unknownNote(scene, cell), table.notes)];
    case 'known':
      return knownLines(scene, cell, table);
  }
}

function knownLines(scene: Scene, cell: KnownCell, table: InTable): readonly Line[] {
  const time = otherTime(scene, cell.asked, cell.lead);
  const remarks = [
    isShare(cell) && cell.value.zero !== undefined ? zeroNote(scene, cell, table.denominator) : null,
    isShare(cell) && hasFewest(cell)
      ? fewestNote(scene, cell, table.denominator)
      : fewPeopleInWords(scene, cell),
    sayNear(scene, cell),
    table.sameDose ? null : doseInWords(scene, cell),
  ].filter((remark) => remark !== null);
  const beside = [
    ...(time === null ? [] : [asMarkup(time)]),
    ...(remarks.length === 0 ? [] : [citeNotes(scene, remarks, table.notes)]),
  ];
  const value = valueLine(scene, cell, table.denominator);
  return beside.length === 0 ? [value] : [value, lineOf('small', separated(beside))];
}

function valueLine(scene: Scene, cell: KnownCell, denominator: Denominator): Line {
  if (!isShare(cell)) return body(amountInWords(scene, cell));
  if (hasFewest(cell)) return body(countedInTable(scene, cell));
  const share = roundShare(cell.value, denominator);
  const words = figure(shareInTable(scene, share), sourceOf(cell));
  return share.kind === 'count' || share.kind === 'everyone' ? lineOf('number', words) : body(words);
}

/** One or two events say that it happens, not how often: the count is printed, never a rate. */
const fewestEvents = 3;

function hasFewest({ value }: ShareCell): boolean {
  return (
    value.events !== undefined && value.n !== undefined && value.events > 0 && value.events < fewestEvents
  );
}

/** "1 of 130". */
function countedInTable(scene: Scene, cell: ShareCell): Markup {
  const { events = 0, n = 0 } = cell.value;
  const { format, words } = scene;
  const counted = words.plain('common.share.counted', { events: format.number(events), n: format.number(n) });
  return figure(counted, sourceOf(cell));
}

/** “1 of 130”: how many that could be out of the table's denominator. */
function fewestNote(scene: Scene, cell: ShareCell, denominator: Denominator): Markup {
  const lead = scene.words.say('common.table.few_note', { counted: countedInTable(scene, cell) });
  const range = couldBeOutOf(scene, cell, denominator);
  return range === null ? (fewPeopleInWords(scene, cell) ?? lead) : joined(lead, range);
}

/** “None of 212”: how many there could be all the same. */
function zeroNote(scene: Scene, cell: ShareCell, denominator: Denominator): Markup {
  const n = scene.format.number(cell.value.zero?.n ?? 0);
  return joined(scene.words.say('common.table.zero_note', { n }), restInWords(scene, cell, denominator));
}

/** "within 17 months, note 2": what stands in small type under a figure, on one line where it fits. */
function separated(parts: readonly Markup[]): Markup {
  return { markup: parts.map(({ markup }) => markup).join(', ') };
}

function unknownWithNote(scene: Scene, remark: Markup, notes: Notes): Line {
  const note = scene.format.number(notes.cite(remark));
  return body(scene.words.say('common.table.not_known_note', { note }));
}

function citeNotes(scene: Scene, remarks: readonly Markup[], notes: Notes): Markup {
  const numbers = remarks.map((remark) => notes.cite(remark)).toSorted((a, b) => a - b);
  const list = scene.format.list(
    numbers.map((number) => scene.format.number(number)),
    'and',
  );
  return scene.words.say('common.table.note', { list, count: numbers.length });
}
