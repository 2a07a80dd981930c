import type { Paragraph, Strip, StripRow, Table } from '../../model/document.ts';
import { foundAt, missing, unless } from '../check.ts';
import type { Check } from '../check.ts';
import { ofType, sourcesOf } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { hasWordsOf, isWordsOf, numbersIn, textOf, textsOf, wordsOf } from '../words-of.ts';
import { boards, boardsUnder, optionNames, rowNames } from './options.ts';
import type { Board } from './options.ts';

type People = Extract<StripRow['picture'], { readonly type: 'people' }>;

/** Rows that draw people out of a hundred or a thousand, each with its strip. */
export function peopleRows(
  pages: Pages,
): readonly { readonly strip: Placed<Strip>; readonly row: StripRow; readonly picture: People }[] {
  return ofType(pages.documents, 'strip').flatMap((strip) =>
    strip.block.rows.flatMap((row) =>
      row.picture?.type === 'people' ? [{ strip, row, picture: row.picture }] : [],
    ),
  );
}

export function hasFigure(paragraphs: readonly Paragraph[]): boolean {
  return paragraphs.some(({ inlines }) => inlines.some(({ type }) => type === 'figure'));
}

/** Tables of the comparison that count people. */
export function countingTables(pages: Pages): readonly Placed<Table>[] {
  return ofType(
    pages.reader.filter(({ kind }) => kind === 'comparison'),
    'table',
  ).filter(({ block, topic }) => topic !== undefined && leadOver(pages, topic, block) !== undefined);
}

/** Every figure that the sources list, with all that they say of it. */
export function sourcedFigures(
  pages: Pages,
): readonly { readonly strip: Placed<Strip>; readonly said: string }[] {
  const course = wordsOf(pages.locale, 'sources.course');
  return ofType(sourcesOf(pages), 'strip').flatMap((strip) =>
    strip.block.rows
      .filter(({ name }) => name !== course)
      .map(({ words }) => ({ strip, said: textsOf(words) })),
  );
}

/** The sentence over a table that says out of how many people its numbers are. */
function leadOver({ locale }: Pages, topic: Placed['topic'] & object, table: Table): Paragraph | undefined {
  const forms = [
    wordsOf(locale, 'common.table.lead', ['of', 'time']),
    wordsOf(locale, 'common.table.lead_times', ['of']),
    wordsOf(locale, 'common.table.lead_counted', ['time']),
    wordsOf(locale, 'common.table.lead_counted_times', []),
  ];
  return topic.blocks
    .slice(0, topic.blocks.indexOf(table))
    .findLast(
      (block): block is Paragraph =>
        block.type === 'paragraph' && forms.some((form) => hasWordsOf(textOf(block), form)),
    );
}

/** The same options in the same order in every strip and table, the clinic's own results aside. */
export const equalDetail: Check = (pages) => {
  const names = optionNames(pages);
  if (names.length < 2) return missing;
  const own = boardsUnder(pages, 'comparison.own.question');
  const all = boards(pages).filter((board) => !own.some(({ block }) => block === board.block));
  const differs = (board: Board): boolean => rowNames(board).join('\n') !== names.join('\n');
  return unless(all.filter(differs), all);
};

export const chancesGiven: Check = (pages) =>
  foundAt([
    ...unique(peopleRows(pages).map(({ strip }) => strip)),
    ...countingTables(pages).filter(({ block }) => block.rows.some(({ cells }) => cells.some(hasFigure))),
  ]);

/** Whoever draws people says beside them whom the studies measured, and the sources say it of every figure. */
export const peopleDescribed: Check = (pages) => {
  const bmi = wordsOf(pages.locale, 'clinician-sheet.facts.bmi');
  const strips = unique(peopleRows(pages).map(({ strip }) => strip));
  const described = ({ topic }: Placed): boolean =>
    (topic?.blocks ?? []).some((block) => block.type === 'paragraph' && textOf(block).includes(bmi));
  const rows = sourcedFigures(pages);
  const silent = rows.filter(({ said }) => !said.includes(bmi));
  return unless(
    [...strips.filter((strip) => !described(strip)), ...silent.map(({ strip }) => strip)],
    [...strips, ...unique(rows.map(({ strip }) => strip))],
  );
};

