import { beforeAll, describe, expect, it } from 'vitest';
import { withHeadroom } from '../../../../src/pictures/line-labels.ts';
import { placeWeight, smallLine } from '../../../../src/pictures/weight-line.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import { weightLine } from '../../../helpers/sample-documents.ts';
import { textBoxes } from '../../../helpers/set-boxes.ts';
import { smallTree } from '../../../helpers/small-tree.ts';

beforeAll(async () => {
  await loadFonts();
});

describe('values beside a weight line', () => {
  it.each([
    ['en', 'ltr'],
    ['ar', 'rtl'],
    ['zh-Hans', 'ltr'],
    ['hi', 'ltr'],
  ] as const)(
    'stand level with their lines of the grid in %s, whose lines of words are higher',
    async (...at) => {
      const [language, direction] = at;
      const values = [460, 440, 420, 400, 380];
      const valueTicks = values.map((value, index) => ({ at: 200 - 10 * index, label: String(value) }));
      const line = weightLine('A', { min: 150, max: 200, points: [], valueTicks });
      const block = { type: 'line-board', lines: [line, line], origin: 'sample.hbs:1' } as const;
      const tree = smallTree([block], { paper: 'letter', language, direction });
      const elements = blockUnits(tree).map(({ element }) => element);
      const [blocks = []] = await setGalleys([{ width: 492, elements }]);
      const boxes = blocks.flatMap(({ node }) => textBoxes(node));
      const centres = values.map((value) => {
        const box = boxes.find(({ text }) => text.trim() === String(value));
        return (box?.top ?? Number.NaN) + (box?.height ?? 0) / 2;
      });
      const sizes = withHeadroom(smallLine, themeOf(tree).type.labelStrong.lineHeight);
      const [first = 0] = centres;
      const [top = 0, ...rest] = valueTicks.map((tick) => placeWeight(line, sizes, tick.at));
      rest.forEach((place, index) => {
        expect((centres[index + 1] ?? Number.NaN) - first).toBeCloseTo(place - top, 0);
      });
    },
  );
});
