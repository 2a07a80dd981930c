import type { z } from 'zod';

import type { DiagnosticCode } from '../diagnostics/codes.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DataPath, ParsedFile } from './parse-data-file.ts';

interface IssuePlace {
  readonly raw: unknown;
  readonly parsed: ParsedFile;
  /** Path of the entry in its file; the issue's own path starts there. */
  readonly path: DataPath;
}

/** Some absent keys have a code of their own, since each breaks another promise. */
const codeOfAbsent: Readonly<Record<string, DiagnosticCode>> = {
  study: 'EVIDENCE_NO_CITATION',
  citation: 'EVIDENCE_NO_CITATION',
  people: 'EVIDENCE_NO_PEOPLE',
  time: 'EVIDENCE_NO_TIME',
};

/** Turns what zod found in one entry into located diagnostics, one for each unknown key. */
export function describeIssue(
  issue: z.core.$ZodIssue,
  { raw, parsed, path }: IssuePlace,
): readonly Diagnostic[] {
  const inner = issue.path.filter((step) => typeof step !== 'symbol');
  const full = [...path, ...inner];
  const where = [nameOf(raw), inner.join('.')].filter((part) => part !== '').join(': ');
  const base = { severity: 'error', path: where } as const;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      ...base,
      code: 'EVIDENCE_INVALID',
      message: `the key "${key}" is not part of the format`,
      hint: 'Correct the spelling or remove it.',
      span: parsed.spanOfKey(full, key),
    }));
  }
  const last = inner.at(-1);
  if (isAbsent(raw, inner)) {
    const code = inner.length === 1 ? codeOfAbsent[String(last)] : undefined;
    const message = `"${String(last)}" is missing`;
    return [
      {
        ...base,
        code: code ?? 'EVIDENCE_INVALID',
        message,
        hint: 'Add it from the source.',
        span: parsed.spanAt(full),
      },
    ];
  }
  const message = issue.message.replace(/^Invalid input: /, '');
  return [
    { ...base, code: 'EVIDENCE_INVALID', message, hint: 'Correct the value.', span: parsed.spanAt(full) },
  ];
}

function nameOf(raw: unknown): string {
  if (typeof raw !== 'object' || raw === null) return '';
  const entry = raw as Readonly<Record<string, unknown>>;
  const name = entry['id'] ?? entry['code'] ?? entry['option'] ?? entry['record'];
  return typeof name === 'string' ? name : '';
}

function isAbsent(raw: unknown, path: DataPath): boolean {
  let value = raw;
  for (const step of path) {
    if (typeof value !== 'object' || value === null) return false;
    value = (value as Readonly<Record<string | number, unknown>>)[step];
  }
  return value === undefined && path.length > 0;
}
