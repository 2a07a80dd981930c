import { nearestWord } from '../diagnostics/suggest.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import { listWords } from './describe-value.ts';
import { suggestCode } from './explain-choice.ts';
import { parseOperations, parsePregnancy } from './parse-what-if-history.ts';
import type { Range } from './read-tree.ts';
import { ageBounds } from './rules/check-person.ts';
import { isListField, whatIfFields } from './what-if-fields.ts';
import type { ListField, WhatIfField } from './what-if-fields.ts';
import { accept, listCodes, mixedSigns, refuse } from './what-if-step.ts';
import type { ListedCode, ParsedWhatIf, WhatIfFault, WhatIfStep } from './what-if-step.ts';

const written = /^(\s*)([^=]*?)(\s*=\s*)(.*?)\s*$/s;

/**
 * Reads one argument: `weight=140 kg`, `conditions=+reflux,-prediabetes`, `options=sleeve, bypass`, or codes alone, each
 * with its sign: `+reflux`. Values are checked later, with the whole case.
 */
export function parseWhatIf(text: string, known: KnownCodes): ParsedWhatIf {
  if (/^\s*[+-]/.test(text)) return parseBareCodes(text, known);
  const match = written.exec(text);
  if (match === null) return refuse(notWritten(text));
  const [, indent = '', name = '', equals = '', value = ''] = match;
  const key: Range = [indent.length, indent.length + name.length];
  const at: Range = [key[1] + equals.length, key[1] + equals.length + value.length];
  const field = whatIfFields.find((one) => one.name === name || one.path.join('.') === name);
  if (field === undefined) return refuse(unknownField(name, key));
  return parseField(field, { text: value, at, key }, known);
}

interface Assigned {
  readonly text: string;
  readonly at: Range;
  readonly key: Range;
}

function parseField(field: WhatIfField, { text, at, key }: Assigned, known: KnownCodes): ParsedWhatIf {
  switch (field.kind) {
    case 'list':
      return parseList(
        { kind: 'list', field, codes: listCodes(text, at[0]), isEmpty: text === '', at, key },
        known,
      );
    case 'operations':
      return parseOperations(text, { field, at, key }, known);
    case 'pregnancy':
      return parsePregnancy(text, { field, at, key });
    case 'value':
    case 'age':
      return parseValue({ kind: 'set', field, value: readScalar(text), text, at, key });
  }
}

function parseList(step: Extract<WhatIfStep, { kind: 'list' }>, known: KnownCodes): ParsedWhatIf {
  const { field, codes, at } = step;
  const signed = codes.filter(({ sign }) => sign !== undefined).length;
  if (signed > 0 && signed < codes.length) return refuse(mixedSigns(field, at));
  const faults = codes.flatMap((one) => (one.sign === '-' ? checkTakenOut(one, field, known) : []));
  return faults.length > 0 ? { steps: [], faults } : accept(step);
}

function parseValue(step: Extract<WhatIfStep, { kind: 'set' }>): ParsedWhatIf {
  const { field, value, at } = step;
  if (field.kind !== 'age' || value === null) return accept(step);
  const { low, high } = ageBounds;
  if (typeof value !== 'number' || !Number.isInteger(value)) {
    const message = 'expected an age in whole years';
    return refuse({
      code: 'CASE_TYPE_MISMATCH',
      path: field.path,
      at,
      message,
      hint: 'Write for example age=45.',
    });
  }
  if (value >= low && value <= high) return accept(step);
  const message = `expected an age from ${low} to ${high} years`;
  return refuse({ code: 'CASE_OUT_OF_RANGE', path: field.path, at, message, hint: 'Check the number.' });
}

/** Codes alone: the list that knows a code is the one that is meant. */
function parseBareCodes(text: string, known: KnownCodes): ParsedWhatIf {
  const fields = whatIfFields.filter(isListField);
  const all = fields.flatMap(({ codes }) => codes(known));
  const read = listCodes(text, 0).map((one): ParsedWhatIf => {
    const field = fields.find(({ codes }) => codes(known).includes(one.code));
    if (one.sign === undefined) return refuse(notWritten(text));
    if (field === undefined) return refuse(unknownCode(one, all));
    return accept({ kind: 'list', field, codes: [one], isEmpty: false, at: one.at, key: one.at });
  });
  return { steps: read.flatMap(({ steps }) => steps), faults: read.flatMap(({ faults }) => faults) };
}

function readScalar(value: string): string | number | null {
  if (value === '') return null;
  return /^\d+(\.\d+)?$/.test(value) ? Number(value) : value;
}

/** A code that is taken out never meets the schema, so its spelling is checked here. */
function checkTakenOut(one: ListedCode, field: ListField, known: KnownCodes): readonly WhatIfFault[] {
  const codes = field.codes(known);
  if (codes.includes(one.code)) return [];
  return [{ ...unknownCode(one, codes), code: field.refusal, path: field.path }];
}

function unknownCode({ code, at }: ListedCode, codes: readonly string[]): WhatIfFault {
  const near = nearestWord(code, codes);
  const seek = 'Write the field too, for example conditions=+reflux.';
  const hint = near === undefined && codes.length > 80 ? seek : suggestCode(code, codes);
  return { code: 'CASE_UNKNOWN_CODE', at, message: 'this code is not known here', hint };
}

function unknownField(name: string, at: Range): WhatIfFault {
  const names = whatIfFields.map((field) => field.name);
  const near = nearestWord(name, names);
  const list = `Choose one of: ${listWords(names)}. For anything else compare a changed copy of the case.`;
  const hint = near === undefined ? list : `Did you mean ${near}? ${list}`;
  return { code: 'CASE_UNKNOWN_FIELD', at, message: 'a what-if cannot change this', hint };
}

/** The argument is never said again: it may hold anything. */
function notWritten(text: string): WhatIfFault {
  const hint = 'Write for example weight=114.5 kg, conditions=+reflux or options=-sleeve.';
  const message = 'expected a field, an equals sign and a value';
  return { code: 'CASE_TYPE_MISMATCH', at: [0, text.length], message, hint };
}
