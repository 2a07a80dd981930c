import type { KnownCell, Proportion } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { lowerCount, rangeCount, roundShare, upperCount } from '../round-counts.ts';
import type { Denominator, RoundedShare } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import { isFirstMonth } from './say-time.ts';
import type { Scene } from './scene.ts';
import { figure } from './words.ts';

/** A cell whose value is a share of people. */
export type ShareCell = KnownCell & { readonly value: Proportion };

export function isShare(cell: KnownCell): cell is ShareCell {
  return cell.value.kind === 'proportion';
}

/** Group sizes and counts under these are said beside the number, which else looks surer than it is. */
const fewPeople = 100;
const fewEvents = 5;

/** The number, as the first line of a row says it: "24 out of 1,000". */
export function shareInWords(scene: Scene, share: RoundedShare, denominator: Denominator): string {
  const { words, format } = scene;
  const of = format.number(denominator);
  switch (share.kind) {
    case 'none-seen':
      return words.plain('common.share.none', { n: format.number(share.n) });
    case 'fewer-than-one':
      return words.plain('common.share.fewer', { of });
    case 'all-but-fewer-than-one':
      return words.plain('common.share.more', { some: format.number(share.count), of });
    case 'count':
    case 'everyone':
      return words.plain('common.share.count', { some: format.number(share.count), of });
  }
}

/** The same within a sentence: "none of 212", "fewer than 1 out of 1,000". */
export function shareInSentence(scene: Scene, share: RoundedShare, denominator: Denominator): string {
  const { words, format } = scene;
  const of = format.number(denominator);
  switch (share.kind) {
    case 'none-seen':
      return shareInTable(scene, share);
    case 'fewer-than-one':
      return words.plain('common.share.within.fewer', { of });
    case 'all-but-fewer-than-one':
      return words.plain('common.share.within.more', { some: format.number(share.count), of });
    case 'count':
    case 'everyone':
      return shareInWords(scene, share, denominator);
  }
}

/** The number alone, for a table whose sentence says the denominator. */
export function shareInTable(scene: Scene, share: RoundedShare): string {
  const { words, format } = scene;
  switch (share.kind) {
    case 'none-seen':
      return words.plain('common.table.none', { n: format.number(share.n) });
    case 'fewer-than-one':
      return words.plain('common.table.fewer');
    case 'all-but-fewer-than-one':
      return words.plain('common.table.more', { some: format.number(share.count) });
    case 'count':
    case 'everyone':
      return format.number(share.count);
  }
}

/** The other side: "976 do not." */
export function restInWords(scene: Scene, cell: ShareCell, denominator: Denominator): Markup {
  const share = roundShare(cell.value, denominator);
  const source = sourceOf(cell);
  const { words, format } = scene;
  switch (share.kind) {
    case 'none-seen':
      return words.say('common.share.upper', {
        upper: figure(
          words.plain('common.share.count', {
            some: format.number(share.upTo),
            of: format.number(denominator),
          }),
          source,
        ),
      });
    case 'fewer-than-one':
      return words.say('common.share.rest_more', { rest: figure(format.number(denominator - 1), source) });
    case 'all-but-fewer-than-one':
      return words.say('common.share.rest_fewer');
    case 'everyone':
      return words.say('common.share.rest_none');
    case 'count':
      return words.say('common.share.rest', {
        rest: figure(format.number(share.rest), source),
        count: share.rest,
      });
  }
}

/** "Other studies: 18 to 31." over records of other people; null if there are none. */
export function othersInWords(scene: Scene, cell: ShareCell, denominator: Denominator): Markup | null {
  const { others } = cell;
  if (others === undefined) return null;
  const range = countsInWords(
    scene,
    rangeCount(others.low, denominator),
    rangeCount(others.high, denominator),
  );
  const value = figure(range, { cell: cell.id, records: others.records });
  return scene.words.say('common.share.others', { range: value, count: others.records.length });
}

/**
 * "Another study counted more in the first month alone: 29 out of 1,000.", of something counted until a later time that
 * includes that month; null where it is not so. The two numbers are of different people, and look like a mistake if
 * nobody says so.
 */
