import type { KnownCell, RecordUse, WeightCourse, WeightPoint } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { isPrinted } from '../../model/printed-figures.ts';
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
import type { DenseRow } from './dense-table.ts';
import { createNotes } from './notes.ts';
import type { Notes } from './notes.ts';
import { saySetAside } from './say-reason.ts';
import { sourceOf } from './say-share.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
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

/** A table of figures under its heading. */
export const figurePartShape = group({ heading: text, intro: list(markup), table: tableShape });
export type FigurePart = Viewed<typeof figurePartShape>;

const kinds = ['printed', 'not_printed'] as const;

/** Whether a figure of a cell, and the record behind it, belong in a part. */
type Wanted = (cell: string, record: string) => boolean;

/**
 * The figures that fit this person, exact and unrounded for readers, one line a record where it fits: first those that
 * the patient pages of this packet print, then those that none prints, each option by option. Over the first stands once
 * what each word of the last column means; under the last in what way near people differ.
 */
export function clinicianFigures(scene: Scene): readonly FigurePart[] {
  const { words, printed = new Set() } = scene;
  const notes = createNotes();
  const parts = kinds
    .map((kind) => {
      const isWanted: Wanted = (cell, record) => isPrinted(printed, cell, record) === (kind === 'printed');
      return { kind, ...partOf(scene, isWanted, notes) };
    })
    .filter(({ rows }) => rows.length > 0);
  const used = new Set(parts.flatMap(({ ledBy }) => ledBy));
  const told = [words.say('clinician-sheet.abbreviations'), whyWords(scene, used)];
  return parts.map(({ kind, rows }, index) => ({
    heading: words.plain(`clinician-sheet.figures.${kind}`),
    intro: [
      ...(kind === 'printed' ? [] : [words.say('clinician-sheet.figures.not_printed_why')]),
      ...(index === 0 ? told : []),
    ],
    table: {
      ...denseTable(labels(scene, 'figures', columns), rows),
      notes: index === parts.length - 1 ? notesUnder(scene, notes) : [],
    },
  }));
}

interface FigureRow {
  readonly cells: readonly Markup[];
  readonly ledBy: (typeof decided)[number];
}

interface Part {
  readonly rows: readonly DenseRow[];
  readonly ledBy: readonly FigureRow['ledBy'][];
}

/** The wanted figures, a band an option that has any. */
function partOf(scene: Scene, isWanted: Wanted, notes: Notes): Part {
  const cells = knownCells(scene.comparison);
  const groups = scene.options
    .map(({ code, name }) => {
      const mine = cells.filter(({ cell }) => cell.option === code);
      return { name, rows: rowsOf(scene, { code, cells: mine, isWanted }, notes) };
    })
    .filter(({ rows }) => rows.length > 0);
  return {
    rows: groups.flatMap(({ name, rows }) => [
      groupRow(name),
      ...rows.map((row) => ({ group: '', cells: row.cells })),
    ]),
    ledBy: groups.flatMap(({ rows }) => rows.map(({ ledBy }) => ledBy)),
  };
}

interface Asked {
  readonly code: string;
  readonly cells: readonly Shown[];
  readonly isWanted: Wanted;
}

/** What is wanted of one option: its cells, then the points of its weight line that no cell shows. */
function rowsOf(scene: Scene, { code, cells, isWanted }: Asked, notes: Notes): readonly FigureRow[] {
  const leads = cells.map(({ cell }) => cell.lead.record);
  return [
    ...cells
      .filter(({ cell }) => isWanted(cell.id, cell.lead.record))
      .map((shown) => cellsOf(scene, shown, notes)),
    ...coursePoints(scene, code)
      .filter(({ cell, record }) => !leads.includes(record) && isWanted(cell, record))
      .map((point) => courseRow(scene, point)),
  ];
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

type Point = WeightPoint & Pick<WeightCourse, 'study'>;

function coursePoints({ comparison }: Scene, code: string): readonly Point[] {
  const course = comparison.weight.courses.find(({ option }) => option === code);
  return (course?.points ?? []).map((point) => ({ ...point, study: course?.study ?? '' }));
}

/** A point of a weight line whose record leads in no cell. */
function courseRow(scene: Scene, { months, value, record: id, cell, study }: Point): FigureRow {
  const record = scene.records.get(id);
  const n = record !== undefined && 'n' in record.value ? record.value.n : undefined;
  const cells = [
    asMarkup(shortId(id)),
    asMarkup(scene.words.plain('clinician-sheet.outcome_weight', { metric: value.metric })),
    asMarkup(shortTime(scene, { months }, 'at')),
    figure(exactWeight(scene, value), { cell, records: [id] }),
    asMarkup(weightInterval(scene, value) ?? scene.words.plain('clinician-sheet.not_stated')),
    asMarkup(sizeOf(scene, n)),
    asMarkup(designOf(scene, { record: id, study })),
    asMarkup(scene.words.plain('clinician-sheet.led_by.course')),
  ];
  return { cells, ledBy: 'course' };
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
function notesUnder(scene: Scene, notes: Notes): readonly Markup[] {
  const { words, format } = scene;
  const near = notes
    .all()
    .map((note, index) =>
      words.say('clinician-sheet.near_note', { note: format.number(index + 1), words: note.words }),
    );
  const assumed = knownCells(scene.comparison).some(({ cell }) => isAssumed(cell));
  const parts = [
    ...(near.length === 0 ? [] : [joined(words.say('clinician-sheet.near_lead'), ...near)]),
    ...(assumed ? [words.say('clinician-sheet.assumed_bmi')] : []),
  ];
  return parts.length === 0 ? [] : [joined(...parts)];
}
