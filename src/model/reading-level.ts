import type { DocumentKind } from './codes.ts';

/** How hard a text is to read, by one published formula. */
export interface ReadingResult {
  readonly formula:
    | 'flesch-kincaid'
    | 'smog'
    | 'fernandez-huerta'
    | 'szigriszt-pazos'
    | 'kandel-moles'
    | 'lix'
    | 'martins'
    | 'moreno'
    | 'oborneva'
    | 'solovyev';
  /** A school grade, points of ease or an index, as the formula has it. */
  readonly score: number;
  /** What a patient's page should keep to. */
  readonly limit: number;
  readonly easier: 'lower' | 'higher';
  readonly passes: boolean;
}

/** How long the sentences of a text are, in words. */
export interface SentenceLengths {
  readonly average: number;
  readonly longest: number;
  /** What the average of a patient's page should stay under. */
  readonly limit: number;
  readonly passes: boolean;
}

/** How hard a document of a packet is to read. */
export interface DocumentReading {
  readonly kind: DocumentKind;
  readonly title: string;
  /** Empty where no formula is checked for its language, and for hardly any text. */
  readonly results: readonly ReadingResult[];
  /** What is held instead where no formula is checked for its language; null elsewhere, and for hardly any text. */
  readonly sentences: SentenceLengths | null;
}
