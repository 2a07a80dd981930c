import type { ReactElement } from 'react';
import { widestLetter } from '../model/calendar.ts';
import { splitChineseWords } from '../model/split-chinese.ts';
import type { LabelSize } from '../pictures/line-labels.ts';

/** Type of the labels in a picture, in its points. */
export const labelType = { size: 12, lineHeight: 15 } as const;

/** Nobody knows in which face a reader's device sets a page; the widest common ones are this much wider than ours. */
const WIDER = 1.08;
/** Bold letters are this much wider. */
const BOLDER = 1.08;
/** Guards against a sum of widths that is a rounding error over the measure. */
const TOLERANCE = 0.01;

/** Letters of other scripts, as a share of the type size; the first kind that fits counts. What is none of these is Latin. */
const scriptWidths: readonly (readonly [RegExp, number])[] = [
  [/\p{Mn}/u, 0],
  [/\p{Mc}/u, 0.4],
  [/[жшщмюфыъ]/u, 0.95],
  [/[ЖШЩМЮФЫЪ]/u, 1.1],
  [/(?=\p{Script=Cyrillic})\p{Ll}/u, 0.65],
  [/\p{Script=Cyrillic}/u, 0.85],
  [/\p{Script=Arabic}/u, 0.65],
  [/\p{Script=Devanagari}/u, 0.85],
  [/[\p{Script=Han}\p{Script=Hangul}\u3000-\u303f\uff00-\uffef]/u, 1],
];

function widthOfLetter(letter: string): number {
  return scriptWidths.find(([kind]) => kind.test(letter))?.[1] ?? widestLetter(letter);
}

/** Width that a text hardly goes over in any face, in points. Korean syllables count whole, Latin marks by themselves. */
export function estimateWidth(text: string): number {
  const plain = text.replaceAll('\u00a0', ' ');
  const letters = Array.from(/\p{Script=Hangul}/u.test(plain) ? plain : plain.normalize('NFD'));
  return letters.reduce((sum, letter) => sum + widthOfLetter(letter), 0) * labelType.size * WIDER;
}

/** Pieces that may stand on different lines, with the space after them that is not set at the end of a line. */
function piecesOf(text: string): readonly string[] {
  const words = text.split(' ').filter((part) => part !== '');
  return words.flatMap((word, index) => {
    const pieces = splitChineseWords(word);
    return index === words.length - 1
      ? pieces
      : pieces.map((piece, at) => (at === pieces.length - 1 ? `${piece} ` : piece));
  });
}

/**
 * Lines of whole words, each as long as the measure lets it; a word that is longer has a line of its own. All lines after
 * one another are the text: a line ends with the space that stands there.
 */
export function breakLabel(text: string, measure: number): readonly string[] {
  const lines: string[] = [];
  for (const piece of piecesOf(text)) {
    const longer = (lines.at(-1) ?? '') + piece;
    if (lines.length > 0 && estimateWidth(longer.trimEnd()) <= measure + TOLERANCE)
      lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines;
}

export function sizeOfLabel(text: string, measure: number, strong = false): LabelSize {
  const wider = strong ? BOLDER : 1;
  const lines = breakLabel(text, measure / wider);
  const width = Math.max(0, ...lines.map((line) => estimateWidth(line.trimEnd()))) * wider;
  return { width, height: lines.length * labelType.lineHeight };
}

/** Where the first baseline of a label lies below its top. */
const BASELINE = 11.5;

export interface LabelProps {
  readonly text: string;
  /** x of the edge or the middle that the label is set from, y of its top, in points. */
  readonly x: number;
  readonly top: number;
  readonly anchor: 'left' | 'middle' | 'right';
  readonly measure?: number;
  readonly strong?: boolean;
}

const anchors = { left: 'start', middle: 'middle', right: 'end' } as const;

/** Words in a picture, set in lines by the same estimate that placed them. */
export function Label({ text, x, top, anchor, measure, strong }: LabelProps): ReactElement {
  const lines =
    measure === undefined ? [text] : breakLabel(text, strong === true ? measure / BOLDER : measure);
  return (
    <text textAnchor={anchors[anchor]} {...(strong === true ? { className: 'strong' } : {})}>
      {lines.map((line, index) => (
        <tspan key={index} x={round(x)} y={round(top + BASELINE + index * labelType.lineHeight)}>
          {anchor === 'left' ? line : spaceBefore(lines, index) + line.trimEnd()}
        </tspan>
      ))}
    </text>
  );
}

/** A space between two lines stands where it does not move the edge that they are set from. */
function spaceBefore(lines: readonly string[], index: number): string {
  return lines[index - 1]?.endsWith(' ') === true ? ' ' : '';
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
