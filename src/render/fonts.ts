import { createHash } from 'node:crypto';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Font } from '@react-pdf/renderer';
import { InternalError } from '../diagnostics/diagnostic.ts';
import type { Weight } from './theme.ts';

/** Name under which the faces are known to the typesetter. */
export const fontFamily = 'Fira Sans';

/** Static TrueType faces; file names as in the package `@expo-google-fonts/fira-sans` (SIL Open Font License 1.1). */
const faceFiles = [
  { weight: 400, file: '400Regular/FiraSans_400Regular.ttf' },
  { weight: 600, file: '600SemiBold/FiraSans_600SemiBold.ttf' },
  { weight: 700, file: '700Bold/FiraSans_700Bold.ttf' },
] as const;

export interface GlyphRun {
  readonly positions: readonly { readonly xAdvance: number }[];
  readonly advanceWidth: number;
}

/** What is used of a fontkit font. */
export interface Face {
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  readonly stream: { readonly buffer: Uint8Array };
  /** Code points that the face has a glyph for. */
  readonly characterSet: readonly number[];
  glyphForCodePoint(codePoint: number): object;
  hasGlyphForCodePoint(codePoint: number): boolean;
  layout(
    text: string,
    features?: unknown,
    script?: string,
    language?: string,
    direction?: 'ltr' | 'rtl',
  ): GlyphRun;
}

let faces: ReadonlyMap<Weight, Face> | undefined;
let loadedFrom: string | undefined;

/** Folder URL of the font files, ending in a slash. */
function folderUrl(folder: string | undefined): string {
  if (folder !== undefined) return new URL(`${pathToFileURL(folder).href.replace(/\/$/, '')}/`).href;
  return new URL('../', import.meta.resolve(`@expo-google-fonts/fira-sans/${faceFiles[0].file}`)).href;
}

/**
 * Makes every face ready before anything is measured: a face that is not there when a text is set is silently
 * replaced by one that is not embedded. Parses each file once a process.
 * Rejects with the system's error when a file cannot be read.
 */
export async function loadFonts(folder?: string): Promise<void> {
  const from = folderUrl(folder);
  if (faces !== undefined && loadedFrom === from) return;
  Reflect.deleteProperty(Font.getRegisteredFonts(), fontFamily);
  const fonts = faceFiles.map(({ weight, file }) => ({
    src: fileURLToPath(new URL(file, from)),
    fontWeight: weight,
  }));
  Font.register({ family: fontFamily, fonts });
  Font.registerHyphenationCallback((word) => [word]);
  await Promise.all(faceFiles.map(({ weight }) => Font.load({ fontFamily, fontWeight: weight })));
  faces = new Map(faceFiles.map(({ weight }) => [weight, openFace(weight)]));
  loadedFrom = from;
}

function openFace(weight: Weight): Face {
  const face = Font.getFont({ fontFamily, fontWeight: weight }).data as unknown as Face | null;
  if (face === null) throw new InternalError(`the face of weight ${weight} did not load`);
  nameGlyphs(face);
  rememberRuns(face);
  return face;
}

/** Latin ligatures are asked for by the letters they are drawn for, and so read back as these. */
const isLigature = (codePoint: number): boolean => codePoint >= 0xfb00 && codePoint <= 0xfb06;

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

/** The parsed face of a weight. Call loadFonts first. */
export function faceOf(weight: Weight): Face {
  const face = faces?.get(weight);
  if (face === undefined) throw new InternalError('text was measured before the fonts were loaded');
  return face;
}

/** All faces that text may be set in. */
export function allFaces(): readonly Face[] {
  return faceFiles.map(({ weight }) => faceOf(weight));
}

/** sha256 over the bytes of the font files, in the order of their weight. Call loadFonts first. */
export function digestFonts(): string {
  const hash = createHash('sha256');
  for (const face of allFaces()) hash.update(face.stream.buffer);
  return hash.digest('hex');
}
