import type { DocumentTree } from '../../model/document.ts';
import { findUnexplained } from '../../model/explained-terms.ts';
import { findPassives } from '../../model/passive-voice.ts';
import type { TextPiece } from '../../model/text-piece.ts';
import { expectedText } from '../../model/tree-text.ts';
import { countWords, escapePattern, wholeWords } from '../../model/word-forms.ts';
import { foundAt, forPerson, inEach, missing, unless } from '../check.ts';
import type { Check, Finding } from '../check.ts';
import { blocksOf } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { textOf, unitsIn } from '../words-of.ts';
import { peopleRows, unique } from './chances.ts';

/**
 * Lost where a medical word of the glossary is met before it is explained. That they come only to teach them, and that
 * there are no others, only a reader can tell.
 */
export const termsExplained: Check = ({ reader, locale }) => {
  const unexplained = reader.flatMap((tree) =>
    findUnexplained(tree, locale.glossary).map(({ piece }) => ({ tree, piece })),
  );
  return lostAt(unexplained, forPerson);
};

/** Names of publications, with numbers and addresses that nobody reads as words. */
const reference = /doi\.org|PubMed|\w\.(?:com|org|gov|edu|net)\//u;

interface Said {
  readonly tree: DocumentTree;
  readonly piece: TextPiece;
}

function running({ reader }: Pages): readonly Said[] {
  return reader.flatMap((tree) =>
    expectedText(tree)
      .filter(({ kind, text }) => kind === 'paragraph' && !reference.test(text))
      .map((piece) => ({ tree, piece })),
  );
}

/** The block from which a text was printed: the one with its origin that holds it, else the first of its document. */
function blockOf({ tree, piece }: Said): readonly Placed[] {
  const blocks = blocksOf([tree]);
  const own = blocks.find(({ block }) => holds(block, piece));
  return own === undefined ? blocks.slice(0, 1) : [own];
}

function holds(block: Placed['block'], { text }: TextPiece): boolean {
  if (block.type === 'topic') return block.intro.some((paragraph) => textOf(paragraph) === text.trim());
  const alone: DocumentTree['blocks'] = [block];
  return expectedText({ blocks: alone } as DocumentTree).some((piece) => piece.text === text);
}

function lostAt(bad: readonly Said[], good: Finding): Finding {
  const [first] = bad;
  return first === undefined ? good : unless(blockOf(first), []);
}

/** By the reading formulas of the language; where there is none, a person must judge. */
export const everydayWords: Check = ({ readings, reader }) => {
  const measured = readings.filter(
    ({ kind, results }) => results.length > 0 && reader.some((tree) => tree.kind === kind),
  );
  if (measured.length === 0) return forPerson;
  const hard = measured.find(({ results }) => results.some(({ passes }) => !passes));
  const tops = (kinds: readonly string[]): readonly Placed[] =>
    reader
      .filter(({ kind }) => kinds.includes(kind))
      .flatMap((tree) => tree.blocks.slice(0, 1).map((block) => ({ tree, block })));
  return unless(hard === undefined ? [] : tops([hard.kind]), tops(measured.map(({ kind }) => kind)));
};

/** Four sentences out of five, in each document, as the working rule for this criterion has it. */
const activeShare = 0.8;

export const activeVoice: Check = (pages) => {
  const { passive } = pages.locale;
  if (passive === null) return forPerson;
  const said = running(pages);
  const shareOf = (tree: DocumentTree): number => {
    const texts = said.filter((one) => one.tree === tree).map(({ piece }) => piece.text);
    const { sentences, passive: found } = findPassives(texts, passive);
    return sentences === 0 ? 1 : 1 - found.length / sentences;
  };
  const tops = pages.reader.flatMap((tree) => tree.blocks.slice(0, 1).map((block) => ({ tree, block })));
  return unless(
    tops.filter(({ tree }) => shareOf(tree) < activeShare),
    tops,
  );
};

