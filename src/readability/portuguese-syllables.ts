const vowels = 'aáàâãeéêiíoóôõuú';
const accented = /[áâãéêíóôõú]/u;
/** Two vowels of one syllable: a weak one after another, or the nasal ones. */
const falling = /^(?:[aáâeéêoóô][iu]|iu|ui|ã[eoi]|õe)/u;
/** A weak vowel before these stands alone: ra-iz, a-in-da, ra-i-nha. */
const closing = new RegExp(`^(?:nh|[lmnrz](?![${vowels}h]))`, 'u');
/** At the end of a word whose stress is written earlier: his-tó-ria, á-gua, á-rea. */
const rising = /^[ieuo][aeo]s?$/u;

/**
 * Syllables of a Portuguese word, by how it is written (Acordo Ortográfico 1990): two vowels are one syllable when they
 * are a falling diphthong, or when they end a word that carries its accent before them; the u of qu and gu before a vowel
 * is none of its own. A word without a vowel counts as one.
 */
export function countPortugueseSyllables(word: string): number {
  const letters = word.toLowerCase().normalize('NFC').replace(/ü/g, 'u').replace(/y/g, 'i');
  const spoken = letters.replace(new RegExp(`([qg])u(?=[${vowels}])`, 'gu'), '$1');
  let count = 0;
  for (let at = 0; at < spoken.length; at += 1) {
    if (!vowels.includes(spoken.charAt(at))) continue;
    count += 1;
    if (joinsNext(spoken, at)) at += 1;
  }
  return Math.max(1, count);
}

/** Whether the vowel there and the one after it are one syllable. */
function joinsNext(word: string, at: number): boolean {
  const rest = word.slice(at);
  if (rising.test(rest)) return accented.test(word.slice(0, at));
  return falling.test(rest) && !closing.test(rest.slice(2));
}
