import { join } from 'node:path';

import type { Templates } from '../../src/compose/index.ts';
import { loadTemplates } from '../../src/compose/index.ts';
import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import { openLocale } from '../../src/localize/index.ts';
import type {
  Cell,
  CautionHit,
  ComparisonTable,
  Horizon,
  KnownCell,
  OptionColumn,
  OutcomeRow,
  Proportion,
  RecordUse,
  Topic,
  UnknownCell,
  WeightAt,
  WeightCourse,
} from '../../src/model/comparison.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import type { Block, DocumentTree, Strip, StripRow, Table } from '../../src/model/document.ts';
import type { Locale } from '../../src/model/locale.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import type { Reversibility } from '../../src/model/evidence-rules.ts';
import { makeEvidence, makeRecord, readDefinitions } from './compare-inputs.ts';

/** A comparison written by hand: every kind of cell, invented figures. */
const root = join(import.meta.dirname, '../..');
const workspace = createNodeWorkspace();

export async function realLocale(tag: string): Promise<Locale> {
  const opened = await openLocale(workspace, join(root, 'locales'), tag);
  if (!opened.ok) throw new Error(opened.diagnostics.map(({ message }) => message).join('; '));
  return opened.value;
}

export async function realTemplates(): Promise<Templates> {
  const loaded = await loadTemplates(workspace, join(root, 'templates'));
  if (!loaded.ok) throw new Error(loaded.diagnostics.map(({ message }) => message).join('; '));
  return loaded.value;
}

export const fiveOptions = ['sleeve', 'bypass', 'plication', 'semaglutide', 'no-operation'];
export const tenOptions = [
  'sleeve',
  'bypass',
  'one-anastomosis-bypass',
  'duodenal-switch',
  'band',
  'plication',
  'endoscopic-sleeve',
  'semaglutide',
  'lifestyle',
  'no-operation',
];

export const month: Horizon = { days: 30 };
export const fiveYears: Horizon = { months: 60 };

export function useOf(record: string, changes: Partial<RecordUse> = {}): RecordUse {
  return {
    record,
    study: 'study-a',
    match: 'like-you',
    reasons: [],
    bmiBasis: 'stated-range',
    covered: { bmiLow: 35, bmiHigh: 60, ageLow: 18, ageHigh: 65 },
    ledBy: 'size',
    n: 4000,
    certainty: 'moderate',
    horizon: fiveYears,
    timeBasis: 'at',
    ...changes,
  };
}

interface Place {
  readonly option: string;
  readonly outcome: string;
  readonly asked: Horizon;
}

function idOf({ option, outcome, asked }: Place): string {
  return `${option}/${outcome}/${asked.days === undefined ? `${String(asked.months)}m` : `${String(asked.days)}d`}`;
}

function known(place: Place, value: Proportion | WeightAt, use: Partial<RecordUse>): KnownCell {
  const record = `${place.option}.${place.outcome}.study-a`;
  const basis = place.asked.days === undefined ? 'at' : 'by';
  const lead = useOf(record, { horizon: place.asked, timeBasis: basis, ...use });
  return { ...place, id: idOf(place), state: 'known', setAside: [], value, lead };
}

/** A cell in which `events` of `n` people had it. */
export function shareCell(
  place: Place,
  [events, n]: readonly [events: number, n: number],
  use: Partial<RecordUse> = {},
): KnownCell {
  const zero = events === 0 ? { zero: { n, upper: 1 - 0.025 ** (1 / n) } } : {};
  return known(place, { kind: 'proportion', value: events / n, events, n, ...zero }, { n, ...use });
}

/** A cell with an average weight in kg. */
export function weightCell(place: Place, averageKg: number, value: Partial<WeightAt> = {}): KnownCell {
  const weight: WeightAt = {
    kind: 'weight',
    averageKg,
    changeKg: averageKg - 114.5,
    bmi: averageKg / 1.63 ** 2,
    twlPercent: (1 - averageKg / 114.5) * 100,
    metric: 'TWL',
    computed: false,
    ...value,
  };
  return known(place, weight, {});
}

