import { z } from 'zod';
import { nearestWord } from '../diagnostics/suggest.ts';
import { describeKind, listWords } from './describe-value.ts';
import type { Explanation } from './explain-quantity.ts';
import type { Field } from './walk-schema.ts';

type Issue = z.core.$ZodIssue;

/** Values without a role of their own: coded words, numbers, true or false, lists and maps. */
export function explainChoice(issue: Issue, { schema, value }: Field): Explanation {
  if (schema instanceof z.ZodLiteral) return explainVersion(value);
  if (schema instanceof z.ZodEnum) return explainCode(value, schema.options.map(String));
  if (schema instanceof z.ZodBoolean) return explainBoolean(value);
  if (schema instanceof z.ZodNumber) return explainNumber(issue, value);
  return explainCollection(issue, value);
}

function explainVersion(value: unknown): Explanation {
  if (typeof value === 'number') {
    return {
      code: 'CASE_NOT_SUPPORTED',
      message: 'this version of the format is not known',
      hint: 'Write plainleaf: 1.',
    };
  }
  return {
    code: 'CASE_TYPE_MISMATCH',
    message: `expected the number 1, found ${describeKind(value)}`,
    hint: 'Write plainleaf: 1, without quotes.',
  };
}

function explainCode(value: unknown, codes: readonly string[]): Explanation {
  if (typeof value !== 'string') {
    const message = `expected a code, found ${describeKind(value)}`;
    return { code: 'CASE_TYPE_MISMATCH', message, hint: `Choose one of: ${listWords(codes)}.` };
  }
  return {
    code: 'CASE_UNKNOWN_CODE',
    message: 'this code is not known here',
    hint: suggestCode(value, codes),
  };
}

/** "Did you mean" with the nearest code, and the codes where the list is short or nothing is near. */
export function suggestCode(written: string, codes: readonly string[]): string {
  const near = nearestWord(written, codes);
  const list = `Choose one of: ${listWords(codes)}.`;
  if (near === undefined) return list;
  return codes.length > 20 ? `Did you mean ${near}?` : `Did you mean ${near}? ${list}`;
}

function explainBoolean(value: unknown): Explanation {
  const said = typeof value === 'string' ? value.toLowerCase() : '';
  const hints: Readonly<Record<string, string>> = {
    yes: 'Write true.',
    on: 'Write true.',
    no: 'Write false.',
    off: 'Write false.',
  };
  const message = `expected true or false, found ${describeKind(value)}`;
  return { code: 'CASE_TYPE_MISMATCH', message, hint: hints[said] ?? 'Write true or false, without quotes.' };
}

function explainNumber(issue: Issue, value: unknown): Explanation {
  if (typeof value === 'string' && /^\d+(,\d+)+$/.test(value)) {
    const hint = 'Write a decimal point, and nothing between thousands.';
    return { code: 'CASE_DECIMAL_COMMA', message: 'a number is written with a comma', hint };
  }
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    const bound = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
    return { code: 'CASE_OUT_OF_RANGE', message: `expected a number of ${bound}`, hint: 'Check the number.' };
  }
  const found = typeof value === 'number' ? 'a fraction' : describeKind(value);
  const hint =
    typeof value === 'string' ? 'Write the number without quotes or unit.' : 'Write a whole number.';
  return { code: 'CASE_TYPE_MISMATCH', message: `expected a whole number, found ${found}`, hint };
}

function explainCollection(issue: Issue, value: unknown): Explanation {
  if (issue.code === 'too_big') {
    return {
      code: 'CASE_OUT_OF_RANGE',
      message: `expected at most ${issue.maximum} entries`,
      hint: 'Leave some out.',
    };
  }
  if (issue.code === 'too_small') {
    return {
      code: 'CASE_OUT_OF_RANGE',
      message: `expected at least ${issue.minimum} entry`,
      hint: 'Add one.',
    };
  }
  const wantsList = issue.code === 'invalid_type' && issue.expected === 'array';
  const expected = wantsList ? 'a list' : 'keys with values under it';
  const hint = wantsList
    ? 'Write it in square brackets: [one, two].'
    : 'Write key: value, one a line, indented by two spaces.';
  return { code: 'CASE_TYPE_MISMATCH', message: `expected ${expected}, found ${describeKind(value)}`, hint };
}
