import type { KnownCell, RecordUse } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { knownCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import { shortId, shortTime } from './clinician-ids.ts';
import {
  exactValue,
  exactWeight,
  intervalOf,
  measured,
  measuredAt,
  weightInterval,
} from './clinician-interval.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import { createNotes } from './notes.ts';
import type { Notes } from './notes.ts';
import { saySetAside } from './say-reason.ts';
import { sourceOf } from './say-share.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { body } from './shared-shapes.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup, attached, figure, joined } from './words.ts';

type Shown = ShownCell<KnownCell>;

/** Wide enough that most records take one line; percent of the page. */
const columns = [
  { key: 'record', width: 24.5 },
  { key: 'outcome', width: 15.5 },
  { key: 'time', width: 9.2 },
  { key: 'figure', width: 9.7, align: 'end' },
  { key: 'interval', width: 12.7 },
  { key: 'n', width: 6.6, align: 'end' },
  { key: 'design', width: 11.6 },
  { key: 'match', width: 10.2 },
];

/** What decides that a record leads, from the first to the last, as the sentence over the table explains them. */
const decided: readonly (RecordUse['ledBy'] | 'course')[] = [
  'only-one',
  'clinic-preference',
  'match',
  'time',
  'measure',
  'side-by-side',
  'course',
  'design',
  'dose',
  'size',
  'year',
  'id',
];

/**
 * The figures shown, option by option, exact and unrounded for readers, one line a record where it fits. Over the
 * table stands once what each word of its last column means; under it in what way near people differ.
 */
export function clinicianFigures(scene: Scene): TableView {
  const cells = knownCells(scene.comparison);
  const notes = createNotes();
  const groups = scene.options
    .map((option) => ({
      option,
      rows: rowsOf(
        scene,
        { code: option.code, cells: cells.filter(({ cell }) => cell.option === option.code) },
        notes,
      ),
    }))
    .filter(({ rows }) => rows.length > 0);
  const rows = groups.flatMap((one) => [
    groupRow(one.option.name),
    ...one.rows.map((row) => ({ group: '', cells: row.cells })),
  ]);
  const used = new Set(groups.flatMap((one) => one.rows.map(({ ledBy }) => ledBy)));
  return {
    ...denseTable(labels(scene, 'figures', columns), rows),
    lead: rows.length === 0 ? [] : [body(whyWords(scene, used))],
    notes: notesUnder(scene, { notes, cells }),
  };
}

interface FigureRow {
  readonly cells: readonly Markup[];
  readonly ledBy: (typeof decided)[number];
}

/** What is shown of one option: its cells, then the points of its weight line that no cell shows. */
function rowsOf(
  scene: Scene,
  { code, cells }: { readonly code: string; readonly cells: readonly Shown[] },
  notes: Notes,
): readonly FigureRow[] {
  const records = cells.map(({ cell }) => cell.lead.record);
  return [...cells.map((shown) => cellsOf(scene, shown, notes)), ...courseCells(scene, code, records)];
}

function cellsOf(scene: Scene, shown: Shown, notes: Notes): FigureRow {
  const { cell } = shown;
  const cells = [
    asMarkup(shortId(cell.lead.record)),
    asMarkup(measured(scene, cell)),
    asMarkup(measuredAt(scene, shown)),
    figure(exactValue(scene, shown), sourceOf(cell)),
    asMarkup(intervalOf(scene, shown)),
    asMarkup(sizeOf(scene, cell.lead.n)),
    asMarkup(designOf(scene, cell.lead)),
    matchOf(scene, cell, notes),
  ];
  return { cells, ledBy: cell.lead.ledBy };
}

/** The points of a weight line whose records lead in no cell. */
function courseCells(scene: Scene, code: string, shown: readonly string[]): readonly FigureRow[] {
  const course = scene.comparison.weight.courses.find(({ option }) => option === code);
  const points = (course?.points ?? []).filter(({ record }) => !shown.includes(record));
  return points.map(({ months, value, record: id, cell }) => {
    const record = scene.records.get(id);
    const n = record !== undefined && 'n' in record.value ? record.value.n : undefined;
    const cells = [
      asMarkup(shortId(id)),
      asMarkup(scene.words.plain('clinician-sheet.outcome_weight', { metric: value.metric })),
      asMarkup(shortTime(scene, { months }, 'at')),
      figure(exactWeight(scene, value), { cell, records: [id] }),
      asMarkup(weightInterval(scene, value) ?? scene.words.plain('clinician-sheet.not_stated')),
      asMarkup(sizeOf(scene, n)),
      asMarkup(designOf(scene, { record: id, study: course?.study ?? '' })),
      asMarkup(scene.words.plain('clinician-sheet.led_by.course')),
    ];
    return { cells, ledBy: 'course' };
  });
}

function sizeOf(scene: Scene, n: number | undefined): string {
  return n === undefined ? scene.words.plain('clinician-sheet.not_stated') : scene.format.number(n);
}

/** "RCT 2021". */
function designOf(scene: Scene, source: { readonly record: string; readonly study: string }): string {
  const study = scene.evidence.studies.get(source.study);
  const design = scene.records.get(source.record)?.design ?? study?.design ?? 'cohort';
  const year = study?.citation.year;
  return [
    scene.words.plain(`clinician-sheet.designs.${design}`),
    ...(year === undefined ? [] : [String(year)]),
  ].join(' ');
}

/** Why the record leads; how its people differ where they do; that their BMI was assumed; a projected low weight. */
function matchOf(scene: Scene, cell: KnownCell, notes: Notes): Markup {
  const { words, format } = scene;
  const [difference] = cell.lead.reasons;
  const near =
    difference === undefined
      ? []
      : [
          words.say('clinician-sheet.near', {
            note: format.number(notes.cite(asMarkup(saySetAside(scene, difference)))),
          }),
        ];
  const assumed = isAssumed(cell) ? [words.say('clinician-sheet.bmi_assumed')] : [];
  const warning =
    isWeight(cell) && cell.value.warning !== undefined
      ? [words.say(`clinician-sheet.warning.${cell.value.warning}`)]
      : [];
  const why = asMarkup(words.plain(`clinician-sheet.led_by.${cell.lead.ledBy}`));
  return joined(attached(why, ...near, ...assumed), ...warning);
}

/** Where the people are near because of the BMI assumed, the note on that says it. */
function isAssumed({ lead }: KnownCell): boolean {
  return lead.bmiBasis === 'assumed' && !lead.reasons.some(({ code }) => code === 'bmi-assumed');
}

/** "Only fit: no other record fits this person. …", for the words that the table uses. */
function whyWords(scene: Scene, used: ReadonlySet<string>): Markup {
  const sentences = decided
    .filter((code) => used.has(code))
    .map((code) => scene.words.say(`clinician-sheet.why.${code}`));
  return joined(scene.words.say('clinician-sheet.why.lead'), ...sentences);
}

/** One run of text, since each note is short. */
function notesUnder(
  scene: Scene,
  { notes, cells }: { readonly notes: Notes; readonly cells: readonly Shown[] },
): readonly Markup[] {
  const { words, format } = scene;
  const near = notes
    .all()
    .map((note, index) =>
      words.say('clinician-sheet.near_note', { note: format.number(index + 1), words: note }),
    );
  const parts = [
    ...(near.length === 0 ? [] : [joined(words.say('clinician-sheet.near_lead'), ...near)]),
    ...(cells.some(({ cell }) => isAssumed(cell)) ? [words.say('clinician-sheet.assumed_bmi')] : []),
  ];
  return parts.length === 0 ? [] : [joined(...parts)];
}
