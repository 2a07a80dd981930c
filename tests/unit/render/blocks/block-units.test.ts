import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, Paragraph, StripRow, TableRow } from '../../../../src/model/document.ts';
import { labelText } from '../../../../src/model/text-piece.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { loadFonts, loadTypefaces } from '../../../../src/render/fonts.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import type { SetNode } from '../../../../src/render/layout-node.ts';
import { typefacesFor } from '../../../../src/render/shaping/typefaces.ts';
import { palette } from '../../../../src/render/theme.ts';
import type { Unit } from '../../../../src/render/unit.ts';
import {
  inlines,
  para,
  peopleRow,
  rangeRows,
  sampleAxis,
  sampleTrees,
  topic,
  weightLine,
  whiskerRow,
} from '../../../helpers/sample-documents.ts';
import { textBoxes } from '../../../helpers/set-boxes.ts';
import { smallTree } from '../../../helpers/small-tree.ts';
import { elementsOf, nodesOf, structureOf } from '../../../helpers/unit-nodes.ts';

const origin = 'sample.hbs:1';

beforeAll(async () => {
  await loadFonts();
});

function unitsOf(...blocks: Block[]): readonly Unit[] {
  return blockUnits(smallTree(blocks, { paper: 'letter' }));
}

async function setUnits(units: readonly Unit[], width = 492) {
  const elements = units.flatMap(({ element, continuation }) =>
    continuation === undefined ? [element] : [element, continuation],
  );
  const [blocks = []] = await setGalleys([{ width, elements }]);
  return blocks;
}

function rows(count: number): StripRow[] {
  const all = [...rangeRows, whiskerRow, ...rangeRows];
  return all.slice(0, count);
}

function wordsOf(node: SetNode): string {
  return textBoxes(node)
    .map(({ text }) => text)
    .join(' ')
    .replace(/[()\s]+/g, ' ')
    .trim();
}

const rangeStrip = (count: number): Block => ({
  type: 'strip',
  layout: 'range',
  axis: sampleAxis,
  rows: rows(count),
  origin,
});
const key: Block = {
  type: 'key',
  heading: 'How to read',
  items: [{ mark: 'today', words: 'Your weight today' }],
  origin,
};

describe('units of a topic with a strip', () => {
  const units = () =>
    unitsOf(topic('How much?', ['Worked out for you.'], [rangeStrip(5), key, para('Measured in people.')]));

  it('are the head, the axis, one a row, the second axis, the key and the note', () => {
    expect(units().map((unit) => unit.key)).toEqual([
      '0.head',
      '0.0.axis',
      '0.0.row.0',
      '0.0.row.1',
      '0.0.row.2',
      '0.0.row.3',
      '0.0.row.4',
      '0.0.second-axis',
      '0.1',
      '0.2',
    ]);
  });

  it('keep head, axis and two rows together, and the last two rows with axis, key and note', () => {
    const kept = units().map((unit) => unit.keepWithNext || unit.keepsRow === true);
    expect(kept.slice(0, 3)).toEqual([true, true, true]);
    expect(kept.slice(3, 5)).toEqual([false, false]);
    expect(kept.slice(5)).toEqual([true, true, true, true, false]);
  });

  it('are one group, so that a strip that fits a page stays whole with its key', () => {
    expect(new Set(units().map((unit) => unit.group))).toEqual(new Set(['0.0']));
  });

  it('may close up a little between the rows, and the pale column runs on over that', async () => {
    const all = units();
    expect(all.map((unit) => unit.gapBefore).slice(1, 8)).toEqual([8, 0, 3, 3, 3, 3, 0]);
    const rowUnits = all.filter((unit) => unit.key.includes('.row.'));
    const bare = ({ key: name, element }: Unit): Unit => ({
      key: name,
      element,
      gapBefore: 0,
      keepWithNext: false,
    });
    const set = await setUnits(rowUnits.map(bare));
    const reach = set.map(({ node, height }) =>
      nodesOf([node], 'VIEW').flatMap(({ style, box }) =>
        style['backgroundColor'] === palette.pale ? [[box.top, (box.height ?? 0) - height]] : [],
      ),
    );
    expect(reach).toEqual([[[0, 3.5]], [[0, 3.5]], [[0, 3.5]], [[0, 3.5]], [[0, 0]]]);
  });

  it('repeat heading and axis above every row, and the heading above all else but the head and the axis', async () => {
    const repeated = units().map((unit) => unit.continuation);
    expect(repeated.map((element) => element !== undefined)).toEqual([
      false,
      false,
      ...Array<boolean>(8).fill(true),
    ]);
    // One element for all rows, which is then set once; screen readers pass over it.
    const [rows, others] = [new Set(repeated.slice(2, 7)), new Set(repeated.slice(7))];
    expect([rows.size, others.size]).toEqual([1, 1]);
    const heads = [...rows, ...others].flatMap((element) => (element === undefined ? [] : [element]));
    const asUnits = heads.map((element) => ({ key: 'x', element, gapBefore: 0, keepWithNext: false }));
    expect(structureOf(asUnits).children).toEqual([]);
    const [withAxis, bare] = await setUnits([asUnits[0], asUnits.at(-1)].flatMap((unit) => unit ?? []));
    expect((withAxis?.height ?? 0) - (bare?.height ?? 0)).toBeCloseTo(38);
  });

  it('stand in one table whose rows have three cells each, named by their first', () => {
    const [table, ...others] = elementsOf(structureOf(units()), 'Table');
    expect(others).toEqual([]);
    const cells = table?.children.map((row) => row.children.map(({ sem }) => sem.tag));
    expect(cells).toEqual([
      ['TD', 'TD', 'TD'],
      ...Array<string[]>(5).fill(['TH', 'TD', 'TD']),
      ['TD', 'TD', 'TD'],
    ]);
  });
});

