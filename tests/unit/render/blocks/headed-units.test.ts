import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, DocumentTree } from '../../../../src/model/document.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import type { Unit } from '../../../../src/render/unit.ts';
import { para, topic } from '../../../helpers/sample-documents.ts';
import { textBoxes } from '../../../helpers/set-boxes.ts';
import { smallTree } from '../../../helpers/small-tree.ts';

const origin = 'sample.hbs:1';

beforeAll(async () => {
  await loadFonts();
});

function unitsOf(blocks: readonly Block[], edition?: DocumentTree['edition']): readonly Unit[] {
  return blockUnits(smallTree(blocks, edition === undefined ? {} : { edition }));
}

const heading = (level: 1 | 2 | 3, text: string): Block => ({ type: 'heading', level, text, origin });
const asked: Block = { type: 'write-in', prompt: para('What?'), lines: 1, box: false, origin };
const forLife: Block = {
  type: 'strip',
  layout: 'text',
  rows: ['Sleeve', 'Bypass'].map((name) => ({ name, words: [para('Vitamins.')], origin })),
  origin,
};

/** Words of what is repeated above the last unit, line by line, and its height. */
async function repeatedLast(blocks: readonly Block[]): Promise<{ lines: readonly string[]; height: number }> {
  const continuation = unitsOf(blocks).at(-1)?.continuation;
  if (continuation === undefined) throw new Error('nothing is repeated');
  const [set = []] = await setGalleys([{ width: 492, elements: [continuation] }]);
  const [block] = set;
  if (block === undefined) throw new Error('nothing is set');
  return { lines: textBoxes(block.node).map(({ text }) => text.trim()), height: block.height };
}

describe('what is repeated above a block under a small heading', () => {
  it('is the question of its topic too, so that nobody asks what “For life” is about', async () => {
    const blocks = [topic('What does it ask of me?', [], [para('Visits.'), heading(3, 'For life'), forLife])];
    const { lines, height } = await repeatedLast(blocks);
    expect(lines.join(' ')).toMatch(/^What does it ask of me\? ?\(?continued\)? For life$/);
    // 2.5 of rule, 9, a line of 24, 4, a line of 19 and 6 below it.
    expect(height).toBeCloseTo(64.5);
  });

  it('is the larger heading above it, but not one that another has followed, nor the title of the page', async () => {
    const under = async (...above: readonly Block[]): Promise<string> =>
      (await repeatedLast([...above, heading(3, 'My health'), asked, asked])).lines.join(' ');
    expect(await under(heading(2, 'First?'), asked, heading(2, 'Then?'))).toMatch(/^Then\? .*My health$/);
    expect(await under(heading(1, 'Questions'))).toMatch(/^My health .*continued/);
    expect(await under(heading(2, 'First?'), heading(1, 'Questions'))).toMatch(/^My health .*continued/);
  });
});

describe('the key that stands over its pictures in large print', () => {
  const key: Block = {
    type: 'key',
    heading: 'How to read',
    items: [{ mark: 'average', words: 'a' }],
    origin,
  };

  it('is kept with the head of the topic and with the first picture, not alone at the foot of a page', () => {
    const bars = { ...forLife, layout: 'range' } as Block;
    const units = unitsOf([topic('How much?', [], [key, bars])], 'large-print');
    expect(units.map((unit) => unit.keepWithNext)).toEqual([true, true, false, false]);
  });
});

describe('what stands under one small heading', () => {
  const topicsOf = (...blocks: Block[]): readonly unknown[] => unitsOf(blocks).map((unit) => unit.topic);

  it('is one topic with it, which is not divided above room for the rest of it', () => {
    const blocks = [
      heading(1, 'Questions'),
      para('Ask.'),
      heading(3, 'Choices'),
      asked,
      asked,
      heading(3, 'Health'),
      asked,
    ];
    expect(topicsOf(...blocks)).toEqual([undefined, undefined, '2', '2', '2', '5', '5']);
  });

  it('ends where a larger heading stands, under which a table may be long', () => {
    expect(topicsOf(heading(3, 'Choices'), asked, heading(2, 'Set aside'), asked)).toEqual([
      '0',
      '0',
      undefined,
      undefined,
    ]);
  });

  it('ends where a topic begins, and makes no topics within one', () => {
    const inside = topic('What?', [], [para('Visits.'), heading(3, 'For life'), forLife]);
    expect(topicsOf(heading(3, 'Choices'), asked, inside, asked)).toEqual([
      '0',
      '0',
      ...Array<string>(5).fill('2'),
      undefined,
    ]);
  });
});

describe('notes under a table', () => {
  const notes: Block = {
    type: 'list',
    ordered: true,
    items: [[para('One.', 'small')], [para('Two.', 'small')]],
    origin,
  };
  const explains = (edition?: DocumentTree['edition']): readonly unknown[] =>
    unitsOf([topic('Which?', [], [forLife, notes])], edition).map((unit) => unit.explains ?? false);

  it('say that they explain it, in each edition', () => {
    expect([explains(), explains('large-print')]).toEqual(Array(2).fill([false, false, false, true, true]));
  });
});

describe('a call-out of a study', () => {
  it('may be divided in large print, where it takes most of a page, and nowhere else', () => {
    const body = Array.from({ length: 6 }, () => para('a'));
    const divisible = (kind: 'study' | 'health', edition?: DocumentTree['edition']): readonly unknown[] => [
      ...new Set(
        unitsOf([{ type: 'callout', kind, heading: 'Under study', body, origin }], edition).map(
          (unit) => unit.divisible,
        ),
      ),
    ];
    expect([
      divisible('study'),
      divisible('study', 'large-print'),
      divisible('health', 'large-print'),
    ]).toEqual([[undefined], [true], [true]]);
  });
});

describe('numbers to call', () => {
  it('are never divided between pages, as other rows of words are where they are as many', () => {
    const rowsOf = (duty: 'phone' | undefined): Block => ({
      type: 'strip',
      layout: 'text',
      rows: Array.from({ length: 4 }, () => ({
        name: 'Nurse line',
        words: [{ ...para('555-0129', 'number'), ...(duty === undefined ? {} : { duty }) }],
        origin,
      })),
      origin,
    });
    const divisible = (block: Block): readonly unknown[] => unitsOf([block]).map((unit) => unit.divisible);
    expect(divisible(rowsOf(undefined))).toEqual(Array(4).fill(true));
    expect(divisible(rowsOf('phone'))).toEqual(Array(4).fill(undefined));
  });
});
