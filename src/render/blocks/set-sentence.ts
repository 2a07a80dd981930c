import type { Blank, Sentence } from '../../model/care-blocks.ts';
import { printable } from '../printable-text.ts';
import { runsOf, runsWidth } from '../set-runs.ts';
import { splitChinese } from '../../model/split-chinese.ts';
import type { Run } from '../run.ts';
import type { TypeRole } from '../theme.ts';

/** Least room to write in by hand, and the white between words and a blank, for type of 13 points. */
const LEAST_BLANK = 60 / 13;
const GAP = 7 / 13;
/** A mark right after a blank stands closer. */
const MARK_GAP = 2 / 13;

/** Words or a blank within a line of a sentence. */
export interface SetPart {
  readonly runs: readonly Run[];
  readonly blank?: Blank;
  /** Points. */
  readonly width: number;
  /** White before it. */
  readonly gap: number;
}

export type SentenceLine = readonly SetPart[];

/** The smallest piece that a line may begin with. */
interface Token {
  readonly runs: readonly Run[];
  /** It goes on without a space, as Chinese does. */
  readonly goesOn?: true;
  readonly blank?: Blank;
}

/** Words of the runs of a part, each with the runs it is made of: a word may be bold in part. */
function wordsOf(runs: readonly Run[]): readonly Token[] {
  const words: { readonly runs: Run[]; readonly goesOn?: true }[] = [{ runs: [] }];
  for (const run of runs) {
    printable(run.text)
      .split(' ')
      .forEach((text, index) => {
        if (index > 0) words.push({ runs: [] });
        splitChinese(text).forEach((piece, part) => {
          if (part > 0) words.push({ runs: [], goesOn: true });
          words.at(-1)?.runs.push({ ...run, text: piece });
        });
      });
  }
  return words.filter((word) => word.runs.length > 0);
}

function tokensOf({ parts }: Sentence, role: TypeRole): readonly Token[] {
  return parts.flatMap((part) =>
    part.type === 'blank' ? [{ runs: [], blank: part }] : wordsOf(runsOf(part.inlines, role.weight)),
  );
}

function isMark(token: Token | undefined): boolean {
  return token !== undefined && /^[\p{P}]+$/u.test(token.runs.map(({ text }) => text).join(''));
}

function wordGap(before: Token | undefined, token: Token, size: number): number {
  if (before === undefined) return 0;
  if (token.goesOn === true) return 0;
  if (before.blank === undefined && token.blank === undefined)
    return runsWidth([{ text: ' ', weight: 400 }], size);
  return (isMark(token) ? MARK_GAP : GAP) * size;
}

function leastWidth(token: Token, size: number): number {
  return token.blank === undefined ? runsWidth(token.runs, size) : LEAST_BLANK * size;
}

/** Fills lines; a mark is never parted from what it follows. */
function fillLines(tokens: readonly Token[], width: number, size: number): readonly (readonly Token[])[] {
  const lines: Token[][] = [];
  let taken = 0;
  tokens.forEach((token, index) => {
    const line = lines.at(-1);
    const gap = wordGap(line?.at(-1), token, size);
    const least = leastWidth(token, size);
    const next = tokens[index + 1];
    const tail =
      token.blank !== undefined && next !== undefined && isMark(next)
        ? MARK_GAP * size + leastWidth(next, size)
        : 0;
    if (line !== undefined && (isMark(token) || taken + gap + least + tail <= width)) {
      line.push(token);
      taken += gap + least;
    } else {
      lines.push([token]);
      taken = least;
    }
  });
  return lines;
}

/** Words that follow each other are set as one text; blanks share the room that is left. */
function setLine(tokens: readonly Token[], width: number, size: number): SentenceLine {
  const parts: SetPart[] = [];
  tokens.forEach((token, index) => {
    const before = tokens[index - 1];
    const last = parts.at(-1);
    if (token.blank === undefined && last !== undefined && before?.blank === undefined) {
      const space: Run = { ...(token.runs[0] ?? { weight: 400 }), text: ' ' };
      const runs = [...last.runs, ...(token.goesOn === true ? [] : [space]), ...token.runs];
      parts.splice(-1, 1, { ...last, runs, width: runsWidth(runs, size) });
    } else {
      const gap = wordGap(before, token, size);
      parts.push({ ...token, width: leastWidth(token, size), gap });
    }
  });
  return shareRoom(parts, width, LEAST_BLANK * size);
}

function shareRoom(parts: readonly SetPart[], width: number, least: number): SentenceLine {
  const words = parts.reduce((sum, { blank, gap, width: own }) => sum + gap + (blank ? 0 : own), 0);
  const shares = parts.reduce((sum, { blank }) => sum + (blank?.share ?? 0), 0);
  const blanks = parts.filter(({ blank }) => blank !== undefined).length;
  const free = Math.max(0, width - words - 1 - blanks * least);
  return parts.map((part) =>
    part.blank === undefined ? part : { ...part, width: least + (free * part.blank.share) / shares },
  );
}

/** A sentence with its blanks, line by line, none wider than `width` unless a word is. Points. */
export function setSentence(sentence: Sentence, role: TypeRole, width: number): readonly SentenceLine[] {
  const tokens = tokensOf(sentence, role);
  return fillLines(tokens, width, role.size).map((line) => setLine(line, width, role.size));
}
