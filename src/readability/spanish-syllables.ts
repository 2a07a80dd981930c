const strong = 'aeoáéó';
const accentedWeak = 'íú';
const vowels = `${strong}${accentedWeak}iuü`;

/**
 * Syllables of a Spanish word: one a run of vowels that is spoken as one. Two strong vowels part, an accented weak
 * vowel parts from a strong one, everything else runs together; the u of qu, gue and gui is silent (RAE, Ortografía
 * 2010, II 3.4). A word without a vowel counts as one.
 */
export function countSpanishSyllables(word: string): number {
  const letters = word
    .toLowerCase()
    .normalize('NFC')
    .replace(/qu|gu(?=[eiéí])/g, 'g');
  // A final y is a vowel: rey, muy.
  const spoken = letters.replace(/y$/, 'i').replace(/(^|[^\p{L}])y([^\p{L}]|$)/gu, '$1i$2');
  let count = 0;
  let previous = '';
  for (const letter of spoken) {
    if (vowels.includes(letter) && (previous === '' || parts(previous, letter))) count += 1;
    previous = vowels.includes(letter) ? letter : '';
  }
  return Math.max(1, count);
}

/** Whether a vowel after another begins a syllable of its own. */
function parts(before: string, next: string): boolean {
  if (before === next) return true;
  const bothStrong = strong.includes(before) && strong.includes(next);
  const accented = accentedWeak.includes(before) || accentedWeak.includes(next);
  return bothStrong || (accented && (strong.includes(before) || strong.includes(next)));
}
