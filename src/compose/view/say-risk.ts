import type { Cell, KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import { amountInWords } from './say-amount.ts';
import { isShare, shareInSentence, sourceOf } from './say-share.ts';
import { withMark } from './say-soundness.ts';
import { isFirstMonth, otherTime, sayTime } from './say-time.ts';
import type { NamedOption, Scene } from './scene.ts';
import { countedInTable, hasFewest, remarksOf } from './table-cells.ts';
import { figure, joined } from './words.ts';

/** All chances of a record are counted out of the same number of people. */
const denominator = 1000;

export type RiskTime = 'early' | 'later';

/**
 * Every harm of an option at that time, a line each: "A leak, in the first month: 3 out of 1,000.", and one line that
 * names those of which nobody knows how often.
 */
export function harmLines(scene: Scene, option: NamedOption, when: RiskTime): readonly Markup[] {
  return linesOf(
    scene,
    cellsOf(scene, option).filter(
      (cell) => isHarm(scene, cell) && isFirstMonth(cell.asked) === (when === 'early'),
    ),
  );
}

/** What may get better, for the illnesses that the person has. */
export function benefitLines(scene: Scene, option: NamedOption): readonly Markup[] {
  return linesOf(
    scene,
    cellsOf(scene, option).filter((cell) => groupsOf(scene, cell).includes('benefit')),
  );
}

/** The outcomes that these lines name, with a figure or without. */
export function outcomesNamed(scene: Scene, option: NamedOption): readonly string[] {
  return cellsOf(scene, option)
    .filter((cell) => cell.state !== 'not-possible')
    .filter((cell) => isHarm(scene, cell) || groupsOf(scene, cell).includes('benefit'))
    .map(({ outcome }) => outcome);
}

/** The harm that the comparison draws first, in a line; null where it cannot happen. */
export function mainHarmLine(scene: Scene, option: NamedOption): Markup | null {
  const picture = scene.comparison.topics.find(({ id }) => id === 'first-month')?.picture ?? null;
  const cells = picture?.cells.filter((cell) => cell.option === option.code) ?? [];
  return linesOf(scene, cells)[0] ?? null;
}

function cellsOf({ comparison }: Scene, option: NamedOption): readonly Cell[] {
  return topicCells(comparison)
    .map(({ cell }) => cell)
    .filter((cell) => cell.option === option.code);
}

function groupsOf({ evidence }: Scene, { outcome }: Cell): readonly string[] {
  return evidence.outcomes.find(({ code }) => code === outcome)?.group ?? [];
}

function isHarm(scene: Scene, cell: Cell): boolean {
  return groupsOf(scene, cell).some((name) => name.endsWith('harm') || name === 'living-with-it');
}

function linesOf(scene: Scene, cells: readonly Cell[]): readonly Markup[] {
  const known = cells.filter((cell): cell is KnownCell => cell.state === 'known');
  const unknown = cells.filter(({ state }) => state === 'not-known');
  return [
    ...known.map((cell) => lineOf(scene, cell)),
    ...(unknown.length === 0 ? [] : [unknownLine(scene, unknown)]),
  ];
}

function lineOf(scene: Scene, cell: KnownCell): Markup {
  const { words } = scene;
  const remarks = remarksOf(scene, cell, { notes: null, denominator, sameDose: false, marked: true });
  const said = words.say('consent.talk.risk', {
    outcome: words.plain(`outcomes.${cell.outcome}.name`),
    time: timeOf(scene, cell),
    figure: withMark(scene, cell, countOf(scene, cell)),
  });
  return joined(said, ...remarks);
}

/** The time of the figure itself, where it is not the one asked for. */
function timeOf(scene: Scene, cell: KnownCell): string {
  const other = otherTime(scene, cell.asked, cell.lead);
  if (other !== null) return other;
  return isFirstMonth(cell.asked)
    ? scene.words.plain('codes.time.first_month')
    : sayTime(scene, cell.asked, cell.lead.timeBasis);
}

function countOf(scene: Scene, cell: KnownCell): Markup {
  if (!isShare(cell)) return amountInWords(scene, cell);
  if (hasFewest(cell)) return countedInTable(scene, cell);
  return figure(shareInSentence(scene, roundShare(cell.value, denominator), denominator), sourceOf(cell));
}

function unknownLine({ words, format }: Scene, cells: readonly Cell[]): Markup {
  const names = cells.map(({ outcome }) =>
    words.plain('common.quote', { words: words.plain(`outcomes.${outcome}.name`) }),
  );
  return words.say('consent.talk.risk_unknown', { outcomes: format.list([...new Set(names)], 'and') });
}
