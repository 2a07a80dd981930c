import { Text, View } from '@react-pdf/renderer';
import { beforeAll, describe, expect, it } from 'vitest';
import { fontFamily, loadFonts } from '../../../src/render/fonts.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import { Lines } from '../../../src/render/text.tsx';

const line = { size: 13, lineHeight: 18, setting: 'filled' } as const;

describe('setGalleys', () => {
  beforeAll(() => loadFonts());

  it('gives each element its height, one under another, never divided, however long the column', async () => {
    const elements = Array.from({ length: 60 }, (_, index) => (
      <View key={index} style={{ height: 40 + index }} />
    ));
    const [blocks = []] = await setGalleys([{ width: 492, elements }]);
    expect(blocks.map(({ height }) => height)).toEqual(elements.map((_, index) => 40 + index));
    expect(blocks.every(({ node }) => node.box.left === 0 && node.box.width === 492)).toBe(true);
  });

  it('sets several galleys in one pass and keeps them apart', async () => {
    const text = <Lines {...line} width={100} runs={[{ text: 'one two three four five', weight: 400 }]} />;
    const [wide = [], narrow = []] = await setGalleys([
      { width: 492, elements: [text] },
      { width: 100, elements: [<View key="a" style={{ height: 7 }} />, text] },
    ]);
    expect(wide.map(({ height }) => height)).toEqual([36]);
    expect(narrow.map(({ height }) => height)).toEqual([7, 36]);
    expect(await setGalleys([])).toEqual([]);
  });

  it('gives a thing at the foot of a page its place', async () => {
    const foot = <View style={{ position: 'absolute', bottom: 28, height: 39, width: 492 }} />;
    const [[block] = []] = await setGalleys([{ width: 612, height: 792, elements: [foot] }]);
    expect(block?.node.children[0]).toMatchObject({ box: { top: 792 - 28 - 39 } });
  });

  it('says when a word that nobody can divide is wider than its column', async () => {
    const word = (width: number) => (
      <Lines {...line} width={width} runs={[{ text: '2026112400417', weight: 700 }]} />
    );
    const [blocks = []] = await setGalleys([
      { width: 492, elements: [<View key="a">{word(40)}</View>, word(200)] },
    ]);
    expect(blocks.map(({ overruns }) => overruns)).toEqual([true, false]);
  });

  it('refuses text in a face that is not embedded', async () => {
    const bare = <Text style={{ fontSize: 13 }}>text</Text>;
    await expect(setGalleys([{ width: 492, elements: [bare] }])).rejects.toThrow(/not embedded/);
    const strange = <Text style={{ fontFamily, fontSize: 13 }}>体</Text>;
    await expect(setGalleys([{ width: 492, elements: [strange] }])).rejects.toThrow(/not embedded/);
  });
});
