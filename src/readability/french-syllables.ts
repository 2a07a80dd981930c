const vowels = 'aàâeéèêëiîïoôuùûüyœæ';
/** One sound, written with one letter or several. */
const sound = `(?:eau|œu|[ae][uû]|[aeo][iî]|o[uùû]|[${vowels}])`;
/** An i, u or ou before another vowel is spoken with it: bien, nuit; but not after two consonants: cli-ent, cru-el. */
const glide = `(?:(?:u(?=i)|(?<![bcdfgptv][lr])(?:ou|[iuy]))(?=[${vowels}]))?`;
const nucleus = new RegExp(glide + sound, 'gu');
/** No vowels: a y between two (mo-yen), the ill after one (feuille, travaillent). */
const consonants = new RegExp(`(?<=[${vowels}])(?:y(?=[${vowels}])|ill)`, 'gu');

/**
 * Syllables of a French word as it is spoken: a run of vowels is one unless it holds two sounds; an e or es at the end is
 * silent (table, années), and so is the u of qu and gue. -ent counts, though it is silent in verbs: too many rather than
 * too few. A word without another vowel counts as one.
 */
export function countFrenchSyllables(word: string): number {
  const parts = word.toLowerCase().normalize('NFC').split(/[’'-]/);
  return Math.max(
    1,
    parts.map(countSpoken).reduce((sum, count) => sum + count, 0),
  );
}

function countSpoken(part: string): number {
  const spoken = part
    .replace(/qu|gu(?=[eéèêiy])|ge(?=[aoâô])/g, 'g')
    .replace(consonants, 'j')
    .replace(/es?$/, '');
  return spoken.match(nucleus)?.length ?? 0;
}
