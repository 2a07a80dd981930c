import { createHash } from 'node:crypto';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Font } from '@react-pdf/renderer';
import { InternalError } from '../diagnostics/diagnostic.ts';
import { baseTypeface, typefacesFor } from './shaping/typefaces.ts';
import type { Typeface } from './shaping/typefaces.ts';
import type { Weight } from './theme.ts';

/** Name under which the faces are known to the typesetter. */
export const fontFamily = baseTypeface.family;

const weights = [400, 600, 700] as const satisfies readonly Weight[];
const styles = { 400: 'Regular', 600: 'SemiBold', 700: 'Bold' } as const;

/** Path of a file within its package. */
function fileOf({ stem }: Typeface, weight: Weight): string {
  const style = `${weight}${styles[weight]}`;
  return `${style}/${stem}_${style}.ttf`;
}

export interface GlyphRun {
  readonly positions: readonly { readonly xAdvance: number }[];
  readonly advanceWidth: number;
}

interface ParsedGlyph {
  readonly advanceWidth: number;
  /** What it is read as. */
  codePoints: readonly number[];
}

/** What is used of a fontkit font. */
export interface Face {
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  readonly stream: { readonly buffer: Uint8Array };
  /** Code points that the face has a glyph for. */
  readonly characterSet: readonly number[];
  glyphForCodePoint(codePoint: number): object;
  getGlyph(id: number, codePoints?: readonly number[]): ParsedGlyph;
  hasGlyphForCodePoint(codePoint: number): boolean;
  layout(
    text: string,
    features?: unknown,
    script?: string,
    language?: string,
    direction?: 'ltr' | 'rtl',
  ): GlyphRun;
}

/** By family and weight. */
const faces = new Map<string, Face>();
const keyOf = (family: string, weight: Weight): string => `${family} ${weight}`;
/** Where the faces of a family came from. */
const loaded = new Map<string, { readonly from: string; readonly done: Promise<void> }>();

/** Folder URL of the font files, ending in a slash. */
function folderUrl(typeface: Typeface, folder: string | undefined): string {
  if (folder !== undefined) return new URL(`${pathToFileURL(folder).href.replace(/\/$/, '')}/`).href;
  return new URL('../', import.meta.resolve(`${typeface.package}/${fileOf(typeface, 400)}`)).href;
}

/**
 * Makes the faces that every page needs ready before anything is measured: a face that is not there when a text is set is
 * silently replaced by one that is not embedded. Parses each file once a process.
 * Rejects with the system's error when a file cannot be read.
 */
export async function loadFonts(folder?: string): Promise<void> {
  await loadTypeface(baseTypeface, folder);
  Font.registerHyphenationCallback((word) => [word]);
}

/** Makes the faces of further scripts ready. Rejects as `loadFonts` does. */
export async function loadTypefaces(typefaces: readonly Typeface[]): Promise<void> {
  for (const typeface of typefaces) if (typeface !== baseTypeface) await loadTypeface(typeface, undefined);
}

/** Packets that are made at the same time wait for one loading; one that failed is tried again. */
async function loadTypeface(typeface: Typeface, folder: string | undefined): Promise<void> {
  const { family } = typeface;
  const from = folderUrl(typeface, folder);
  const known = loaded.get(family);
  if (known?.from === from) return known.done;
  const done = openTypeface(typeface, from);
  loaded.set(family, { from, done });
  try {
    await done;
  } catch (error) {
    loaded.delete(family);
    throw error;
  }
}

async function openTypeface(typeface: Typeface, from: string): Promise<void> {
  const { family } = typeface;
  Reflect.deleteProperty(Font.getRegisteredFonts(), family);
  const fonts = weights.map((weight) => ({
    src: fileURLToPath(new URL(fileOf(typeface, weight), from)),
    fontWeight: weight,
  }));
  Font.register({ family, fonts });
  await Promise.all(weights.map((weight) => Font.load({ fontFamily: family, fontWeight: weight })));
  for (const weight of weights) faces.set(keyOf(family, weight), openFace(typeface, weight));
}

