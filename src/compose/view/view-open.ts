import type { Markup } from '../../model/locale.ts';
import type { OpenPoint } from '../../model/open-point.ts';
import { findOpenPoints } from '../open-points.ts';
import type { Scene } from './scene.ts';
import { list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';

export const openShape = list(markup);

/** What stands between this document and a final one, each point in a sentence. */
export function viewOpen(scene: Scene): Viewed<typeof openShape> {
  return findOpenPoints(scene).map((point) => sayPoint(scene, point));
}

/** Where these pages show words of the clinic or the person in another language: whose they are, and what to do. */
export function viewUntranslated(scene: Scene): Viewed<typeof openShape> {
  // Why a clinic prefers a study stands with the sources alone, which nobody needs to act on.
  const isLacking = findOpenPoints(scene).some(
    (point) => point.code === 'free_text' && point.texts.some(({ path: [part] }) => part !== 'prefer'),
  );
  return isLacking ? [scene.words.say('common.untranslated')] : [];
}

function sayPoint({ words, format, locale }: Scene, point: OpenPoint): Markup {
  const key = `common.open.${point.code}`;
  if (point.code === 'study_form')
    return words.say(key, { option: words.plain(`options.${point.option}.name`) });
  if (point.code === 'words' || point.code === 'words_changed')
    return words.say(key, { language: format.languageName(locale.tag) });
  return 'count' in point ? words.say(key, { count: point.count }) : words.say(key);
}
