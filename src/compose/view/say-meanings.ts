import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { bold, runIn } from './words.ts';

/** "An ulcer: An open sore in the stomach or at a join.", for each outcome whose name does not say it, each once. */
export function outcomeMeanings({ words, evidence }: Scene, outcomes: readonly string[]): readonly Markup[] {
  const plain = new Set(evidence.outcomes.filter((outcome) => outcome.plain).map(({ code }) => code));
  return [...new Set(outcomes)]
    .filter((outcome) => !plain.has(outcome))
    .map((outcome) =>
      runIn(
        words,
        bold(words.say('common.table.meaning', { outcome: words.plain(`outcomes.${outcome}.name`) })),
        words.say(`outcomes.${outcome}.explained`),
      ),
    );
}

/** The same for an outcome that is drawn although the words have no question of its own for it. */
export function meaningOfDrawn(scene: Scene, outcome: string): readonly Markup[] {
  const asked = ['early', 'late'].some((when) => scene.words.has(`outcomes.${outcome}.question_${when}`));
  return asked ? [] : outcomeMeanings(scene, [outcome]);
}

/** “A leak”, “Bleeding”, and “Death”, each once. */
export function quotedList({ words, format }: Scene, names: readonly string[]): string {
  const quoted = names.map((name) => words.plain('common.quote', { words: name }));
  return format.list([...new Set(quoted)], 'and');
}
