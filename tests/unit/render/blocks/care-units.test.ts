import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, DocumentTree } from '../../../../src/model/document.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { frameRows } from '../../../../src/render/blocks/frame-rows.ts';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { expandElement } from '../../../../src/render/expand-elements.ts';
import { planPages } from '../../../../src/render/plan-pages.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import type { Unit } from '../../../../src/render/unit.ts';
import {
  asides,
  calendarInEnglish,
  calendarOf,
  careTrees,
  consentTree,
  finalConsentTree,
  frame,
  homeTree,
  inEnglish,
  say,
  sentence,
  sixWeeks,
  stages,
  turnedCareTrees,
  vitaminTree,
  warningFrames,
  warningTree,
} from '../../../helpers/sample-care-documents.ts';
import { para, topic } from '../../../helpers/sample-documents.ts';
import { outside, overlaps, textBoxes } from '../../../helpers/set-boxes.ts';
import { smallTree } from '../../../helpers/small-tree.ts';
import { elementsOf, nodesOf, structureOf } from '../../../helpers/unit-nodes.ts';
import type { SemNode } from '../../../helpers/unit-nodes.ts';

const origin = 'sample.hbs:1';

beforeAll(async () => {
  await loadFonts();
});

function unitsOf(...blocks: Block[]): readonly Unit[] {
  return blockUnits(smallTree(blocks, { paper: 'letter' }));
}

async function setUnits(units: readonly Unit[]) {
  const [blocks = []] = await setGalleys([{ width: 492, elements: units.map(({ element }) => element) }]);
  return blocks;
}

/** Keys of the units on each page of a body of 650 points. */
async function pagesOf(units: readonly Unit[], bodyHeight = 650): Promise<readonly (readonly string[])[]> {
  const set = await setUnits(units);
  const planned = planPages(
    units.map((unit, index) => ({ ...unit, height: set[index]?.height ?? 0, continuationHeight: 0 })),
    bodyHeight,
  );
  return planned.map(({ placements }) => placements.map(({ unit }) => units[unit]?.key ?? ''));
}

const tagsOf = (nodes: readonly SemNode[]): readonly string[] => nodes.map(({ sem }) => sem.tag);

describe('documents for going home and for consent', () => {
  it('are set within the content, nothing over anything else, no word wider than its column', async () => {
    for (const tree of [...careTrees, ...turnedCareTrees]) {
      for (const { node, overruns, height } of await setUnits(blockUnits(tree))) {
        expect(overruns).toBe(false);
        expect(node.box.width).toBe(492);
        expect(height).toBeLessThan(650);
        const boxes = textBoxes(node);
        expect(overlaps(boxes)).toEqual([]);
        expect(outside(boxes, 492)).toEqual([]);
      }
    }
  });

  it('fit the pages of the design: the fridge page and six weeks one, the consent two', async () => {
    const counts = [];
    for (const tree of [warningTree, homeTree, consentTree, finalConsentTree])
      counts.push((await pagesOf(blockUnits(tree))).length);
    expect(counts).toEqual([1, 1, 2, 2]);
  });

  it('have tables with as many cells in each row, and figures with an alternative', () => {
    for (const tree of careTrees) {
      const structure = structureOf(blockUnits(tree));
      for (const table of elementsOf(structure, 'Table')) {
        const counts = elementsOf(table, 'TR').map(({ children }) => children.length);
        expect(new Set(counts).size).toBe(1);
      }
      for (const { sem } of elementsOf(structure, 'Figure')) expect(sem.alt).not.toBe('');
      for (const head of elementsOf(structure, 'TH')) expect(head.sem.scope).toBeDefined();
      for (const item of elementsOf(structure, 'LI'))
        expect(['LBody', 'Lbl LBody']).toContain(tagsOf(item.children).join(' '));
    }
  });
});

