import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';

export const nextShape = group({
  steps: list(markup),
  phones: group({ day: text, night: text, emergency: text }),
});

/** What to do until the decision, with the next visit where it is known. */
export function viewNext(scene: Scene): Viewed<typeof nextShape> {
  const { words, clinic } = scene;
  const { next_visit: visit } = scene.case.plan;
  const { day, out_of_hours: night, emergency } = clinic.clinic.phones;
  const language = scene.case.interpreter.needed;
  return {
    steps: [
      words.say('comparison.next.read'),
      visit === undefined
        ? words.say('comparison.next.visit')
        : words.say('comparison.next.visit_on', { date: scene.format.date(visit) }),
      ...(language ? [words.say('comparison.next.interpreter')] : []),
      words.say('comparison.next.until_then'),
    ],
    phones: { day, night, emergency },
  };
}
