import { covers } from '../fonts.ts';
import { isInvisible } from './invisible.ts';
import { baseTypeface, scriptTypefaces } from './typefaces.ts';
import type { Typeface } from './typefaces.ts';

/** Part of a text that is set in one typeface. */
export interface TypefacePart {
  readonly text: string;
  readonly typeface: Typeface;
}

/** What a grapheme cluster asks for: a typeface, or, as a comma does, that of its neighbour. */
type Wish = Typeface | 'neighbour';

const segmenter = new Intl.Segmenter('und', { granularity: 'grapheme' });
const ofBase = /[\p{L}\p{Nd}]/u;
/** Everything that the base is for: nothing has to be looked up. */
const plain =
  /^[\u0020-\u024f\u0400-\u04ff\u1e00-\u1eff\u2010-\u2027\u2030-\u203a\u20ac\u2212\u2264\u2265]*$/;

/** Whether a text needs the base typeface only, from left to right, as most do. */
export function isPlain(text: string): boolean {
  return plain.test(text);
}

/**
 * A text in parts of one typeface each. Letters take that of their script; digits, and letters of all other scripts, the
 * base; marks and brackets that of what stands before them, else after, where it has them. Depends on the text alone, so
 * that a word measured by itself is as wide as in its line, if the text is split at spaces.
 */
export function splitByTypeface(text: string): readonly TypefacePart[] {
  if (isPlain(text)) return text === '' ? [] : [{ text, typeface: baseTypeface }];
  const clusters = [...segmenter.segment(text)].map(({ segment }) => segment);
  const wishes = clusters.map(wishOf);
  const parts: { text: string; typeface: Typeface }[] = [];
  clusters.forEach((cluster, index) => {
    const typeface = resolve(cluster, index, wishes);
    const last = parts.at(-1);
    if (last?.typeface === typeface) last.text += cluster;
    else parts.push({ text: cluster, typeface });
  });
  return parts;
}

function wishOf(cluster: string): Wish {
  const own = scriptTypefaces.find(({ letters }) => letters?.test(cluster) === true);
  return own ?? (ofBase.test(cluster) ? baseTypeface : 'neighbour');
}

function resolve(cluster: string, at: number, wishes: readonly Wish[]): Typeface {
  const wish = wishes[at] ?? baseTypeface;
  const asked = wish === 'neighbour' ? neighbour(wishes, at) : wish;
  const wished = asked.leaves?.test(cluster) === true ? baseTypeface : asked;
  const all = [wished, baseTypeface, ...scriptTypefaces];
  return all.find((typeface) => coversAll(typeface, cluster)) ?? wished;
}

function neighbour(wishes: readonly Wish[], at: number): Typeface {
  const named = (wish: Wish): wish is Typeface => wish !== 'neighbour';
  return wishes.slice(0, at).findLast(named) ?? wishes.slice(at).find(named) ?? baseTypeface;
}

function coversAll(typeface: Typeface, cluster: string): boolean {
  return Array.from(cluster, (character) => character.codePointAt(0) ?? 0).every(
    (codePoint) => isInvisible(codePoint) || covers(typeface, codePoint),
  );
}
