import type { Cell, KnownCell, UnknownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { withoutTags } from '../markup/escape-text.ts';
import { roundShare } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import { possibleHarms, riskTimes } from './possible-harms.ts';
import type { RiskTime } from './possible-harms.ts';
import { amountInWords } from './say-amount.ts';
import { quotedList } from './say-meanings.ts';
import { sayMissing } from './say-reason.ts';
import { isShare, shareInSentence, sourceOf } from './say-share.ts';
import { withMark } from './say-soundness.ts';
import { isFirstMonth, otherTime, sayAsked, sayTime } from './say-time.ts';
import type { NamedOption, Scene } from './scene.ts';
import { countedInTable, hasFewest, remarksOf } from './table-cells.ts';
import { isProcedure } from './view-people.ts';
import { figure, joined } from './words.ts';

/** All chances of a record are counted out of the same number of people. */
const denominator = 1000;

/**
 * Every harm of an option at that time that the pages count, a line each: "A leak, in the first month: 3 out of 1,000.",
 * and one line that names those of which nobody knows how often.
 */
export function harmLines(scene: Scene, option: NamedOption, when: RiskTime): readonly Markup[] {
  return linesOf(scene, harmCells(scene, option, when));
}

function harmCells(scene: Scene, option: NamedOption, when: RiskTime): readonly Cell[] {
  return cellsOf(scene, option).filter(
    (cell) => isHarm(scene, cell) && isFirstMonth(cell.asked) === (when === 'early'),
  );
}

/** What may get better, for the illnesses that the person has. */
export function benefitLines(scene: Scene, option: NamedOption): readonly Markup[] {
  return linesOf(
    scene,
    cellsOf(scene, option).filter((cell) => groupsOf(scene, cell).includes('benefit')),
  );
}

/**
 * What else can go wrong at that time, without a number, a line for each reason why; none where these pages count it
 * all. The comparison shows a part of what its studies counted, and of a second operation often nothing: a consent must
 * not pass that over.
 */
export function otherHarmLines(scene: Scene, option: NamedOption, when: RiskTime): readonly Markup[] {
  const said = otherHarms(scene, option, when).map((outcome) => ({
    outcome,
    why: whyUncounted(scene, option, outcome),
  }));
  const reasons = [...new Map(said.map(({ why }) => [why.markup, why])).values()];
  return reasons.map((why) => {
    const outcomes = said.filter((one) => one.why.markup === why.markup).map(({ outcome }) => outcome);
    const names = outcomes.map((outcome) => nameOf(scene, outcome));
    const named = scene.words.say(`consent.talk.else_${when}`, { outcomes: quotedList(scene, names) });
    return joined(named, why);
  });
}

/** Figures that count another thing under the name of the outcome exist, and hold for nothing that this page says. */
function whyUncounted(scene: Scene, option: NamedOption, outcome: string): Markup {
  const cell = scene.comparison.furtherHarms.find(
    (one): one is UnknownCell =>
      one.option === option.code && one.outcome === outcome && one.state === 'not-known',
  );
  if (cell === undefined) return scene.words.say('missing.no-record');
  return sayMissing(scene, cell);
}

function otherHarms(scene: Scene, option: NamedOption, when: RiskTime): readonly string[] {
  const said = harmCells(scene, option, when).map(({ outcome }) => outcome);
  return possibleHarms(scene, option, when).filter((outcome) => !said.includes(outcome));
}

/** The outcomes that these lines name, with a figure or without. */
export function outcomesNamed(scene: Scene, option: NamedOption): readonly string[] {
  const told = cellsOf(scene, option)
    .filter((cell) => cell.state !== 'not-possible')
    .filter((cell) => isHarm(scene, cell) || groupsOf(scene, cell).includes('benefit'))
    .map(({ outcome }) => outcome);
  return [...told, ...riskTimes.flatMap((when) => otherHarms(scene, option, when))];
}

/** The later harms that these lines give a figure for. */
export function harmsCounted(scene: Scene, option: NamedOption): readonly Cell[] {
  return harmCells(scene, option, 'later').filter(({ state }) => state === 'known');
}

/** What was counted in people who had nothing done, a line each; of what nobody counted nothing is said. */
export function countedLines(scene: Scene, option: NamedOption): readonly Markup[] {
  return linesOf(scene, harmsCounted(scene, option));
}

/** Topics whose picture draws the main harm of its time. */
const harmTopics: readonly string[] = ['first-month', 'later-years'];

/**
 * The harms that the comparison draws first, of the first month and of the later years, of a procedure. Without one those
 * pictures have little to say, and nobody counts a leak on a medicine: then all that were counted.
 */
export function mainHarms(scene: Scene, option: NamedOption): readonly Cell[] {
  const topics = scene.comparison.topics.filter(({ id }) => harmTopics.includes(id));
  const drawn = topics
    .flatMap(({ picture }) => picture?.cells ?? [])
    .filter(({ option: code, state }) => code === option.code && state !== 'not-possible');
  return isProcedure(option)
    ? drawn
    : topicCells({ topics })
        .map(({ cell }) => cell)
        .filter(({ option: code, state }) => code === option.code && state === 'known');
}

/** These in words, a line each; the dose may be said before them. */
export function mainHarmLines(scene: Scene, option: NamedOption, doseSaid = false): readonly Markup[] {
  return linesOf(scene, mainHarms(scene, option), doseSaid);
}

/**
 * Each once: a figure that a picture draws may stand in the table too. What no topic has room for comes last, and in
 * place of a cell that knows no figure at the time of its topic.
 */
function cellsOf({ comparison }: Scene, option: NamedOption): readonly Cell[] {
  const further = comparison.furtherHarms.filter(
    (cell) => cell.option === option.code && cell.state === 'known',
  );
  const known = new Set(further.map(({ outcome }) => outcome));
  const cells = topicCells(comparison)
    .map(({ cell }) => cell)
    .filter((cell) => cell.option === option.code && (cell.state === 'known' || !known.has(cell.outcome)));
  const ids = cells.map(({ id }) => id);
  return [...cells.filter(({ id }, index) => ids.indexOf(id) === index), ...further];
}

function groupsOf({ evidence }: Scene, { outcome }: Cell): readonly string[] {
  return evidence.outcomes.find(({ code }) => code === outcome)?.group ?? [];
}

/** Whether it is a harm, early, late or lived with. */
export function isHarm(scene: Scene, cell: Cell): boolean {
  return groupsOf(scene, cell).some((name) => name.endsWith('harm') || name === 'living-with-it');
}

function linesOf(scene: Scene, cells: readonly Cell[], sameDose = false): readonly Markup[] {
  const known = cells.filter((cell): cell is KnownCell => cell.state === 'known');
  const unknown = cells.filter(({ state }) => state === 'not-known');
  return [
    ...knownLines(scene, known, sameDose),
    ...(unknown.length === 0 ? [] : [unknownLine(scene, unknown)]),
  ];
}

/** What is true of all figures, their time or a remark, is said once: above them the time, below them the remarks. */
function knownLines(scene: Scene, cells: readonly KnownCell[], sameDose: boolean): readonly Markup[] {
  const { words } = scene;
  const told = cells.map((cell) => ({
    cell,
    time: timeOf(scene, cell),
    remarks: remarksOf(scene, cell, { notes: null, denominator, sameDose, marked: true }),
  }));
  const [first, ...others] = told;
  if (first === undefined) return [];
  const sameTime =
    others.length > 0 && cells.every(isShare) && others.every(({ time }) => time === first.time);
  const shared =
    others.length === 0
      ? []
      : first.remarks.filter((remark) => others.every(({ remarks }) => remarks.some(readsAs(remark))));
  return [
    ...(sameTime ? [words.say('common.counted', { time: first.time })] : []),
    ...told.map(({ cell, time, remarks }) => {
      const own = remarks.filter((remark) => !shared.some(readsAs(remark)));
      return joined(riskInWords(scene, cell, sameTime ? null : time), ...own);
    }),
    ...(shared.length === 0 ? [] : [words.say('consent.talk.for_all', { words: joined(...shared) })]),
  ];
}

/** The same to a reader: of two doses that are equal each names its own record. */
function readsAs({ markup }: Markup): (other: Markup) => boolean {
  return (other) => withoutTags(other.markup) === withoutTags(markup);
}

/** "A leak, in the first month: 3 out of 1,000."; where its time stands above: "A leak: in 3 out of 1,000 people." */
function riskInWords(scene: Scene, cell: KnownCell, time: string | null): Markup {
  const { words } = scene;
  const outcome = nameOf(scene, cell.outcome);
  const count = countOf(scene, cell);
  if (time !== null) return words.say('common.risk', { outcome, time, figure: withMark(scene, cell, count) });
  const people = words.say('consent.talk.in_people', { figure: count });
  return words.say('consent.talk.risk_then', { outcome, figure: withMark(scene, cell, people) });
}

/** The time of the figure itself, where it is not the one asked for. */
export function timeOf(scene: Scene, cell: KnownCell): string {
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

function unknownLine(scene: Scene, cells: readonly Cell[]): Markup {
  const names = cells.map((cell) => nameOfUnknown(scene, cell));
  return scene.words.say('consent.talk.risk_unknown', { outcomes: quotedList(scene, names) });
}

/** With its time, where these pages give a figure of the same outcome at another one. */
function nameOfUnknown(scene: Scene, cell: Cell): string {
  const name = nameOf(scene, cell.outcome);
  const elsewhere = topicCells(scene.comparison).some(
    ({ cell: { option, outcome, state } }) =>
      option === cell.option && outcome === cell.outcome && state === 'known',
  );
  return elsewhere
    ? scene.words.plain('common.table.head', { outcome: name, time: sayAsked(scene, cell.asked, 'by') })
    : name;
}

function nameOf({ words }: Scene, outcome: string): string {
  return words.plain(`outcomes.${outcome}.name`);
}
