import type { CautionHit } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { mayState, patientCautions } from './patient-cautions.ts';
import { emergencyFirst } from './say-emergency-first.ts';
import type { NamedOption, Scene } from './scene.ts';
import { withDuty } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { asMarkup, joined, sentence, standingOn } from './words.ts';

/** Whether a caution says for which signs to call at once. */
export function callsNow(scene: Pick<Scene, 'evidence'>, hit: CautionHit): boolean {
  return signsOf(scene, hit).length > 0;
}

/** The signs of a caution for which to call at once, and whom; none for most cautions. */
export function callNowLines(scene: Scene, hit: CautionHit): readonly Line[] {
  const { words, clinic } = scene;
  const signs = signsOf(scene, hit).map((sign) => sentence(words, words.say(`aftercare.signs.${sign}`)));
  if (signs.length === 0) return [];
  const { day, out_of_hours: night, emergency } = clinic.clinic.phones;
  return [
    withDuty(
      'phone',
      words.say('comparison.health.call_now', {
        signs: joined(...signs),
        first: emergencyFirst(scene, hit.options) ?? asMarkup(''),
        day,
        night,
      }),
    ),
    withDuty('phone', words.say('aftercare.no_answer', { emergency })),
  ];
}

/** Beside an option where the choices are listed: that it is not as harmless as its own words sound. */
export function choiceWarnings(scene: Scene, option: NamedOption): readonly Markup[] {
  return troubleLeft(scene, option).map((id) =>
    standingOn([cautionStatement(id)], scene.words.say(`cautions.${id}.choice`)),
  );
}

/** What an option says on other pages where it leaves a trouble that can turn bad; nothing for most options. */
export function onTroubleLeft(
  scene: Scene,
  option: NamedOption,
  key: 'undo.trouble_left' | 'undo.trouble_too' | 'asks.trouble_visits' | 'asks.trouble_for_life',
): readonly Markup[] {
  const ids = troubleLeft(scene, option);
  return ids.length === 0
    ? []
    : [standingOn(ids.map(cautionStatement), scene.words.say(`comparison.${key}`))];
}

/** The cautions on an option that say for which signs to call at once. */
function troubleLeft(scene: Scene, option: NamedOption): readonly string[] {
  return patientCautions(scene)
    .filter((hit) => hit.options.includes(option.code) && callsNow(scene, hit))
    .map(({ id }) => id);
}

function signsOf(scene: Pick<Scene, 'evidence'>, hit: CautionHit): readonly string[] {
  const row = scene.evidence.cautions.find(({ id }) => id === hit.id);
  return (mayState(scene, hit) ? row?.call_now : undefined) ?? [];
}
