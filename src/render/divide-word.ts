/** What a divided word shows at the end of a line, and what it is to those who copy or hear it: one word that goes on. */
export const softHyphen = '\u00ad';

/** Letters that must stand on either side of a division. */
const fewest = 3;

const vowels = 'aeiouyàáâãäåæèéêëìíîïòóôõöøœùúûüýÿ';
const vowel = new RegExp(`[${vowels}]`, 'i');
const letters = /^\p{L}+$/u;
/** Consonants that begin a syllable together, or one of them, before the vowel. */
const onset = new RegExp(`^(?:sch|[bcdfgkptv][lr]|[cpst]h|qu|gu|[^${vowels}])(?=[${vowels}])`, 'i');
const longestOnset = 3;

/**
 * Places in a word where a syllable begins with a consonant: index of the letter after the division. None in a number, a
 * reference or a script without these vowels. By sight and not by a dictionary, for it serves only where a word has no
 * room in one piece.
 */
export function divisionsOf(word: string): readonly number[] {
  return Array.from({ length: word.length }, (_, index) => index).filter((index) => divides(word, index));
}

function divides(word: string, index: number): boolean {
  const [before, after] = [word.slice(0, index), word.slice(index)];
  if (!letters.test(before.slice(-fewest)) || !letters.test(after.slice(0, fewest))) return false;
  if (before.length < fewest || after.length < fewest || !vowel.test(before)) return false;
  return onset.test(after) && !isWithinOnset(word, index) && !isBesideDouble(word, index);
}

/** A division stands before all the consonants that begin a syllable. */
function isWithinOnset(word: string, index: number): boolean {
  return Array.from({ length: longestOnset - 1 }, (_, back) => index - 1 - back).some(
    (start) => start + (onset.exec(word.slice(start))?.[0].length ?? 0) > index,
  );
}

/** Of two like consonants, some languages divide between them and some before them: so neither is done. */
function isBesideDouble(word: string, index: number): boolean {
  const [last, first, second] = [index - 1, index, index + 1].map((at) => word.charAt(at).toLowerCase());
  return first === last || first === second;
}

/** The beginning of a word, divided. */
interface Divided {
  readonly parts: readonly string[];
  /** Sum of the squares of their widths: of divisions into equally many parts least for the most even one. */
  readonly squares: number;
}

/**
 * A word in the fewest parts of which each has room, as even as can be; all but the last end in a soft hyphen. The word
 * itself where it cannot be divided so.
 *
 * @param widthOf width of letters set in one piece; a soft hyphen has the width of a hyphen
 * @param measure the room of a line, in the unit of `widthOf`
 */
export function divideWord(
  word: string,
  widthOf: (text: string) => number,
  measure: number,
): readonly string[] {
  const best = new Map<number, Divided>([[0, { parts: [], squares: 0 }]]);
  for (const end of [...divisionsOf(word), word.length]) {
    for (const [start, { parts, squares }] of [...best]) {
      const part = word.slice(start, end) + (end < word.length ? softHyphen : '');
      const width = widthOf(part);
      const found = { parts: [...parts, part], squares: squares + width ** 2 };
      if (width <= measure && isBetter(found, best.get(end))) best.set(end, found);
    }
  }
  return best.get(word.length)?.parts ?? [word];
}

function isBetter(a: Divided, b: Divided | undefined): boolean {
  if (b === undefined) return true;
  return a.parts.length === b.parts.length ? a.squares < b.squares : a.parts.length < b.parts.length;
}