describe('frames of warning signs', () => {
  it('are a unit each, 12 apart, and give a fridge page its larger title', () => {
    const units = unitsOf(warningFrames);
    expect(units.map(({ gapBefore, keepWithNext }) => [gapBefore, keepWithNext])).toEqual([
      [0, false],
      [12, false],
      [12, false],
    ]);
    expect(themeOf(smallTree([warningFrames])).type.pageTitle.size).toBe(34);
    expect(themeOf(smallTree([say])).type.pageTitle.size).toBe(28);
  });

  it('have a line of 3, 2 and 1 points, and white words on black only in the first', async () => {
    const [now, today, visit] = await setUnits(unitsOf(warningFrames));
    const thickest = (node: typeof now): number =>
      Math.max(
        ...nodesOf(node === undefined ? [] : [node.node], 'PATH').map(({ props }) =>
          Number(props['strokeWidth'] ?? 0),
        ),
      );
    expect([now, today, visit].map(thickest)).toEqual([3, 2, 1]);
    const colors = (node: typeof now) =>
      new Set(nodesOf(node === undefined ? [] : [node.node], 'TEXT').map(({ style }) => style['color']));
    expect([now, today, visit].map((node) => colors(node).has('#FFFFFF'))).toEqual([true, false, false]);
    const fills = nodesOf(now === undefined ? [] : [now.node], 'VIEW').map(
      ({ style }) => style['backgroundColor'],
    );
    expect(fills).toContain('#000000');
  });

  it('say below the numbers, in bold, which comes first, and are as much higher', async () => {
    const phones = [{ number: '911' }, { number: '555-0134' }];
    const first = 'Call 911 first if you pass out.';
    const heightOf = async (more: object): Promise<number> => {
      const frames = [frame('now', ['Pain'], { phones, ...more })];
      const [set] = await setUnits(unitsOf({ type: 'warning-frames', frames, origin }));
      const said = nodesOf(set === undefined ? [] : [set.node], 'TEXT').filter(
        (node) => textBoxesText(node) === first,
      );
      expect(said.map(({ style }) => style['color'])).toEqual('first' in more ? ['#FFFFFF'] : []);
      return set?.height ?? 0;
    };
    // One line of 18 and the white over it.
    expect((await heightOf({ first: [{ type: 'text', value: first }] })) - (await heightOf({}))).toBeCloseTo(
      18 + 5,
    );
  });

  /** How many signs stand side by side in each row. */
  const rowsOf = (...texts: string[]): readonly number[] =>
    frameRows(
      texts.map((text) => para(text)),
      themeOf(smallTree([warningFrames])),
    ).rows.map((row) => row.length);
  const longSign = 'A pain that goes on and on, that comes back each time that you eat, or that wakes you up';

  it('put two short signs side by side, and one alone whose words are too long for that', () => {
    expect(rowsOf('Fever over 101 °F (38.3 °C)', 'Belly pain')).toEqual([2]);
    expect(rowsOf('Fever')).toEqual([1]);
    expect(rowsOf('Fever', 'Pneumonoultramicroscopicsilicosis')).toEqual([1, 1]);
    expect(rowsOf('Fever', longSign)).toEqual([1, 1]);
    // One long sign leaves the short ones beside it in peace.
    expect(rowsOf('Fever', 'Belly pain', longSign)).toEqual([2, 1]);
  });

  it('put many signs down two columns, or in rows where that takes less room', () => {
    const many = Array.from({ length: 10 }, (_, index) => `Sign ${index}`);
    expect(rowsOf(...many)).toEqual([2]);
    const oneLong = [...many.slice(1), Array.from({ length: 4 }, () => longSign).join(' ')];
    expect(rowsOf(...oneLong)).toEqual([2, 2, 2, 2, 1, 1]);
  });

  it('set what can wait no larger than the many signs that cannot', async () => {
    const sizesOf = async (count: number): Promise<readonly unknown[]> => {
      const signs = Array.from({ length: count }, () => 'Pain');
      const blockOf = (...frames: ReturnType<typeof frame>[]): Block => ({
        type: 'warning-frames',
        frames,
        origin,
      });
      const blocks = [
        blockOf(frame('now', signs), frame('today', ['Fever'])),
        blockOf(frame('visit', ['Cough'])),
      ];
      const set = await setUnits(unitsOf(...blocks));
      const sized = (text: string): unknown =>
        nodesOf(
          set.map(({ node }) => node),
          'TEXT',
        ).find((node) => textBoxesText(node) === text)?.style['fontSize'];
      return [sized('Pain'), sized('Fever'), sized('Cough')];
    };
    expect(await sizesOf(7)).toEqual([16.5, 16.5, 16.5]);
    expect(await sizesOf(8)).toEqual([14, 14, 14]);
  });

  it('set the emergency number largest, and smaller rather than broken where it is long', async () => {
    const sizes = async (number: string, label?: string): Promise<readonly unknown[]> => {
      const phones = [{ number, ...(label === undefined ? {} : { label }) }];
      const block: Block = { type: 'warning-frames', frames: [frame('now', ['Pain'], { phones })], origin };
      const [set] = await setUnits(unitsOf(block));
      return nodesOf(set === undefined ? [] : [set.node], 'TEXT')
        .filter((node) => textBoxesText(node).replace(/\u00a0/g, ' ') === number)
        .map(({ style }) => style['fontSize']);
    };
    expect(await sizes('911')).toEqual([34]);
    expect(
      await sizes('+44 20 7946 0991 ext. 1234', 'Outside office hours, on weekends and holidays'),
    ).toEqual([21]);
  });

  it('tell in which language it is whose a number is, and when somebody answers', () => {
    const phones = [{ label: inEnglish('Nurse line'), hours: inEnglish('8 to 5'), number: '555-0129' }];
    const block: Block = { type: 'warning-frames', frames: [frame('today', ['Fiebre'], { phones })], origin };
    const spans = elementsOf(structureOf(unitsOf(block)), 'Span');
    expect(spans.map(({ sem }) => sem.language)).toEqual(['en', 'en']);
  });

  it('tell each number with what it is for', () => {
    const lists = elementsOf(structureOf(unitsOf(warningFrames)), 'L');
    const [, , phones] = lists;
    expect(phones?.children.map(({ children }) => tagsOf(children))).toEqual([
      ['Lbl', 'LBody'],
      ['Lbl', 'LBody'],
    ]);
  });
});

