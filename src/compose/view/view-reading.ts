import type { Markup } from '../../model/locale.ts';
import type { DocumentReading, ReadingResult } from '../../model/reading-level.ts';
import type { Scene } from './scene.ts';
import { list, markup } from './shape.ts';

export const readingShapes = {
  /** How hard the other documents are to read. */
  reading: list(markup),
  /** How long their sentences are, in a language without a formula. */
  sentences: list(markup),
};

interface ViewedReadings {
  readonly reading: readonly Markup[];
  readonly sentences: readonly Markup[];
}

/**
 * How hard each document is to read: "My choices: grade 2.0 by Flesch-Kincaid, grade 6.1 by SMOG." In a language without a
 * formula, how long its sentences are.
 */
export function viewReadings(scene: Scene): ViewedReadings {
  const readings = scene.readings ?? [];
  return {
    reading: readings.filter(({ results }) => results.length > 0).map((reading) => say(scene, reading)),
    sentences: readings.flatMap((reading) => saySentences(scene, reading)),
  };
}

function say(scene: Scene, { title, results }: DocumentReading): Markup {
  const scores = scene.format.list(
    results.map((result) => sayScore(scene, result)),
    'and',
  );
  return scene.words.say('sources.reading.of_document', { title, scores });
}

function sayScore({ words, format }: Scene, { formula, score }: ReadingResult): string {
  return words.plain(`sources.reading.${formula}`, { score: format.number(score, 1) });
}

function saySentences({ words, format }: Scene, { title, sentences }: DocumentReading): readonly Markup[] {
  if (sentences === null) return [];
  const scores = words.plain('sources.reading.sentences', {
    average: format.number(sentences.average, 1),
    longest: format.number(sentences.longest),
  });
  return [words.say('sources.reading.of_document', { title, scores })];
}
