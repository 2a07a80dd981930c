import type { ReactElement } from 'react';
import { widestLetter } from '../model/calendar.ts';
import type { LabelSize } from '../pictures/line-labels.ts';

/** Type of the labels in a picture, in its points. */
export const labelType = { size: 12, lineHeight: 15 } as const;

/** Nobody knows in which face a reader's device sets a page; the widest common ones are this much wider than ours. */
const WIDER = 1.08;

/** Width that a text hardly goes over in any face, in points. */
export function estimateWidth(text: string): number {
  const shares = Array.from(text.replaceAll('\u00a0', ' ').normalize('NFD'), widestLetter);
  return shares.reduce((sum, share) => sum + share, 0) * labelType.size * WIDER;
}

/** Lines of whole words, each as long as the measure lets it; a word that is longer has a line of its own. */
export function breakLabel(text: string, measure: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && estimateWidth(`${last} ${word}`) <= measure)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

export function sizeOfLabel(text: string, measure: number): LabelSize {
  const lines = breakLabel(text, measure);
  const width = Math.max(0, ...lines.map(estimateWidth));
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
  const lines = measure === undefined ? [text] : breakLabel(text, measure);
  return (
    <text textAnchor={anchors[anchor]} {...(strong === true ? { className: 'strong' } : {})}>
      {lines.map((line, index) => (
        <tspan key={index} x={round(x)} y={round(top + BASELINE + index * labelType.lineHeight)}>
          {index < lines.length - 1 ? `${line} ` : line}
        </tspan>
      ))}
    </text>
  );
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
