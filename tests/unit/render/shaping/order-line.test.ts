import { describe, expect, it } from 'vitest';

import { levelsOf, visualOrder } from '../../../../src/render/shaping/order-line.ts';
import type { Span } from '../../../../src/render/shaping/order-line.ts';
import type { Direction } from '../../../../src/render/theme.ts';

/** The line as its characters stand from left to right; brackets are not mirrored here. */
function seen(line: string, direction: Direction, isolated: readonly Span[] = []): string {
  const levels = levelsOf(line, direction, isolated);
  const characters = Array.from(line, (text, index) => ({ text, level: levels[index] ?? 0 }));
  return visualOrder(characters)
    .map(({ text }) => text)
    .join('');
}

const reversed = (text: string): string => Array.from(text).reverse().join('');

describe('the order of a line', () => {
  it('is as written where everything runs from left to right', () => {
    expect(seen('Call 555-0142.', 'ltr')).toBe('Call 555-0142.');
  });

  it('turns words from right to left round, but no number in them', () => {
    expect(seen('وزن 118.4', 'rtl')).toBe(`118.4 ${reversed('وزن')}`);
  });

  it.each(['555-0142', '+44\u00a020', '30–45', '25/11/2026', '1,000', '80%', '261 lb'])(
    'keeps %s together, read from left to right, after Arabic letters',
    (number) => {
      const tied = number.replace(' ', '\u00a0');
      expect(seen(`من ${tied} أو`, 'rtl')).toBe(`${reversed('أو')} ${tied} ${reversed('من')}`);
    },
  );

  it('sets the full stop after a number at the left end of the sentence', () => {
    expect(seen('اتصلي على 555-0142.', 'rtl').startsWith('.555-0142 ')).toBe(true);
  });

  it('keeps a Latin name as it is written', () => {
    expect(seen('وزن Ana Quenby الآن', 'rtl')).toContain('Ana Quenby');
  });

  it.each([
    '100.4 °F',
    'Monday to Friday, 8 to 5',
    '2010-2014-30d.nsqip',
    'QB-1041',
    'doi.org/10.1001/2012.jama.11164; PubMed 22990271',
    '≤ 30 d',
    'HbA1c 6.5%',
  ])('keeps the phrase %s in its order among Arabic words', (phrase) => {
    expect(seen(`من ${phrase} أو`, 'rtl')).toBe(`${reversed('أو')} ${phrase} ${reversed('من')}`);
    expect(seen(`${phrase}.`, 'rtl')).toBe(`.${phrase}`);
  });

  it('leaves a date before a colon, and what stands in brackets, out of a phrase', () => {
    expect(seen('حتى 13 يناير 2028: No alcohol', 'rtl')).toBe(
      `No alcohol :2028 ${reversed('يناير')} 13 ${reversed('حتى')}`,
    );
    expect(seen('من 76.0 إلى 87.4 kg (60m.trial)', 'rtl')).toBe(
      `)60m.trial( 87.4 kg ${reversed('إلى')} 76.0 ${reversed('من')}`,
    );
  });

  it('turns a list of numbers round, each by itself', () => {
    expect(seen('1، 20، 300', 'rtl')).toBe('300 ،20 ،1');
  });

  it('keeps a sentence of another language whole, with its full stop at its own end', () => {
    const english = 'No bubbles.';
    expect(seen(english, 'rtl')).toBe('.No bubbles');
    expect(seen(english, 'rtl', [{ start: 0, end: english.length }])).toBe(english);
  });

  it('turns an Arabic name in an English line round and leaves the line', () => {
    expect(seen('For ليلى today', 'ltr')).toBe(`For ${reversed('ليلى')} today`);
  });
});
