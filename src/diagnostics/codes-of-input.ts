import type { CodeEntry } from './code-entry.ts';

/** What can be wrong with a command, a case or a clinic profile. */
export const inputCodes = {
  USAGE: { stage: 'usage', when: 'the command was called wrongly', todo: 'Run plainleaf --help.' },
  FILE_NOT_FOUND: {
    stage: 'usage',
    when: 'a named file or folder is not there or cannot be read',
    todo: 'Check the path.',
  },
  FILE_NOT_WRITTEN: {
    stage: 'usage',
    when: 'the output folder cannot be written',
    todo: 'Check its rights and the space on the disk.',
  },
  YAML_SYNTAX: { stage: 'case', when: 'the text is not valid YAML', todo: 'Correct the text at the caret.' },
  YAML_DUPLICATE_KEY: { stage: 'case', when: 'one key stands twice', todo: 'Keep one of the two.' },
  YAML_ALIAS_REFUSED: {
    stage: 'case',
    when: 'an alias (*x) or anchor (&x) is used',
    todo: 'Write the value out.',
  },
  YAML_TAG_REFUSED: { stage: 'case', when: 'a tag (!x) is used', todo: 'Remove the tag.' },
  YAML_TOO_LARGE: {
    stage: 'case',
    when: 'the file is over 1 MiB',
    todo: 'Check that this is a case or a clinic profile.',
  },
  YAML_TOO_DEEP: { stage: 'case', when: 'brackets are nested over 32 deep', todo: 'Check what was pasted.' },
  YAML_MANY_DOCUMENTS: {
    stage: 'case',
    when: 'the file holds more than one document (---)',
    todo: 'Write one case a file.',
  },
  CASE_MISSING_FIELD: { stage: 'case', when: 'a required key is absent', todo: 'Add it.' },
  CASE_UNKNOWN_FIELD: {
    stage: 'case',
    when: 'a key is not part of the format',
    todo: 'Correct the spelling or remove it.',
  },
  CASE_TYPE_MISMATCH: {
    stage: 'case',
    when: 'a value is of the wrong kind',
    todo: 'Write the expected kind.',
  },
  CASE_OUT_OF_RANGE: { stage: 'case', when: 'a value is outside its bounds', todo: 'Check the value.' },
  CASE_BAD_UNIT: {
    stage: 'case',
    when: 'a weight, height, dose, temperature or length of time has a wrong or no unit',
    todo: 'Write a number and a unit, for example 114.5 kg.',
  },
  CASE_DECIMAL_COMMA: {
    stage: 'case',
    when: 'a number is written with a decimal comma',
    todo: 'Write a decimal point.',
  },
  CASE_BAD_DATE: {
    stage: 'case',
    when: 'a date is not in the form 2026-12-31 or does not exist',
    todo: 'Write year-month-day.',
  },
  CASE_ID_NOT_TEXT: { stage: 'case', when: 'a reference was read as a number', todo: 'Put it in quotes.' },
  CASE_UNKNOWN_OPTION: {
    stage: 'case',
    when: 'an option is not in the evidence',
    todo: 'Choose one of the listed codes.',
  },
  CASE_UNKNOWN_CODE: {
    stage: 'case',
    when: 'a coded word (condition, medicine, document, language, reason) is not known',
    todo: 'Choose one of the listed codes.',
  },
  CASE_CONFLICT: { stage: 'case', when: 'two entries cannot both be true', todo: 'Correct one of them.' },
  CASE_NOT_SUPPORTED: {
    stage: 'case',
    when: 'the format version, or something valid that this version cannot make',
    todo: 'See the hint.',
  },
  CASE_TEXT_CUT: {
    stage: 'case',
    when: 'free words are followed by # and more words, which are not read',
    todo: 'Put the words in quotes, or move the comment to a line of its own.',
  },
  CASE_OPTION_ADDED: {
    stage: 'case',
    when: 'doing nothing more was not among the options, so it is added at the end',
    todo: 'Write no-operation where it is to be printed.',
  },
  CASE_DRAFT_ONLY: {
    stage: 'case',
    when: 'something is absent without which a packet stays a draft',
    todo: 'Add it before the packet is released.',
  },
  CLINIC_INCOMPLETE: {
    stage: 'case',
    when: 'the clinic profile lacks something that this case would print',
    todo: 'Add it to the clinic profile.',
  },
  CLINIC_SIGN_LATE: {
    stage: 'case',
    when: 'the clinic profile leaves a sign for the next visit that may not wait in this person',
    todo: 'Write it under today or now, or leave it if the clinic has decided so.',
  },
} as const satisfies Record<string, CodeEntry>;
