import { softHyphen } from './divide-word.ts';
import { faceOf } from './fonts.ts';
import type { Face } from './fonts.ts';
import { printable } from './printable-text.ts';
import { shapedWidth } from './shaping/shape-line.ts';
import { isPlain } from './shaping/split-text.ts';
import type { Weight } from './theme.ts';

export interface TextStyle {
  readonly weight: Weight;
  /** Points. */
  readonly size: number;
}

const rememberedWidths = 50_000;
const widths = new WeakMap<Face, Map<string, number>>();

/**
 * Width in points of a text set on one line, kerned and ligated as the typesetter does it.
 * A space neither kerns nor ligates in this typeface, so the widths of words and spaces add up to that of the line.
 * A soft hyphen at the end is seen, and as wide as a hyphen.
 */
export function textWidth(text: string, style: TextStyle): number {
  const face = faceOf(style.weight);
  if (!isPlain(text)) return shapedWidth(text, style.weight, style.size);
  const shown = text.endsWith(softHyphen) ? `${printable(text)}-` : printable(text);
  return (advance(face, shown) * style.size) / face.unitsPerEm;
}

function advance(face: Face, text: string): number {
  const known = widths.get(face) ?? new Map<string, number>();
  widths.set(face, known);
  const width = known.get(text);
  if (width !== undefined) return width;
  if (known.size >= rememberedWidths) known.clear();
  const run = face.layout(text, undefined, undefined, undefined, 'ltr');
  const sum = run.positions.reduce((total, { xAdvance }) => total + xAdvance, 0);
  known.set(text, sum);
  return sum;
}
