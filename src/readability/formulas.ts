/** What a reading formula counts. */
export interface TextCounts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  /** Words of three syllables or more. */
  readonly longWords: number;
  /** Words of seven letters or more. */
  readonly wideWords: number;
}

type Counts<K extends keyof TextCounts> = Pick<TextCounts, K | 'sentences' | 'words'>;

/** US school grade (Kincaid, Fishburne, Rogers, Chissom 1975). Lower is easier; very short words give under 0. */
export function fleschKincaidGrade({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/** US school grade, in the exact form (McLaughlin 1969). Lower is easier; 3.1 where no word is long. */
export function smogGrade({ sentences, longWords }: Pick<TextCounts, 'sentences' | 'longWords'>): number {
  return 1.043 * Math.sqrt((30 * longWords) / sentences) + 3.1291;
}

/** Spanish reading ease (Fernández Huerta 1959, with the sentence term as corrected later). Higher is easier. */
export function fernandezHuerta({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);
}

/** Spanish perspicuity (Szigriszt Pazos 1993), read on the INFLESZ scale. Higher is easier. */
export function szigrisztPazos({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 206.835 - 62.3 * (syllables / words) - words / sentences;
}

/**
 * French reading ease (Kandel and Moles 1958), as Sitbon, Bellot and Blache 2007 and three libraries give it. A fourth
 * gives 209, 1.15 and 68, which comes out easier for every text with short sentences. Higher is easier.
 */
export function kandelMoles({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 207 - 1.015 * (words / sentences) - 73.6 * (syllables / words);
}

/** Words a sentence and long words in a hundred (Björnsson 1968), made for Swedish, used across languages. Lower is easier. */
export function lix({ sentences, words, wideWords }: Counts<'wideWords'>): number {
  return words / sentences + (100 * wideWords) / words;
}

/** Brazilian reading ease (Martins, Ghiraldelo, Nunes, Oliveira 1996): that of Flesch and 42 points. Higher is easier. */
export function martinsEase({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 248.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);
}

/** Years of school for Portuguese (Moreno, Souza, Hein, Hein 2022, after Flesch and Kincaid). Lower is easier. */
export function morenoGrade({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 0.36 * (words / sentences) + 10.4 * (syllables / words) - 18;
}

/** Russian reading ease (Oborneva 2006). Higher is easier. */
export function obornevaEase({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 206.835 - 1.3 * (words / sentences) - 60.1 * (syllables / words);
}

/** Russian school class, from textbooks (Solovyev, Ivanov, Solnyshkina 2018, after Flesch and Kincaid). Lower is easier. */
export function solovyevClass({ sentences, words, syllables }: Counts<'syllables'>): number {
  return 0.36 * (words / sentences) + 5.76 * (syllables / words) - 11.97;
}