function textBoxesText(node: ReturnType<typeof nodesOf>[number]): string {
  return node.children.map((child) => ('value' in child ? child.value : '')).join('');
}

describe('words to say', () => {
  it('tell what belongs in each blank, within the sentence', () => {
    const [, , blanks] = structureOf(unitsOf(say)).children;
    expect(blanks?.sem.tag).toBe('P');
    expect(blanks?.children.map(({ sem }) => sem.alt)).toEqual(['Room to write', 'Room to write']);
  });

  it('stand 12 below the frames', () => {
    expect(unitsOf(warningFrames, say).at(-1)?.gapBefore).toBe(12);
  });
});

describe('the calendar', () => {
  it('is a unit for the weekdays and one a week, repeats the weekdays, and may break between weeks', () => {
    const units = unitsOf(sixWeeks);
    expect(units.map(({ key }) => key)).toEqual([
      '0.head',
      ...[0, 1, 2, 3, 4, 5].map((week) => `0.week.${week}`),
    ]);
    expect(units.map(({ continuation }) => continuation !== undefined)).toEqual([
      false,
      ...Array<boolean>(6).fill(true),
    ]);
    expect(units.map(({ keepWithNext, keepsRow }) => keepWithNext || keepsRow === true)).toEqual([
      true,
      true,
      false,
      false,
      false,
      true,
      false,
    ]);
  });

  it('has rows of 77 that grow with what a day has to say', async () => {
    const heights = async (notes: readonly string[]): Promise<number> => {
      const units = unitsOf(calendarOf({ before: 0, days: 7, begins: [0], notes: { 2: notes } }));
      return (await setUnits(units))[1]?.height ?? 0;
    };
    expect(await heights(['Visit', '9:30 am'])).toBe(77);
    expect(await heights(['See the dietitian', 'and bring your list'])).toBeGreaterThan(77);
  });

  it('is read as one table of weeks, then a list of the stages with their dates, each once', () => {
    const [table, list, ...others] = structureOf(unitsOf(sixWeeks)).children;
    expect(others).toEqual([]);
    expect(table?.children.map(({ children }) => children.length)).toEqual(Array<number>(7).fill(7));
    const alternatives = list === undefined ? [] : elementsOf(list, 'Figure').map(({ sem }) => sem.alt);
    expect(alternatives).toEqual(sixWeeks.stages.map(({ dated }) => dated));
  });

  it('says the name and the dates of a stage apart, each in its language, where these are two', () => {
    const figures = elementsOf(structureOf(unitsOf(calendarInEnglish)), 'Figure');
    expect(figures.map(({ sem }) => [sem.alt, sem.language])).toEqual([
      ['Clear liquids', 'en'],
      ['hasta el 20 de enero', undefined],
      ['Soft food', 'en'],
    ]);
  });

  it('draws the line at which a stage begins, whatever languages it is said in', () => {
    const plain = { ...calendarInEnglish, stages: stages.slice(0, 2) };
    const strokes = (calendar: Block): readonly unknown[] =>
      nodesOf(
        unitsOf(calendar).flatMap(({ element }) => expandElement(element)),
        'PATH',
      )
        .map(({ props }) => [props['d'], props['strokeWidth']])
        .filter(([, width]) => width === 2);
    expect(strokes(plain)).toHaveLength(2);
    expect(strokes(calendarInEnglish)).toEqual(strokes(plain));
  });

  it('leaves days outside empty', () => {
    const [, week] = elementsOf(structureOf(unitsOf(sixWeeks)), 'TR');
    expect(week?.children.map(({ children }) => children.length)).toEqual([0, 0, 0, 0, 2, 2, 1]);
  });

  it('sets a day to come in as white on black, with bold words', async () => {
    const [, week] = await setUnits(unitsOf(sixWeeks));
    const texts = nodesOf(week === undefined ? [] : [week.node], 'TEXT').map((node) => [
      textBoxesText(node),
      node.style['color'],
      node.style['fontWeight'],
    ]);
    expect(texts.slice(0, 4)).toEqual([
      ['14 Jan', '#FFFFFF', 600],
      ['Operation', '#000000', 600],
      ['15', '#000000', 600],
      ['Home', '#000000', 400],
    ]);
  });

  it('names above it a stage that is too short for its label', () => {
    const units = unitsOf(calendarOf({ before: 0, days: 7, begins: [0, 1] }));
    expect(units.map(({ key }) => key)).toEqual(['0.names', '0.head', '0.week.0']);
    expect(units[0]?.keepWithNext).toBe(true);
    expect(unitsOf(sixWeeks).some(({ key }) => key.endsWith('names'))).toBe(false);
  });

  it('has no ribbon without stages', async () => {
    const set = await setUnits(unitsOf(calendarOf({ before: 0, days: 7, begins: [] })));
    expect(set[1]?.height).toBe(59);
  });

  it('breaks between weeks where eight of them do not fit, with at least two on each page', async () => {
    const units = unitsOf(
      { type: 'heading', level: 1, text: 'My first eight weeks', origin },
      para('The band shows what you eat.'),
      calendarOf({ before: 0, days: 56, begins: [0] }),
    );
    const pages = await pagesOf(units);
    expect(pages).toHaveLength(2);
    for (const page of pages) expect(page.filter((key) => key.includes('week')).length).toBeGreaterThan(1);
  });
});

