import { z } from 'zod';

/**
 * What a text field of a case or clinic profile stands for. The input stage checks codes by it and words its errors by it;
 * the JSON Schema lists codes by it.
 */
export type FieldRole =
  | 'reference'
  | 'label'
  | 'phone'
  | 'name'
  | 'words'
  | 'local-text'
  | 'date'
  | 'birth-date'
  | 'partial-date'
  | 'weight'
  | 'height'
  | 'span'
  | 'dose'
  | 'temperature'
  | 'option'
  | 'earlier-operation'
  | 'outcome'
  | 'trouble'
  | 'language'
  | 'language-tag'
  | 'record'
  | 'caution';

/** Roles by schema. Register before `describe`: a description keeps the role, a check added later would lose it. */
export const fieldRoles = z.registry<{ role: FieldRole }>();

export interface RoleWords {
  /** As it stands after "expected". */
  readonly expected: string;
  /** A value as it would be written in the file. */
  readonly sample: string;
}

export const roleWords: Readonly<Record<FieldRole, RoleWords>> = {
  reference: {
    expected: 'a reference in quotes: letters, digits, dots, hyphens or underscores, at most 40',
    sample: '"AB-0123"',
  },
  label: { expected: 'a short text in quotes', sample: '"2026-14"' },
  phone: { expected: 'a phone number in quotes: digits with spaces or hyphens', sample: '"555-0100"' },
  name: { expected: 'a name as it is to be printed', sample: 'First Last' },
  words: { expected: 'words', sample: 'Some words' },
  'local-text': {
    expected: 'words for each language, for example {en: "…", es: "…"}',
    sample: '{en: "…", es: "…"}',
  },
  date: { expected: 'a real date written year-month-day', sample: '2026-12-31' },
  'birth-date': { expected: 'a real date written year-month-day', sample: '1980-12-31' },
  'partial-date': { expected: 'a year, year-month or year-month-day', sample: '2019-03' },
  weight: { expected: 'a weight with its unit', sample: '114.5 kg' },
  height: { expected: 'a height with its unit', sample: '163 cm' },
  span: { expected: 'a length of time with its unit', sample: '2 weeks' },
  dose: { expected: 'a dose with its unit', sample: '500 mg' },
  temperature: { expected: 'a temperature with its unit', sample: '38 C' },
  option: { expected: 'an option code', sample: 'sleeve' },
  'earlier-operation': { expected: 'the code of an operation or endoscopic treatment', sample: 'band' },
  outcome: { expected: 'an outcome code', sample: 'leak' },
  trouble: { expected: 'a condition or outcome code', sample: 'reflux' },
  language: { expected: 'a language that has a locale', sample: 'en' },
  'language-tag': { expected: 'a language tag such as en or es', sample: 'en' },
  record: { expected: 'a record id of the evidence', sample: 'sleeve.leak.30d.some-study' },
  caution: { expected: 'a caution id of the evidence', sample: 'reflux-sleeve' },
};
