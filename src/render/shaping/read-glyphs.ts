import type { ShapedGlyph } from './harfbuzz.ts';
import { withoutInvisible } from './invisible.ts';

/** Prints nothing and parts nothing: a reader of the file takes a glyph without any letter for one it does not know. */
const silent = '\u200b';

/**
 * What each glyph is read as: a share of the letters of its cluster; where they cannot be shared out, all of them for the
 * first that takes room and nothing for the others.
 * Readers of files turn the glyphs of a text from right to left round as they stand, so letters joined in one glyph
 * are given to them in that order. There a vowel sign is read from its own glyph: one that is read together with letters
 * makes a reader take them for a sign without width, and tear the word apart.
 */
export function readings(
  text: string,
  glyphs: readonly ShapedGlyph[],
  rightToLeft: boolean,
): readonly string[] {
  const starts = [...new Set(glyphs.map(({ cluster }) => cluster))].sort((a, b) => a - b);
  const said = new Map<ShapedGlyph, string>();
  starts.forEach((start, index) => {
    const own = glyphs.filter(({ cluster }) => cluster === start);
    const letters = withoutInvisible(text.slice(start, starts[index + 1] ?? text.length));
    const shares = rightToLeft ? turnedShares(letters, own) : shareLetters(letters, own);
    own.forEach((glyph, place) => said.set(glyph, shares[place] ?? ''));
  });
  return glyphs.map((glyph) => said.get(glyph) || silent);
}

/** All letters for the first glyph that takes room. */
function sayAtOnce(letters: string, glyphs: readonly ShapedGlyph[]): readonly string[] {
  const speaker = glyphs.find(({ advance }) => advance > 0) ?? glyphs[0];
  return glyphs.map((glyph) => (glyph === speaker ? letters : ''));
}

function turnedShares(letters: string, glyphs: readonly ShapedGlyph[]): readonly string[] {
  const speaker = glyphs.find(({ advance }) => advance > 0) ?? glyphs[0];
  const sign = glyphs.find((glyph) => glyph !== speaker && glyph.advance === 0);
  const signs = sign === undefined ? '' : letters.replace(/\P{Mn}/gu, '');
  const rest = signs === '' ? letters : letters.replace(/\p{Mn}/gu, '');
  const turned = Array.from(rest).reverse().join('');
  return sayAtOnce(turned, glyphs).map((share, index) => (glyphs[index] === sign ? signs : share));
}

/**
 * Letters of a cluster given out to its glyphs in the order in which they are read, so that none of them is read as nothing:
 * in Hindi a vowel sign stands before its consonant. Where there are too few, or what a glyph without width would be read
 * as begins with a letter, all are said at once.
 */
function shareLetters(letters: string, glyphs: readonly ShapedGlyph[]): readonly string[] {
  const each = Array.from(letters);
  if (glyphs.length < 2 || each.length < glyphs.length) return sayAtOnce(letters, glyphs);
  const last = glyphs.length - 1;
  const shares = glyphs.map((_, index) => (index < last ? (each[index] ?? '') : each.slice(last).join('')));
  const readable = shares.every((share, index) => (glyphs[index]?.advance ?? 0) > 0 || /^\p{M}/u.test(share));
  return readable ? shares : sayAtOnce(letters, glyphs);
}
