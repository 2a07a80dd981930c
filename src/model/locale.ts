/** Words of one language. A missing key or variable is a diagnostic, never a silent gap. */
export interface Translator {
  /**
   * Text for a key with its variables put in. Returns markup: variables are escaped unless they are markup already.
   * Throws WordsError for a missing key, variable or plural form.
   */
  readonly text: (key: string, variables?: Readonly<Record<string, TextVariable>>) => string;
  readonly has: (key: string) => boolean;
}

/** Markup made by plainleaf itself, put into a text unescaped. */
export interface Markup {
  readonly markup: string;
}

export type TextVariable = string | number | Markup;

/** How readers of a language write numbers. Ties numbers to units with no-break spaces. */
export interface Formatter {
  readonly number: (value: number, decimals?: number) => string;
  /** "5 December 2026" in the order of the language; input year-month-day. */
  readonly date: (iso: string) => string;
  readonly monthYear: (iso: string) => string;
  readonly list: (items: readonly string[], join: 'and' | 'or') => string;
  /** Weight in the unit(s) of the clinic: `93 kg`, `206 lb`, `206 lb (93 kg)`. */
  readonly weight: (kg: number, units: 'metric' | 'us' | 'both') => string;
}

export interface Locale {
  readonly tag: string;
  readonly direction: 'ltr' | 'rtl';
  readonly name: string;
  readonly translator: Translator;
  readonly formatter: Formatter;
  /** Words that only this language has, for the read-back gate's language check. */
  readonly commonWords: readonly string[];
  /** sha256 over the locale's files. */
  readonly digest: string;
  readonly reviewed: { readonly by: string; readonly on: string } | null;
}
