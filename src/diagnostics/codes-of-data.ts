import type { CodeEntry } from './code-entry.ts';

/** What can be wrong with the project's own data: evidence, locales, templates. */
export const dataCodes = {
  EVIDENCE_INVALID: {
    stage: 'evidence',
    when: 'a data file does not fit its schema',
    todo: 'Correct the data file.',
  },
  EVIDENCE_NO_CITATION: {
    stage: 'evidence',
    when: 'a record has no study, a fact on aftercare no source, or either of these no citation',
    todo: 'Add the source.',
  },
  EVIDENCE_NO_LOCATOR: {
    stage: 'evidence',
    when: 'something read on a page, and nothing says on which',
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
    when: 'an overlap is written one way only, or leaves out a study of the same people',
    todo: 'Write it in all studies concerned.',
  },
  EVIDENCE_CONFLICT: {
    stage: 'evidence',
    when: 'two facts on aftercare say otherwise, and only one of them says so',
    todo: 'Write it in both.',
  },
  EVIDENCE_DUPLICATE_ID: { stage: 'evidence', when: 'one id stands twice', todo: 'Rename one.' },
  EVIDENCE_ID_MISMATCH: {
    stage: 'evidence',
    when: 'an id does not start with its option and outcome, or its topic',
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
  EVIDENCE_NO_TIME: {
    stage: 'evidence',
    when: 'a record or a fact on aftercare does not say when, or says what cannot be',
    todo: 'Add time.',
  },
  EVIDENCE_UNIT: {
    stage: 'evidence',
    when: 'the unit does not fit what is measured',
    todo: 'Correct the unit.',
  },
  EVIDENCE_UNVERIFIED: {
    stage: 'evidence',
    when: 'a figure that nobody has read at its source was about to reach a patient',
    todo: 'Read the source, or leave it out.',
  },
  EVIDENCE_REVIEW: {
    stage: 'evidence',
    when: 'a day of reading or review, or the maturity that sets the interval, cannot be right',
    todo: 'Correct it.',
  },
  EVIDENCE_PAST_REVIEW: {
    stage: 'evidence',
    when: 'a figure is shown whose source was to be read again before the day of the packet (a warning)',
    todo: 'Read the source again and set seen_on; until then the packet stays a draft.',
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
  READING_LEVEL: {
    stage: 'words',
    when: 'a document for a patient is harder to read than it should be, or too seldom says who does something',
    todo: 'Use shorter words and sentences; say who does it.',
  },
  TERM_UNEXPLAINED: {
    stage: 'words',
    when: 'a document for a patient uses a medical word of the glossary before it says what the word means',
    todo: 'Explain it at its first use, or use another word.',
  },
  TRANSLATION_INVALID: {
    stage: 'words',
    when: 'a file that a translator sent back cannot be read',
    todo: 'Ask for the file as plainleaf languages export wrote it.',
  },
  TRANSLATION_CODE_LOST: {
    stage: 'words',
    when: 'a translated text lost a code that stands for a value, or has another',
    todo: 'Ask the translator to put the code back.',
  },
  TRANSLATION_OUTDATED: {
    stage: 'words',
    when: 'the text that was translated has changed since the file was written',
    todo: 'Export the text again and have it translated anew.',
  },
  TRANSLATION_UNKNOWN: {
    stage: 'words',
    when: 'a file that a translator sent back has a text that the language has not',
    todo: 'Leave the text out.',
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
} as const satisfies Record<string, CodeEntry>;
