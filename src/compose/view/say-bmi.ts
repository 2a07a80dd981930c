import type { Formatter } from '../../model/locale.ts';
import type { Scene } from './scene.ts';

/** BMIs from which advice is another: WHO classes, those for Asian people, and those of approvals and guidelines. */
const limits = [18.5, 20, 25, 27, 27.5, 30, 35, 40, 50, 60];

/** The person's own BMI: a whole number, unless that would put them on the other side of a limit. */
export function ownBmi({ comparison, format }: Scene): string {
  return bmiBeside(format, comparison.person.bmi, []).yours;
}

interface BmiWords {
  readonly yours: string;
  readonly others: readonly string[];
}

/**
 * A person's BMI beside those of other people: whole numbers, as long as they tell who is above whom as the exact ones
 * do. Else the person's has one decimal place, and so has every other that is not whole.
 */
export function bmiBeside(format: Formatter, yours: number, others: readonly number[]): BmiWords {
  const whole = Math.round(yours);
  // As a scale shows it: 26.99 is 27.0, and so is 27.
  const tenth = Math.round(yours * 10) / 10;
  const sameSide = limits.every((limit) => whole >= limit === tenth >= limit);
  const sameOrder = others.every(
    (other) => Math.sign(whole - Math.round(other)) === Math.sign(tenth - other),
  );
  if (sameSide && sameOrder)
    return {
      yours: format.number(whole),
      others: others.map((other) => format.number(Math.round(other))),
    };
  return {
    yours: format.number(yours, 1),
    others: others.map((other) => format.number(other, Number.isInteger(other) ? 0 : 1)),
  };
}
