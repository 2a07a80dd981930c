import type { DiagnosticCode } from '../../diagnostics/codes.ts';
import type { Diagnostic, RelatedPlace } from '../../diagnostics/diagnostic.ts';
import { fileOf } from '../words.ts';
import type { Entry, Words } from '../words.ts';

/** All languages; the base is the one that the others are held against. */
export interface Languages {
  readonly base: Words;
  readonly others: readonly Words[];
}

/** One promise that the words keep. `description` says it as a sentence about correct words. */
export interface WordsRule {
  readonly name: string;
  readonly description: string;
  readonly check: (languages: Languages) => readonly Diagnostic[];
}

export interface Fault {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly hint: string;
  readonly severity?: 'error' | 'warning';
  readonly related?: readonly RelatedPlace[];
}

/** A fault of a text, at the place where the text begins. */
export function faultAt(entry: Entry, fault: Fault): Diagnostic {
  return { severity: 'error', ...fault, path: entry.key, span: entry.span };
}

/** A fault of something absent: at the head of the file in which it should stand. */
export function faultOfAbsent(words: Words, key: string, fault: Fault): Diagnostic {
  return { severity: 'error', ...fault, path: key, span: { file: fileOf(words, key), line: 1, column: 1 } };
}

export function allOf({ base, others }: Languages): readonly Words[] {
  return [base, ...others];
}

/** Texts that only clinicians read may use the words of the trade. */
const forClinicians = [
  'clinician-sheet.',
  'reason-checks.',
  'document-score.',
  'criteria.',
  'consent-check.',
  'consent-elements.',
  'codes.effects.',
  'missing.set_aside.',
];

export function patientTexts(words: Words): readonly Entry[] {
  return [...words.entries.values()].filter(
    ({ key }) => !forClinicians.some((start) => key.startsWith(start)),
  );
}