describe('white between blocks', () => {
  it('is 28 after the cover, 30 between topics, and may shrink to 22', () => {
    const cover: Block = {
      type: 'cover',
      clinic: 'C',
      date: 'D',
      question: 'Q?',
      lead: inlines('L.'),
      addressee: 'For I',
      origin,
    };
    const units = unitsOf(cover, topic('One?', [], [para('a')]), topic('Two?', [], [para('b')]));
    const heads = units.filter((unit) => unit.key.endsWith('head'));
    expect(heads.map((unit) => unit.gapBefore)).toEqual([28, 30]);
    expect(heads.map((unit) => unit.gapShrink)).toEqual([8, 8]);
  });

  it('sets steps 8 apart', () => {
    const list: Block = {
      type: 'list',
      ordered: true,
      items: [[para('a')], [para('b')], [para('c')]],
      origin,
    };
    expect(unitsOf(list).map((unit) => unit.gapBefore)).toEqual([0, 8, 8]);
  });
});

describe('keep rules', () => {
  it('never leave a heading last on a page', () => {
    const units = unitsOf({ type: 'heading', level: 3, text: 'Bring', origin }, para('a'));
    expect(units[0]?.keepWithNext).toBe(true);
  });

  it('keep a band with two rows under it, two rows before the next band, and repeat it where its rows go on', async () => {
    const row = (name: string): TableRow => ({ cells: [[para(name)], [para('1')]], origin });
    const band = (group: string): TableRow => ({ group, cells: [], origin });
    const table: Block = {
      type: 'table',
      layout: 'dense',
      columns: [{ label: 'Record' }, { label: 'Figure', align: 'end' }],
      rows: [band('Sleeve'), ...['a', 'b', 'c', 'd'].map(row), band('Bypass'), row('e')],
      origin,
    };
    const units = unitsOf(table);
    const kept = units.map((unit) => unit.keepWithNext);
    expect(kept).toEqual([true, true, true, false, true, false, true, false]);
    const heights = (await setUnits(units)).map((block) => block.height);
    // Head, band + its head, row + head and band, row + head and band.
    const [head = 0, , bandHead = 0, , rowHead = 0] = heights;
    expect(bandHead).toBeCloseTo(head);
    expect(rowHead).toBeGreaterThan(head + 10);
  });

  it('bind the notes of a table to it, and what announces a table to that', () => {
    const row: TableRow = { cells: [[para('Sleeve')], [para('6', 'number')]], origin };
    const table: Block = {
      type: 'table',
      layout: 'choices',
      columns: [{ label: '' }, { label: 'A leak' }],
      rows: [row],
      origin,
    };
    const notes: Block = {
      type: 'list',
      ordered: true,
      items: [[para('One.', 'small')], [para('Two.', 'small')]],
      origin,
    };
    const units = unitsOf(
      topic(
        'Which?',
        [],
        [para('Out of 1,000.'), table, para('Notes:', 'small'), notes, para('Out of 100.'), table],
      ),
    );
    const kept = units.map((unit) => [unit.key, unit.keepWithNext]);
    expect(kept).toEqual([
      ['0.head', true],
      ['0.0', true],
      ['0.1.head', true],
      ['0.1.row.0', true],
      ['0.2', true],
      ['0.3.item.0', true],
      ['0.3.item.1', false],
      ['0.4', true],
      ['0.5.head', true],
      ['0.5.row.0', false],
    ]);
    expect(units.slice(2, 7).map((unit) => unit.group)).toEqual(Array<string>(5).fill('0.1'));
  });

  it('bind numbered notes to the table right above them, and to nothing else', () => {
    const table: Block = {
      type: 'table',
      layout: 'choices',
      columns: [{ label: '' }, { label: 'A leak' }],
      rows: [{ cells: [[para('Sleeve')], [para('6', 'number')]], origin }],
      origin,
    };
    const list = (...roles: readonly ('small' | 'body')[]): Block => ({
      type: 'list',
      ordered: true,
      items: roles.map((role) => [para('One.', role)]),
      origin,
    });
    const listAfter = (before: Block, after: Block): readonly unknown[] => {
      const units = unitsOf(topic('Which?', [], [before, after]));
      const at = units.findIndex(({ key }) => key === '0.1.item.0');
      const [last, first] = [units[at - 1], units[at]];
      return [last?.keepWithNext, first?.gapBefore, first?.group];
    };
    const five = list('small', 'small', 'small', 'small', 'small');
    const kept = unitsOf(topic('Which?', [], [table, five])).slice(-5);
    expect(kept.map((unit) => unit.keepWithNext)).toEqual([true, false, false, true, false]);
    expect(new Set(kept.map((unit) => unit.group))).toEqual(new Set(['0.0']));
    expect(listAfter(table, list('small', 'small'))).toEqual([true, 10, '0.0']);
    // Steps of a body size, even among small ones, are no notes; nor is a list under a paragraph.
    expect(listAfter(table, list('body', 'body'))).toEqual([false, 18, '0.1.list']);
    expect(listAfter(table, list('small', 'body'))).toEqual([false, 18, '0.1.list']);
    expect(listAfter(para('Some words.'), list('small'))[2]).toBeUndefined();
  });

  it('keep the first two and the last two of many notes together, where the others may go on', () => {
    const strip: Block = {
      type: 'strip',
      layout: 'text',
      rows: [{ name: 'Sleeve', words: [], origin }],
      origin,
    };
    const notes = (count: number): Block => ({
      type: 'list',
      ordered: true,
      items: Array.from({ length: count }, () => [para('One.', 'small')]),
      origin,
    });
    const unitsWith = (count: number, edition: { edition?: 'large-print' } = {}): readonly Unit[] =>
      blockUnits(smallTree([topic('Which?', [], [strip, notes(count)])], edition));
    const keptOf = (count: number, edition = {}): readonly boolean[] =>
      unitsWith(count, edition)
        .filter(({ explains }) => explains === true)
        .map(({ keepWithNext }) => keepWithNext);
    expect(keptOf(5)).toEqual([true, false, false, true, false]);
    expect(keptOf(3)).toEqual([true, true, false]);
    expect(keptOf(1)).toEqual([false]);
    // Of large print, whose notes are those of one row, the first stays with it.
    const large = unitsWith(3, { edition: 'large-print' });
    expect(large.slice(-4).map(({ keepWithNext }) => keepWithNext)).toEqual([true, false, false, false]);
  });

  it('keep sentences together that follow each other, but not small type with what is above it', () => {
    const unitsOfRoles = (...roles: readonly ('body' | 'lead' | 'small')[]): readonly Unit[] =>
      unitsOf(...roles.map((role) => para('Words.', role)));
    const sentences = unitsOfRoles('body', 'body', 'lead');
    expect(sentences.map(({ keepsRow }) => keepsRow)).toEqual([true, true, undefined]);
    expect(unitsOfRoles('body', 'small').map(({ keepsRow }) => keepsRow)).toEqual([undefined, undefined]);
    // Where they would else leave a page nearly empty, they may be parted (see plan-pages.test.ts).
    const all = [...unitsOfRoles('body', 'small'), ...sentences];
    expect(all.map(({ keepWithNext }) => keepWithNext)).toEqual(all.map(() => false));
  });

  it('keep a list of up to eight items whole, which is read in one go', () => {
    const groupsOf = (
      steps: number,
      ordered: boolean,
      role: 'small' | 'body' = 'body',
    ): readonly unknown[] => {
      const items = Array.from({ length: steps }, () => [para('One.', role)]);
      return [...new Set(unitsOf({ type: 'list', ordered, items, origin }).map(({ group }) => group))];
    };
    expect(groupsOf(8, true)).toEqual(['0.list']);
    expect(groupsOf(9, true)).toEqual([undefined]);
    expect(groupsOf(3, false)).toEqual(['0.list']);
    expect(groupsOf(3, true, 'small')).toEqual([undefined]);
  });

  it('leave no line of a list alone at the foot or the top of a page', () => {
    const items = Array.from({ length: 12 }, (_, index) => [para(`Study ${index}.`, 'small')]);
    const units = unitsOf({ type: 'list', ordered: true, items, origin });
    expect(units.flatMap((unit, index) => (unit.keepWithNext ? [index] : []))).toEqual([0, 10]);
  });

  it('repeat the heading above a list or lines to write on, small where it is small', async () => {
    const list: Block = { type: 'list', ordered: false, items: [[para('a')], [para('b')]], origin };
    const asked: Block = { type: 'write-in', prompt: para('What?'), lines: 1, box: false, origin };
    const heading = (level: 2 | 3): Block => ({ type: 'heading', level, text: 'About my health', origin });
    const heads = await Promise.all(
      ([2, 3] as const).map(async (level) => {
        const units = unitsOf(heading(level), para('Lead.'), list, asked).slice(2);
        const repeated = units.flatMap(({ continuation }) => continuation ?? []);
        expect(repeated.length).toBe(3);
        const [blocks = []] = await setGalleys([{ width: 492, elements: repeated }]);
        expect(blocks.map(({ node }) => wordsOf(node))).toEqual(
          Array<string>(3).fill('About my health continued'),
        );
        return blocks[0]?.height ?? 0;
      }),
    );
    // 2.5 of rule, 9, a line of 24 and 8 below it; a line of 19 and 6 below it.
    expect(heads).toEqual([expect.closeTo(43.5), expect.closeTo(25)]);
  });

  it('keep the choice to tick with the points that it rests on', () => {
    const matters: Block = {
      type: 'matters',
      columns: ['A lot'],
      statements: [para('To be well.')],
      blanks: 1,
      origin,
    };
    const ticks: Block = { type: 'ticks', heading: 'Today I lean to', items: ['Sleeve'], origin };
    const kept = (...blocks: Block[]): readonly unknown[] => {
      const units = unitsOf(...blocks);
      const last = units.findIndex(({ key }) => key.startsWith('1'));
      return [units[last - 1]?.keepWithNext, units[last]?.group === units[last - 1]?.group];
    };
    expect(kept(matters, ticks)).toEqual([true, true]);
    expect(kept(para('Words.'), ticks)[0]).toBe(false);
  });

  it('let a long table to tick be divided, since each line is ticked by itself, and keep a short one whole', () => {
    const table = (count: number, blanks = 1): readonly unknown[] => {
      const statements = Array.from({ length: count }, () => para('To be well.'));
      return unitsOf({ type: 'matters', columns: ['A lot'], statements, blanks, origin }).map(
        ({ divisible, keepsRow }) => [divisible, keepsRow],
      );
    };
    expect(table(2)).toEqual([
      [undefined, undefined],
      [undefined, true],
      [undefined, true],
      [undefined, undefined],
    ]);
    // No line stands alone on either side.
    expect(table(3)).toEqual([
      [true, undefined],
      [true, true],
      [true, undefined],
      [true, true],
      [true, undefined],
    ]);
    // The first of three blank lines is kept to the last statement.
    expect(table(2, 3).slice(2, 5)).toEqual([
      [true, true],
      [true, undefined],
      [true, true],
    ]);
  });

  it('keep a short call-out whole', () => {
    const body = [para('a'), para('b'), para('c')];
    const units = unitsOf({ type: 'callout', kind: 'health', heading: 'Your own health', body, origin });
    expect(units.map((unit) => [unit.group, unit.divisible])).toEqual(Array(3).fill(['0', undefined]));
  });

  it('keep a call-out of a study whole, however long: it is one message', () => {
    const body = Array.from({ length: 6 }, () => para('a'));
    const divisible = (kind: 'study' | 'health'): readonly unknown[] => {
      const units = unitsOf({ type: 'callout', kind, heading: 'Under study', body, origin });
      return [...new Set(units.map((unit) => unit.divisible))];
    };
    expect([divisible('study'), divisible('health')]).toEqual([[undefined], [true]]);
  });

  it('cut a long call-out anywhere, and say its heading and its point again above what goes on', async () => {
    const point = (index: number): Paragraph[] => [
      para(`**Point ${index}.** It often gets worse after a sleeve.`),
      para('For a bypass: ask your surgeon.'),
      para('For a switch: ask your surgeon.'),
    ];
    const body = Array.from({ length: 10 }, (_, index) => point(index)).flat();
    const units = unitsOf({ type: 'callout', kind: 'health', heading: 'Your own health', body, origin });
    expect(units.some((unit) => unit.keepWithNext)).toBe(false);
    expect(new Set(units.map((unit) => unit.divisible))).toEqual(new Set([true]));
    const [first, ...repeated] = units.map(({ continuation }) => continuation);
    expect(first).toBeUndefined();
    // One for all that begins a point, one for what goes on with each.
    expect(new Set(repeated).size).toBe(11);
    const elements = repeated.slice(0, 3).flatMap((one) => one ?? []);
    const [blocks = []] = await setGalleys([{ width: 492, elements }]);
    expect(blocks.map(({ node }) => wordsOf(node))).toEqual([
      'Your own health continued Point 0.',
      'Your own health continued Point 0.',
      'Your own health continued',
    ]);
  });

  it('say the heading of a call-out again without a space after a mark of Chinese', async () => {
    await loadTypefaces(typefacesFor('健康？'));
    const body = Array.from({ length: 30 }, () => para('For a bypass: ask your surgeon.'));
    const units = unitsOf({ type: 'callout', kind: 'health', heading: '健康？', body, origin });
    const elements = units.slice(1, 2).flatMap(({ continuation }) => continuation ?? []);
    const [blocks = []] = await setGalleys([{ width: 492, elements }]);
    const spaces = blocks.flatMap(({ node }) => textBoxes(node)).filter(({ text }) => / /.test(text));
    expect([blocks.length, spaces]).toEqual([1, []]);
  });

  it('divide a strip of small words, which are looked up, but no strip that is compared', () => {
    const strip = (role: 'small' | 'body'): Block => ({
      type: 'strip',
      layout: 'text',
      rows: ['Weight', 'A leak'].map((name) => ({ name, words: [para('One.', role)], origin })),
      origin,
    });
    const divisible = (block: Block): readonly unknown[] => unitsOf(block).map((unit) => unit.divisible);
    expect([divisible(strip('small')), divisible(strip('body'))]).toEqual([
      [true, true],
      [undefined, undefined],
    ]);
    expect(unitsOf(rangeStrip(5)).some((unit) => unit.divisible)).toBe(false);
  });

  it('divide a strip of words of more than three rows, and keep a shorter one whole', () => {
    const strip = (count: number): Block => ({
      type: 'strip',
      layout: 'text',
      rows: Array.from({ length: count }, () => ({ name: 'Sleeve', words: [para('One.')], origin })),
      origin,
    });
    const divisible = (count: number): boolean => unitsOf(strip(count)).some((unit) => unit.divisible);
    expect([divisible(3), divisible(4)]).toEqual([false, true]);
  });
});

