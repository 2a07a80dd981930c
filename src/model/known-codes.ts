/** What the evidence and the locales know, so that a case can be checked without opening them. */
export interface KnownCodes {
  readonly options: readonly KnownOption[];
  /** Outcome codes of the evidence. */
  readonly outcomes: readonly string[];
  /** Tags of the languages that have a locale folder. */
  readonly languages: readonly string[];
  /** Record ids; left out, a clinic's preferred records are not checked. */
  readonly records?: readonly string[];
  /** Caution ids; left out, a clinic's confirmed cautions are not checked. */
  readonly cautions?: readonly string[];
}

export interface KnownOption {
  readonly code: string;
  readonly kind: 'operation' | 'endoscopic' | 'medicine' | 'programme' | 'none';
  /** Whether a case may name it. */
  readonly choosable: boolean;
}
