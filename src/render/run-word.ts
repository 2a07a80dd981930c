import type { Word } from './break-lines.ts';
import { textWidth } from './measure-text.ts';
import type { Run } from './run.ts';
import { shapedWidth } from './shaping/shape-line.ts';
import { isPlain } from './shaping/split-text.ts';

/** A run of a word, or a part of one. */
export interface Piece extends Run {
  readonly width: number;
}

/** A word with the runs it is set in. */
export interface RunWord extends Word {
  readonly text: string;
  readonly pieces: readonly Piece[];
  /** The run that the space before the word belongs to. */
  readonly spaceRun: Run;
}

/** A word beside words of another script is set by the shaper, whose kerning differs by a hair from the typesetter's. */
export function widthInRun(piece: string, run: Run, size: number): number {
  const width = textWidth(piece, { weight: run.weight, size });
  return isPlain(run.text) ? width : Math.max(width, shapedWidth(piece, run.weight, size));
}

/** Pieces set as one word; `spaceRun` is where the space before it belongs, if there is one. */
export function wordOf(pieces: readonly Piece[], spaceRun: Run | undefined, size: number): RunWord {
  const text = pieces.map((piece) => piece.text).join('');
  const before: Run = { ...(spaceRun ?? { weight: 400 }), text: ' ' };
  return {
    text,
    pieces,
    width: pieces.reduce((sum, { width }) => sum + width, 0),
    space: spaceRun === undefined ? 0 : textWidth(' ', { weight: before.weight, size }),
    spaceRun: before,
    ...pauseAfter(text),
  };
}

const marks = /[,;:،؛，；：、]$/;
const sentenceEnds = /[.!?؟।。！？]$/;

function pauseAfter(text: string): Pick<Word, 'pause'> {
  if (marks.test(text)) return { pause: 'mark' };
  return sentenceEnds.test(text) ? { pause: 'sentence' } : {};
}
