/** One text for a translator. Texts are as in the files of words: with {{variables}}, <b> and three escapes. */
export interface TranslationUnit {
  /** `comparison.title`, with the plural suffix of the language translated into. */
  readonly key: string;
  readonly source: string;
  /** Null: not translated yet. */
  readonly target: string | null;
  /** What a translator must know of it; empty if there is nothing. */
  readonly note: string;
  /** Most characters that the page has room for; null: no limit. */
  readonly longest: number | null;
  /** Whether somebody has read the target as it stands. */
  readonly reviewed: boolean;
}

/** Texts of one language, file by file of its words. */
export interface Translation {
  readonly sourceLanguage: string;
  readonly language: string;
  readonly units: readonly TranslationUnit[];
}