describe('rows of words', () => {
  const strip = (...roles: readonly ('small' | 'body')[]): Block => ({
    type: 'strip',
    layout: 'text',
    rows: roles.map((role) => ({ name: 'Sleeve', words: [para('One.', role), para('Two.', role)], origin })),
    origin,
  });
  const heights = async (block: Block): Promise<readonly number[]> =>
    (await setUnits(unitsOf(block))).map(({ height }) => height);

  it('stand closer where all are in small type, as in lists of sources', async () => {
    // White above (2 for the first row), two lines 3 apart, white below.
    expect(await heights(strip('body', 'body'))).toEqual([2 + 17 + 3 + 17 + 5, 8 + 17 + 3 + 17 + 5]);
    expect(await heights(strip('small', 'small'))).toEqual([2 + 15 + 3 + 15 + 3, 5 + 15 + 3 + 15 + 3]);
  });

  it('keep their white where one row has larger type, so that all rows of a strip look alike', async () => {
    expect(await heights(strip('body', 'small'))).toEqual([2 + 17 + 3 + 17 + 5, 8 + 15 + 3 + 15 + 5]);
  });
});

describe('structure', () => {
  it('never skips a heading level, whatever comes first', () => {
    const callout: Block = { type: 'callout', kind: 'health', heading: 'Health', body: [para('a')], origin };
    const tags = (...blocks: Block[]) =>
      structureOf(unitsOf(...blocks))
        .children.map(({ sem }) => sem.tag)
        .filter((tag) => tag.startsWith('H'));
    expect(tags(callout, topic('Q?', [], []), callout)).toEqual(['H1', 'H2', 'H3']);
    expect(tags({ type: 'heading', level: 1, text: 'T', origin }, callout, topic('Q?', [], []))).toEqual([
      'H1',
      'H2',
      'H2',
    ]);
  });

  it('gives every table of the samples as many cells in each row, and every figure its alternative', () => {
    for (const tree of sampleTrees) {
      const structure = structureOf(blockUnits(tree));
      for (const table of elementsOf(structure, 'Table')) {
        const counts = elementsOf(table, 'TR').map((row) =>
          row.children.reduce((sum, { sem }) => sum + (sem.columnSpan ?? 1), 0),
        );
        expect(new Set(counts).size).toBe(1);
      }
      for (const { sem } of elementsOf(structure, 'Figure')) expect(sem.alt).not.toBe('');
      for (const head of elementsOf(structure, 'TH')) expect(head.sem.scope).toBeDefined();
    }
  });

  it('reads a strip row as name, picture, words', () => {
    const strip: Block = {
      type: 'strip',
      layout: 'people',
      rows: [peopleRow('Sleeve', { of: 100, filled: 4 }, ['4 out of 100', '96 do not.'])],
      origin,
    };
    const [row] = elementsOf(structureOf(unitsOf(strip)), 'TR');
    expect(row?.children.map(({ children }) => children.map(({ sem }) => sem.alt ?? sem.tag))).toEqual([
      ['P'],
      ['Sleeve: 4 out of 100 96 do not.'],
      ['P', 'P'],
    ]);
  });
});

