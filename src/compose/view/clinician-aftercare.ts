import type { Undecided, UndecidedReason } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import { speaksOfHome } from '../open-points.ts';
import type { Scene } from './scene.ts';
import { asMarkup, bold, joined, sentence, series } from './words.ts';

/**
 * What no page says of the time after the treatment, by why: the facts on it, or the topic where there is none. Empty
 * where the packet does not speak of that time.
 */
export function clinicianAftercare(scene: Scene): readonly Markup[] {
  const { aftercare, words } = scene;
  if (aftercare === null || !speaksOfHome(scene)) return [];
  const groups = new Map<UndecidedReason, Undecided[]>();
  for (const one of aftercare.undecided) groups.set(one.reason, [...(groups.get(one.reason) ?? []), one]);
  return [...groups].map(([reason, list]) =>
    joined(
      bold(words.say(`clinician-sheet.aftercare.reasons.${reason}`)),
      sentence(words, series(words, 'items', list.flatMap((one) => namesOf(scene, one)).map(asMarkup))),
    ),
  );
}

function namesOf({ words }: Scene, { topic, facts }: Undecided): readonly string[] {
  return facts.length > 0 ? facts.map(({ id }) => id) : [words.plain(`aftercare.topics.${topic}`)];
}
