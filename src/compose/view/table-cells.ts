import type { Cell, KnownCell, UnknownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import type { Denominator } from '../round-counts.ts';
import type { Notes, Remark } from './notes.ts';
import { amountInWords } from './say-amount.ts';
import { doseInWords } from './say-dose.ts';
import type { Form } from './say-exchange.ts';
import { farFromMean } from './say-mean-bmi.ts';
import { sayNear, unknownNote, whyUnknown } from './say-reason.ts';
import {
  couldBeOutOf,
  fewPeopleInWords,
  isShare,
  restInWords,
  shareInSentence,
  shareInTable,
  sourceOf,
} from './say-share.ts';
import type { ShareCell } from './say-share.ts';
import { newOnlyInWords, unsureInWords } from './say-soundness.ts';
import { otherTime } from './say-time.ts';
import type { Scene } from './scene.ts';
import { body, lineOf } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { asMarkup, bold, figure, joined, runIn, series } from './words.ts';

interface InTable {
  /** Null where the table has one column, which leaves room to say in the cell what others say in a note. */
  readonly notes: Notes | null;
  readonly denominator: Denominator;
  /** All figures of the row are of one dose of a medicine, which its name says. */
  readonly sameDose: boolean;
  /** How sure the figure is stands beside it already, as a mark. */
  readonly marked?: boolean;
}

/** What a cell of a table says: the figure, or that there is none, with what a reader must know of it. */
export function cellLines(scene: Scene, cell: Cell | undefined, table: InTable): readonly Line[] {
  if (table.notes === null) return roomyLines(scene, cell, table);
  const notKnown = body(scene.words.say('common.table.not_known'));
  // That no study was found needs no note: the sentence over the table says it.
  if (cell === undefined || (cell.state === 'not-known' && cell.reason.code === 'no-record'))
    return [notKnown];
  switch (cell.state) {
    case 'not-possible':
      return [body(scene.words.say('common.table.not_possible'))];
    case 'not-known':
      return [unknownWithNote(scene, cell, table.notes)];
    case 'known':
      return knownLines(scene, cell, { ...table, notes: table.notes });
  }
}

/** The same where there is room to say it all. */
function roomyLines(scene: Scene, cell: Cell | undefined, table: InTable): readonly Line[] {
  if (cell === undefined) return [body(scene.words.say('common.table.not_known'))];
  switch (cell.state) {
    case 'not-possible':
      return [body(scene.words.say('common.table.not_possible'))];
    case 'not-known':
      return [body(joined(bold(scene.words.say('common.not_known')), whyUnknown(scene, cell)))];
    case 'known': {
      const time = otherTime(scene, cell.asked, cell.lead);
      const counted = time === null ? [] : [scene.words.say('common.counted', { time })];
      const beside = [...counted, ...remarksOf(scene, cell, table)];
      return [valueLine(scene, cell, table.denominator), ...beside.map(body)];
    }
  }
}

function knownLines(
  scene: Scene,
  cell: KnownCell,
  table: InTable & { readonly notes: Notes },
): readonly Line[] {
  const time = otherTime(scene, cell.asked, cell.lead);
  const numbers = noteNumbers(scene, cell, table);
  const beside = [
    ...(time === null ? [] : [asMarkup(time)]),
    ...(numbers.length === 0 ? [] : [citeNotes(scene, numbers)]),
  ];
  const value = valueLine(scene, cell, table.denominator);
  return beside.length === 0 ? [value] : [value, lineOf('small', series(scene.words, 'items', beside))];
}

/** What a reader must know of the figure: how far it could go, on how many it stands, in whom and of what dose. */
export function remarksOf(scene: Scene, cell: KnownCell, table: InTable): readonly Markup[] {
  return [...boundsOf(scene, cell, table), ...aboutPeople(scene, cell, table).map(({ words }) => words)];
}

/** How far a figure could go whose own count its cell prints. Under a table this begins with that count. */
function boundsOf(scene: Scene, cell: KnownCell, table: InTable): readonly Markup[] {
  if (!isShare(cell)) return [];
  return [
    ...(cell.value.zero === undefined ? [] : [zeroNote(scene, cell, table)]),
    ...(hasFewest(cell) ? [fewestNote(scene, cell, table)] : []),
  ];
}

/** The same words may hold for several figures and do not say of which they speak. */
function aboutPeople(scene: Scene, cell: KnownCell, table: InTable): readonly Remark[] {
  const unsure = (form: Form): Markup | null =>
    table.marked === true ? null : unsureInWords(scene, cell, form);
  return [
    remark(isShare(cell) && hasFewest(cell) ? null : fewPeopleInWords(scene, cell)),
    remark(sayNear(scene, cell), { words: sayNear(scene, cell, 'several'), what: 'studies' }),
    remark(farFromMean(scene, cell)),
    remark(unsure('one'), { words: unsure('several'), what: 'figures' }),
    remark(newOnlyInWords(scene, cell), { words: newOnlyInWords(scene, cell, 'several'), what: 'figures' }),
    remark(table.sameDose ? null : doseInWords(scene, cell)),
  ].filter((one) => one !== null);
}

interface OfSeveral {
  readonly words: Markup | null;
  readonly what: 'figures' | 'studies';
}

function remark(words: Markup | null, several?: OfSeveral): Remark | null {
  if (words === null) return null;
  if (several === undefined || several.words === null) return { words };
  return { words, ofSeveral: { words: several.words, what: several.what } };
}

function valueLine(scene: Scene, cell: KnownCell, denominator: Denominator): Line {
  if (!isShare(cell)) return body(amountInWords(scene, cell));
  if (hasFewest(cell)) return body(countedInTable(scene, cell));
  const share = roundShare(cell.value, denominator);
  const words = figure(
    shareInTable(scene, share),
    sourceOf(cell),
    shareInSentence(scene, share, denominator),
  );
  return share.kind === 'count' || share.kind === 'everyone' ? lineOf('number', words) : body(words);
}

/** One or two events say that it happens, not how often: the count is printed, never a rate. */
const fewestEvents = 3;

export function hasFewest({ value }: ShareCell): boolean {
  return (
    value.events !== undefined && value.n !== undefined && value.events > 0 && value.events < fewestEvents
  );
}

/** Its cell says the count of the study itself, none included, and not how many that would be of another number. */
export function keepsCount(cell: ShareCell): boolean {
  return cell.value.zero !== undefined || hasFewest(cell);
}

/** "1 of 130". */
export function countedInTable(scene: Scene, cell: ShareCell): Markup {
  const { events = 0, n = 0 } = cell.value;
  const { format, words } = scene;
  const counted = words.plain('common.share.counted', { events: format.number(events), n: format.number(n) });
  return figure(counted, sourceOf(cell));
}

/** “1 of 130”: how many that could be out of the table's denominator. In the cell itself the figure need not be named. */
function fewestNote(scene: Scene, cell: ShareCell, { notes, denominator }: InTable): Markup {
  const lead = scene.words.say('common.table.few_note', { counted: countedInTable(scene, cell) });
  const range = couldBeOutOf(scene, cell, denominator);
  if (range === null) return fewPeopleInWords(scene, cell) ?? lead;
  return notes === null ? range : runIn(scene.words, lead, range);
}

/** “None of 212”: how many there could be all the same. */
function zeroNote(scene: Scene, cell: ShareCell, { notes, denominator }: InTable): Markup {
  if (notes === null) return restInWords(scene, cell, denominator);
  const n = scene.format.number(cell.value.zero?.n ?? 0);
  return runIn(
    scene.words,
    scene.words.say('common.table.zero_note', { n }),
    restInWords(scene, cell, denominator),
  );
}

function unknownWithNote(scene: Scene, cell: UnknownCell, notes: Notes): Line {
  const note = scene.format.number(notes.cite(unknownNote(scene, cell), cell));
  return body(scene.words.say('common.table.not_known_note', { note }));
}

function noteNumbers(
  scene: Scene,
  cell: KnownCell,
  table: InTable & { readonly notes: Notes },
): readonly number[] {
  const { notes } = table;
  return [
    ...boundsOf(scene, cell, table).map((words) => notes.cite(words)),
    ...aboutPeople(scene, cell, table).map((one) => notes.cite(one, cell)),
  ].toSorted((a, b) => a - b);
}

function citeNotes(scene: Scene, numbers: readonly number[]): Markup {
  const list = scene.format.list(
    numbers.map((number) => scene.format.number(number)),
    'and',
  );
  return scene.words.say('common.table.note', { list, count: numbers.length });
}
