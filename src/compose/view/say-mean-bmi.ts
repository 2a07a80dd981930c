import { bmiFor } from '../../model/bmi-by-sex.ts';
import type { KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { differsByBmi, sayOtherPeople } from './say-reason.ts';
import type { Scene } from './scene.ts';

/**
 * That most people of a figure were heavier or lighter: their BMI is known as mean and SD, which takes in this person
 * within two SD, and the mean is more than one SD away. Null else, and where another difference in BMI is said already.
 */
export function farFromMean(scene: Scene, cell: KnownCell): Markup | null {
  const people = scene.records.get(cell.lead.record)?.people;
  if (people === undefined || cell.lead.bmiBasis !== 'mean-sd' || differsByBmi(cell)) return null;
  const { bmi: yours, sex } = scene.comparison.person;
  const { mean, sd } = bmiFor(people, sex) ?? {};
  if (mean === undefined || sd === undefined || Math.abs(yours - mean) <= sd) return null;
  return sayOtherPeople(scene, { code: 'bmi-mean-only', mean, yours });
}
