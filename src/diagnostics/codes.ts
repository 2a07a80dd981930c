/** Which part of the work a code belongs to; decides the exit code of the command. */
export type Stage = 'usage' | 'case' | 'evidence' | 'words' | 'render' | 'verify' | 'batch' | 'internal';

/** Exit code of the command line per stage. 0 is success. */
export const exitCodes: Readonly<Record<Stage, number>> = {
  usage: 2,
  case: 3,
  evidence: 4,
  words: 5,
  render: 6,
  verify: 7,
  batch: 8,
  internal: 70,
};

interface CodeEntry {
  readonly stage: Stage;
  /** When it is raised, in plain words; one row each in DEVELOPERS.md. */
  readonly when: string;
  /** What to do, starting with a verb. */
  readonly todo: string;
}

/** The closed list of codes. A code is never reused for another meaning. */
export const diagnosticCatalogue = {
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
    when: 'a weight or height has a wrong or no unit',
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
  EVIDENCE_INVALID: {
    stage: 'evidence',
    when: 'a data file does not fit its schema',
    todo: 'Correct the data file.',
  },
  EVIDENCE_NO_CITATION: {
    stage: 'evidence',
    when: 'a record has no study, or the study no citation',
    todo: 'Add the source.',
  },
  EVIDENCE_NO_LOCATOR: {
    stage: 'evidence',
    when: 'a page-read record whose study has no place where it was seen',
    todo: 'Add seen_at.',
  },
  EVIDENCE_INTERVAL_REVERSED: {
    stage: 'evidence',
    when: 'low is above high, or the estimate is outside',
    todo: 'Correct from the source.',
  },
  EVIDENCE_NO_DENOMINATOR: {
    stage: 'evidence',
    when: 'events without a number of people',
    todo: 'Add n from the source, or record a percent.',
  },
  EVIDENCE_ARITHMETIC: {
    stage: 'evidence',
    when: 'events, n and percent do not agree',
    todo: 'Re-read the source.',
  },
  EVIDENCE_OVERLAP: {
    stage: 'evidence',
    when: 'an overlap is written one way only',
    todo: 'Write it in both studies.',
  },
  EVIDENCE_DUPLICATE_ID: { stage: 'evidence', when: 'one id stands twice', todo: 'Rename one.' },
  EVIDENCE_ID_MISMATCH: {
    stage: 'evidence',
    when: 'an id does not start with its option and outcome',
    todo: 'Rename the record.',
  },
  EVIDENCE_UNKNOWN_CODE: {
    stage: 'evidence',
    when: 'a record names an option, outcome, metric or study that is not defined',
    todo: 'Define it or correct it.',
  },
  EVIDENCE_NO_PEOPLE: {
    stage: 'evidence',
    when: 'a record does not say who was measured',
    todo: 'Add people.',
  },
  EVIDENCE_NO_TIME: { stage: 'evidence', when: 'a record does not say when', todo: 'Add time.' },
  EVIDENCE_UNIT: { stage: 'evidence', when: 'the unit does not fit the metric', todo: 'Correct the unit.' },
  EVIDENCE_UNVERIFIED: {
    stage: 'evidence',
    when: 'a figure that nobody has read at its source was about to reach a patient',
    todo: 'Read the source, or leave it out.',
  },
  COMPARE_EVIDENCE_MISSING: {
    stage: 'evidence',
    when: 'no record fits an option and an outcome',
    todo: 'Nothing: the page says not known.',
  },
  LOCALE_INVALID: { stage: 'words', when: 'a locale file cannot be read', todo: 'Correct the file.' },
  LOCALE_KEY_MISSING: {
    stage: 'words',
    when: 'a text has no translation in this language',
    todo: 'Add the key to the locale.',
  },
  LOCALE_KEY_UNUSED: {
    stage: 'words',
    when: 'a language has a key that the base language has not',
    todo: 'Remove it or add it to the base.',
  },
  LOCALE_VARIABLE_MISSING: {
    stage: 'words',
    when: 'a text needs a value that was not given, or two languages name other variables',
    todo: 'Use the same variables as the base language.',
  },
  LOCALE_PLURAL_MISSING: {
    stage: 'words',
    when: 'a plural form of this language is absent',
    todo: 'Add the form.',
  },
  LOCALE_MARKUP: {
    stage: 'words',
    when: 'a text holds markup other than <b>, or a bare & or <',
    todo: 'Use only <b>…</b>; write &amp; and &lt;.',
  },
  LOCALE_WORDING: {
    stage: 'words',
    when: 'a patient text says a chance in a way that misleads (1 in x, rare), or a sentence is very long',
    todo: 'Say how many out of how many; write two short sentences.',
  },
  LOCALE_UNKNOWN: {
    stage: 'words',
    when: 'a language has no locale folder',
    todo: 'Choose one of the listed languages.',
  },
  TEMPLATE_UNKNOWN_PATH: {
    stage: 'words',
    when: 'a template names something the view model has not',
    todo: 'Correct the name.',
  },
  TEMPLATE_RAW_OUTPUT: { stage: 'words', when: 'a template uses {{{ }}} or &', todo: 'Use {{ }}.' },
  TEMPLATE_UNKNOWN_BLOCK: {
    stage: 'words',
    when: 'a template emits an element outside the vocabulary',
    todo: 'Use one of the listed elements.',
  },
  TEMPLATE_SYNTAX: {
    stage: 'words',
    when: 'a template cannot be parsed or emits broken markup',
    todo: 'Correct the template.',
  },
  TEMPLATE_STATEMENT_MISSING: {
    stage: 'words',
    when: 'a document lacks a statement that its kind must make',
    todo: 'Put the statement into the template.',
  },
  RENDER_GLYPH_MISSING: {
    stage: 'render',
    when: 'the font has no character for a letter',
    todo: 'Spell it another way or choose a covering font.',
  },
  RENDER_OVERFLOW: {
    stage: 'render',
    when: 'something is larger than the space it has',
    todo: 'Shorten the text.',
  },
  VERIFY_UNREADABLE: {
    stage: 'verify',
    when: 'the finished file cannot be opened again',
    todo: 'Make the packet again; report it if it stays.',
  },
  VERIFY_NUMBER_ABSENT: {
    stage: 'verify',
    when: 'a figure of the document is not in the finished file',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_STATEMENT_ABSENT: {
    stage: 'verify',
    when: 'a sentence of the document is not in the finished file',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_CAUTION_ABSENT: {
    stage: 'verify',
    when: 'a caution of the document is not in the finished file',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_PHONE_ABSENT: {
    stage: 'verify',
    when: 'a phone number is not on a page that must show it',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_ORDER: {
    stage: 'verify',
    when: 'text is there, but not in its place',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_UNEXPECTED_TEXT: {
    stage: 'verify',
    when: 'the file holds text that the document has not',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_LANGUAGE: {
    stage: 'verify',
    when: 'the file is in another language than asked',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_UNRESOLVED_KEY: {
    stage: 'verify',
    when: 'a key or placeholder was printed in place of words',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_GLYPH: {
    stage: 'verify',
    when: 'a character came back as a replacement mark',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_PAGE_COUNT: {
    stage: 'verify',
    when: 'page numbers and pages do not agree',
    todo: 'Do not hand it out; report it.',
  },
  VERIFY_ATTACHMENT: {
    stage: 'verify',
    when: 'a file that must be attached is not inside, or is not the same',
    todo: 'Do not hand it out; report it.',
  },
  BATCH_SOME_FAILED: {
    stage: 'batch',
    when: 'some packets of a batch were not made',
    todo: 'See the summary.',
  },
  INTERNAL: { stage: 'internal', when: 'plainleaf itself is at fault', todo: 'Please report it.' },
} as const satisfies Record<string, CodeEntry>;

export type DiagnosticCode = keyof typeof diagnosticCatalogue;

export function stageOf(code: DiagnosticCode): Stage {
  return diagnosticCatalogue[code].stage;
}
