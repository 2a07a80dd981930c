import { nearestWord } from '../diagnostics/suggest.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import { listWords } from './describe-value.ts';
import { suggestCode } from './explain-choice.ts';
import type { Finding, Path } from './finding.ts';
import type { Range } from './read-tree.ts';
import { ageBounds } from './rules/check-person.ts';
import { isListField, whatIfFields } from './what-if-fields.ts';
import type { ListField, WhatIfField } from './what-if-fields.ts';

/** A code with its place in the argument; `sign` is absent where the whole list is written anew. */
export interface ListedCode {
  readonly code: string;
  readonly sign: '+' | '-' | undefined;
  readonly at: Range;
}

/** One thing to change. Ranges count letters from the start of the argument. */
export type WhatIfStep =
  | {
      readonly kind: 'set';
      readonly field: Exclude<WhatIfField, ListField>;
      /** As YAML would read it: a bare number is a number, nothing is null. */
      readonly value: string | number | null;
      readonly text: string;
      readonly at: Range;
      readonly key: Range;
    }
  | {
      readonly kind: 'list';
      readonly field: ListField;
      readonly codes: readonly ListedCode[];
      /** Nothing stands after the equals sign. */
      readonly isEmpty: boolean;
      readonly at: Range;
      readonly key: Range;
    };

export interface WhatIfFault extends Omit<Finding, 'path' | 'at'> {
  readonly path?: Path;
  readonly at: Range;
}

export interface ParsedWhatIf {
  readonly steps: readonly WhatIfStep[];
  readonly faults: readonly WhatIfFault[];
}

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
  return isListField(field)
    ? parseList(
        { kind: 'list', field, codes: listCodes(value, at[0]), isEmpty: value === '', at, key },
        known,
      )
    : parseValue({ kind: 'set', field, value: readScalar(value), text: value, at, key });
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

function listCodes(value: string, start: number): readonly ListedCode[] {
  return [...value.matchAll(/[^\s,[\]]+/g)].map(({ 0: word, index }) => {
    const at: Range = [start + index, start + index + word.length];
    const sign = word.startsWith('+') ? '+' : word.startsWith('-') ? '-' : undefined;
    return { code: sign === undefined ? word : word.slice(1), sign, at };
  });
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
  const list = `Choose one of: ${listWords(names)}.`;
  const hint = near === undefined ? list : `Did you mean ${near}? ${list}`;
  return { code: 'CASE_UNKNOWN_FIELD', at, message: 'a what-if cannot change this', hint };
}

function mixedSigns({ path, name }: ListField, at: Range): WhatIfFault {
  const message = 'some codes have a sign and some have none';
  const hint = `Write + or - before each code to change the list, or none to write it anew: ${name}=[…].`;
  return { code: 'CASE_TYPE_MISMATCH', path, at, message, hint };
}

/** The argument is never said again: it may hold anything. */
function notWritten(text: string): WhatIfFault {
  const hint = 'Write for example weight=114.5 kg, conditions=+reflux or options=-sleeve.';
  const message = 'expected a field, an equals sign and a value';
  return { code: 'CASE_TYPE_MISMATCH', at: [0, text.length], message, hint };
}

function accept(step: WhatIfStep): ParsedWhatIf {
  return { steps: [step], faults: [] };
}

function refuse(fault: WhatIfFault): ParsedWhatIf {
  return { steps: [], faults: [fault] };
}
