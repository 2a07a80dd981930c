import type { Weight } from './theme.ts';

/** Text of one weight and one language. */
export interface Run {
  readonly text: string;
  readonly weight: Weight;
  /** Only where it differs from the document's. */
  readonly language?: string;
}