export function unknownCell(
  place: Place,
  reason: UnknownCell['reason'] = { code: 'no-record' },
): UnknownCell {
  return { ...place, id: idOf(place), state: 'not-known', setAside: [], reason };
}

export function impossibleCell(place: Place): Cell {
  return { ...place, id: idOf(place), state: 'not-possible', setAside: [] };
}

const kinds: Readonly<Record<string, OptionColumn['kind']>> = {
  semaglutide: 'medicine',
  lifestyle: 'programme',
  'no-operation': 'none',
  'endoscopic-sleeve': 'endoscopic',
};

export function columnOf(code: string): OptionColumn {
  const kind = kinds[code] ?? 'operation';
  const stay = { option: code, outcome: 'hospital-stay', asked: {} };
  const treated = kind === 'operation' || kind === 'endoscopic';
  return {
    code,
    figuresFrom: code === 'no-operation' ? 'usual-care' : code,
    kind,
    indication: treated ? 'first-operation' : 'none',
    standing: { maturity: code === 'plication' ? 'under-study' : 'established', entries: [] },
    reversibility: {
      possible: treated ? 'partly' : 'yes',
      changeTo: treated ? ['bypass', 'duodenal-switch'] : [],
      weightAfterKnown: true,
      goneBefore: [],
    },
    stay: treated
      ? { ...unknownCell(stay), id: `${code}/stay` }
      : { ...impossibleCell(stay), id: `${code}/stay` },
  };
}

type CellMaker = (place: Place) => Cell;

/** A row whose named options have a cell of their own; the others are not known. */
export function rowOf(
  options: readonly string[],
  [outcome, asked]: readonly [outcome: string, asked: Horizon],
  cells: Readonly<Record<string, CellMaker>>,
): OutcomeRow {
  const make = (option: string): Cell => (cells[option] ?? unknownCell)({ option, outcome, asked });
  return { outcome, asked, cells: options.map(make) };
}

const near: Partial<RecordUse> = {
  match: 'near',
  reasons: [{ code: 'bmi-mean-only', mean: 45.9, yours: 43.1 }],
  bmiBasis: 'mean-only',
};

export function topicsOf(options: readonly string[]): readonly Topic[] {
  const row = (outcome: string, asked: Horizon, cells: Readonly<Record<string, CellMaker>>): OutcomeRow =>
    rowOf(options, [outcome, asked], cells);
  const others = { low: 0.018, high: 0.031, records: ['sleeve.other.study-b'] };
  return [
    {
      id: 'first-month',
      denominator: 1000,
      picture: {
        ...row('major-complication', month, {
          sleeve: (place) => ({ ...shareCell(place, [24, 1000]), others }),
          bypass: (place) => shareCell(place, [37, 1000], near),
          plication: (place) => shareCell(place, [0, 212]),
          semaglutide: impossibleCell,
          'no-operation': (place) => shareCell(place, [6, 10_000]),
        }),
        denominator: 1000,
      },
      rows: [
        row('death', month, {
          sleeve: (place) => shareCell(place, [6, 10_000]),
          bypass: (place) => shareCell(place, [3, 1000]),
        }),
        row('leak', month, {
          sleeve: (place) => ({
            ...shareCell(place, [6, 1000]),
            own: {
              events: 1,
              n: 212,
              days: 30,
              from: '2021-01',
              to: '2025-12',
              surgeon: 'surgeon-1',
              tooFew: false,
              score: { low: 0.0008, high: 0.0262 },
            },
          }),
          plication: (place) => ({
            ...shareCell(place, [0, 31]),
            own: {
              events: 0,
              n: 12,
              days: 30,
              from: '2021',
              to: '2025',
              surgeon: 'surgeon-1',
              tooFew: true,
              score: { low: 0, high: 0.2 },
            },
          }),
          semaglutide: impossibleCell,
        }),
        row('bleeding', month, {
          sleeve: (place) => shareCell(place, [9, 1000]),
          bypass: (place) => shareCell(place, [15, 1000]),
        }),
        row('clot', month, {}),
        row('reoperation', month, { sleeve: (place) => shareCell(place, [2, 50]) }),
      ],
    },
    {
      id: 'later-years',
      denominator: 100,
      picture: {
        ...row('reoperation', fiveYears, {
          sleeve: (place) => shareCell(place, [23, 100], { horizon: { months: 72 }, timeBasis: 'by' }),
          bypass: (place) => shareCell(place, [9996, 10_000]),
        }),
        denominator: 100,
      },
      rows: [row('ulcer', fiveYears, { bypass: (place) => shareCell(place, [5, 100]) })],
    },
    {
      id: 'living-with-it',
      denominator: 100,
      picture: null,
      rows: [row('reflux', fiveYears, { sleeve: (place) => shareCell(place, [31, 100]) })],
    },
    { id: 'benefits', denominator: 100, picture: null, rows: [] },
  ];
}

