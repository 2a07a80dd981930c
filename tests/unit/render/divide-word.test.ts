import { describe, expect, it } from 'vitest';
import { divideWord, divisionsOf, softHyphen } from '../../../src/render/divide-word.ts';

function divided(word: string): string {
  const places = divisionsOf(word);
  return Array.from(word, (letter, index) => (places.includes(index) ? `-${letter}` : letter)).join('');
}

describe('divisionsOf', () => {
  it('stands before the consonants that begin a syllable, three letters from either end', () => {
    expect(divided('electrocardiogram')).toBe('elec-tro-car-dio-gram');
    expect(divided('Ultraschalluntersuchung')).toBe('Ultra-schallun-ter-su-chung');
    expect(divided('otorrinolaringólogo')).toBe('otorri-no-la-rin-gó-logo');
  });

  it('is never beside two like consonants, in a number or in a script that it does not know', () => {
    expect(divided('Villanelle')).toBe('Villa-nelle');
    expect(divided('20261124004172')).toBe('20261124004172');
    expect(divided('клиника')).toBe('клиника');
  });
});

describe('divideWord', () => {
  const widthOf = (text: string): number => text.length;

  it('takes as few parts as have room, as even as can be, each but the last with a soft hyphen', () => {
    const parts = divideWord('electrocardiogram', widthOf, 12);
    expect(parts).toEqual([`electro${softHyphen}`, 'cardiogram']);
    expect(divideWord('electrocardiogram', widthOf, 8)).toEqual([
      `elec${softHyphen}`,
      `trocar${softHyphen}`,
      'diogram',
    ]);
  });

  it('gives up at once on a long word without any room, and divides it where there is little', () => {
    const long = 'ananemesoroni'.repeat(30);
    for (const measure of [-20, 0, 1]) expect(divideWord(long, widthOf, measure)).toEqual([long]);
    const parts = divideWord(long, widthOf, 5);
    expect(parts.join('').replaceAll(softHyphen, '')).toBe(long);
    expect(Math.max(...parts.map(widthOf))).toBeLessThanOrEqual(5);
  });

  it('leaves a word whole that has room, and one that cannot be divided', () => {
    expect(divideWord('care', widthOf, 3)).toEqual(['care']);
    expect(divideWord('strengths', widthOf, 5)).toEqual(['strengths']);
  });
});
