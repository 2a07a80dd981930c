import type { Markup } from '../../model/locale.ts';
import { weightAfterStatement } from '../../model/statement.ts';
import { roundShare } from '../round-counts.ts';
import type { Denominator } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import { firstSentence } from './say-against.ts';
import { withDose } from './say-dose.ts';
import { isHarm, timeOf } from './say-risk.ts';
import { fewPeopleInWords, isShare, shareInSentence, sourceOf } from './say-share.ts';
import type { ShareCell } from './say-share.ts';
import { withMark } from './say-soundness.ts';
import type { NamedOption, Scene } from './scene.ts';
import { hasFewest } from './table-cells.ts';
import { figure, joined, runIn, standingOn } from './words.ts';

/**
 * That weight comes back: of what is stopped once it is stopped, and of what undoes an earlier operation. The words are
 * the first of those on undoing, which hold no figure.
 */
export function weightComesBack(scene: Scene, { code, column }: NamedOption): Markup | null {
  const { possible, weightAfterKnown } = column.reversibility;
  if (!weightAfterKnown) return null;
  const said = standingOn(
    [weightAfterStatement(column.figuresFrom)],
    firstSentence(scene.words.say(`options.${code}.weight_after`)),
  );
  if (possible === 'no') return said;
  const isStopped = column.kind === 'medicine' || column.kind === 'programme';
  return isStopped ? runIn(scene.words, scene.words.say('comparison.opinion.when_stopped'), said) : null;
}

/**
 * Beside which lines it stands: out of how many people they count, and the cells that they say already. Among other
 * harms with their numbers it needs no words on how common it is, and the dose may be said above them.
 */
interface Beside {
  readonly outOf?: Denominator;
  readonly told?: readonly string[];
  readonly doseSaid?: boolean;
}

/**
 * Of the harms of an option that these pages give a share for, the most common, out of so many as its table or as asked;
 * null where they give none, and where it is told already.
 */
export function mostCommonHarm(scene: Scene, { code }: NamedOption, beside: Beside = {}): Markup | null {
  const shown = sharesOfHarms(scene, code);
  const [most] = shown;
  if (most === undefined || beside.told?.includes(most.cell.id) === true) return null;
  const { words } = scene;
  const { cell } = most;
  const denominator = beside.outOf ?? most.denominator;
  const share = shareInSentence(scene, roundShare(cell.value, denominator), denominator);
  const count = figure(share, sourceOf(cell));
  const risk = words.say('common.risk', {
    outcome: words.plain(`outcomes.${cell.outcome}.name`),
    time: timeOf(scene, cell),
    figure: withMark(scene, cell, beside.doseSaid === true ? count : withDose(scene, count, cell)),
  });
  const few = fewPeopleInWords(scene, cell);
  // Nobody can say how common a harm is beside others that have no number. A picture may draw what its table says.
  const isOnly = shown.every((one) => one.cell.outcome === cell.outcome);
  const rank = isOnly || beside.told !== undefined ? [] : [words.say('comparison.opinion.most_common')];
  return joined(risk, ...(few === null ? [] : [few]), ...rank);
}

/** Which cell that is; null where these pages give a share of none. */
export function mostCommonCell(scene: Scene, { code }: NamedOption): ShareCell | null {
  return sharesOfHarms(scene, code)[0]?.cell ?? null;
}

/** The most common first. */
function sharesOfHarms(scene: Scene, code: string): readonly ShownCell<ShareCell>[] {
  return topicCells(scene.comparison)
    .flatMap((shown) => shareOf(scene, shown, code))
    .sort((a, b) => shareIn(b) - shareIn(a));
}

/** A share of one or two people says that it happens, not how often. */
function shareOf(
  scene: Scene,
  { cell, denominator }: ShownCell,
  option: string,
): readonly ShownCell<ShareCell>[] {
  if (cell.option !== option || cell.state !== 'known' || !isShare(cell)) return [];
  return isHarm(scene, cell) && cell.value.value > 0 && !hasFewest(cell) ? [{ cell, denominator }] : [];
}

function shareIn({ cell }: ShownCell<ShareCell>): number {
  return cell.value.value;
}
