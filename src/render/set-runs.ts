import type { Inline } from '../model/document.ts';
import { splitChineseProse, splitChineseWords } from '../model/split-chinese.ts';
import { leansOnNext, staysWithNext } from '../model/tie-words.ts';
import { breakWords } from './break-lines.ts';
import type { Setting, Word } from './break-lines.ts';
import { textWidth } from './measure-text.ts';
import { printable } from './printable-text.ts';
import { widthInRun, wordOf } from './run-word.ts';
import type { Piece, RunWord } from './run-word.ts';
import type { Run } from './run.ts';
import { isPlain } from './shaping/split-text.ts';
import { partsOf } from './split-word.ts';
import type { Weight } from './theme.ts';

export interface SetLine {
  readonly runs: readonly Run[];
  /** Points, without the space after the line. */
  readonly width: number;
  /** False where a long word goes on in the next line, and at the end of the paragraph. */
  readonly spaceAfter: boolean;
}

export interface LineSetting {
  /** Type size in points. */
  readonly size: number;
  /** Greatest width of a line, in points. */
  readonly measure: number;
  readonly setting: Setting;
}

/** Runs of the inlines of a paragraph: bold ones in 700, the others in the weight given. */
export function runsOf(inlines: readonly Inline[], weight: Weight = 400): readonly Run[] {
  return inlines.map((inline) => ({
    text: inline.value,
    weight: inline.bold === true ? 700 : weight,
    ...(inline.type === 'text' && inline.language !== undefined ? { language: inline.language } : {}),
  }));
}

/**
 * Breaks runs of text into lines. A no-break space or a hyphen never breaks; a web address may, after its marks. No word
 * is divided but one that has no room in a line of its own: a packet must not wait for a shorter word. Chinese is parted
 * between words where lines are balanced.
 */
export function setRuns(runs: readonly Run[], { size, measure, setting }: LineSetting): readonly SetLine[] {
  const split = setting === 'balanced' ? splitChineseWords : splitChineseProse;
  const words = wordsOf(joinAlike(runs), size, split).flatMap((word) => partsOf(word, { size, measure }));
  const tied = words.map(beforeBracket).map(together);
  const starts = breakWords(setting === 'balanced' ? tied.map(withinMarks) : tied, measure, setting);
  return starts.map((start, line) =>
    setLine(words.slice(start, starts[line + 1] ?? words.length), words[starts[line + 1] ?? -1], size),
  );
}

/** A reader pauses before words in brackets, not before a note: "not known (4)". */
function beforeBracket(word: RunWord, index: number, words: readonly RunWord[]): RunWord {
  return /^[(（]\p{L}/u.test(words[index + 1]?.text ?? '') ? { ...word, pause: 'mark' } : word;
}

function together(word: RunWord, index: number, words: readonly RunWord[]): Word {
  const next = words[index + 1];
  if (next === undefined || next.space === 0) return word;
  if (staysWithNext(word.text, next.text)) return { ...word, tie: 'stays' };
  return leansOnNext(word.text, next.text) ? { ...word, tie: 'leans' } : word;
}

/** Chinese rather ends a balanced line after a mark: what stands between two marks is read in one. */
function withinMarks(word: Word, index: number, words: readonly Word[]): Word {
  return words[index + 1]?.space === 0 && word.pause === undefined ? { ...word, tie: 'leans' } : word;
}

function wordsOf(
  runs: readonly Run[],
  size: number,
  split: (word: string) => readonly string[],
): readonly RunWord[] {
  const words: RunWord[] = [];
  let pieces: Piece[] = [];
  let spaceRun: Run | undefined;
  const close = () => {
    if (pieces.length > 0) words.push(wordOf(pieces, spaceRun, size));
    pieces = [];
  };
  for (const run of runs) {
    printable(run.text)
      .split(' ')
      .forEach((text, index) => {
        if (index > 0) {
          close();
          spaceRun = run;
        }
        split(text).forEach((piece, part) => {
          if (part > 0) {
            close();
            spaceRun = undefined;
          }
          pieces.push({ ...run, text: piece, width: widthInRun(piece, run, size) });
        });
      });
  }
  close();
  return words;
}

function setLine(words: readonly RunWord[], next: RunWord | undefined, size: number): SetLine {
  const pieces = words.flatMap((word, index): readonly Run[] =>
    index === 0 || word.space === 0 ? word.pieces : [word.spaceRun, ...word.pieces],
  );
  const runs = joinAlike(pieces);
  return { runs, width: runsWidth(runs, size), spaceAfter: (next?.space ?? 0) > 0 };
}

/** Digits, marks and spaces at the head of a line: the typesetter shapes them apart from the first letter. */
const unscripted = /^[\p{Script=Common}\p{Script=Inherited}]+/u;

/**
 * Width of runs set on one line, in points. Runs that are shaped (see shaping/) are measured whole: there a bracket takes
 * the typeface of the word that it stands at.
 */
export function runsWidth(runs: readonly Run[], size: number): number {
  let headOfLine = true;
  const parts = runs.flatMap((run) => {
    const head = headOfLine && isPlain(run.text) ? (unscripted.exec(run.text)?.[0] ?? '') : '';
    headOfLine &&= head === run.text;
    return [head, run.text.slice(head.length)].map((text) => ({ ...run, text }));
  });
  return parts.reduce((sum, { text, weight }) => sum + textWidth(text, { weight, size }), 0);
}

/** Neighbours of one weight and language become one run: letters kern within a run only. */
function joinAlike(pieces: readonly Run[]): readonly Run[] {
  const joined: Run[] = [];
  for (const { text, weight, language } of pieces) {
    const last = joined.at(-1);
    const run: Run = {
      text: (last?.text ?? '') + text,
      weight,
      ...(language === undefined ? {} : { language }),
    };
    if (last?.weight === weight && last.language === language) joined[joined.length - 1] = run;
    else joined.push({ ...run, text });
  }
  return joined;
}
