import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';

import { bmiBeside } from '../../../../src/compose/view/say-bmi.ts';
import type { Formatter } from '../../../../src/model/locale.ts';
import { realLocale } from '../../../helpers/compose-inputs.ts';

let format: Formatter;
beforeAll(async () => {
  ({ formatter: format } = await realLocale('en'));
});

function say(yours: number, ...others: readonly number[]): string {
  const said = bmiBeside(format, yours, others);
  return [said.yours, ...said.others].join(' | ');
}

describe('a BMI on the pages for patients', () => {
  it('is a whole number, and so are those beside it', () => {
    expect(say(44.02)).toBe('44');
    expect(say(44.02, 30, 39.9)).toBe('44 | 30 | 40');
    expect(say(41.4, 47.2)).toBe('41 | 47');
  });

  it('keeps a decimal place where the whole number would lift a person over a limit of advice', () => {
    expect([34.9, 29.6, 18.4, 49.97, 27.3].map((bmi) => say(bmi))).toEqual([
      '34.9',
      '29.6',
      '18',
      '50',
      '27',
    ]);
  });

  it('keeps them beside a number that would look like the person’s own, or change places with it', () => {
    expect(say(40.2, 30, 39.9)).toBe('40.2 | 30 | 39.9');
    expect(say(53.2, 35, 52.9)).toBe('53.2 | 35 | 52.9');
    expect(say(42.7, 43)).toBe('42.7 | 43');
  });

  it('never says of two BMIs that are not alike to a tenth that they are, nor which is higher the wrong way round', () => {
    const bmi = fc.integer({ min: 150, max: 800 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(bmi, bmi, (yours, other) => {
        const said = bmiBeside(format, yours, [other]);
        const [mine, theirs] = [Number(said.yours), Number(said.others[0])];
        expect(Math.sign(mine - theirs)).toBe(Math.sign(yours - other));
      }),
    );
  });
});
