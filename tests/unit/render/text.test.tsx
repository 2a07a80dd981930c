import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts, loadTypefaces } from '../../../src/render/fonts.ts';
import { childNodes, isText, textOf } from '../../../src/render/layout-node.ts';
import type { SetNode } from '../../../src/render/layout-node.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import { typefacesFor } from '../../../src/render/shaping/typefaces.ts';
import { firstBaseline } from '../../../src/render/theme.ts';
import { Lines, measureLines } from '../../../src/render/text.tsx';
import type { LinesProps } from '../../../src/render/text.tsx';

const prose = 'Most people who had a sleeve weighed between 180 and 232 lb after 5 years.';
const base: LinesProps = {
  runs: [{ text: prose, weight: 400 }],
  size: 13,
  lineHeight: 18,
  width: 170,
  setting: 'filled',
};

async function setLines(changes: Partial<LinesProps> = {}): Promise<SetNode> {
  const [[block] = []] = await setGalleys([
    { width: 492, elements: [<Lines key="a" {...base} {...changes} />] },
  ]);
  const [lines] = block === undefined ? [] : childNodes(block.node);
  if (lines === undefined) throw new Error('nothing was set');
  return lines;
}

/** All TEXT nodes below a node. */
function texts(node: SetNode): readonly SetNode[] {
  return node.type === 'TEXT'
    ? [node]
    : node.children.flatMap((child) => (isText(child) ? [] : texts(child)));
}

interface Typeset {
  readonly box: { readonly x: number };
  readonly xAdvance: number;
  readonly overflowRight: number;
}

function typeset(node: SetNode): readonly Typeset[] {
  return (node.lines ?? []) as unknown as readonly Typeset[];
}

describe('Lines', () => {
  beforeAll(() => loadFonts());

  it('makes one text node of one line each, at the line height given', async () => {
    const lines = await setLines();
    expect(lines.box).toMatchObject({ width: 170, height: 18 * lines.children.length });
    expect(texts(lines).map((text) => typeset(text).length)).toEqual(lines.children.map(() => 1));
    expect(texts(lines).map((text) => text.box.height)).toEqual(lines.children.map(() => 18));
  });

  it('ends every line but the last with a space, for those who hear or copy the text', async () => {
    const lines = texts(await setLines()).map(textOf);
    expect(lines.join('')).toBe(prose);
    expect(lines.map((line) => line.endsWith(' '))).toEqual([...lines.slice(1).map(() => true), false]);
  });

  it('keeps to a measure narrower than its box, and balances', async () => {
    const narrow = texts(await setLines({ width: 492, measure: 300, setting: 'balanced' }));
    const widths = narrow.map((text) => typeset(text)[0]?.xAdvance ?? 0);
    expect(narrow).toHaveLength(2);
    expect(Math.max(...widths)).toBeLessThan(300);
    expect(Math.abs((widths[0] ?? 0) - (widths[1] ?? 0))).toBeLessThan(60);
  });

  it('sets lines to the right edge and in the middle without a space beyond', async () => {
    for (const [align, share] of [
      ['right', 1],
      ['center', 0.5],
    ] as const) {
      const set = texts(await setLines({ align })).flatMap(typeset);
      expect(set.length).toBeGreaterThan(2);
      for (const { box, xAdvance } of set) expect(box.x).toBeCloseTo((170 - xAdvance) * share, 6);
    }
  });

  it.each([18, 21, 34])(
    'has one baseline for every script, with as much white above the letters as below: lines %d apart',
    async (lineHeight) => {
      await loadTypefaces(typefacesFor('वज़न 体重 وزن'));
      for (const text of ['118 kg', 'वज़न', '体重 118', 'وزن']) {
        const set = texts(await setLines({ lineHeight, runs: [{ text, weight: 400 }] })).flatMap(
          ({ lines }) => lines ?? [],
        );
        expect(set.length).toBeGreaterThan(0);
        for (const { ascent } of set)
          expect(ascent).toBeCloseTo(firstBaseline({ size: 13, lineHeight, weight: 400 }), 6);
      }
    },
  );

  it('gives each language of a line a text node of its own, tagged with it, side by side', async () => {
    const runs = [
      { text: 'Say ', weight: 400 },
      { text: 'más despacio', weight: 700, language: 'es' },
      { text: ' please', weight: 400 },
    ] as const;
    const [row] = childNodes(await setLines({ runs, width: 400 }));
    const pieces = row === undefined ? [] : childNodes(row);
    // The typesetter drops a space at the head of a node.
    expect(pieces.map(textOf)).toEqual(['Say ', 'más despacio ', 'please']);
    expect(pieces.map(({ props }) => props.sem)).toEqual([
      undefined,
      { tag: 'Span', language: 'es' },
      undefined,
    ]);
    expect(pieces[1]?.box.left).toBeCloseTo(pieces[0]?.box.width ?? 0, 3);
    expect(pieces[2]?.box.left).toBeCloseTo((pieces[0]?.box.width ?? 0) + (pieces[1]?.box.width ?? 0), 3);
  });

  it('sets the same text in the same way again, from memory', async () => {
    const first = texts(await setLines());
    const second = texts(await setLines());
    expect(second.map(({ lines }, index) => lines === first[index]?.lines)).toEqual(first.map(() => true));
    expect(texts(await setLines({ color: '#FFFFFF' })).map(typeset)).not.toEqual(first.map(typeset));
  });

  it('is measured beforehand as it is set', async () => {
    const set = texts(await setLines()).flatMap(typeset);
    const measured = measureLines(base);
    expect(measured.lines).toBe(set.length);
    expect(measured.width).toBeCloseTo(
      Math.max(...set.map(({ xAdvance, overflowRight }) => xAdvance - overflowRight)),
      6,
    );
  });
});
