import type { Cell, KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { isPrinted } from '../../model/printed-figures.ts';
import { cellsShown, knownCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import { idsTogether, outcomeName, shortId, shortLength } from './clinician-ids.ts';
import { measuredAt, perOf } from './clinician-interval.ts';
import { sayUnknown } from './clinician-reasons.ts';
import { isShare } from './say-share.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { attached, bold, figure, joined, plainSeries, sentence, series } from './words.ts';

type Shown = ShownCell<KnownCell>;

/**
 * Option by option, what the records beside each leading one say, with the pooled figure where enough of them are
 * alike; then what the patient pages call not known although it was studied, and why; last what the rest is.
 */
export function clinicianOthers(scene: Scene): readonly Markup[] {
  const known = knownCells(scene.comparison);
  const cells = cellsShown(scene.comparison).map(({ cell }) => cell);
  const lines = scene.options.flatMap(({ code, name }) => {
    const beside = known.filter(({ cell }) => cell.option === code && cell.others !== undefined);
    const unknown = unknownOnes(
      scene,
      cells.filter((cell) => cell.option === code),
    );
    if (beside.length === 0 && unknown.length === 0) return [];
    const lead = bold(scene.words.say('clinician-sheet.others.option', { option: name }));
    return [joined(lead, ...besideOnes(scene, beside), ...unknown)];
  });
  const isSilent = cells.some((cell) => cell.state === 'not-known' && cell.setAside.length === 0);
  return isSilent ? [...lines, scene.words.say('clinician-sheet.others.silent')] : lines;
}

/** The ranges that the patient pages print, then those that stand here alone, named as such. */
function besideOnes(scene: Scene, beside: readonly Shown[]): readonly Markup[] {
  const { words, printed = new Set() } = scene;
  const onPages = ({ cell }: Shown): boolean =>
    (cell.others?.records ?? []).some((record) => isPrinted(printed, cell.id, record));
  const run = (shown: readonly Shown[]): Markup =>
    series(
      words,
      'clauses',
      shown.map((one) => besideOne(scene, one)),
    );
  const on = beside.filter(onPages);
  const off = beside.filter((shown) => !onPages(shown));
  return [
    ...(on.length === 0 ? [] : [sentence(words, run(on))]),
    ...(off.length === 0 ? [] : [words.say('clinician-sheet.others.not_printed', { ranges: run(off) })]),
  ];
}

/** "leak ≤ 30 d 1.0 to 6.4/1,000 (30d.study-b, 30d.study-c)", with the pooled figure behind it where there is one. */
function besideOne(scene: Scene, shown: Shown): Markup {
  const { words } = scene;
  const { cell } = shown;
  const records = cell.others?.records ?? [];
  const range = words.say('clinician-sheet.others.range', {
    outcome: outcomeName(scene, cell.outcome),
    time: measuredAt(scene, shown),
    range: bold(figure(rangeOf(scene, shown), { cell: cell.id, records })),
    ids: plainSeries(words, 'items', idsTogether(records.map(shortId))),
  });
  return attached(range, ...pooledOf(scene, shown));
}

/** Lowest and highest of the records beside the lead, in the unit of its figure; one value where they are the same. */
function rangeOf(scene: Scene, shown: Shown): string {
  const { cell, denominator } = shown;
  const scale = isShare(cell) ? denominator : 1;
  const { format, words } = scene;
  const { low, high } = cell.others ?? { low: 0, high: 0 };
  const [from, to] = [format.number(low * scale, 1), format.number(high * scale, 1)];
  const range = from === to ? from : format.range(from, to);
  return isWeight(cell)
    ? words.plain('clinician-sheet.units.kg', { n: range })
    : `${range}${perOf(scene, shown)}`;
}

/** ", pooled 31.0 (22.0 to 43.0), a further study expected at 5.0 to 96.0, 5 studies, I² 96%". */
function pooledOf(scene: Scene, { cell, denominator }: Shown): readonly Markup[] {
  const { pooled, others, lead } = cell;
  if (pooled === undefined) return [];
  const { format, words } = scene;
  const number = (share: number): string => format.number(share * denominator, 1);
  const said = {
    estimate: number(pooled.value),
    range: format.range(number(pooled.low), number(pooled.high)),
  };
  const value = figure(words.plain('reason-checks.contrast', said), {
    cell: cell.id,
    records: [lead.record, ...(others?.records ?? [])],
  });
  const expected = format.range(number(pooled.expected.low), number(pooled.expected.high));
  const heterogeneity = format.number(pooled.heterogeneity, 0);
  return [words.say('clinician-sheet.pooled', { value, expected, heterogeneity, count: pooled.studies })];
}

/** Outcomes that have records, none of which fits, each with why: those without any are told by the last line. */
function unknownOnes(scene: Scene, cells: readonly Cell[]): readonly Markup[] {
  const unknown = cells
    .filter((cell) => cell.state === 'not-known')
    .filter(({ setAside }) => setAside.length > 0);
  if (unknown.length === 0) return [];
  const told = unknown.map((cell) => ({ cell, why: sayUnknown(scene, cell.reason) }));
  const reasons = [...new Map(told.map(({ why }) => [why.markup, why])).values()];
  const parts = reasons.map((why) => {
    const those = told.filter((one) => one.why.markup === why.markup).map(({ cell }) => cell);
    return scene.words.say('clinician-sheet.others.why', {
      outcomes: outcomesAndTimes(scene, those, cells),
      why,
    });
  });
  return [
    scene.words.say('clinician-sheet.others.unknown', { outcomes: series(scene.words, 'clauses', parts) }),
  ];
}

/** "A leak, weight 5 y/10 y": the time only where the option has the same outcome at another time too. */
function outcomesAndTimes(scene: Scene, those: readonly Cell[], all: readonly Cell[]): string {
  const named = [...new Set(those.map(({ outcome }) => outcome))].map((outcome) => {
    const mine = those.filter((cell) => cell.outcome === outcome);
    const asked = all.filter((cell) => cell.outcome === outcome);
    const times = mine.length === asked.length ? [] : mine.map((cell) => shortLength(scene, cell.asked));
    return [outcomeName(scene, outcome), times.join('/')].filter((part) => part !== '').join(' ');
  });
  return plainSeries(scene.words, 'items', named);
}