function openFace(typeface: Typeface, weight: Weight): Face {
  const { family } = typeface;
  const face = Font.getFont({ fontFamily: family, fontWeight: weight }).data as unknown as Face | null;
  if (face === null) throw new InternalError(`the face of weight ${weight} of ${family} did not load`);
  // Only the base is shaped by the typesetter itself; see shaping/ for the others.
  if (typeface === baseTypeface) {
    keepNames(face);
    nameGlyphs(face);
    rememberRuns(face);
  }
  return face;
}

/** Latin ligatures are asked for by the letters they are drawn for, and so read back as these. */
const isLigature = (codePoint: number): boolean => codePoint >= 0xfb00 && codePoint <= 0xfb06;

/**
 * The parser keeps each glyph with what it was first asked for by. One that was asked for by its number alone (a ligature
 * of a line that HarfBuzz shapes, when it is placed or embedded) gets its letters when they are known.
 */
function keepNames(face: Face): void {
  const get = face.getGlyph.bind(face);
  face.getGlyph = (id, codePoints = []) => {
    const glyph = get(id, codePoints);
    if (glyph.codePoints.length === 0) glyph.codePoints = codePoints;
    return glyph;
  };
}

/**
 * The parser keeps each glyph with the letter it was first asked for by. A part of a composite letter (the plus of ±) is
 * asked for by none, and would read back as nothing from then on; so every letter is asked for before anything is set.
 */
function nameGlyphs(face: Face): void {
  const letters = face.characterSet.filter((codePoint) => !isLigature(codePoint));
  for (const codePoint of letters.sort((a, b) => a - b)) face.glyphForCodePoint(codePoint);
}

/** Enough for the distinct lines of some hundred packets. */
const rememberedRuns = 20_000;

/**
 * Shaping is the dearest part of setting, and the same lines come again: when measured, when set, in the next packet.
 * Only calls as the typesetter makes them are remembered; it copies what it gets before changing it.
 */
function rememberRuns(face: Face): void {
  const shape = face.layout.bind(face);
  const runs = new Map<string, GlyphRun>();
  face.layout = (...call) => {
    const [text, features, , , direction] = call;
    const plain = features === undefined || (Array.isArray(features) && features.length === 0);
    if (direction !== 'ltr' || !plain) return shape(...call);
    const known = runs.get(text);
    if (known !== undefined) return known;
    if (runs.size >= rememberedRuns) runs.clear();
    const run = shape(...call);
    runs.set(text, run);
    return run;
  };
}

/** The parsed face of a weight. Call loadFonts first, and loadTypefaces for others than the base. */
export function faceOf(weight: Weight, typeface = baseTypeface): Face {
  const face = faces.get(keyOf(typeface.family, weight));
  if (face === undefined)
    throw new InternalError(`text was measured before the fonts of ${typeface.family} were loaded`);
  return face;
}

/** Whether every weight of a typeface that is loaded has a glyph for a character. */
export function covers(typeface: Typeface, codePoint: number): boolean {
  return weights.every(
    (weight) => faces.get(keyOf(typeface.family, weight))?.hasGlyphForCodePoint(codePoint) === true,
  );
}

/**
 * sha256 over the bytes of the font files that a text is set in, in the order of their weight; without a text, of those of
 * every page. Call loadFonts first, and loadTypefaces.
 */
export function digestFonts(text = ''): string {
  const hash = createHash('sha256');
  for (const typeface of typefacesFor(text))
    for (const weight of weights) hash.update(faceOf(weight, typeface).stream.buffer);
  return hash.digest('hex');
}

/** The same, after loading what the text needs. Rejects with the system's error when a file cannot be read. */
export async function digestFontsOf(text: string): Promise<string> {
  await loadTypefaces(typefacesFor(text));
  return digestFonts(text);
}
