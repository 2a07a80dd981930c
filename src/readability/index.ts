import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import { findUnexplained } from '../model/explained-terms.ts';
import type { GlossaryTerm } from '../model/glossary.ts';
import type { PassiveWords } from '../model/locale.ts';
import type { DocumentReading } from '../model/reading-level.ts';
import { expectedText } from '../model/tree-text.ts';
import { findPassives } from '../model/passive-voice.ts';
import { findFormulas } from './formulas-of-language.ts';
import { measureSentences } from './measure-sentences.ts';
import { scoreTexts } from './score-texts.ts';

/** References to publications hold titles that others wrote, and addresses. */
const reference = /doi\.org|PubMed|[\w-](?:\.[\w-]+)+\/\w/u;
const endsAsSentence = /[.!?:؟।。！？：]["”»)」』）]?$/u;

/**
 * How hard the running text of a document is: whole sentences, not names, numbers, cells of tables and references. Where
 * there is none, as on a page of signs, each line counts as a sentence. Where no formula is checked for the language, how
 * long the sentences are.
 */
export function readDocument(tree: DocumentTree): DocumentReading {
  const { kind, title, language } = tree;
  const lines = runningText(tree);
  const whole = wholeSentences(lines);
  const results = scoreTexts(whole, language);
  return {
    kind,
    title,
    results: results.length > 0 ? results : scoreTexts(lines, language),
    sentences: findFormulas(language) === undefined ? measureSentences(whole) : null,
  };
}

function runningText(tree: DocumentTree): readonly string[] {
  return expectedText(tree)
    .filter(({ kind, text }) => kind === 'paragraph' && !reference.test(text))
    .map(({ text }) => text.trim());
}

function wholeSentences(lines: readonly string[]): readonly string[] {
  return lines.filter((line) => endsAsSentence.test(line));
}

/** The working rule for pages that people understand: four sentences in five are active (PMC5839932, table 7). */
const mostPassive = 0.2;
/** Fewer sentences say nothing about how a page is written. */
const fewestSentences = 10;

/** A warning for a patient's document in which too many sentences do not say who does something. */
export function tooPassive(tree: DocumentTree, words: PassiveWords | null): readonly Diagnostic[] {
  if (words === null) return [];
  const { sentences, passive } = findPassives(wholeSentences(runningText(tree)), words);
  if (sentences < fewestSentences || passive.length <= sentences * mostPassive) return [];
  const share = `${String(passive.length)} of ${String(sentences)}`;
  return [
    {
      code: 'READING_LEVEL',
      severity: 'warning',
      message: `${tree.kind} does not say in ${share} sentences who does something`,
      hint: 'Say who does it: "The surgeon cuts", not "is cut".',
    },
  ];
}

/** A warning for each formula by which a patient's document is harder than it should be, or for its long sentences. */
export function tooHard({ kind, results, sentences }: DocumentReading): readonly Diagnostic[] {
  const hard = results
    .filter(({ passes }) => !passes)
    .map(({ formula, score, limit }) => `${score.toFixed(1)} by ${formula}, the limit is ${String(limit)}`);
  const long =
    sentences === null || sentences.passes
      ? []
      : [`${sentences.average.toFixed(1)} words a sentence, it should be under ${String(sentences.limit)}`];
  return [...hard, ...long].map((finding) => ({
    code: 'READING_LEVEL',
    severity: 'warning',
    message: `${kind} is harder to read than it should be: ${finding}`,
    hint: 'Use shorter words and sentences, in the locale or in what the clinic wrote itself.',
  }));
}

/** A warning for each medical word that a patient's document uses before it has said what the word means. */
export function unexplained(tree: DocumentTree, glossary: readonly GlossaryTerm[]): readonly Diagnostic[] {
  return findUnexplained(tree, glossary).map(({ term: { id, words }, piece }) => ({
    code: 'TERM_UNEXPLAINED',
    severity: 'warning',
    message: `${tree.kind} does not explain "${words[0] ?? id}" where a reader meets it first (${piece.origin})`,
    hint: `Say what it means in the same sentence or before it, as ${id} of the glossary does, or use another word.`,
  }));
}
