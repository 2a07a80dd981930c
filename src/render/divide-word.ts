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
  const count = Math.ceil(widthOf(word) / measure);
  for (let parts = Math.max(2, count); parts <= count + 2; parts += 1) {
    const divided = inParts(word, parts, { widthOf, measure });
    if (divided !== null) return divided;
  }
  return [word];
}

interface Room {
  readonly widthOf: (text: string) => number;
  readonly measure: number;
}

function inParts(word: string, parts: number, room: Room): readonly string[] | null {
  if (parts === 1) return room.widthOf(word) <= room.measure ? [word] : null;
  const aim = room.widthOf(word) / parts;
  const heads = divisionsOf(word)
    .map((index) => ({ index, width: room.widthOf(word.slice(0, index) + softHyphen) }))
    .filter(({ width }) => width <= room.measure)
    .sort((a, b) => Math.abs(a.width - aim) - Math.abs(b.width - aim));
  for (const { index } of heads) {
    const rest = inParts(word.slice(index), parts - 1, room);
    if (rest !== null) return [word.slice(0, index) + softHyphen, ...rest];
  }
  return null;
}