/** Each chance is said as so many out of so many, in a picture or under the head of a table, none as a percentage. */
export const countsOfPeople: Check = (pages) => {
  const rows = peopleRows(pages);
  const counted = ({ row, picture }: (typeof rows)[number]): boolean => {
    const number = row.words.find(({ role }) => role === 'number');
    return number !== undefined && numbersIn(textOf(number)).includes(picture.of);
  };
  const tables = countingTables(pages);
  const percentages = tables.filter(({ block }) =>
    block.rows.some(({ cells }) => textsOf(cells.flat()).includes('%')),
  );
  return unless(
    [...rows.filter((row) => !counted(row)).map(({ strip }) => strip), ...percentages],
    [...unique(rows.map(({ strip }) => strip)), ...tables],
  );
};

/**
 * No cell with a figure has a time of its own: then all options of a column were looked at after the same time. Where no
 * study fits that time, the page says so, but the item is not met. Weights at further times, each with its time before
 * it, are no comparison.
 */
export const sameTime: Check = (pages) => {
  const time = timeForms(pages);
  const [times, further] = [new RegExp(time, 'v'), new RegExp(`^(?:${time})[:：]`, 'v')];
  const ages = agesOf(pages);
  const other = (paragraphs: readonly Paragraph[]): boolean => {
    const compared = paragraphs.filter((one) => !further.test(textOf(one)) && !ages.isSaidIn(one));
    return hasFigure(compared) && times.test(textsOf(compared));
  };
  const asks = boardsUnder(pages, 'comparison.asks.question');
  const own = boardsUnder(pages, 'comparison.own.question');
  const undo = boardsUnder(pages, 'comparison.undo.question');
  const apart = [...asks, ...own, ...undo].map(({ block }) => block);
  const all = boards(pages).filter(({ block }) => !apart.includes(block));
  const rowsOf = ({ block }: Board): readonly (readonly Paragraph[])[] =>
    block.type === 'strip' ? block.rows.map(({ words }) => words) : block.rows.flatMap(({ cells }) => cells);
  return unless(
    all.filter((board) => rowsOf(board).some(other)),
    all.filter((board) => rowsOf(board).some(hasFigure)),
  );
};

/** Sentences on how old people were, whose years are no time after a treatment. */
function agesOf({ locale }: Pages): { readonly isSaidIn: (paragraph: Paragraph) => boolean } {
  const keys = ['age-outside', 'age-outside-high', 'age-outside-range', 'adults-only', 'age-unknown'];
  const said = [...keys.map((key) => `missing.near.${key}`), 'missing.near_several.age-unknown'];
  const forms = said.map((key) => wordsOf(locale, key, ['low', 'high', 'yours']));
  return { isSaidIn: (paragraph) => forms.some((form) => isWordsOf(textOf(paragraph), form)) };
}

/** "16 months", in every unit that the pages use, as a pattern. */
function timeForms({ locale }: Pages): string {
  const forms = ['days', 'months', 'years'].flatMap((unit) =>
    [1, 2].map((count) =>
      locale.translator
        .text(`codes.time.${unit}`, { count })
        .replace(/\s+/gu, ' ')
        .replace(/\d/u, String.raw`\d+(?:\.\d+)?`),
    ),
  );
  // Chinese sets no space after the unit: "16个月后".
  return `(?:${forms.join('|')})(?![\\p{L}--\\p{Script=Han}])`;
}

/** All pictures of a strip count out of the same number, and every table says out of how many. */
export const sameDenominator: Check = (pages) => {
  const strips = unique(peopleRows(pages).map(({ strip }) => strip));
  const mixed = strips.filter(
    ({ block }) =>
      new Set(
        block.rows.flatMap(({ picture }) => (picture !== undefined && 'of' in picture ? [picture.of] : [])),
      ).size !== 1,
  );
  return unless(mixed, [...strips, ...countingTables(pages)]);
};

/** Whatever is drawn is also said in a number. */
export const severalForms: Check = (pages) => {
  const rows = peopleRows(pages);
  return unless(
    rows.filter(({ row }) => !hasFigure(row.words)).map(({ strip }) => strip),
    unique(rows.map(({ strip }) => strip)),
  );
};

export function unique<T extends Placed>(placed: readonly T[]): readonly T[] {
  return placed.filter((one, index) => placed.findIndex(({ block }) => block === one.block) === index);
}