/** The comparison of the woman of `makeCase`: 114.5 kg, 163 cm. */
export function makeComparison(
  options: readonly string[],
  changes: Partial<ComparisonTable> = {},
): ComparisonTable {
  const weightRow = (months: number, cells: Readonly<Record<string, CellMaker>>): OutcomeRow =>
    rowOf(options, ['weight-loss', { months }], cells);
  const spread = { low: 82, high: 105, basis: 'sd', share: 'two-in-three' } as const;
  const main = weightRow(60, {
    sleeve: (place) => weightCell(place, 93.4, { spread }),
    bypass: (place) =>
      weightCell(place, 86.2, { uncertainty: { low: 84, high: 88 }, computed: true, metric: 'EWL' }),
    plication: (place) => unknownCell(place, { code: 'other-time', longestMonths: 36 }),
    semaglutide: (place) => unknownCell(place, { code: 'bmi-outside', low: 50, yours: 43.1 }),
    'no-operation': (place) => weightCell(place, 116.1, {}),
  });
  const oneYear = weightRow(12, {
    sleeve: (place) => weightCell(place, 80, { spread }),
    semaglutide: (place) => weightCell(place, 96),
  });
  const course: WeightCourse = {
    option: 'sleeve',
    study: 'study-a',
    points: [oneYear, main].flatMap(({ cells }) =>
      cells.flatMap((cell) =>
        cell.option === 'sleeve' && cell.state === 'known' && cell.value.kind === 'weight'
          ? [{ months: cell.asked.months ?? 0, value: cell.value, record: cell.lead.record, cell: cell.id }]
          : [],
      ),
    ),
  };
  const topics = topicsOf(options);
  const table: ComparisonTable = {
    person: {
      age: 45,
      sex: 'female',
      weightKg: 114.5,
      heightM: 1.63,
      bmi: 43.1,
      threshold: 'standard',
      conditions: [],
      pregnantNow: false,
      asked: 'first-operation',
    },
    evidence: { version: '2026.11', date: '2026-11-25', nextReview: '2027-11-25', digest: '0'.repeat(64) },
    options: options.map(columnOf),
    weight: { mainMonths: 60, main, over: [oneYear, main], courses: [course] },
    topics,
    furtherHarms: [],
    cautions: [],
    conflicts: [],
    mortalityScore: null,
    reasons: [],
    notes: [],
    recordsUsed: [],
    ...changes,
  };
  return withRecords(table);
}

/** The comparison with the records that its cells name. */
export function withRecords(table: ComparisonTable): ComparisonTable {
  const topicRows = table.topics.flatMap(({ picture, rows }) => [
    ...(picture === null ? [] : [picture]),
    ...rows,
  ]);
  const cells = [table.weight.main, ...table.weight.over, ...topicRows].flatMap((row) => row.cells);
  const used = cells.flatMap((cell) =>
    cell.state === 'known' ? [cell.lead.record, ...(cell.others?.records ?? [])] : [],
  );
  return { ...table, recordsUsed: [...new Set(used)].sort((a, b) => (a < b ? -1 : 1)) };
}