export function moreEarlyInWords(scene: Scene, cell: ShareCell, denominator: Denominator): Markup | null {
  if (isFirstMonth(cell.asked)) return null;
  const early = topicCells(scene.comparison)
    .map((shown) => shown.cell)
    .filter((other): other is ShareCell => other.state === 'known' && isShare(other))
    .find(
      ({ option, outcome, asked, lead }) =>
        option === cell.option &&
        outcome === cell.outcome &&
        isFirstMonth(asked) &&
        lead.study !== cell.lead.study,
    );
  if (early === undefined || early.value.value <= cell.value.value) return null;
  const [share, later] = [early, cell].map(({ value }) =>
    shareInSentence(scene, roundShare(value, denominator), denominator),
  );
  if (share === undefined || share === later) return null;
  return scene.words.say('common.share.more_early', { share: figure(share, sourceOf(early)) });
}

/** Events under which the limits of a share are wide enough to be said beside it. */
const unsureEvents = 30;

/** "Could be 36 to 127.", where few events make the number unsure; null where the limits are near or not known. */
export function couldBeInWords(scene: Scene, cell: ShareCell, denominator: Denominator): Markup | null {
  const range = unsureRange(scene, cell, denominator);
  return range === null ? null : scene.words.say('common.share.could_be', { range });
}

/** The same where the number beside it has another denominator: "Could be 36 to 127 out of 1,000." */
export function couldBeOutOf(scene: Scene, cell: ShareCell, denominator: Denominator): Markup | null {
  const range = unsureRange(scene, cell, denominator);
  const of = scene.format.number(denominator);
  return range === null ? null : scene.words.say('common.share.could_be_of', { range, of });
}

function unsureRange(scene: Scene, cell: ShareCell, denominator: Denominator): Markup | null {
  const { interval, events, n, value } = cell.value;
  const counted = events ?? (n === undefined ? undefined : n * value);
  if (interval === undefined || counted === undefined || counted >= unsureEvents) return null;
  return figure(limitsInWords(scene, interval, denominator), sourceOf(cell));
}

/** "21 to 27", never a limit rounded to nothing and never a range narrower than it is. */
export function limitsInWords(
  scene: Scene,
  limits: { readonly low: number; readonly high: number },
  denominator: Denominator,
): string {
  const lowest = lowerCount(limits.low, denominator);
  const low = lowest === 0 && limits.low > 0 ? 'fewer-than-one' : lowest;
  if (limits.high * denominator < 1) return scene.words.plain('common.counts.fewer');
  return countsInWords(scene, low, upperCount(limits.high, denominator));
}

type RangeEnd = ReturnType<typeof rangeCount>;

/** "18 to 31", "fewer than 1 to 13", "none to 4": languages differ in how they say each, so each is one phrase. */
function countsInWords({ words, format }: Scene, low: RangeEnd, high: RangeEnd): string {
  if (low === high) return oneCountInWords({ words, format }, low);
  if (typeof high !== 'number') return words.plain('common.counts.none_to_fewer');
  const last = format.number(high);
  if (low === 'none') return words.plain('common.counts.from_none', { high: last });
  if (low === 'fewer-than-one') return words.plain('common.counts.from_fewer', { high: last });
  return words.plain('common.counts.range', { range: format.range(format.number(low), last) });
}

function oneCountInWords({ words, format }: Pick<Scene, 'words' | 'format'>, count: RangeEnd): string {
  if (count === 'none') return words.plain('common.counts.none');
  if (count === 'fewer-than-one') return words.plain('common.counts.fewer');
  return words.plain('common.counts.one', { n: format.number(count) });
}

/** "Only 31 people were counted." or "This stands on 1 of 130 people."; null where the number stands on more. */
export function fewPeopleInWords(scene: Scene, cell: KnownCell): Markup | null {
  const { n } = cell.lead;
  const { words, format } = scene;
  const events = cell.value.kind === 'proportion' ? cell.value.events : undefined;
  // None seen is said with its number of people already.
  if (n === undefined || events === 0) return null;
  if (n < fewPeople)
    return words.say('common.few_people', { n: figure(format.number(n), sourceOf(cell)), count: n });
  if (events === undefined || events >= fewEvents) return null;
  const counted = words.plain('common.share.counted', { events: format.number(events), n: format.number(n) });
  return words.say('common.few_events', { counted: figure(counted, sourceOf(cell)) });
}

export function sourceOf(cell: KnownCell): { readonly cell: string; readonly records: readonly string[] } {
  return { cell: cell.id, records: [cell.lead.record] };
}
