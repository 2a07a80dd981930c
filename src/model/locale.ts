import type { Weekday } from './calendar-day.ts';
import type { GlossaryTerm } from './glossary.ts';
import type { ReviewScope } from './review-scope.ts';

/** Words of one language. A missing key or variable is a diagnostic, never a silent gap. */
export interface Translator {
  /**
   * Text for a key with its variables put in. Returns markup: variables are escaped unless they are markup already.
   * Throws WordsError for a missing key, variable or plural form.
   */
  readonly text: (key: string, variables?: Readonly<Record<string, TextVariable>>) => string;
  /** Whether the key has words, in plural forms or in one. */
  readonly has: (key: string) => boolean;
}

/** Markup made by plainleaf itself, put into a text unescaped. */
export interface Markup {
  readonly markup: string;
}

export type TextVariable = string | number | Markup;

export type WeightUnits = 'metric' | 'us' | 'both';

/** How readers of a language write numbers. Ties numbers to units with no-break spaces. */
export interface Formatter {
  /** Exactly `decimals` places if given, else as many as the number has, two at most. */
  readonly number: (value: number, decimals?: number) => string;
  /** Both ends written already: `180 to 232`. */
  readonly range: (low: string, high: string) => string;
  /** `December 5, 2026` in the order of the language; input year-month-day, year-month or year. */
  readonly date: (iso: string) => string;
  /** `December 2026`; input year-month-day, year-month or year. */
  /** `Saturday, December 5, 2026`; input year-month-day. */
  readonly weekdayDate: (iso: string) => string;
  /** `December 5`; input year-month-day. */
  readonly monthDay: (iso: string) => string;
  /** `Dec 5`; input year-month-day. */
  readonly shortDay: (iso: string) => string;
  /** `Dec 5, 2026`; input year-month-day. */
  readonly shortDate: (iso: string) => string;
  /** Short name of a day of the week: `Sat`. */
  readonly weekday: (day: Weekday) => string;
  readonly monthYear: (iso: string) => string;
  /** `nor` after a denial, as Spanish says «ni»; where a language has no such word, as with `or`. */
  readonly list: (items: readonly string[], join: 'and' | 'or' | 'nor') => string;
  /** Name of a language, in this one: `Spanish`. Input a language tag; the tag itself where it has no name. */
  readonly languageName: (tag: string) => string;
  /** Whole kilograms or pounds in the unit(s) of the clinic: `93 kg`, `206 lb`, `206 lb (93 kg)`. */
  readonly weight: (kg: number, units: WeightUnits) => string;
  /** `82 to 105 kg`, `180 to 232 lb`, `180 to 232 lb (82 to 105 kg)`. */
  readonly weightRange: (lowKg: number, highKg: number, units: WeightUnits) => string;
}

/** Words by which a passive sentence is told: `is` … `done`. All in small letters. */
export interface PassiveWords {
  readonly verbs: readonly string[];
  readonly between: readonly string[];
  readonly endings: readonly string[];
  readonly participles: readonly string[];
  /** Words that end like a participle and are none. */
  readonly others: readonly string[];
}

export interface Locale {
  readonly tag: string;
  readonly direction: 'ltr' | 'rtl';
  readonly name: string;
  /** The day with which a week of a calendar begins. */
  readonly firstWeekday: Weekday;
  /** Whether a sentence that follows a colon on the same line begins with a small letter; absent: with a capital. */
  readonly smallAfterColon?: boolean;
  /** How a passive is told; null where that is not known. */
  readonly passive: PassiveWords | null;
  /** Words with which a text speaks to its reader, in small letters; empty where that is not known. */
  readonly readerWords: readonly string[];
  /** Medical words that pages may use once they have explained them. */
  readonly glossary: readonly GlossaryTerm[];
  readonly translator: Translator;
  readonly formatter: Formatter;
  /** Words that only this language has, for the read-back gate's language check. */
  readonly commonWords: readonly string[];
  /** sha256 over the locale's files. */
  readonly digest: string;
  /** sha256 over the words that documents print, each with the text that it was translated from. */
  readonly wordsDigest: (scope: ReviewScope) => string;
}
