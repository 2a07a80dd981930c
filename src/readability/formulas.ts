/** What a reading formula counts. */
export interface TextCounts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  /** Words of three syllables or more. */
  readonly longWords: number;
}

/** US school grade (Kincaid, Fishburne, Rogers, Chissom 1975). Lower is easier; very short words give under 0. */
export function fleschKincaidGrade({ sentences, words, syllables }: TextCounts): number {
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/** US school grade, in the exact form (McLaughlin 1969). Lower is easier; 3.1 where no word is long. */
export function smogGrade({ sentences, longWords }: TextCounts): number {
  return 1.043 * Math.sqrt((30 * longWords) / sentences) + 3.1291;
}

/** Spanish reading ease (Fernández Huerta 1959, with the sentence term as corrected later). Higher is easier. */
export function fernandezHuerta({ sentences, words, syllables }: TextCounts): number {
  return 206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);
}

/** Spanish perspicuity (Szigriszt Pazos 1993), read on the INFLESZ scale. Higher is easier. */
export function szigrisztPazos({ sentences, words, syllables }: TextCounts): number {
  return 206.835 - 62.3 * (syllables / words) - words / sentences;
}
