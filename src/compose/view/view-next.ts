import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';

export const nextShape = group({
  steps: list(markup),
  /** "Take the time you need", or to ask how soon, where an earlier operation gives trouble that may not wait. */
  time: markup,
});

/** What to do until the decision, with the next visit where it is known. */
export function viewNext(scene: Scene): Viewed<typeof nextShape> {
  const { words } = scene;
  const { next_visit: visit } = scene.case.plan;
  return {
    steps: [
      words.say('comparison.next.read'),
      visit === undefined
        ? words.say('comparison.next.visit')
        : words.say('comparison.next.visit_on', { date: scene.format.date(visit) }),
      ...askForInterpreter(scene),
      words.say('comparison.next.until_then'),
    ],
    time: words.say(mayNotWait(scene) ? 'comparison.next.how_soon' : 'comparison.next.take_time'),
  };
}

/** To ask for an interpreter, where one is needed, with the number that the clinic gives for it. */
export function askForInterpreter({ case: { interpreter }, clinic, words }: Scene): readonly Markup[] {
  if (!interpreter.needed) return [];
  const { phone } = clinic.language_notice ?? {};
  return [
    phone === undefined
      ? words.say('comparison.next.interpreter')
      : words.say('comparison.next.interpreter_call', { phone }),
  ];
}

/** Trouble after an earlier operation that a surgeon would not leave for weeks: an outcome that says so, or this. */
const pressingCondition = 'band-erosion';

function mayNotWait(scene: Scene): boolean {
  const pressing = scene.evidence.outcomes.filter((outcome) => outcome.pressing).map(({ code }) => code);
  return scene.case.health.earlier_operations.some(({ trouble = '' }) =>
    [pressingCondition, ...pressing].includes(trouble),
  );
}
