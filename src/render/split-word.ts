import { splitChinese, splitYear } from '../model/split-chinese.ts';
import { divideWord } from './divide-word.ts';
import { textWidth } from './measure-text.ts';
import { widthInRun, wordOf } from './run-word.ts';
import type { Piece, RunWord } from './run-word.ts';

/** Type size and the room of a line, in points. */
interface Room {
  readonly size: number;
  readonly measure: number;
}

/** A word in parts that have room on a line: before a bracket, at its ties, after its marks, and divided only as the last way. */
export function partsOf(word: RunWord, room: Room): readonly RunWord[] {
  return [splitBeforeBracket, untie, splitLongWord].reduce<readonly RunWord[]>(
    (words, split) => words.flatMap((one) => (one.width > room.measure ? split(one, room) : [one])),
    [word],
  );
}

/**
 * Korean writes a bracket right after its word, and may end a line between the two (Unicode Standard Annex 14: a break before
 * an opening bracket is open to Hangul, rule LB30).
 */
function splitBeforeBracket(word: RunWord, { size }: Room): readonly RunWord[] {
  const pieces = word.pieces.flatMap((piece) =>
    piece.text
      .split(/(?<=\p{Script=Hangul})(?=\()/u)
      .map((text) => ({ ...piece, text, width: widthInRun(text, piece, size) })),
  );
  const starts = pieces
    .map((_, index) => index)
    .filter((index) => index === 0 || opensAfterHangul(pieces[index - 1], pieces[index]));
  if (starts.length < 2) return [word];
  return starts.map((start, part) => {
    const own = pieces.slice(start, starts[part + 1]);
    const one = wordOf(own, undefined, size);
    return part === 0 ? { ...one, space: word.space, spaceRun: word.spaceRun } : one;
  });
}

function opensAfterHangul(before: Piece | undefined, piece: Piece | undefined): boolean {
  return /\p{Script=Hangul}$/u.test(before?.text ?? '') && piece?.text.startsWith('(') === true;
}

const tie = '\u00a0';

/** The words that ties make one, where no line can hold them together: better apart than any of them divided. */
function untie(word: RunWord, { size }: Room): readonly RunWord[] {
  const groups: Piece[][] = [[]];
  for (const piece of word.pieces) {
    piece.text.split(tie).forEach((text, part) => {
      if (part > 0) groups.push([]);
      if (text !== '') groups.at(-1)?.push({ ...piece, text, width: widthInRun(text, piece, size) });
    });
  }
  const parted = groups.filter((pieces) => pieces.length > 0);
  if (parted.length < 2) return [word];
  return parted.map((pieces, index) => {
    const one = wordOf(pieces, pieces[0], size);
    return index === 0 ? { ...one, space: word.space, spaceRun: word.spaceRun } : one;
  });
}

/**
 * A word that no line can hold (a web address, a long double name) is cut after its own marks, a Chinese one where Unicode
 * allows it, else divided.
 */
function splitLongWord(word: RunWord, { size, measure }: Room): readonly RunWord[] {
  const parts = word.pieces.flatMap((piece) => {
    const widthOf = (text: string): number => textWidth(text, { weight: piece.weight, size });
    return piece.text
      .split(/(?<=[-/._?&=–—])(?<!\p{Nd}\.(?=\p{Nd}))(?=[^-/._?&=–—])/u)
      .flatMap(splitChinese)
      .flatMap((text) => (widthOf(text) > measure ? splitYear(text) : [text]))
      .flatMap((text) => (widthOf(text) > measure ? divideWord(text, widthOf, measure) : [text]))
      .map((text) => ({ ...piece, text, width: widthOf(text) }));
  });
  return parts.map((part, index) =>
    index === 0
      ? { ...word, text: part.text, pieces: [part], width: part.width }
      : wordOf([part], undefined, size),
  );
}
