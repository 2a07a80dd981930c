/** What tells a language's passive voice, and the words with which it speaks to a reader. */
interface LanguageForms {
  readonly passive: RegExp;
  readonly reader: RegExp;
}

const forms: Readonly<Record<string, LanguageForms>> = {
  // "Is not known" says how things stand, as "unknown" does; it is not counted as passive.
  en: {
    passive:
      /\b(?:am|is|are|was|were|be|been|being)\s+(?:\p{L}+ly\s+|not\s+|also\s+|never\s+)?(?:\p{L}{2,}ed|taken|made|done|given|shown|seen|found|read|drawn|put|cut|told|kept|held|left|built|sent|set|worn|chosen|written|undone)\b/iu,
    reader: /\b(?:you|your|yours|yourself)\b/iu,
  },
  // The form with "se" is how plain Spanish says most things; it is not counted as passive.
  es: {
    passive:
      /(?<!\p{L})(?:es|son|fue|fueron|era|eran|ser|sido|será|serán|sea|sean)\s+(?:no\s+|muy\s+|también\s+)?(?:\p{L}+[ai]d[oa]s?|hech[oa]s?|dich[oa]s?|vist[oa]s?|puest[oa]s?|escrit[oa]s?)(?!\p{L})/iu,
    reader: /(?<!\p{L})(?:usted|su|sus|le)(?!\p{L})/iu,
  },
};

/** Undefined for a language of which nothing is known here: then a person must judge. */
export function formsOf(language: string): LanguageForms | undefined {
  return forms[language.split('-')[0] ?? ''];
}