describe('tables to fill in', () => {
  it('have an empty cell where nothing is due, and repeat their heads', () => {
    const structure = structureOf(blockUnits(vitaminTree));
    const [take, tests] = elementsOf(structure, 'Table');
    expect(tagsOf(take?.children[0]?.children ?? [])).toEqual(['TD', 'TH']);
    expect(tagsOf(tests?.children[0]?.children ?? [])).toEqual(['TH', 'TH', 'TH', 'TH', 'TH']);
    expect(tagsOf(tests?.children[2]?.children ?? [])).toEqual(['TH', 'TD', 'TD', 'TD', 'TD']);
    const rows = blockUnits(vitaminTree).filter(({ key }) => key.includes('row'));
    expect(rows.every(({ continuation }) => continuation !== undefined)).toBe(true);
  });

  it('keep the sentence that ends them with their last row, as a table and as items of large print', () => {
    const names = ['Iron', 'Calcium', 'Vitamin D'];
    const rows = names.map((name) => ({ name, detail: [], due: [], origin }));
    const items = names.map((name) => ({ box: true, words: [para(name)], boxes: [], origin }));
    const table: Block = { type: 'checklist', head: '', columns: [], box: true, rows, origin };
    const kept = (...blocks: Block[]): readonly boolean[] =>
      unitsOf(topic('What do I take?', [], blocks)).flatMap(({ key, keepWithNext }) =>
        /row|item/.test(key) ? [keepWithNext] : [],
      );
    for (const list of [table, { type: 'tick-items', items, origin } as const]) {
      expect(kept(list)).toEqual([false, false, false]);
      expect(kept(list, para('Ask before you stop one.'))).toEqual([false, false, true]);
    }
  });

  it('draw as many boxes as there is to tick', () => {
    const boxes = (key: string): number => {
      const unit = blockUnits(vitaminTree).find((one) => one.key === key);
      return unit === undefined ? -1 : nodesOf(expandElement(unit.element), 'SVG').length;
    };
    // The first row of a table has no line above it; the others have one.
    expect(boxes('2.0.row.0')).toBe(4);
    expect(boxes('2.0.row.1')).toBe(3 + 1);
    expect(boxes('2.0.row.2')).toBe(2 + 1);
  });

  it('leave room for a pen: rows of 30 and more, lines to write on 30 apart', async () => {
    const units = blockUnits(finalConsentTree);
    const set = await setUnits(units);
    const heights = (key: RegExp): readonly number[] =>
      set.flatMap(({ height }, index) => (key.test(units[index]?.key ?? '') ? [height] : []));
    const rows = heights(/^3\.0\.row/);
    expect(rows).toHaveLength(8);
    expect(Math.min(...rows)).toBeGreaterThanOrEqual(30);
    expect(heights(/question/)).toEqual(Array<number>(3).fill(18 + 24 + 30));
  });
});

