import { matterCodes } from '../../model/codes.ts';
import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { count, group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';

export const mattersShape = group({
  statements: list(markup),
  /** How many of them, first in the list, the person has said. */
  own: count,
  intro: markup,
});
export type MattersView = Viewed<typeof mattersShape>;

/** Rows that fit with two blank ones and the ticks on one page. */
const mostStatements = 5;

/** What the person said matters, first and in quotation marks, then other points that people weigh. */
export function viewMatters(scene: Scene): MattersView {
  const said = scene.case.decision.matters_most;
  const coded = said.flatMap((matter) => ('code' in matter ? [matter.code] : []));
  const own = said.map((matter) => ownWords(scene, matter));
  const others = matterCodes
    .filter((code) => !coded.includes(code) && fitsCase(scene, code))
    .slice(0, Math.max(0, mostStatements - own.length))
    .map((code) => scene.words.say(`codes.matters.${code}`));
  return { statements: [...own, ...others], own: own.length, intro: introOf(scene, own.length) };
}

/**
 * Lowest BMI at which a guideline offers an operation to anyone (`indication-asian-2022`). Below it nobody is led to want
 * to lose as much as they can.
 */
const lowestForOperation = 27.5;

/** Points about an illness are for people who have it. */
function fitsCase(scene: Scene, code: (typeof matterCodes)[number]): boolean {
  const { conditions, medicines } = scene.case.health;
  switch (code) {
    case 'most-weight-loss':
      return scene.comparison.person.bmi >= lowestForOperation;
    case 'diabetes-better':
      return conditions.some((condition) => condition.endsWith('diabetes'));
    case 'reflux-better':
      return conditions.some((condition) => condition.endsWith('reflux'));
    case 'keep-pain-medicine':
      return medicines.includes('anti-inflammatory');
    default:
      return true;
  }
}

/** One thing a person said, in quotation marks, with its full stop where the language of the page sets it. */
export function ownWords(scene: Scene, matter: Scene['case']['decision']['matters_most'][number]): Markup {
  const words =
    'code' in matter ? scene.words.say(`codes.matters.${matter.code}`) : scene.words.free(matter.text);
  const bare = { markup: words.markup.replace(fullStop, '$1') };
  const ended = scene.words.say('common.quoted_sentence', { words: bare });
  // Where the language sets it before the closing mark, the words keep their own.
  const isAfter = bare.markup !== words.markup && fullStop.test(ended.markup);
  return isAfter ? ended : scene.words.say('common.quote', { words });
}

/** At the end of a sentence, also of one in another language. */
const fullStop = /(?<!\.)[.。।]((?:<\/[^>]*>)*)$/u;

function introOf(scene: Scene, own: number): Markup {
  if (own === 0) return scene.words.say('comparison.matters.intro');
  return scene.words.say('comparison.matters.intro_own', { count: own });
}
