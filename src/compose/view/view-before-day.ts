import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { ruleInWords } from './view-rules.ts';

/** What every person does before the day, whatever the treatment: usual practice, without a figure. */
const always = ['medicines', 'eating', 'help'];

/**
 * What to do before the day, in steps: what the clinic, else a guideline, asks of this person, in the order of days; then
 * what holds for everybody. Without a day nothing can be dated, and a sentence says so.
 */
export function viewBeforeDay(scene: Scene): readonly Markup[] {
  const { words, aftercare } = scene;
  const ill = scene.case.patient.sex === 'male' ? 'ill' : 'ill_or_pregnant';
  const general = [...always, ill].map((key) => words.say(`operation.before.${key}`));
  if (aftercare === null) return [words.say('operation.before.later'), ...general];
  const dated = aftercare.before
    .toSorted((a, b) => ((a.starts ?? '') < (b.starts ?? '') ? -1 : 1))
    .map((rule) => ruleInWords(scene, rule));
  return [...dated, ...general];
}
