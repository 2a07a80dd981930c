import type { Cell, SetAside } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cellsShown } from './cells-shown.ts';
import { publishedFigure } from './published-figure.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import { saySetAside } from './say-reason.ts';
import { lengthOf, sayLength } from './say-time.ts';
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

/** Reasons named for a cell; the rest are counted together. */
const mostReasons = 3;

/**
 * Records set aside, by reason. Where the page says "not known", each outcome has a row and each reason names ids,
 * because a clinician may want to look; the cells that show a figure share one row an option, with counts.
 */
export function clinicianSetAside(scene: Scene): TableView {
  const cells = cellsShown(scene.comparison).map(({ cell }) => cell);
  const rows = scene.options.flatMap((option) => {
    const mine = cells.filter((cell) => cell.option === option.code && cell.setAside.length > 0);
    return mine.length === 0
      ? []
      : [groupRow(option.name), ...unknownRows(scene, mine), ...shownRow(scene, mine)];
  });
  return denseTable(labels(scene, 'set_aside', columns), rows);
}

interface PlainDenseRow {
  readonly group: string;
  readonly cells: readonly Markup[];
}

/** Outcomes and times with the same reasons share a row. */
function unknownRows(scene: Scene, cells: readonly Cell[]): readonly PlainDenseRow[] {
  const rows = new Map<string, Map<string, string[]>>();
  for (const cell of cells.filter(({ state }) => state !== 'known')) {
    const outcome = scene.words.plain(`outcomes.${cell.outcome}.name`);
    const reasons = reasonsOf(scene, cell.setAside, mostIds);
    const outcomes = rows.get(reasons) ?? new Map<string, string[]>();
    const time = lengthOf(cell.asked) === null ? [] : [sayLength(scene, cell.asked)];
    outcomes.set(outcome, [...(outcomes.get(outcome) ?? []), ...time]);
    rows.set(reasons, outcomes);
  }
  const shown = scene.words.plain('common.table.not_known');
  return [...rows].map(([reasons, outcomes]) => {
    const names = [...outcomes].map(([outcome, times]) => [outcome, ...times].join(', '));
    return { group: '', cells: [names.join('; '), shown, reasons].map(asMarkup) };
  });
}

function shownRow(scene: Scene, cells: readonly Cell[]): readonly PlainDenseRow[] {
  const known = cells.filter(({ state }) => state === 'known');
  if (known.length === 0) return [];
  const outcome = scene.words.plain('clinician-sheet.set_aside.outcomes', { count: known.length });
  const shown = scene.words.plain('clinician-sheet.set_aside.figure_shown');
  const reasons = reasonsOf(
    scene,
    known.flatMap(({ setAside }) => setAside),
    0,
  );
  return [{ group: '', cells: [outcome, shown, reasons].map(asMarkup) }];
}

function reasonsOf(scene: Scene, setAside: readonly SetAside[], ids: number): string {
  const byPhrase = new Map<string, string[]>();
  for (const { record, reason } of setAside) {
    const phrase = saySetAside(scene, reason);
    byPhrase.set(phrase, [...(byPhrase.get(phrase) ?? []), record]);
  }
  const phrases = [...byPhrase].sort(([, a], [, b]) => b.length - a.length);
  const rest = phrases.slice(mostReasons).reduce((sum, [, records]) => sum + records.length, 0);
  const named = phrases
    .slice(0, mostReasons)
    .map(([phrase, records]) => reasonLine(scene, phrase, { records, ids }));
  const more =
    rest === 0
      ? []
      : [scene.words.plain('clinician-sheet.set_aside.other', { n: scene.format.number(rest), count: rest })];
  return [...named, ...more].join('; ');
}

interface ForReason {
  readonly records: readonly string[];
  /** How many ids to name. */
  readonly ids: number;
}

function reasonLine(scene: Scene, reason: string, { records, ids }: ForReason): string {
  const { words, format } = scene;
  const named = records.slice(0, ids).map((id) => withFigure(scene, id));
  const more = records.length - named.length;
  const rest =
    more === 0
      ? []
      : [words.plain('clinician-sheet.set_aside.more', { n: format.number(more), count: more })];
  return words.plain('clinician-sheet.set_aside.reason', { reason, ids: [...named, ...rest].join(', ') });
}

/** The record and what it found, for a clinician who wants to know although it is not for this person. */
function withFigure(scene: Scene, id: string): string {
  const record = scene.records.get(id);
  const found = record === undefined ? null : publishedFigure(record, scene.format);
  return found === null ? shortId(id) : `${shortId(id)}\u00a0=\u00a0${found}`;
}

/** Option and outcome stand in the row already: `30d.mbsaqip-2015-2020`. */
function shortId(record: string): string {
  return record.split('.').slice(2).join('.');
}
