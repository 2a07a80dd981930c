import { conditionCodes, historyCodes, medicineCodes } from '../model/codes.ts';
import type { DiagnosticCode } from '../diagnostics/codes.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import { choosableCodes } from './check-codes.ts';
import type { Path } from './finding.ts';

/** What of a case a what-if may change: the things a comparison depends on and a person can be told about. */
interface FieldBase {
  /** The word before the equals sign. */
  readonly name: string;
  /** Where it stands in the case. */
  readonly path: Path;
}

export interface ListField extends FieldBase {
  readonly kind: 'list';
  /** Given for a code that the list does not know. */
  readonly refusal: DiagnosticCode;
  readonly codes: (known: KnownCodes) => readonly string[];
}

/** `age` is written in whole years and stands for a birth date; `pregnancy` is now, none, or planned within months. */
export interface SingleField extends FieldBase {
  readonly kind: 'value' | 'age' | 'pregnancy';
}

/** Operations before: codes, each with what became of it where it is not in place. */
export interface OperationsField extends FieldBase {
  readonly kind: 'operations';
}

export type WhatIfField = ListField | SingleField | OperationsField;

/** A list of codes of the person's health. */
function codedList(name: string, codes: readonly string[]): ListField {
  return { name, kind: 'list', path: ['health', name], refusal: 'CASE_UNKNOWN_CODE', codes: () => codes };
}

export const whatIfFields: readonly WhatIfField[] = [
  { name: 'weight', kind: 'value', path: ['patient', 'weight'] },
  { name: 'height', kind: 'value', path: ['patient', 'height'] },
  { name: 'age', kind: 'age', path: ['patient', 'born'] },
  { name: 'born', kind: 'value', path: ['patient', 'born'] },
  { name: 'sex', kind: 'value', path: ['patient', 'sex'] },
  {
    name: 'ancestry_threshold',
    kind: 'value',
    path: ['patient', 'ancestry_threshold'],
  },
  { name: 'smoking', kind: 'value', path: ['health', 'smoking'] },
  codedList('conditions', conditionCodes),
  codedList('medicines', medicineCodes),
  codedList('history', historyCodes),
  { name: 'pregnancy', kind: 'pregnancy', path: ['health', 'pregnancy'] },
  { name: 'earlier_operations', kind: 'operations', path: ['health', 'earlier_operations'] },
  { name: 'asked', kind: 'value', path: ['decision', 'asked'] },
  {
    name: 'options',
    kind: 'list',
    path: ['decision', 'options'],
    refusal: 'CASE_UNKNOWN_OPTION',
    codes: choosableCodes,
  },
];

export function isListField(field: WhatIfField): field is ListField {
  return field.kind === 'list';
}
