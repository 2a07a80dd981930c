import { parseDocument } from 'yaml';

import { failure, success } from '../../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../../diagnostics/diagnostic.ts';

/** What `kind.yaml` says about a kind of document. Keys are keys of locale words. */
export interface KindDescription {
  readonly title: string;
  /** Right end of the running header. */
  readonly header: string;
  readonly audience: 'patient' | 'clinician';
  /** False where the first page is a cover that says the same. */
  readonly headerOnFirstPage: boolean;
  /** Words that the finished document must contain. */
  readonly required: readonly string[];
}

const keys = ['title', 'header', 'audience', 'header_on_first_page', 'required'];

/** Reads `kind.yaml`. Every key is needed and no other is allowed. */
export function readKind(text: string, file: string): Result<KindDescription> {
  const document = parseDocument(text);
  const value: unknown = document.errors.length === 0 ? document.toJS() : null;
  if (typeof value !== 'object' || value === null)
    return failure([invalid(file, 'This file is not valid YAML.')]);
  const kind = value as Readonly<Record<string, unknown>>;
  const wrong = [
    ...Object.keys(kind).filter((key) => !keys.includes(key)),
    ...keys.filter((key) => !isValid(kind, key)),
  ];
  if (wrong.length > 0)
    return failure([invalid(file, `Missing, unknown or of the wrong kind: ${wrong.join(', ')}.`)]);
  return success({
    title: String(kind['title']),
    header: String(kind['header']),
    audience: kind['audience'] === 'clinician' ? 'clinician' : 'patient',
    headerOnFirstPage: kind['header_on_first_page'] === true,
    required: (kind['required'] as readonly unknown[]).map(String),
  });
}

function isValid(kind: Readonly<Record<string, unknown>>, key: string): boolean {
  const value = kind[key];
  switch (key) {
    case 'audience':
      return value === 'patient' || value === 'clinician';
    case 'header_on_first_page':
      return typeof value === 'boolean';
    case 'required':
      return Array.isArray(value) && value.every((entry) => typeof entry === 'string');
    default:
      return typeof value === 'string' && value !== '';
  }
}

function invalid(file: string, message: string): Diagnostic {
  return {
    code: 'TEMPLATE_SYNTAX',
    severity: 'error',
    message,
    hint: `Write ${keys.join(', ')} and nothing else.`,
    span: { file, line: 1, column: 1 },
  };
}
