import type { Cell, OutcomeRow, Topic } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { unescapeText, withoutTags } from '../markup/escape-text.ts';
import { roundShare } from '../round-counts.ts';
import type { Denominator, RoundedShare } from '../round-counts.ts';
import { coveredLine } from './say-covered.ts';
import { onTroubleLeft } from './say-call-now.ts';
import { doseInWords } from './say-dose.ts';
import { sharedExchange } from './say-exchange.ts';
import { sayDifference, sayNear, whyUnknown } from './say-reason.ts';
import {
  couldBeInWords,
  isShare,
  moreEarlyInWords,
  othersInWords,
  restInWords,
  shareInWords,
  sourceOf,
} from './say-share.ts';
import type { ShareCell } from './say-share.ts';
import { soundnessInWords } from './say-soundness.ts';
import { isFirstMonth, otherTime, ownTimes, sayAsked, sayLength } from './say-time.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineOf, plainRow, rowShape } from './shared-shapes.ts';
import type { Row } from './shared-shapes.ts';
import { figure, joined } from './words.ts';

export const peopleShape = group({
  question: text,
  explained: markup,
  rows: list(rowShape),
  covered: optional(markup),
});
export type PeopleView = Viewed<typeof peopleShape>;

type PictureRow = NonNullable<Topic['picture']>;

/** The strip of people for the outcome that a topic draws; null if none of its options has a figure. */
export function viewPeople(scene: Scene, topic: Topic | undefined): PeopleView | null {
  const picture = topic?.picture ?? null;
  if (picture === null) return null;
  const of = scene.format.number(picture.denominator);
  const explained = scene.words.plain(`outcomes.${picture.outcome}.explained`);
  const exchange = sharedExchange(scene, picture.cells);
  const covered = [coveredLine(scene, picture.cells), exchange].filter((line) => line !== null);
  return {
    question: questionOf(scene, picture),
    explained: joined(
      scene.words.say(picture.denominator === 1000 ? 'common.people.leaves' : 'common.people.persons', {
        explained,
        of,
      }),
      ...ownTimes(scene, picture.cells),
    ),
    rows: scene.options.map((option, index) =>
      peopleRow(scene, option, { cell: picture.cells[index], picture, exchangeBelow: exchange !== null }),
    ),
    covered: covered.length === 0 ? null : joined(...covered),
  };
}

/** The outcome's own question where the words have one. */
function questionOf(scene: Scene, row: OutcomeRow): string {
  const { words } = scene;
  const early = isFirstMonth(row.asked);
  const key = `outcomes.${row.outcome}.question_${early ? 'early' : 'late'}`;
  const time = sayAsked(scene, row.asked, 'by');
  if (!words.has(key))
    return words.plain('comparison.people.question', {
      outcome: words.plain(`outcomes.${row.outcome}.name`),
      time,
    });
  return early ? words.plain(key) : words.plain(key, { time: sayLength(scene, row.asked) });
}

interface InPicture {
  readonly cell: Cell | undefined;
  readonly picture: PictureRow;
  /** How a band was exchanged is said once, beneath the strip. */
  readonly exchangeBelow: boolean;
}

function peopleRow(scene: Scene, option: NamedOption, { cell, picture, exchangeBelow }: InPicture): Row {
  const { denominator } = picture;
  if (cell?.state === 'known' && isShare(cell))
    return knownRow(scene, option, { cell, denominator, exchangeBelow });
  return cell?.state === 'not-possible'
    ? impossibleRow(scene, option)
    : unknownRow(scene, option, { cell, denominator });
}

function unknownRow(
  scene: Scene,
  option: NamedOption,
  { cell, denominator }: { readonly cell: Cell | undefined; readonly denominator: Denominator },
): Row {
  const why =
    cell?.state === 'not-known'
      ? [body(joined(whyUnknown(scene, cell), ...onTroubleLeft(scene, option, 'undo.trouble_too')))]
      : [];
  const alt = scene.words.plain('common.alt.not_known', { option: option.name });
  const lines = [lineOf('number', scene.words.say('common.not_known')), ...why];
  return { ...plainRow(option, lines), unknown: { of: String(denominator), alt } };
}

/** What cannot happen is said in words. A picture of a thousand well people would say that nothing else can. */
function impossibleRow(scene: Scene, option: NamedOption): Row {
  const { words } = scene;
  if (isProcedure(option)) {
    const why = body(words.say('common.not_possible_why'));
    return plainRow(option, [lineOf('number', words.say('common.not_possible')), why]);
  }
  return plainRow(option, [
    lineOf('number', words.say('common.no_procedure')),
    body(words.say('common.no_procedure_why')),
  ]);
}

/** Operations and endoscopic treatments: only these have complications of a procedure. */
export function isProcedure({ column }: NamedOption): boolean {
  return column.kind === 'operation' || column.kind === 'endoscopic';
}

interface KnownShare {
  readonly cell: ShareCell;
  readonly denominator: Denominator;
  readonly exchangeBelow: boolean;
}

function knownRow(scene: Scene, option: NamedOption, shown: KnownShare): Row {
  const { cell, denominator } = shown;
  const share = roundShare(cell.value, denominator);
  const number = shareInWords(scene, share, denominator);
  const rest = restInWords(scene, cell, denominator);
  const time = otherTime(scene, cell.asked, cell.lead);
  const facts: readonly (Markup | null)[] = [
    rest,
    couldBeInWords(scene, cell, denominator),
    doseInWords(scene, cell),
    time === null ? null : scene.words.say('common.counted', { time }),
    soundnessInWords(scene, cell),
    shown.exchangeBelow ? sayDifference(scene, cell) : sayNear(scene, cell),
    // Last, so that "these people" above are those of the figure.
    othersInWords(scene, cell, denominator),
    moreEarlyInWords(scene, cell, denominator),
  ];
  const lines = [
    lineOf('number', figure(number, sourceOf(cell))),
    ...facts.filter((fact) => fact !== null).map(body),
  ];
  const alt = scene.words.plain('common.alt.people', {
    option: option.name,
    outcome: scene.words.plain(`outcomes.${cell.outcome}.name`),
    number,
    rest: plainOf(rest),
  });
  return { ...plainRow(option, lines), people: { of: denominator, ...drawn(share), alt } };
}

/** How many marks are filled, hollow or half-filled. */
export function drawn(share: RoundedShare): {
  readonly filled: number;
  readonly may: number;
  readonly half: boolean;
} {
  switch (share.kind) {
    case 'none-seen':
      return { filled: 0, may: share.upTo, half: false };
    case 'fewer-than-one':
      return { filled: 0, may: 0, half: true };
    case 'all-but-fewer-than-one':
      return { filled: share.count, may: 0, half: true };
    case 'count':
    case 'everyone':
      return { filled: share.count, may: 0, half: false };
  }
}

/** Words without their figures' ties, for an alternative text. */
function plainOf(words: Markup): string {
  return unescapeText(withoutTags(words.markup)) ?? words.markup;
}
