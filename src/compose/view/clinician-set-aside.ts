import type { Cell, SetAsideReason } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { withoutTags } from '../markup/escape-text.ts';
import { cellsShown } from './cells-shown.ts';
import { kinds, sayReason } from './clinician-reasons.ts';
import type { SaidReason } from './clinician-reasons.ts';
import { asideRuns } from './clinician-runs.ts';
import type { Aside, ReasonRun } from './clinician-runs.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import type { DenseRow } from './dense-table.ts';
import type { Scene } from './scene.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup, joined } from './words.ts';

/** A row is never parted between pages, so a long list of ids takes several. Some fifteen lines. */
const mostCharacters = 1300;

const columns = [
  { key: 'reason', width: 24 },
  { key: 'records', width: 76 },
];

/**
 * Every record that was not used: under a band for what sets it apart a row for each reason, then by option and
 * outcome, the ids in runs of text.
 */
export function clinicianSetAside(scene: Scene): TableView {
  const asides = listAsides(scene);
  const rows = kinds.flatMap((kind) => {
    const runs = asideRuns(
      scene,
      asides.filter(({ said }) => said.kind === kind),
      mostCharacters,
    );
    const band = groupRow(scene.words.plain(`clinician-sheet.set_aside.kinds.${kind}`));
    return runs.length === 0 ? [] : [band, ...rowsOf(scene, packed(runs))];
  });
  return denseTable(labels(scene, 'set_aside', columns), rows);
}

/**
 * Each record once for each reason, and none that the sheet shows. That it was measured at another time than one
 * asked for is said only of records of which the sheet says nothing else: those that it shows or sets aside otherwise
 * fit one time and not the next.
 */
function listAsides(scene: Scene): readonly Aside[] {
  const cells = cellsShown(scene.comparison).map(({ cell }) => cell);
  const onSheet = recordsOnSheet(scene, cells);
  const shown = new Set(cells.flatMap((cell) => (cell.state === 'known' ? [outcomeOf(cell)] : [])));
  const all = cells.flatMap((cell) =>
    cell.setAside
      .filter(({ record }) => !onSheet.has(record))
      .map(({ record, reason }) => ({ record, reason, cell })),
  );
  const otherwise = new Set(
    all.flatMap(({ record, reason }) => (reason.code === 'other-time' ? [] : [record])),
  );
  const once = new Map<string, Aside>();
  for (const { record, reason, cell } of all) {
    if (reason.code === 'other-time' && otherwise.has(record)) continue;
    const { option, outcome } = cell;
    const said = saidIn(scene, cell, reason);
    const key = [record, option, outcome, said.kind, said.phrase.markup, said.detail].join('\n');
    once.set(key, { record, option, outcome, shown: shown.has(outcomeOf(cell)), said });
  }
  return [...once.values()];
}

/** Of people counted twice, the record that leads need not be named: the figures show it. */
function saidIn(scene: Scene, cell: Cell, reason: SetAsideReason): SaidReason {
  const said = sayReason(scene, reason);
  const byLead = cell.state === 'known' && reason.code === 'same-people' && reason.as === cell.lead.record;
  return byLead ? { ...said, detail: null } : said;
}

/** Option and outcome: at one time or another the patient pages show a figure of it, or never. */
function outcomeOf({ option, outcome }: Cell): string {
  return `${option}/${outcome}`;
}

/** Records that lead, stand beside one that does, or are a point of a weight line. */
function recordsOnSheet({ comparison }: Scene, cells: readonly Cell[]): ReadonlySet<string> {
  const used = cells.flatMap((cell) =>
    cell.state === 'known' ? [cell.lead.record, ...(cell.others?.records ?? [])] : [],
  );
  const courses = comparison.weight.courses.flatMap(({ points }) => points.map(({ record }) => record));
  return new Set([...used, ...courses]);
}

/** Runs of one reason in a row, or in several. */
function packed(runs: readonly ReasonRun[]): readonly (readonly ReasonRun[])[] {
  const rows: ReasonRun[][] = [];
  let room = 0;
  for (const run of runs) {
    const length = lengthIn(run.words);
    const row = rows.at(-1);
    if (row === undefined || room < length || row[0]?.phrase.markup !== run.phrase.markup) {
      rows.push([run]);
      room = mostCharacters - length;
    } else {
      row.push(run);
      room -= length;
    }
  }
  return rows;
}

/** "Adolescents only | Sleeve: A leak 30d.a, 30d.b; Death 30d.c."; a reason that goes on says so in each further row. */
function rowsOf(scene: Scene, rows: readonly (readonly ReasonRun[])[]): readonly DenseRow[] {
  return rows.map((runs, index) => {
    const phrase = phraseOf(runs);
    const goesOn = index > 0 && phraseOf(rows[index - 1] ?? []).markup === phrase.markup;
    const reason = goesOn ? joined(phrase, scene.words.say('common.furniture.continued')) : phrase;
    return { group: '', cells: [reason, joined(...runs.map(({ words }) => words))] };
  });
}

function phraseOf([first]: readonly ReasonRun[]): Markup {
  return first?.phrase ?? asMarkup('');
}

function lengthIn({ markup }: Markup): number {
  return withoutTags(markup).length;
}
