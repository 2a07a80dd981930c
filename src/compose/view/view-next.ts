import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';

export const nextShape = group({
  steps: list(markup),
  /** "Take the time you need", or to ask how soon, where an earlier operation gives trouble that may not wait. */
  time: markup,
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
    time: words.say(mayNotWait(scene) ? 'comparison.next.how_soon' : 'comparison.next.take_time'),
    phones: { day, night, emergency },
  };
}

/** Trouble after an earlier operation that a surgeon would not leave for weeks (common practice). */
const pressing = [
  'slippage',
  'erosion',
  'band-erosion',
  'obstruction',
  'leak',
  'bleeding',
  'internal-hernia',
];

function mayNotWait(scene: Scene): boolean {
  return scene.case.health.earlier_operations.some(({ trouble }) => pressing.includes(trouble ?? ''));
}