describe('signatures', () => {
  const signatures = finalConsentTree.blocks
    .flatMap((block) => (block.type === 'topic' ? block.blocks : []))
    .find(({ type }) => type === 'signatures');
  const answers: Block = { type: 'answers', heading: 'Yes?', sentences: [sentence('I say yes.')], origin };
  const filler = (lines: number): Block[] => Array.from({ length: lines }, () => para('Words.', 'small'));

  it('are kept with the block before them, and with all that is signed for, on one page', async () => {
    if (signatures === undefined) throw new Error('no signatures');
    const interpreter = consentTree.blocks
      .flatMap((block) => (block.type === 'topic' ? block.blocks : []))
      .find(({ type }) => type === 'interpreter');
    if (interpreter === undefined) throw new Error('no interpreter');
    for (let lines = 1; lines < 34; lines += 1) {
      const units = unitsOf(topic('What?', [], [...filler(lines), interpreter, answers, signatures]));
      const pages = await pagesOf(units);
      const last = pages.find((page) => page.some((key) => key.includes('row')));
      expect(last?.slice(-4)).toEqual([
        `0.${lines}`,
        `0.${lines + 1}`,
        `0.${lines + 2}.row.0`,
        `0.${lines + 2}.row.1`,
      ]);
    }
  });

  it('stand with a paragraph too, if that is what is before them', () => {
    if (signatures === undefined) throw new Error('no signatures');
    const units = unitsOf(para('I agree.'), signatures);
    expect(units.map(({ keepWithNext }) => keepWithNext)).toEqual([true, true, false]);
  });

  it('are 270, 112 and 90 wide, 10 apart and 32 high above their labels', async () => {
    if (signatures === undefined) throw new Error('no signatures');
    const [row] = await setUnits(unitsOf(signatures));
    expect(row?.height).toBe(32 + 2 + 15);
    const labels = textBoxes(row === undefined ? (undefined as never) : row.node);
    expect(labels.map(({ text, left }) => [text, Math.round(left)])).toEqual([
      ['Patient', 0],
      ['Date', 280],
      ['Time', 402],
    ]);
  });

  it('are hatched in a draft, the name of an interpreter aside, and free in a final', () => {
    // A path of many lines is a hatching.
    const hatched = (tree: DocumentTree): readonly number[] =>
      blockUnits(tree)
        .filter(({ key }) => /^4\.(1$|3\.row)/.test(key))
        .map(({ element }) => {
          const paths = nodesOf(expandElement(element), 'PATH').map(({ props }) => props['d']);
          return paths.filter((path) => typeof path === 'string' && path.split('M').length > 10).length;
        });
    expect(hatched(consentTree)).toEqual([3, 3, 3]);
    expect(hatched(finalConsentTree)).toEqual([0, 0, 0]);
  });

  it('have their plate within the field, so that hatching is seen on all sides of it', async () => {
    const units = blockUnits(consentTree);
    const set = await setUnits(units);
    const [row] = set.filter((_, index) => units[index]?.key === '4.3.row.0');
    const plate = (row === undefined ? [] : textBoxes(row.node)).find(({ text }) => text.startsWith('Draft'));
    expect(plate?.left).toBeGreaterThan(20);
    expect((plate?.left ?? 0) + (plate?.width ?? 0)).toBeLessThan(270 - 20);
  });
});

