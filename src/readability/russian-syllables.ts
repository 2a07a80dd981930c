const vowel = /[аеёиоуыэюяaeiouy]/giu;

/** Syllables of a Russian word: its vowels (Oborneva 2006). "в" and "к" have none, since they are spoken with the next word. */
export function countRussianSyllables(word: string): number {
  return word.normalize('NFC').match(vowel)?.length ?? 0;
}
