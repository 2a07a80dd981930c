import { beforeAll, describe, expect, it } from 'vitest';

import type { Block, Paragraph } from '../../../../src/model/document.ts';
import { repeatedTexts } from '../../../../src/model/tree-text.ts';
import { blockUnits } from '../../../../src/render/blocks/index.tsx';
import { expandElement } from '../../../../src/render/expand-elements.ts';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { setGalleys } from '../../../../src/render/set-galley.ts';
import { pageFaults, planPagesOf } from '../../../helpers/page-faults.ts';
import { inlines, para } from '../../../helpers/sample-documents.ts';
import { textBoxes } from '../../../helpers/set-boxes.ts';
import { smallTree } from '../../../helpers/small-tree.ts';
import { textFaults } from '../../../helpers/text-faults.ts';
import { elementsOf, nodesOf, structureOf } from '../../../helpers/unit-nodes.ts';

const origin = 'main.hbs:1';

/** As many paragraphs, each of some five lines. */
function paragraphs(count: number): readonly Paragraph[] {
  const words = 'Food stays down better when you eat slowly and take small bites at each meal of the day.';
  return Array.from({ length: count }, (_, index) => para(`${index + 1}. ${words} ${words} ${words}`));
}

function panel(reasons: number): Block {
  const columns = ['For', 'Against'].map((heading) => ({ heading, items: paragraphs(reasons) }));
  return {
    type: 'panel',
    lead: inlines('My surgeon leans to it.'),
    body: [],
    columns,
    closing: [para('The end.')],
    origin,
  };
}

function frames(signs: number): Block {
  const frame = { urgency: 'now', heading: 'Call now', phones: [], origin } as const;
  return { type: 'warning-frames', frames: [{ ...frame, items: paragraphs(signs) }], origin };
}

describe('an opinion or a frame of signs', () => {
  it('has no sign of a frame alone on a page', () => {
    const kept = blockUnits(smallTree([frames(14)])).map(({ keepWithNext }) => keepWithNext);
    expect(kept.flatMap((keeps, index) => (keeps ? [index] : []))).toEqual([0, 12]);
    const large = blockUnits(smallTree([frames(14)], { edition: 'large-print' }));
    expect(large.filter(({ keepWithNext }) => keepWithNext).map(({ key }) => key)).toEqual([
      '0.frame.0.head',
      '0.frame.0.item.12',
    ]);
  });

  it('binds the one sign of a high frame to nothing after it', () => {
    const phone = { label: 'Ward of the clinic for digestion', hours: 'Each day from 8 in the morning' };
    const phones = Array.from({ length: 24 }, () => ({ ...phone, number: '555-0107' }));
    const high = { urgency: 'today', heading: 'Call today', phones, items: paragraphs(1), origin } as const;
    const units = blockUnits(smallTree([{ type: 'warning-frames', frames: [high], origin }]));
    expect(units.map(({ key, keepWithNext }) => [key, keepWithNext])).toEqual([['0.frame.0.0', false]]);
  });

  beforeAll(() => loadFonts());

  it('is one unit as long as it is short', () => {
    expect(blockUnits(smallTree([panel(2)]))).toHaveLength(1);
    expect(blockUnits(smallTree([frames(2)]))).toHaveLength(1);
  });

  it('is parted once it takes most of a page, before no page can hold it', () => {
    const closing = [...paragraphs(1), para('The end.')];
    expect(blockUnits(smallTree([{ ...panel(2), closing } as Block])).length).toBeGreaterThan(1);
  });

  it('may begin a page with each of its points once it is long, and they stay one list', () => {
    const sides = elementsOf(structureOf(blockUnits(smallTree([panel(9)]))), 'L');
    expect(sides.map((list) => elementsOf(list, 'LI').length)).toEqual([9, 9]);
    const [signs, ...others] = elementsOf(structureOf(blockUnits(smallTree([frames(14)]))), 'L');
    expect(others).toEqual([]);
    expect(elementsOf(signs ?? structureOf([]), 'LI')).toHaveLength(14);
  });

  it('fills more than one page then, and parts no point', async () => {
    for (const block of [panel(9), frames(14)])
      for (const plan of await planPagesOf([smallTree([block])])) {
        expect(plan.pages.length).toBeGreaterThan(1);
        expect([...pageFaults(plan), ...(await textFaults(plan))]).toEqual([]);
      }
  });

  it('says again where it goes on what the surgeon leans to, and over a further reason the heading of its side', async () => {
    const tree = smallTree([panel(3)], { edition: 'large-print' });
    const units = blockUnits(tree);
    const repeated = units.flatMap(({ continuation }) => (continuation === undefined ? [] : [continuation]));
    const [set = []] = await setGalleys([{ width: 522, elements: repeated }]);
    const said = set.map(({ node }) => textBoxes(node).map(({ text }) => text.trim()));
    const lead = 'My surgeon leans to it.';
    const side = (heading: string): string[][] => [[lead], [lead], [lead, heading], [lead, heading]];
    // What my surgeon leans to, with nothing above it; a heading and three reasons, twice; the end.
    expect(units[0]?.continuation).toBeUndefined();
    expect(said).toEqual([...side('For'), ...side('Against'), [lead]]);
    expect(repeatedTexts(tree).map(({ text }) => text)).toEqual([lead, 'For', 'Against']);
  });

  it('may be divided in large print also where it could stand whole on the next page', () => {
    const units = blockUnits(smallTree([frames(4)], { edition: 'large-print' }));
    expect(units.map(({ group, divisible }) => [group, divisible])).toEqual(
      Array(5).fill(['0.frame.0', true]),
    );
  });

  it('repeats with its heading the numbers that have room beside it on one line', () => {
    const viewsRepeated = (heading: string, numbers: readonly string[]): number => {
      const phones = numbers.map((number) => ({ label: '', number }));
      const frame = { urgency: 'now', heading, phones, items: paragraphs(3), origin } as const;
      const tree = smallTree([{ type: 'warning-frames', frames: [frame], origin }], {
        edition: 'large-print',
      });
      return nodesOf(expandElement(blockUnits(tree).at(-1)?.continuation), 'VIEW').length;
    };
    const [one, two] = [['911'], ['911', '555-0134']];
    const long = 'Call now, at any hour of the day or the night';
    expect(viewsRepeated('Call now', two)).toBeGreaterThan(viewsRepeated('Call now', one));
    expect(viewsRepeated(long, two)).toBe(viewsRepeated(long, one));
  });

  it('says its heading again, which the read-back expects there', () => {
    const texts = repeatedTexts(smallTree([frames(14)])).map(({ text }) => text);
    expect(texts).toContain('Call now continued');
  });
});