/**
 * Numbers that a reader holds against a box, a thermometer or a lab slip: rounded, they would be another dose or reading.
 * Their units are those of the language.
 */
function readingsIn({ locale }: Pages): RegExp {
  const units = [
    ...unitsIn(locale, 'aftercare.amounts.mg', ['number']),
    ...unitsIn(locale, 'aftercare.temperature.us', ['fahrenheit', 'celsius']),
  ];
  const names = units.map(escapePattern).join('|');
  const number = String.raw`\d+(?:[.,]\d+)?\s?`;
  return new RegExp(String.raw`${number}(?:${names})(?!\p{L})|HbA1c[^.;]*?${number}%`, 'gu');
}

/** No percentage, no fraction and no decimal place anywhere in the running text, readings aside. */
export const wholeNumbers: Check = (pages) => {
  const point = pages.locale.formatter.number(1.5, 1).replace(/\d/gu, '');
  const broken = new RegExp(String.raw`\d[${point}]\d(?!\d\d)|%|[½⅓⅔¼¾]`, 'u');
  const readings = readingsIn(pages);
  const numbers = running(pages).filter(({ piece }) => /\d/u.test(piece.text));
  const [first] = numbers;
  if (first === undefined) return missing;
  return lostAt(
    numbers.filter(({ piece }) => broken.test(piece.text.replace(readings, ' '))),
    foundAt(blockOf(first)),
  );
};

/** Those who have it and those who do not are both counted out, and so is the change of each weight. */
export const noArithmetic: Check = (pages) => {
  const drawn = peopleRows(pages);
  const weights = blocksOf(pages.reader).flatMap((placed) =>
    placed.block.type === 'strip'
      ? placed.block.rows.filter(({ picture }) => picture?.type === 'range').map((row) => ({ placed, row }))
      : [],
  );
  if (drawn.length + weights.length === 0) return forPerson;
  const bad = [
    ...drawn.filter((one) => !bothCounted(one)).map(({ strip }) => strip),
    ...weights.filter(({ row }) => figuresIn(row).length < 2).map(({ placed }) => placed),
  ];
  return unless(bad, unique([...drawn.map(({ strip }) => strip), ...weights.map(({ placed }) => placed)]));
};

type Row = ReturnType<typeof peopleRows>[number]['row'];

function figuresIn({ words }: Row): readonly string[] {
  return words.flatMap(({ inlines }) =>
    inlines.filter(({ type }) => type === 'figure').map(({ value }) => value),
  );
}

/** "40 out of 1,000" and "960": they add up to all, or to one less where the number is fewer than one. */
function bothCounted({ row, picture }: ReturnType<typeof peopleRows>[number]): boolean {
  const [have = '', rest = ''] = figuresIn(row);
  const count = Number((/\d[\d.,\u00a0\u202f]*/u.exec(rest)?.[0] ?? '').replace(/\D/gu, ''));
  const some = Number((/\d[\d.,\u00a0\u202f]*/u.exec(have)?.[0] ?? '').replace(/\D/gu, ''));
  if (rest === '') return false;
  return picture.half ? some + count === picture.of : picture.filled + count === picture.of;
}

/** Words of one paragraph; ours, about five lines of a page. */
const longestChunk = 75;

export const shortChunks: Check = (pages) => {
  const said = running(pages);
  return lostAt(
    said.filter(({ piece }) => countWords(piece.text) > longestChunk),
    inEach(pages.reader, blocksOf(pages.reader)),
  );
};

/** Every document speaks to the reader. */
export const speaksToReader: Check = (pages) => {
  const { readerWords } = pages.locale;
  if (readerWords.length === 0) return forPerson;
  const addressed = wholeWords(readerWords, 'i');
  const said = running(pages).filter(({ piece }) => addressed.test(piece.text));
  const first = pages.reader.flatMap((tree) => said.find((one) => one.tree === tree) ?? []);
  return inEach(pages.reader, first.flatMap(blockOf));
};
