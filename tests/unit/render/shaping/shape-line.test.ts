import { beforeAll, describe, expect, it } from 'vitest';

import { setRuns } from '../../../../src/render/set-runs.ts';
import { shapeLine } from '../../../../src/render/shaping/shape-line.ts';
import { isPlain } from '../../../../src/render/shaping/split-text.ts';
import { loadSampleFonts, scriptSamples } from '../../../helpers/script-samples.tsx';

const size = 13;

describe('a shaped line', () => {
  beforeAll(loadSampleFonts);

  it.each(scriptSamples)('is as wide as its words and spaces together: $language', ({ text, direction }) => {
    // Latin and Cyrillic words are measured by the typesetter, whose kerning differs a little.
    const tolerance = isPlain(text) ? 1 : 1e-6;
    for (const line of setRuns([{ text, weight: 400 }], { size, measure: 420, setting: 'filled' })) {
      const width = shapeLine(line.runs, size, direction).reduce((sum, part) => sum + part.width, 0);
      expect(Math.abs(width - line.width)).toBeLessThan(tolerance);
      expect(line.width).toBeLessThanOrEqual(420);
    }
  });

  it('is measured as it is set where it begins with a mark that two typefaces have', () => {
    const runs = [
      { text: '«سجل إحصائي»:', weight: 700 },
      { text: ' سجل إحصائي يعد أشخاصًا من مستشفيات كثيرة.', weight: 400 },
    ] as const;
    for (let measure = 300; measure < 420; measure += 6) {
      const [line] = setRuns(runs, { size: 18, measure, setting: 'filled' });
      const set = shapeLine(line?.runs ?? [], 18, 'rtl').reduce((sum, part) => sum + part.width, 0);
      expect(line?.width).toBeCloseTo(set, 6);
      expect(set).toBeLessThanOrEqual(measure + 0.001);
    }
  });

  it.each(scriptSamples)(
    'leaves no gap and no overlap between its parts: $language',
    ({ text, direction }) => {
      const parts = [...shapeLine([{ text, weight: 400 }], size, direction)].sort((a, b) => a.left - b.left);
      let edge = 0;
      for (const { left, width } of parts) {
        expect(left).toBeCloseTo(edge, 6);
        edge = left + width;
      }
    },
  );

  it.each(scriptSamples)(
    'has its parts in the order in which they are read: $language',
    ({ text, direction }) => {
      const parts = shapeLine([{ text, weight: 400 }], size, direction);
      expect(parts.map((part) => part.text).join('')).toBe(text);
    },
  );

  it('begins at the right where it is read from right to left', () => {
    const [first, ...others] = shapeLine([{ text: 'وزن الآن 118 كجم', weight: 400 }], size, 'rtl');
    expect(others.every(({ left }) => left < (first?.left ?? 0))).toBe(true);
  });

  it('joins Arabic letters: one has another glyph within a word than alone', () => {
    const idsOf = (text: string): readonly number[] =>
      shapeLine([{ text, weight: 400 }], size, 'rtl').flatMap(({ glyphs }) => glyphs.map(({ id }) => id.id));
    const [alone = -1] = idsOf('ع');
    expect(idsOf('معدة')).toHaveLength(4);
    expect(idsOf('معدة')).not.toContain(alone);
  });

  it('takes bold words in their own weight', () => {
    const [regular, bold] = shapeLine(
      [
        { text: '胃', weight: 400 },
        { text: '胃', weight: 700 },
      ],
      size,
      'ltr',
    );
    expect([regular?.weight, bold?.weight]).toEqual([400, 700]);
    expect(regular?.face).not.toBe(bold?.face);
  });

  it('shows the hyphen of a divided word, and has it read as a soft one', () => {
    const glyphsOf = (text: string) =>
      shapeLine([{ text, weight: 400 }], size, 'rtl').flatMap(({ glyphs }) => glyphs);
    const [soft, hyphen] = [glyphsOf('من gastro\u00ad').at(-1), glyphsOf('من gastro-').at(-1)];
    expect(soft?.id.id).toBe(hyphen?.id.id);
    expect(soft?.codePoints).toEqual([0xad]);
  });

  it.each(['कि', 'सर्जन', 'हिस्सा', 'स्थिति', 'कर्मी', 'में'])(
    'has no glyph that is read as nothing in the Hindi word %s, and is read letter by letter',
    (word) => {
      const glyphs = shapeLine([{ text: word, weight: 400 }], size, 'ltr').flatMap((part) => part.glyphs);
      const read = glyphs.map(({ id }) => id.text).join('');
      expect(read).toBe(word);
    },
  );
});
