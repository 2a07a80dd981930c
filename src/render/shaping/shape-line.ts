import { softHyphen } from '../divide-word.ts';
import { faceOf } from '../fonts.ts';
import type { Face } from '../fonts.ts';
import { printable } from '../printable-text.ts';
import type { Run } from '../run.ts';
import type { Direction, Weight } from '../theme.ts';
import { shapeText } from './harfbuzz.ts';
import type { ShapedGlyph } from './harfbuzz.ts';
import { levelsOfLines, visualOrder } from './order-line.ts';
import { readings } from './read-glyphs.ts';
import { splitByTypeface } from './split-text.ts';
import type { TypefacePart } from './split-text.ts';
import { baseTypeface } from './typefaces.ts';
import type { Typeface } from './typefaces.ts';

/** A glyph as the painter takes it; see tune-pdfkit.ts for its id. */
export interface PlacedGlyph {
  readonly id: { readonly id: number; readonly text: string };
  /** Units of the face. */
  readonly advanceWidth: number;
  /** What it is read as; nothing where another glyph of the same letters says it all. */
  readonly codePoints: readonly number[];
}

export interface GlyphPosition {
  /** Points. */
  readonly xAdvance: number;
  /** Thousandths of the type size. */
  readonly xOffset: number;
  readonly yOffset: number;
}

/** Glyphs of one face and one direction, from left to right. */
export interface ShapedPart {
  readonly face: Face;
  readonly weight: Weight;
  readonly level: number;
  readonly language: string | undefined;
  readonly text: string;
  readonly glyphs: readonly PlacedGlyph[];
  readonly positions: readonly GlyphPosition[];
  /** Points. */
  readonly width: number;
}

export interface PlacedPart extends ShapedPart {
  /** Points from the left edge of the line. */
  readonly left: number;
}

interface Word {
  readonly text: string;
  readonly typeface: Typeface;
  readonly weight: Weight;
  readonly language: string | undefined;
  readonly level: number;
}

/**
 * The parts of a line in the order in which they are read, each where it stands. `size` in points; `order` is the level of
 * each character as its paragraph gives it, or for a line that is a paragraph, the direction of the text around it.
 */
export function shapeLine(
  runs: readonly Run[],
  size: number,
  order: readonly number[] | Direction,
): readonly PlacedPart[] {
  const parts = joinParts(wordsOf(runs, order).map((word) => shapeWord(word, size)));
  const lefts = new Map<ShapedPart, number>();
  let left = 0;
  for (const part of visualOrder(parts)) {
    lefts.set(part, left);
    left += part.width;
  }
  return parts.map((part) => ({ ...part, left: lefts.get(part) ?? 0 }));
}

/** The part with a space after its last letter that takes no room. */
export function endInSpace(part: PlacedPart): PlacedPart {
  const [glyph] = glyphsOf(' ', part.face, false).map(({ id }) => placedGlyph(part.face, id, ' '));
  const position = { xAdvance: 0, xOffset: 0, yOffset: 0 };
  const ends = <T>(items: readonly T[], item: T): readonly T[] =>
    part.level % 2 === 1 ? [item, ...items] : [...items, item];
  if (glyph === undefined) return part;
  return {
    ...part,
    text: `${part.text} `,
    glyphs: ends(part.glyphs, glyph),
    positions: ends(part.positions, position),
  };
}

/** Width of a word of one line, in points. */
export function shapedWidth(text: string, weight: Weight, size: number): number {
  return wordsOf([{ text, weight }], 'ltr').reduce((sum, word) => sum + shapeWord(word, size).width, 0);
}

/** Words and spaces, split where the typeface or the direction changes. */
function wordsOf(runs: readonly Run[], order: readonly number[] | Direction): readonly Word[] {
  const printed = runs.map((run) => ({ ...run, text: shownText(run.text) }));
  const levels =
    typeof order === 'string'
      ? (levelsOfLines([{ runs: printed, spaceAfter: false }], order)[0] ?? [])
      : order;
  let at = 0;
  return printed.flatMap(({ text, weight, language }) =>
    splitAtSpaces(text).flatMap(({ text: part, typeface }) => {
      const split = splitByLevel(part, levels.slice(at, at + part.length));
      at += part.length;
      return split.map((word) => ({ ...word, typeface, weight, language }));
    }),
  );
}

