import type { Markup } from '../../model/locale.ts';
import type { DocumentReading, ReadingResult } from '../../model/reading-level.ts';
import type { Scene } from './scene.ts';

/** How hard each document is to read: "My choices: grade 2.0 by Flesch-Kincaid, grade 6.1 by SMOG." */
export function viewReading(scene: Scene): readonly Markup[] {
  return (scene.readings ?? [])
    .filter(({ results }) => results.length > 0)
    .map((reading) => say(scene, reading));
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
