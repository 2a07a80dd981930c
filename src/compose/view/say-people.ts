import { bmiFor } from '../../model/bmi-by-sex.ts';
import type { EvidenceRecord, Spread } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { joined, plainSeries } from './words.ts';

/** Who was measured beside what they had before: BMI, age, special groups. Says so where the study does not state it. */
export function peopleInWords(scene: Scene, record: EvidenceRecord): Markup {
  const { age, group, diabetes } = record.people;
  const bmi = bmiFor(record.people, scene.comparison.person.sex);
  return joined(
    bodyAndAge(scene, spreadInWords(scene, bmi), spreadInWords(scene, age)),
    ...(group === undefined
      ? []
      : [scene.words.say('sources.group', { group: scene.words.plain(`codes.groups.${group}`) })]),
    ...(diabetes === 'all' || diabetes === 'none' ? [scene.words.say(`sources.diabetes_${diabetes}`)] : []),
  );
}

function bodyAndAge(scene: Scene, bmi: string | null, age: string | null): Markup {
  const { words } = scene;
  if (bmi === null && age === null) return words.say('sources.nothing_stated');
  const unknown = words.plain('sources.not_stated');
  return joined(
    words.say('sources.bmi', { spread: bmi ?? unknown }),
    words.say('sources.age', { spread: age ?? unknown }),
  );
}

/** "45.9 on average, from 35 to 60"; null where nothing is stated. */
export function spreadInWords(scene: Scene, spread: Spread | undefined): string | null {
  const middle = spread?.mean ?? spread?.median;
  const parts = [
    ...(middle === undefined
      ? []
      : [scene.words.plain('sources.average', { value: toTenth(scene, middle) })]),
    ...limitsOf(scene, spread),
  ];
  return parts.length === 0 ? null : plainSeries(scene.words, 'items', parts);
}

function limitsOf(scene: Scene, spread: Spread | undefined): readonly string[] {
  const { words, format } = scene;
  const low = spread?.low === undefined ? null : toTenth(scene, spread.low);
  const high = spread?.high === undefined ? null : toTenth(scene, spread.high);
  if (low !== null && high !== null) return [format.range(low, high)];
  if (low !== null) return [words.plain('common.or_more', { low })];
  return high === null ? [] : [words.plain('common.or_less', { high })];
}

/** BMIs and ages to one decimal place at most: a second one tells a reader nothing. */
function toTenth({ format }: Scene, value: number): string {
  return format.number(value, Number.isInteger(Number(value.toFixed(1))) ? 0 : 1);
}
