import type { CodeEntry } from './code-entry.ts';

/** What can go wrong in making and reading back a packet. */
export const outputCodes = {
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
  VERIFY_ACTIVE_CONTENT: {
    stage: 'verify',
    when: 'the HTML page holds something that could run or be fetched',
    todo: 'Do not hand it out; report it.',
  },
  BATCH_SOME_FAILED: {
    stage: 'batch',
    when: 'some packets of a batch were not made',
    todo: 'See the summary.',
  },
  INTERNAL: { stage: 'internal', when: 'plainleaf itself is at fault', todo: 'Please report it.' },
} as const satisfies Record<string, CodeEntry>;
