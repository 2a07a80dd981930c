import { describe, expect, it } from 'vitest';

import type { TextSpan } from '../../../../src/model/left-to-right.ts';
import { levelsOf, levelsOfLines, visualOrder } from '../../../../src/render/shaping/order-line.ts';
import type { ParagraphLine } from '../../../../src/render/shaping/order-line.ts';
import type { Direction } from '../../../../src/render/theme.ts';

/** The line as its characters stand from left to right; brackets are not mirrored here. */
function seen(line: string, direction: Direction, isolated: readonly TextSpan[] = []): string {
  return inOrder(line, levelsOf(line, direction, isolated));
}

function inOrder(line: string, levels: readonly number[]): string {
  const characters = Array.from(line, (text, index) => ({ text, level: levels[index] ?? 0 }));
  return visualOrder(characters)
    .map(({ text }) => text)
    .join('');
}

/** Lines of a paragraph from right to left, each as it stands from left to right. */
function seenLines(lines: readonly ParagraphLine[]): readonly string[] {
  const levels = levelsOfLines(lines, 'rtl');
  return lines.map(({ runs }, index) => inOrder(runs.map(({ text }) => text).join(''), levels[index] ?? []));
}

const line = (text: string, spaceAfter = true, language?: string): ParagraphLine => ({
  runs: [{ text, weight: 400, ...(language === undefined ? {} : { language }) }],
  spaceAfter,
});

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
    expect(seen(`من ${phrase}.`, 'rtl')).toBe(`.${phrase} ${reversed('من')}`);
  });

  it('leaves a date before a colon, and what stands in brackets, out of a phrase', () => {
    expect(seen('حتى 13 يناير 2028: No alcohol', 'rtl')).toBe(
      `No alcohol :2028 ${reversed('يناير')} 13 ${reversed('حتى')}`,
    );
    expect(seen('من 76.0 إلى 87.4 kg (60m.trial)', 'rtl')).toBe(
      `)60m.trial( 87.4 kg ${reversed('إلى')} 76.0 ${reversed('من')}`,
    );
  });

  it('leaves a number of the Arabic sentence before its full stop, out of the phrase behind it', () => {
    expect(seen('الدراسة 42. pubmed.org/38078870.', 'rtl')).toBe(
      `.pubmed.org/38078870 .42 ${reversed('الدراسة')}`,
    );
    expect(seen('من 30-day. لم', 'rtl')).toBe(`${reversed('لم')} .30-day ${reversed('من')}`);
  });

  it('ends a phrase at a full stop before a number that counts Arabic words', () => {
    expect(seen('الفئة C. 4 نقاط', 'rtl')).toBe(`${reversed('نقاط')} 4 .C ${reversed('الفئة')}`);
    expect(seen('من BMI 35. 12.5% من', 'rtl')).toBe(`${reversed('من')} 12.5% .BMI 35 ${reversed('من')}`);
  });

  it('keeps brackets open over Arabic commas around several phrases, each by itself', () => {
    const line = `من grubnik-2016.ewl (12m = 59.5%، 24m = 78.9%) من`;
    // The brackets are of the Arabic sentence, which draws each as its mirror image.
    expect(seen(line, 'rtl')).toBe(
      `${reversed('من')} )24m = 78.9% ،12m = 59.5%( grubnik-2016.ewl ${reversed('من')}`,
    );
  });

  it('keeps the minus that stands behind a mark of direction, as CLDR writes it in Arabic, before its number', () => {
    const bare = (text: string): string => text.replaceAll('\u200e', '');
    expect(bare(seen('من 60m = \u200e-11%، من', 'rtl'))).toBe(
      `${reversed('من')} ،60m = -11% ${reversed('من')}`,
    );
    expect(bare(seen('من \u200e-1% من', 'rtl'))).toBe(`${reversed('من')} -1% ${reversed('من')}`);
  });

  it('never mirrors a sign that stands by itself, as in a legend', () => {
    const levels = levelsOf('من ≤ في', 'rtl');
    expect(levels.map((level) => level % 2)).toEqual([1, 1, 1, 0, 1, 1, 1]);
  });

  it('turns a list of numbers round, each by itself', () => {
    expect(seen('1، 20، 300', 'rtl')).toBe('300 ،20 ،1');
  });

  it.each(['≤ 30', '≥\u00a05', '<1', '±2.5', '-0.4', '−3%'])(
    'never mirrors the sign of the number %s, nor takes it to its other side',
    (number) => {
      expect(seen(`من ${number} أو`, 'rtl')).toBe(`${reversed('أو')} ${number} ${reversed('من')}`);
    },
  );

  it('keeps a paragraph whole that is not Arabic at all, with its full stop at its own end', () => {
    expect(seen('Nurse line, weekdays (8 to 5).', 'rtl')).toBe('Nurse line, weekdays (8 to 5).');
    expect(seen('[Vote of 170 experts]. (2019). PubMed 31401070.', 'rtl')).toBe(
      '[Vote of 170 experts]. (2019). PubMed 31401070.',
    );
  });

  it('leaves a paragraph of numbers alone to the direction around it', () => {
    expect(seen('555-0142.', 'rtl')).toBe('.555-0142');
  });

  it('keeps a sentence of another language whole among Arabic words, with its full stop at its own end', () => {
    const english = 'No bubbles.';
    const text = `قال: ${english}`;
    expect(seen(text, 'rtl')).toBe(`.No bubbles :${reversed('قال')}`);
    expect(seen(text, 'rtl', [{ start: 5, end: text.length }])).toBe(`${english} :${reversed('قال')}`);
  });

  it('reads a citation as one phrase with the address after it, and an Arabic remark after both', () => {
    const title = 'Outcomes (Trial). (2025).';
    const text = `${title} PubMed 39821905. لم`;
    expect(seen(text, 'rtl', [{ start: 0, end: title.length }])).toBe(
      `${reversed('لم')} .${title} PubMed 39821905`,
    );
  });

  it('never parts the brackets of a phrase', () => {
    expect(seen('من (PCORI) summary أو', 'rtl')).toBe(`${reversed('أو')} (PCORI) summary ${reversed('من')}`);
    expect(seen('من f(x) أو', 'rtl')).toBe(`${reversed('أو')} f(x) ${reversed('من')}`);
  });

  it('leaves the marks of a phrase on their side where it goes on in the next line', () => {
    expect(seenLines([line('من sages.org/the-incidence-', false), line('of-ulcers. لم', false)])).toEqual([
      `sages.org/the-incidence- ${reversed('من')}`,
      `${reversed('لم')} .of-ulcers`,
    ]);
    expect(seenLines([line('من Surg Endosc 26(9);'), line('PubMed 22476829.', false)])).toEqual([
      `Surg Endosc 26(9); ${reversed('من')}`,
      '.PubMed 22476829',
    ]);
  });

  it('knows a part in another language again in the next line', () => {
    const [first, second] = seenLines([
      line('قال: '),
      line('The band has slipped.', true, 'en'),
      line('It must go.', false, 'en'),
    ]).slice(1);
    expect([first, second]).toEqual(['The band has slipped.', 'It must go.']);
  });

  it('turns an Arabic name in an English line round and leaves the line', () => {
    expect(seen('For ليلى today', 'ltr')).toBe(`For ${reversed('ليلى')} today`);
  });
});
