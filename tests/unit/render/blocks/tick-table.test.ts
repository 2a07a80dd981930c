import { beforeAll, describe, expect, it } from 'vitest';
import { columnWidth } from '../../../../src/render/blocks/tick-table.tsx';
import { loadFonts, loadTypefaces } from '../../../../src/render/fonts.ts';
import { typefacesFor } from '../../../../src/render/shaping/typefaces.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import { smallTree } from '../../../helpers/small-tree.ts';

describe('columnWidth', () => {
  beforeAll(async () => {
    await loadFonts();
    await loadTypefaces(typefacesFor('个月年日'));
  });

  it('leaves room for the words of a row beside dates that Chinese writes in one piece', () => {
    const theme = themeOf(smallTree([], { paper: 'letter' }));
    const of = { least: 0, white: 0 };
    const whole = columnWidth('4月15日', theme, of) + columnWidth('2027年', theme, of);
    expect(columnWidth('3个月：2027年4月15日', theme, of)).toBeLessThan(whole * 0.75);
    expect(columnWidth('3个月：2027年4月15日', theme, of)).toBeGreaterThanOrEqual(
      columnWidth('4月15日', theme, of),
    );
  });
});
