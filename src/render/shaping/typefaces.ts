/**
 * The typefaces of plainleaf, one for each group of scripts: static TrueType files as in the package named (SIL Open Font
 * License 1.1). All are sturdy sans serifs that stand beside Fira Sans without being re-sized.
 */
export interface Typeface {
  readonly family: string;
  readonly package: string;
  /** With what the names of its files begin. */
  readonly stem: string;
  /** Letters and marks that only this typeface is for; the first is for all others. */
  readonly letters?: RegExp;
  /**
   * Marks that it draws as wide as a letter, most of it white, and the base draws narrow: they are set in the base. Beside a
   * comma, at the start of a line or around a Latin word, such a mark leaves a hole, and a pair would not be alike.
   */
  readonly leaves?: RegExp;
}

export const baseTypeface: Typeface = {
  family: 'Fira Sans',
  package: '@expo-google-fonts/fira-sans',
  stem: 'FiraSans',
};

/** In the order in which they are asked for a character that the base does not have. */
export const scriptTypefaces: readonly Typeface[] = [
  {
    family: 'Vazirmatn',
    package: '@expo-google-fonts/vazirmatn',
    stem: 'Vazirmatn',
    letters: /\p{Script_Extensions=Arabic}/u,
  },
  {
    family: 'Noto Sans Devanagari',
    package: '@expo-google-fonts/noto-sans-devanagari',
    stem: 'NotoSansDevanagari',
    letters: /\p{Script_Extensions=Devanagari}/u,
  },
  {
    family: 'Noto Sans KR',
    package: '@expo-google-fonts/noto-sans-kr',
    stem: 'NotoSansKR',
    letters: /\p{Script=Hangul}/u,
  },
  {
    family: 'Noto Sans SC',
    package: '@expo-google-fonts/noto-sans-sc',
    stem: 'NotoSansSC',
    letters: /[\p{Script_Extensions=Han}\uff00-\uffef]/u,
    leaves: /[“”‘’]/u,
  },
];

export const typefaces: readonly Typeface[] = [baseTypeface, ...scriptTypefaces];

/** Typefaces that a text is set in: the base, and those whose letters it holds. */
export function typefacesFor(text: string): readonly Typeface[] {
  return typefaces.filter(({ letters }) => letters === undefined || letters.test(text));
}
