import type { IndicationNote } from '../model/comparison.ts';
import type { Subject } from './subject.ts';

/** Where society advice on operations starts, kg/m² (2022 indications of two societies). */
const advised = 35;
const considered = 30;
const advisedAsian = 27.5;
const obesityAsian = 25;
/** Under this BMI a person weighs too little. */
const underweight = 18.5;

/** What the page must say about this person's BMI, age and pregnancy before any figure. */
export function noteThresholds(subject: Subject): readonly IndicationNote[] {
  const { person, bmi, operatedBefore } = subject;
  const notes: (IndicationNote | undefined)[] = [
    person.pregnantNow ? 'pregnant' : undefined,
    person.age < 18 ? 'adolescent' : undefined,
    bmi < underweight ? 'under-18-5' : undefined,
    operatedBefore ? (bmi < considered ? 'low-after-operation' : undefined) : noteFirst(subject),
  ];
  return notes.filter((note) => note !== undefined);
}

/** Indications are for people never operated on. */
function noteFirst({ person, bmi }: Subject): IndicationNote | undefined {
  if (bmi >= advised) return undefined;
  if (person.threshold === 'standard') return bmi >= considered ? 'under-35' : 'under-30';
  if (bmi >= advisedAsian) return 'asian-27-5';
  return bmi >= obesityAsian ? 'asian-25' : 'under-30';
}
