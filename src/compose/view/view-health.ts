import type { CautionHit, IndicationNote } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { severeForms } from '../../model/severe-forms.ts';
import { theCase } from '../../model/statement.ts';
import { noteStatements } from './note-statements.ts';
import { cautionText, patientCautions } from './patient-cautions.ts';
import { ownBmi } from './say-bmi.ts';
import { callNowLines, callsNow } from './say-call-now.ts';
import type { Scene } from './scene.ts';
import { optionList } from './scene.ts';
import { group, list, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineShape, withDuty } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { isProcedure } from './view-people.ts';
import { asMarkup, bold, joined, runIn, standingOn } from './words.ts';

/** One call-out, or none; it may go on over pages, from point to point. */
export const healthShape = list(group({ heading: text, lines: list(lineShape) }));
export type HealthView = Viewed<typeof healthShape>;

/** What this person's own health means for the choices: notes on thresholds, then every caution the case triggers. */
export function viewHealth(scene: Scene): HealthView {
  const notes = scene.comparison.notes.map((note) => withDuty('caution', noteInWords(scene, note)));
  const lines = [...notes, ...aboutOnlyOption(scene), ...cautionLines(scene), ...withoutWarning(scene)];
  return lines.length === 0 ? [] : [{ heading: scene.words.plain('comparison.health.heading'), lines }];
}

/**
 * Cautions with the same cause stand together, its sentence once and in bold: "You have reflux. For a sleeve: …"; those
 * with a part of the cause of another stand with that one, so that nothing the person has is said twice.
 */
function cautionLines(scene: Scene): readonly Line[] {
  const hits = mostPressingFirst(scene, patientCautions(scene));
  const causes = new Map<string, CautionHit[]>();
  for (const hit of hits) {
    const own = triggersInWords(scene, hit).markup;
    const cause = own === '' ? own : triggersInWords(scene, widestCause(hit, hits)).markup;
    causes.set(cause, [...(causes.get(cause) ?? []), hit]);
  }
  return [...causes].flatMap(([cause, hits]) =>
    hits.flatMap((hit, index) => {
      const said = cautionText(scene, hit);
      const text = saysOptionOnce(scene) ? said : runIn(scene.words, aboutOptions(scene, hit), said);
      const lead = standingOn([theCase], bold({ markup: cause }));
      return [withDuty('caution', index === 0 ? joined(lead, text) : text), ...callNowLines(scene, hit)];
    }),
  );
}

/**
 * Illnesses of the case that no caution speaks of, once for all: silence would read as "makes no difference". What the
 * clinic struck was looked at.
 */
function withoutWarning(scene: Scene): readonly Line[] {
  const { comparison, words, format, options } = scene;
  // Pages about one option say what was found on it; the comparison before them has said this.
  if (options.length === 1) return [];
  const triggers = new Set(comparison.cautions.flatMap((hit) => hit.triggers));
  const isSaid = (code: string): boolean =>
    triggers.has(`condition:${code}`) ||
    severeForms.some(({ mild, severe }) => mild === code && triggers.has(`condition:${severe}`));
  const names = comparison.person.conditions
    .filter((code) => !isSaid(code))
    .map((code) => words.plain(`codes.conditions.${code}`));
  if (names.length === 0) return [];
  const conditions = format.list(names, 'and');
  return [
    withDuty('caution', standingOn([theCase], words.say('comparison.health.no_warning', { conditions }))),
  ];
}

/** What somebody may have to call about at once does not stand under what can wait for the visit. */
function mostPressingFirst(scene: Scene, hits: readonly CautionHit[]): readonly CautionHit[] {
  return [...hits.filter((hit) => callsNow(scene, hit)), ...hits.filter((hit) => !callsNow(scene, hit))];
}

/** Of the cautions whose cause holds all that called up this one, the first with the most; often itself. */
function widestCause(hit: CautionHit, all: readonly CautionHit[]): CautionHit {
  return all
    .filter(({ triggers }) => hit.triggers.every((trigger) => triggers.includes(trigger)))
    .reduce((widest, one) => (one.triggers.length > widest.triggers.length ? one : widest));
}

/** Pages about one procedure say once what their warnings are about. A medicine is the subject of its own sentences. */
function saysOptionOnce(scene: Scene): boolean {
  const [only, ...others] = scene.options;
  return only !== undefined && others.length === 0 && isProcedure(only) && patientCautions(scene).length > 1;
}

function aboutOnlyOption(scene: Scene): readonly Line[] {
  const [only] = scene.options;
  if (only === undefined || !saysOptionOnce(scene)) return [];
  return [body(scene.words.say('comparison.health.about_sole', { option: only.inText }))];
}

/** "For a sleeve and a gastric bypass:" */
export function aboutOptions(scene: Scene, hit: CautionHit): Markup {
  return scene.words.say('comparison.health.for_options', { options: optionList(scene, hit.options, 'and') });
}

function noteInWords(scene: Scene, note: IndicationNote): Markup {
  const words = scene.words.say(`comparison.notes.${note}`, { bmi: ownBmi(scene) });
  return standingOn(noteStatements[note], words);
}

/** What in the case called the caution up, as sentences: "You have reflux." */
export function triggersInWords(scene: Scene, hit: CautionHit): Markup {
  return joined(...hit.triggers.map((trigger) => triggerInWords(scene, trigger)));
}

function triggerInWords(scene: Scene, trigger: string): Markup {
  const [kind = '', code = ''] = trigger.split(':');
  const group = { condition: 'conditions', medicine: 'medicines', history: 'history' }[kind];
  if (group !== undefined) {
    return scene.words.say(`comparison.health.you.${kind}`, {
      what: scene.words.plain(`codes.${group}.${code}`),
    });
  }
  const key = `codes.triggers.${code === '' ? kind : `${kind}-${code}`}`;
  return scene.words.has(key) ? scene.words.say(key) : asMarkup('');
}
