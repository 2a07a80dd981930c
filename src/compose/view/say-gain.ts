import type { KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { withDose } from './say-dose.ts';
import { farFromMean } from './say-mean-bmi.ts';
import { sayNear } from './say-reason.ts';
import { sourceOf } from './say-share.ts';
import { soundnessInWords } from './say-soundness.ts';
import { sayLength } from './say-time.ts';
import { computedInWords, isWeight, warningInWords, weightInWords } from './say-weight.ts';
import type { WeightCell } from './say-weight.ts';
import type { NamedOption, Scene } from './scene.ts';
import { figure, joined } from './words.ts';

/** Weight at the main horizon, else at the longest time known, how sure that is, and that nobody knows one's own. */
export function gainOf(scene: Scene, option: NamedOption): Markup {
  const said = weightOf(scene, option);
  return said === null ? noWeight(scene) : joined(said, scene.words.say('consent.talk.weight_yours'));
}

/** The same in one line beside others, which may have said the dose. */
export function gainInShort(scene: Scene, option: NamedOption, doseSaid = false): Markup {
  return weightOf(scene, option, doseSaid) ?? noWeight(scene);
}

function noWeight(scene: Scene): Markup {
  return scene.words.say('consent.talk.none_known_weight');
}

function weightOf(scene: Scene, option: NamedOption, doseSaid = false): Markup | null {
  const cell = weightGiven(scene, option);
  return cell === null ? null : weightInSentence(scene, cell, doseSaid);
}

/** The weight that these words give; null where none is known. */
export function weightGiven(scene: Scene, option: NamedOption): WeightCell | null {
  const { main, over } = scene.comparison.weight;
  const cell = [main, ...over.toReversed()]
    .flatMap(({ cells }) => cells)
    .find((one): one is KnownCell => one.option === option.code && one.state === 'known');
  return cell === undefined || !isWeight(cell) ? null : cell;
}

function weightInSentence(scene: Scene, cell: WeightCell, doseSaid: boolean): Markup {
  const average = figure(weightInWords(scene, cell.value.averageKg), sourceOf(cell));
  const weight = scene.words.say('consent.talk.weight', {
    time: sayLength(scene, cell.lead.horizon),
    weight: doseSaid ? average : withDose(scene, average, cell),
  });
  const remarks = [
    soundnessInWords(scene, cell),
    sayNear(scene, cell),
    farFromMean(scene, cell),
    computedInWords(scene, cell),
    warningInWords(scene, cell),
  ];
  return joined(weight, ...remarks.filter((remark) => remark !== null));
}
