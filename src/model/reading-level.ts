import type { DocumentKind } from './codes.ts';

/** How hard a text is to read, by one published formula. */
export interface ReadingResult {
  readonly formula: 'flesch-kincaid' | 'smog' | 'fernandez-huerta' | 'szigriszt-pazos';
  /** A school grade for the English formulas, points of ease for the Spanish. */
  readonly score: number;
  /** What a patient's page should keep to. */
  readonly limit: number;
  readonly easier: 'lower' | 'higher';
  readonly passes: boolean;
}

/** How hard a document of a packet is to read. No results: no accepted formula for its language, or hardly any text. */
export interface DocumentReading {
  readonly kind: DocumentKind;
  readonly title: string;
  readonly results: readonly ReadingResult[];
}