export const refluxHit: CautionHit = {
  id: 'reflux-sleeve',
  options: ['sleeve'],
  effect: 'extra-risk',
  strength: 'strong',
  basis: 'page',
  triggers: ['condition:reflux'],
};

export const practiceHit: CautionHit = {
  id: 'bmi-very-high-others',
  options: ['plication'],
  effect: 'extra-risk',
  strength: 'weak',
  basis: 'practice',
  triggers: ['bmi'],
};

/** A row on undoing an option that was read on a page, changed as asked. */
export function undoingOf(option: string, changes: Partial<Reversibility> = {}): Reversibility {
  return {
    option,
    undo: {
      possible: 'partly',
      how: 'A second operation.',
      what_remains: 'Scars.',
      weight_after: { statement: 'Some of it returns.', basis: 'page', study: 'study-a' },
      data: [],
    },
    change_to: [],
    sources: [{ study: 'study-a', seen: 'page' }],
    ...changes,
  };
}

/** Evidence that holds the records of a comparison, all read on a page unless said otherwise. */
export function evidenceFor(
  comparison: ComparisonTable,
  changes: Partial<EvidenceBase> = {},
  unread: readonly string[] = [],
): EvidenceBase {
  const records = comparison.recordsUsed.map((id) =>
    makeRecord({ id, seen: unread.includes(id) ? 'memory' : 'page' }),
  );
  const caution = {
    options: ['sleeve'],
    effect: 'extra-risk' as const,
    statement: 'A statement for clinicians.',
    strength: 'strong' as const,
  };
  return {
    ...makeEvidence(records),
    nextReview: '2027-11-25',
    reversibility: new Map(
      comparison.options.map(({ figuresFrom }) => [figuresFrom, undoingOf(figuresFrom)]),
    ),
    definitions: readDefinitions(),
    cautions: [
      {
        ...caution,
        id: 'reflux-sleeve',
        when: {},
        basis: 'page',
        seen: 'page',
        sources: [{ study: 'study-a', seen: 'page' }],
      },
      {
        ...caution,
        id: 'bmi-very-high-others',
        when: {},
        basis: 'practice',
        seen: 'memory',
        sources: [{ seen: 'memory' }],
        ask: 'Ask.',
      },
    ],
    ...changes,
  };
}

/** All text of a document, a line a text, with the furniture's. */
export function textOf(tree: DocumentTree): string {
  return expectedText(tree)
    .map(({ text }) => text)
    .join('\n');
}

/** Every block of a type, also those inside topics. */
export function blocksOfType<T extends Block['type']>(
  tree: DocumentTree,
  type: T,
): readonly Extract<Block, { type: T }>[] {
  const all = tree.blocks.flatMap((block) => (block.type === 'topic' ? [block, ...block.blocks] : [block]));
  return all.filter((block): block is Extract<Block, { type: T }> => block.type === type);
}

export function topicNamed(
  tree: DocumentTree,
  question: string,
): { readonly strips: readonly Strip[]; readonly tables: readonly Table[]; readonly text: string } {
  const topic = blocksOfType(tree, 'topic').find((block) => block.question === question);
  if (topic === undefined) throw new Error(`no topic ${question}`);
  return {
    strips: topic.blocks.filter((block) => block.type === 'strip'),
    tables: topic.blocks.filter((block) => block.type === 'table'),
    text: textOf({ ...tree, blocks: [topic] }),
  };
}

/** Words of a row, a paragraph a line. */
export function wordsOf(row: StripRow | undefined): readonly string[] {
  return (row?.words ?? []).map(({ inlines }) => inlines.map(({ value }) => value).join(''));
}