describe('questions to answer', () => {
  const asked = (count: number): readonly Unit[] =>
    unitsOf(
      topic(
        'How do I say it?',
        [],
        [
          {
            type: 'teach-back',
            boxes: ['Said back'],
            lines: 1,
            questions: Array.from({ length: count }, (_, index) => para(`Question ${index}?`)),
            origin,
          },
        ],
      ),
    );

  it('stay with their heading up to three, and more may be divided', () => {
    const groups = (count: number) => asked(count).map(({ group, divisible }) => [group, divisible ?? false]);
    expect(groups(3)).toEqual(Array(4).fill(['0.0', false]));
    expect(groups(4)).toEqual([['0.0', false], ...Array<unknown>(4).fill(['0.0', true])]);
  });
});

describe('lists in small type', () => {
  it('run to the edge where that spares a second line, and else keep the measure', async () => {
    const widths = async (ordered: boolean, words: string): Promise<readonly number[]> => {
      const [set] = await setUnits(
        unitsOf({ type: 'list', ordered, items: [[para(words, 'small')]], origin }),
      );
      return (set === undefined ? [] : textBoxes(set.node)).slice(ordered ? 1 : 0).map(({ width }) => width);
    };
    const fitting = 'A leak: What is in the stomach or the bowel gets out there through a join or a hole.';
    for (const ordered of [true, false]) {
      expect(await widths(ordered, fitting)).toHaveLength(1);
      expect(await widths(ordered, `${fitting} ${fitting}`)).toHaveLength(3);
    }
  });
});

describe('short lists', () => {
  it('stand side by side, or one under another where a word has no room', async () => {
    const tops = async (block: Block): Promise<readonly number[]> => {
      const [set] = await setUnits(unitsOf(block));
      const headings = ['Every day', 'Not yet', 'Call us if'];
      return (set === undefined ? [] : textBoxes(set.node))
        .filter(({ text }) => headings.includes(text))
        .map(({ top }) => Math.round(top));
    };
    expect(new Set(await tops(asides)).size).toBe(1);
    if (asides.type !== 'asides') throw new Error('no lists');
    const long = {
      ...asides,
      columns: asides.columns.map((one) => ({ ...one, items: [para('Pneumonoultramicroscopicsilicosis')] })),
    };
    expect(new Set(await tops(long)).size).toBe(3);
  });
});
