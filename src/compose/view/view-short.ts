import type { AftercarePlan } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';
import { viewAsks } from './view-asks.ts';
import { choiceInWords } from './say-choice.ts';
import { gainOf } from './say-gain.ts';
import { isProcedure } from './view-people.ts';
import { staysGone } from './view-undo.ts';
import { joined } from './words.ts';

/** Whether it can be undone, in a sentence. */
const undone = {
  yes: 'codes.reasons.can-be-undone',
  partly: 'comparison.opinion.undone_partly',
  no: 'comparison.opinion.undone_no',
  'not-known': 'operation.short.undo_not_known',
} as const;

/** What the pages about an operation come to. `alone` is the scene without the other choices. */
export function shortOperation(scene: Scene, alone: Scene, option: NamedOption): readonly Markup[] {
  const { words } = scene;
  const forLife = viewAsks(alone).forLife.flatMap(({ lines }) => lines.map((line) => line.words));
  return [
    choiceInWords(scene, option),
    gainOf(scene, option),
    joined(words.say(undone[option.column.reversibility.possible]), ...staysGone(scene, option)),
    ...forLife.map((what) => words.say('operation.short.life', { what })),
    words.say('operation.short.call'),
  ];
}

/** What the pages for the time at home come to: a line for each part that they have. */
export function shortHomecare({ words }: Scene, plan: AftercarePlan): readonly Markup[] {
  const isTimed = plan.activity.some(({ starts, lastDay }) => starts !== plan.date || lastDay !== null);
  const forLife = plan.supplements.some(({ lastDay }) => lastDay === null);
  const parts: readonly (readonly [key: string, isThere: boolean])[] = [
    ['diet', plan.diet.length > 0],
    ['activity', isTimed],
    ['visits', plan.visits.length + plan.laterVisits.length > 0],
    [forLife ? 'vitamins' : 'vitamins_until', plan.supplements.length > 0],
    ['call', true],
  ];
  return parts.filter(([, isThere]) => isThere).map(([key]) => words.say(`homecare.short.${key}`));
}

/** What nobody can say of the time at home. */
export function unknownAtHome({ words }: Scene, option: NamedOption): readonly Markup[] {
  return [
    ...(isProcedure(option) ? [words.say('homecare.unknown.healing')] : []),
    words.say('homecare.unknown.experts'),
    words.say(`options.${option.code}.unknown`),
  ];
}
