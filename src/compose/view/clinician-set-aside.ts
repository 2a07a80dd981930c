import type { Cell, SetAsideReason } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cellsShown } from './cells-shown.ts';
import { kinds, sayReason } from './clinician-reasons.ts';
import type { SaidReason } from './clinician-reasons.ts';
import { asideRuns } from './clinician-runs.ts';
import type { Aside, ReasonRun } from './clinician-runs.ts';
import type { Scene } from './scene.ts';
import { bold, joined } from './words.ts';

/** An item of the list is never parted between pages, so a long run of text takes several. Some twelve lines. */
const mostCharacters = 1400;

/**
 * Every record that was not used: by what sets it apart, then by reason, which is said once, then by option and
 * outcome, the ids in one run of text.
 */
export function clinicianSetAside(scene: Scene): readonly Markup[] {
  const asides = listAsides(scene);
  return kinds.flatMap((kind) =>
    packed(
      asideRuns(
        scene,
        asides.filter(({ said }) => said.kind === kind),
        mostCharacters,
      ),
    ).map((runs) =>
      joined(bold(scene.words.say(`clinician-sheet.set_aside.kinds.${kind}`)), runTogether(runs)),
    ),
  );
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
    const key = [record, option, outcome, said.kind, said.phrase?.markup, said.detail].join('\n');
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

/** Runs shared out to texts of no more than a few lines; a reason that goes on in the next is said there again. */
function packed(runs: readonly ReasonRun[]): readonly (readonly ReasonRun[])[] {
  const items: ReasonRun[][] = [];
  let room = 0;
  for (const run of runs) {
    const length = lengthIn(run.words) + (run.phrase === null ? 0 : lengthIn(run.phrase));
    const item = items.at(-1);
    if (item === undefined || room < length) {
      items.push([run]);
      room = mostCharacters - length;
    } else {
      item.push(run);
      room -= length;
    }
  }
  return items;
}

/** "**Adolescents only.** Sleeve: A leak 30d.a, 30d.b; Death 30d.c." */
function runTogether(runs: readonly ReasonRun[]): Markup {
  return joined(
    ...runs.map(({ phrase, words }, index) => {
      const said = phrase === null || runs[index - 1]?.phrase?.markup === phrase.markup;
      return said ? words : joined(bold(phrase), words);
    }),
  );
}

function lengthIn({ markup }: Markup): number {
  return markup.replace(/<[^>]*>/g, '').length;
}