describe('what was set', () => {
  it('is of the content width, fits a page and overruns no column, for all samples', async () => {
    for (const tree of sampleTrees) {
      const width = tree.audience === 'clinician' ? 532 : 492;
      for (const { node, height, overruns } of await setUnits(blockUnits(tree), width)) {
        expect(node.box.width).toBe(width);
        expect(height).toBeLessThan(650);
        expect(overruns).toBe(false);
      }
    }
  });

  it.each([0, 1, 2, 10])('can be set with %i options', async (count) => {
    const names = rows(count).map(({ name }) => labelText(name));
    const units = unitsOf(
      topic('How much?', [], [rangeStrip(count)]),
      topic(
        'Who?',
        [],
        [
          {
            type: 'strip',
            layout: 'people',
            rows: names.map((name) => peopleRow(name, { of: 1000, filled: 3 }, ['3 out of 1,000'])),
            origin,
          },
        ],
      ),
      topic(
        'Undone?',
        [],
        [
          {
            type: 'strip',
            layout: 'way-back',
            rows: names.map((name) => ({
              name,
              words: [para('Yes.')],
              picture: { type: 'way-back', possible: 'yes', alt: 'Yes.' },
              origin,
            })),
            origin,
          },
        ],
      ),
      topic(
        'Which?',
        [],
        [
          {
            type: 'table',
            layout: 'choices',
            columns: ['', 'A leak'].map((label) => ({ label })),
            rows: names.map((name) => ({ cells: [[para(name)], [para('6', 'number')]], origin })),
            origin,
          },
        ],
      ),
      topic('Over time?', [], [{ type: 'line-board', lines: names.map((name) => weightLine(name)), origin }]),
      { type: 'ticks', heading: 'Today I lean to', items: names, origin },
    );
    const heads = units.filter((unit) => unit.key.endsWith('.head') && unit.key.split('.').length === 2);
    expect(heads).toHaveLength(5);
    const set = await setUnits(units);
    expect(set.every((block) => Number.isFinite(block.height) && !block.overruns)).toBe(true);
  });

  it('can be set with every optional field empty', async () => {
    const blocks: Block[] = [
      { type: 'callout', kind: 'study', heading: 'Under study', body: [], origin },
      { type: 'panel', lead: inlines('Dr. F leans to B.'), body: [], columns: [], closing: [], origin },
      { type: 'key', heading: 'Key', items: [], origin },
      { type: 'matters', columns: [], statements: [], blanks: 0, origin },
      { type: 'list', ordered: true, items: [], origin },
      { type: 'write-in', box: false, lines: 0, origin },
      { type: 'facts', items: [], origin },
      {
        type: 'line-board',
        lines: [weightLine('No figure', { points: [], valueTicks: [], timeTicks: [] })],
        origin,
      },
      { type: 'strip', layout: 'range', rows: [{ name: 'Bare', words: [], origin }], origin },
      { type: 'strip', layout: 'way-back', rows: [{ name: 'Bare', words: [], origin }], origin },
      { type: 'table', layout: 'choices', columns: [{ label: '' }], rows: [{ cells: [[]], origin }], origin },
      {
        type: 'table',
        layout: 'dense',
        columns: [{ label: 'a' }, { label: 'b', width: 80 }],
        rows: [{ cells: [[], []], origin }],
        origin,
      },
    ];
    const set = await setUnits(unitsOf(...blocks));
    expect(set.every((block) => Number.isFinite(block.height) && block.height < 300)).toBe(true);
  });

  it('holds long names: many words never overrun the name column, the words or the cells', async () => {
    const word = fc.string({
      unit: fc.constantFrom('a', 'b', 'e', 'i', 'l', 'm', 'n', 'o', 'r', 's', 't', 'w'),
      minLength: 1,
      maxLength: 11,
    });
    const name = fc.array(word, { minLength: 1, maxLength: 12 }).map((parts) => parts.join(' '));
    await fc.assert(
      fc.asyncProperty(name, name, async (long, other) => {
        const row = peopleRow(long, { of: 100, filled: 4 }, ['4 out of 100', other]);
        const units = unitsOf(
          { type: 'strip', layout: 'people', rows: [{ ...row, tag: other }], origin },
          {
            type: 'strip',
            layout: 'text',
            rows: [{ name: long, tag: other, words: [para(other)], origin }],
            origin,
          },
          { type: 'ticks', heading: other, items: [long, other, long], origin },
          {
            type: 'key',
            heading: long,
            items: [
              { mark: 'spread', words: other },
              { mark: 'today', words: long },
              { mark: 'may', words: other },
            ],
            origin,
          },
        );
        const set = await setUnits(units);
        expect(set.map((block) => block.overruns)).not.toContain(true);
      }),
      { numRuns: 12 },
    );
  });
});
