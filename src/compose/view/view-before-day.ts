import type { DatedRule } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import { aftercareStatement } from '../../model/statement.ts';
import type { Scene } from './scene.ts';
import { bold, joined, standingOn } from './words.ts';

/** What every person does before the day, whatever the treatment. */
const always = ['medicines', 'eating', 'help', 'ill'];

/**
 * What to do before the day, in steps: what the clinic asks of this person, by its date, else what a guideline asks and
 * nothing contradicts; then what holds for everybody. Without a day nothing can be dated, and a sentence says so.
 */
export function viewBeforeDay(scene: Scene): readonly Markup[] {
  const { words, aftercare } = scene;
  const general = always.map((key) => words.say(`operation.before.${key}`));
  if (aftercare === null) return [words.say('operation.before.later'), ...general];
  const dated = aftercare.before
    .toSorted((a, b) => (dayOf(a) < dayOf(b) ? -1 : 1))
    .flatMap((rule) => ruleInWords(scene, rule) ?? []);
  return [...dated, ...general];
}

/** What has no first day comes first. */
function dayOf({ starts }: DatedRule): string {
  return starts ?? '';
}

function ruleInWords(scene: Scene, rule: DatedRule): Markup | null {
  const text = rule.from === 'clinic' ? clinicWords(scene, rule) : guidelineWords(scene, rule);
  if (text === null) return null;
  return joined(...fromWhen(scene, rule), ...forWhom(scene, rule), text);
}

function clinicWords({ clinic, words }: Scene, { entry }: DatedRule): Markup | null {
  if (entry?.topic !== 'advice' || entry.index === null) return null;
  const line = clinic.protocol.advice[entry.option]?.[entry.index];
  return line === undefined ? null : words.free(line.what);
}

/** A guideline's rule is said in words of our own, for the subjects that have them. */
function guidelineWords({ words }: Scene, { about, facts }: DatedRule): Markup | null {
  const key = `operation.before.rule.${about ?? ''}`;
  return words.has(key) ? standingOn(facts.map(aftercareStatement), words.say(key)) : null;
}

function fromWhen({ words, format }: Scene, { starts }: DatedRule): readonly Markup[] {
  return starts === null ? [] : [bold(words.say('operation.before.from', { date: format.date(starts) }))];
}

/** For whom it is, where the case does not tell whether this person is one of them. */
function forWhom({ words }: Scene, { who }: DatedRule): readonly Markup[] {
  const key = `operation.before.who.${who}`;
  return words.has(key) ? [words.say(key)] : [];
}
