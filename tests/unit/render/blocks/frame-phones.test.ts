import { beforeAll, describe, expect, it } from 'vitest';

import type { FramePhone, WarningFrame } from '../../../../src/model/care-blocks.ts';
import { phonesHeight, phonesWidth } from '../../../../src/render/blocks/frame-phones.tsx';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import { smallTree } from '../../../helpers/small-tree.ts';

const theme = themeOf(smallTree([]));
const WIDE = '+44 (0)20 7946 0991 / 12';

function frameOf(phones: readonly FramePhone[]): WarningFrame {
  return { urgency: 'today', heading: 'Call us today', phones, items: [], origin: 'main.hbs:1' };
}

describe('numbers of a frame of signs', () => {
  beforeAll(() => loadFonts());

  it('leave a label the whole room once they stand below the heading', () => {
    const label = 'Ward of the clinic for digestion';
    const hours = 'Monday to Friday from 8 in the morning until 6 at night';
    const frame = frameOf([{ label, hours, number: '555-0107' }]);
    const below = phonesWidth(frame, { most: 400, theme, side: 'below' });
    expect(below).toBeGreaterThan(phonesWidth(frame, { most: 400, theme, side: 'beside' }));
    expect(phonesHeight(frame, below, theme)).toBeLessThan(3 * theme.type.small.lineHeight);
  });

  it('stand under labels that would be a column of single words before them', () => {
    const long = 'Nurses of the clinic for digestion, weight and food, of the second floor, by the stairs';
    const [narrow, wide] = [
      frameOf([{ label: long, number: WIDE }]),
      frameOf([{ label: long, number: '1' }]),
    ];
    const { small, phone } = theme.type;
    expect(phonesHeight(narrow, 400, theme)).toBe(2 * small.lineHeight + phone.lineHeight);
    expect(phonesHeight(wide, 400, theme)).toBeLessThan(2 * small.lineHeight + phone.lineHeight);
  });
});
