import { beforeAll, expect, it } from 'vitest';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { paragraphUnits } from '../../../../src/render/blocks/prose.tsx';
import { tableUnits } from '../../../../src/render/blocks/table.tsx';
import { isText, textOf } from '../../../../src/render/layout-node.ts';
import type { SetNode } from '../../../../src/render/layout-node.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import type { Block, Inline, Paragraph, Table } from '../../../../src/model/document.ts';
import { smallTree } from '../../../helpers/small-tree.ts';
import { structureOf } from '../../../helpers/unit-nodes.ts';

beforeAll(() => loadFonts());

const origin = 'here:1';
const paragraph = (...inlines: readonly Inline[]): Paragraph => ({
  type: 'paragraph',
  role: 'body',
  inlines,
  origin,
});
const plain = (value: string): Inline => ({ type: 'text', value });
const english = 'For this option no source was read. For this option no source was read. For this option.';

/** Lines that were set of each text node below a node. */
function linesSet(node: SetNode): readonly (readonly [text: string, lines: number])[] {
  if (node.type === 'TEXT') return [[textOf(node), node.lines?.length ?? 0]];
  return node.children.flatMap((child) => (isText(child) ? [] : linesSet(child)));
}

it('a line of two languages in a table is set, all of it: a rounding error of its height leaves none out', async () => {
  const words = paragraph(plain('Falta. '), { type: 'text', value: english, language: 'en' }, plain(' Fin.'));
  const table: Table = {
    type: 'table',
    layout: 'dense',
    origin,
    columns: [
      { label: 'a', width: 27 },
      { label: 'b', width: 9 },
      { label: 'c', width: 64 },
    ],
    rows: [{ origin, cells: [[paragraph(plain('a'))], [paragraph(plain('b'))], [words]] }],
  };
  const theme = themeOf({ ...smallTree([]), audience: 'clinician', language: 'es' });
  const [, row] = tableUnits(table, { theme, key: 't', continued: '', headingTag: () => 'H2' });
  const [[block] = []] = await setGalleys([
    { width: theme.width, elements: row === undefined ? [] : [row.element] },
  ]);
  const set = block === undefined ? [] : linesSet(block.node);
  expect(set.map(([text]) => text).join('')).toBe(`abFalta. ${english} Fin.`);
  expect(set.map(([, lines]) => lines)).toEqual(set.map(() => 1));
});

/** Distance of the leftmost text of a set node from its left edge, in points. */
function leftEdge(node: SetNode): number {
  if (node.type === 'TEXT') return 0;
  const inner = node.children.filter((child): child is SetNode => !isText(child));
  return Math.min(...inner.map((child) => child.box.left + leftEdge(child)));
}

it('a heading in another language says which it is, and no other does', () => {
  const blocks: readonly Block[] = [
    { type: 'heading', level: 1, text: 'Ayuda', origin },
    { type: 'heading', level: 2, text: 'English', language: 'en', origin },
    { type: 'heading', level: 3, text: 'Vietnamese', language: 'en', origin },
  ];
  const { children } = structureOf(blockUnits(smallTree(blocks)));
  expect(children.map(({ sem }) => [sem.tag, sem.language])).toEqual([
    ['H1', undefined],
    ['H2', 'en'],
    ['H3', 'en'],
  ]);
});

it('a whole paragraph in another language begins at its own side of the page, other Latin words do not', async () => {
  const theme = themeOf({
    audience: 'patient',
    direction: 'rtl',
    language: 'ar',
    blocks: [],
  } as unknown as Parameters<typeof themeOf>[0]);
  const place = { theme, key: 'p', continued: '', headingTag: () => 'H2' as const };
  const marked: Inline = { type: 'text', value: 'Call us.', language: 'en' };
  const elements = [paragraph(marked), paragraph(plain('Call us.'))].flatMap((block) =>
    paragraphUnits({ ...block, type: 'paragraph' }, place).map(({ element }) => element),
  );
  const [blocks = []] = await setGalleys([{ width: theme.width, elements }]);
  const [own = -1, other = -1] = blocks.map(({ node }) => leftEdge(node));
  expect(own).toBeCloseTo(0, 3);
  expect(other).toBeGreaterThan(theme.width - 60);
});
