import type { Diagnostic } from './diagnostic.ts';

/** A text that cannot be said in a language: its key, a variable or a plural form is missing. */
export class WordsError extends Error {
  override readonly name = 'WordsError';
  readonly diagnostic: Diagnostic;

  constructor(diagnostic: Diagnostic) {
    super(diagnostic.message);
    this.diagnostic = diagnostic;
  }
}