/** As it is printed, with the soft hyphen at the end of a divided word. */
function shownText(text: string): string {
  return text.endsWith(softHyphen) ? printable(text) + softHyphen : printable(text);
}

/** A space is set with the word before it, so that they are painted in one go. */
function splitAtSpaces(text: string): readonly TypefacePart[] {
  const parts: TypefacePart[] = [];
  for (const piece of text.split(/(?<= )|(?= )/)) {
    if (piece === ' ') parts.push({ text: piece, typeface: parts.at(-1)?.typeface ?? baseTypeface });
    else parts.push(...splitByTypeface(piece));
  }
  return parts;
}

function splitByLevel(text: string, levels: readonly number[]): readonly { text: string; level: number }[] {
  const parts: { text: string; level: number }[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const level = levels[at] ?? 0;
    const last = parts.at(-1);
    if (last?.level === level) last.text += text.charAt(at);
    else parts.push({ text: text.charAt(at), level });
  }
  return parts;
}

const remembered = 50_000;
const shapedWords = new WeakMap<Face, Map<string, readonly ShapedGlyph[]>>();

function glyphsOf(text: string, face: Face, rightToLeft: boolean): readonly ShapedGlyph[] {
  const known = shapedWords.get(face) ?? new Map<string, readonly ShapedGlyph[]>();
  shapedWords.set(face, known);
  const key = `${rightToLeft ? '<' : '>'}${text}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size >= remembered) known.clear();
  const glyphs = shapeText(text, face, rightToLeft);
  known.set(key, glyphs);
  return glyphs;
}

function shapeWord({ text, typeface, weight, language, level }: Word, size: number): ShapedPart {
  const face = faceOf(weight, typeface);
  // A soft hyphen is seen only where a word is divided at it: there it looks like any other.
  const glyphs = glyphsOf(text.replace(softHyphen, '-'), face, level % 2 === 1);
  const scale = size / face.unitsPerEm;
  const readAs = readings(text, glyphs, level % 2 === 1);
  const positions = glyphs.map(({ advance, offset }) => ({
    xAdvance: text === ' ' ? spaceWidth(weight, size) : advance * scale,
    xOffset: (offset.x * 1000) / face.unitsPerEm,
    yOffset: (offset.y * 1000) / face.unitsPerEm,
  }));
  return {
    face,
    weight,
    level,
    language,
    text,
    glyphs: glyphs.map(({ id }, index) => placedGlyph(face, id, readAs[index] ?? '')),
    positions,
    width: positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0),
  };
}

/** Spaces are as wide as in the base typeface, whatever they stand beside. */
function spaceWidth(weight: Weight, size: number): number {
  const face = faceOf(weight);
  return ((glyphsOf(' ', face, false)[0]?.advance ?? 0) * size) / face.unitsPerEm;
}

function placedGlyph(face: Face, id: number, text: string): PlacedGlyph {
  const { advanceWidth } = face.getGlyph(id);
  return {
    id: { id, text },
    advanceWidth,
    codePoints: Array.from(text, (character) => character.codePointAt(0) ?? 0),
  };
}

/**
 * Neighbours of one face, direction and language become one part. From right to left each word stays one: within a part the
 * glyphs stand from left to right, and a reader that takes them as they come would hear the last word first.
 */
function joinParts(parts: readonly ShapedPart[]): readonly ShapedPart[] {
  const joined: ShapedPart[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last !== undefined && isAlike(last, part)) joined[joined.length - 1] = joinTwo(last, part);
    else joined.push(part);
  }
  return joined;
}

function isAlike(one: ShapedPart, other: ShapedPart): boolean {
  if (one.level % 2 === 1 && other.text !== ' ') return false;
  return one.face === other.face && one.level === other.level && one.language === other.language;
}

function joinTwo(before: ShapedPart, after: ShapedPart): ShapedPart {
  const [left, right] = before.level % 2 === 1 ? [after, before] : [before, after];
  return {
    ...before,
    text: before.text + after.text,
    glyphs: [...left.glyphs, ...right.glyphs],
    positions: [...left.positions, ...right.positions],
    width: left.width + right.width,
  };
}
