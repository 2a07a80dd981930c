import { ageOn } from '../../model/quantity.ts';
import { isRealDate } from '../../model/scalars.ts';
import type { Finding, Path } from '../finding.ts';
import type { FieldReader } from '../read-fields.ts';
import type { Rule } from './rule.ts';

/** Ages (whole years) outside these bounds are taken for a slip of the pen. */
export const ageBounds = { low: 10, high: 100 } as const;

/** What is said about the person and the packet can be true at once. */
export const checkPerson: Rule = (read, { today }) => [
  ...checkReference(read),
  ...checkAge(read, today),
  ...checkPregnancy(read),
  ...checkInterpreter(read),
  ...checkDocuments(read),
];

/** The reference stands in file names, on the terminal and in records, so it must not say who the person is. */
function checkReference(read: FieldReader): Finding[] {
  const path: Path = ['case'];
  const reference = read.text(path)?.toLowerCase();
  const words = (read.text(['patient', 'name']) ?? '').toLowerCase().match(/\p{L}{3,}/gu) ?? [];
  const born = (read.text(['patient', 'born']) ?? '').replaceAll('-', '');
  if (reference === undefined) return [];
  const digits = reference.replace(/\D/g, '');
  if (!words.some((word) => reference.includes(word)) && !(born.length === 8 && digits.includes(born)))
    return [];
  const message = 'the reference holds part of the name or the date of birth';
  const hint = 'Use a reference that does not say who the person is, for example PE-0417.';
  return [{ code: 'CASE_CONFLICT', path, message, hint }];
}

function checkAge(read: FieldReader, today: string | undefined): Finding[] {
  const path: Path = ['patient', 'born'];
  const born = read.text(path);
  if (born === undefined || today === undefined || !isRealDate(born)) return [];
  const hint = 'Check the year.';
  const age = ageOn(born, today);
  if (born > today)
    return [{ code: 'CASE_CONFLICT', path, message: 'the date of birth lies in the future', hint }];
  if (age < ageBounds.low)
    return [
      { code: 'CASE_CONFLICT', path, message: `the person would be under ${ageBounds.low} years old`, hint },
    ];
  if (age <= ageBounds.high) return [];
  return [
    { code: 'CASE_CONFLICT', path, message: `the person would be over ${ageBounds.high} years old`, hint },
  ];
}

function checkPregnancy(read: FieldReader): Finding[] {
  const path: Path = ['health', 'pregnancy'];
  const isNow = read.value([...path, 'now']) === true;
  const isPlanned = typeof read.value([...path, 'planned_within_months']) === 'number';
  if (read.text(['patient', 'sex']) !== 'male' || !(isNow || isPlanned)) return [];
  const hint = 'Correct one of the two; write sex: not-stated where figures by sex are not wanted.';
  const related = [{ path: ['patient', 'sex'], message: 'male here' }];
  const at = [...path, isNow ? 'now' : 'planned_within_months'];
  return [{ code: 'CASE_CONFLICT', path: at, message: 'a pregnancy together with sex: male', hint, related }];
}

function checkInterpreter(read: FieldReader): Finding[] {
  const path: Path = ['interpreter', 'needed'];
  if (read.value(path) !== true || read.text(['interpreter', 'language']) !== undefined) return [];
  const message = 'an interpreter is needed, but the language is not written';
  return [
    { code: 'CASE_CONFLICT', path, message, hint: 'Add language: and its tag, for example language: es.' },
  ];
}

function checkDocuments(read: FieldReader): Finding[] {
  const [documents, packet] = [read.value(['documents']), read.value(['packet'])];
  if (documents !== undefined && packet !== undefined) {
    const related = [{ path: ['documents'], message: 'the documents' }];
    const message = 'both documents and a packet are named';
    return [{ code: 'CASE_CONFLICT', path: ['packet'], message, hint: 'Keep one of the two.', related }];
  }
  // An empty or broken file is told so once, by what else is missing.
  if (documents !== undefined || packet !== undefined || read.value(['plainleaf']) === undefined) return [];
  const hint = 'Add documents: [comparison, questions], or packet: choosing.';
  return [
    {
      code: 'CASE_CONFLICT',
      path: ['documents'],
      at: 'absent',
      message: 'neither documents nor a packet is named',
      hint,
    },
  ];
}
