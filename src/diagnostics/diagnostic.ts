import type { DiagnosticCode } from './codes.ts';

/** A place in a file a person can open. Lines and columns count from 1. */
export interface SourceSpan {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine?: number;
  readonly endColumn?: number;
}

export interface RelatedPlace {
  readonly message: string;
  readonly span: SourceSpan;
}

/**
 * One thing that is wrong. `message` says what is wrong, `hint` says what to do and starts with a verb.
 * Neither may hold a value of an identifying field (name, date of birth, free text of a case).
 */
export interface Diagnostic {
  readonly code: DiagnosticCode;
  readonly severity: 'error' | 'warning';
  readonly message: string;
  readonly hint?: string;
  readonly span?: SourceSpan;
  /** Where in the data, for example `patient.weight` or `decision.options[2]`. */
  readonly path?: string;
  readonly related?: readonly RelatedPlace[];
}

export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly warnings: readonly Diagnostic[] }
  | { readonly ok: false; readonly diagnostics: readonly Diagnostic[] };

export function success<T>(value: T, warnings: readonly Diagnostic[] = []): Result<T> {
  return { ok: true, value, warnings };
}

export function failure<T>(diagnostics: readonly Diagnostic[]): Result<T> {
  return { ok: false, diagnostics };
}

/** A fault of plainleaf itself, never of its input. Shown as INTERNAL with "please report". */
export class InternalError extends Error {
  override readonly name = 'InternalError';
}
