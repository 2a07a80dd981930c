import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { ribbonPieces, stagesWithoutLabel } from '../../src/model/calendar.ts';
import type { Field, WarningFrame } from '../../src/model/care-blocks.ts';
import type { Block } from '../../src/model/document.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { blockUnits } from '../../src/render/blocks/index.tsx';
import { loadFonts } from '../../src/render/fonts.ts';
import { setGalleys } from '../../src/render/set-galley.ts';
import { calendarOf, frame, sentence } from '../helpers/sample-care-documents.ts';
import { para } from '../helpers/sample-documents.ts';
import { outside, overlaps, textBoxes } from '../helpers/set-boxes.ts';
import { smallTree } from '../helpers/small-tree.ts';

const origin = 'sample.hbs:1';

beforeAll(async () => {
  await loadFonts();
});

function words(mostWords: number, longest: number): fc.Arbitrary<string> {
  const letter = fc.constantFrom('a', 'b', 'e', 'i', 'l', 'm', 'n', 'o', 'r', 's', 't', 'w', 'é', 'ñ');
  const word = fc.string({ unit: letter, minLength: 1, maxLength: longest });
  return fc.array(word, { minLength: 1, maxLength: mostWords }).map((parts) => parts.join(' '));
}

const direction = fc.constantFrom('ltr' as const, 'rtl' as const);

/** Everything printed once, in order, inside the page, nothing over anything else. */
async function expectSetWell(block: Block, way: 'ltr' | 'rtl'): Promise<readonly number[]> {
  const tree = smallTree([block], { direction: way });
  const units = blockUnits(tree);
  const [set = []] = await setGalleys([{ width: 492, elements: units.map(({ element }) => element) }]);
  expect(set.map(({ overruns }) => overruns)).not.toContain(true);
  const boxes = set.map(({ node }) => textBoxes(node));
  expect(boxes.flatMap(overlaps)).toEqual([]);
  expect(boxes.flatMap((texts) => outside(texts, 492))).toEqual([]);
  const compact = (texts: readonly string[]): string => texts.join('').replace(/\s/g, '');
  expect(compact(boxes.flat().map(({ text }) => text))).toBe(
    compact(expectedText(tree).map(({ text }) => text)),
  );
  return set.map(({ height }) => height);
}

const phone = fc.record({
  number: fc.stringMatching(/^[0-9]{3}([ -][0-9]{2,4}){0,4}$/),
  label: words(5, 9),
});

describe('blocks for going home and for consent', () => {
  it('set 2 to 12 warning signs of long words, with up to three numbers, whole unless a page may not hold them', async () => {
    const urgency = fc.constantFrom<WarningFrame['urgency']>('now', 'today', 'visit');
    const items = fc.array(words(14, 24), { minLength: 2, maxLength: 12 });
    const phones = fc.array(phone, { maxLength: 3 });
    await fc.assert(
      fc.asyncProperty(
        fc.tuple(urgency, items),
        fc.record({ heading: words(8, 14), note: words(12, 14), phones }),
        direction,
        async ([how, signs], changes, way) => {
          const frames = [frame(how, signs, changes)];
          const heights = await expectSetWell({ type: 'warning-frames', frames, origin }, way);
          if (heights.length === 1) return;
          expect(heights).toHaveLength(signs.length);
          // Of the body of a letter page, 650 points, the rest may be taken by a title and the head of the frame.
          expect(heights.reduce((sum, height) => sum + height)).toBeGreaterThan(360);
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });

  it('keep twelve signs of two lines each on a page', async () => {
    const items = Array.from({ length: 12 }, () => 'A sign that takes two lines of its half of a frame');
    const frames = [frame('today', items, { heading: 'Call us', note: 'Day or night.' })];
    const [height = 1000] = await expectSetWell({ type: 'warning-frames', frames, origin }, 'ltr');
    expect(height).toBeLessThan(650);
  });

  it('set sentences with any number of blanks among any words', async () => {
    const part = fc.oneof(fc.constant('__'), words(9, 16));
    const text = fc
      .tuple(words(6, 12), fc.array(part, { maxLength: 8 }))
      .map(([first, rest]) => [first, ...rest].join(' '));
    await fc.assert(
      fc.asyncProperty(
        fc.array(text, { minLength: 1, maxLength: 3 }),
        words(6, 14),
        direction,
        async (texts, heading, way) => {
          const sentences = texts.map((one) => sentence(one));
          await expectSetWell({ type: 'say', heading, sentences, origin }, way);
          await expectSetWell({ type: 'answers', heading, sentences, origin }, way);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('lay out any calendar: each day once, every stage named, no ribbon over a day without one', async () => {
    const span = fc.record({
      before: fc.integer({ min: 0, max: 6 }),
      days: fc.integer({ min: 1, max: 50 }),
      cuts: fc.uniqueArray(fc.integer({ min: 0, max: 49 }), { maxLength: 5 }),
      notes: fc.dictionary(
        fc.integer({ min: 0, max: 49 }).map(String),
        fc.array(words(4, 7), { maxLength: 2 }),
        { maxKeys: 9 },
      ),
    });
    await fc.assert(
      fc.asyncProperty(span, words(3, 14), direction, async ({ before, days, cuts, notes }, label, way) => {
        const begins = cuts.filter((cut) => cut < days).sort((a, b) => a - b);
        const calendar = calendarOf({ before, days, begins, notes, visits: [0, 8] });
        const stages = calendar.stages.map((stage, index) => (index === 0 ? { ...stage, label } : stage));
        const block = { ...calendar, stages };
        await expectSetWell(block, way);
        const pieces = block.weeks.flatMap((_, week) => ribbonPieces(block, week));
        const covered = pieces.reduce((sum, piece) => sum + piece.days, 0);
        expect(covered).toBe(block.weeks.flat().filter((day) => day?.stage !== undefined).length);
        expect(pieces.filter((piece) => piece.begins)).toHaveLength(stages.length);
        const named = new Set([
          ...pieces.flatMap(({ stage, labelled }) => (labelled ? [stage] : [])),
          ...stagesWithoutLabel(block),
        ]);
        expect(named.size).toBe(stages.length);
      }),
      { numRuns: 40 },
    );
  });

  it('set checklists with up to four dates, long items and any doses', async () => {
    // Four heads of the widest letters leave an item 98 points: a word of eight such letters has room in that.
    const row = fc.record({ name: words(9, 8), detail: fc.array(words(14, 8), { maxLength: 3 }) });
    const columns = fc.array(words(3, 7), { maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(
        columns,
        fc.array(row, { maxLength: 9 }),
        fc.tuple(fc.boolean(), direction),
        async (heads, items, [box, way]) => {
          const rows = items.map(({ name, detail }, index) => ({
            name,
            detail: detail.map((text) => para(text)),
            due: heads.map((_, column) => (index + column) % 2 === 0),
            origin,
          }));
          const block: Block = { type: 'checklist', head: 'Item', columns: heads, box, rows, origin };
          await expectSetWell(block, way);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('set talks, questions, short lists, interpreters and signatures with long words of any number', async () => {
    const kind = fc.constantFrom<Field['kind']>('name', 'signature', 'date', 'time');
    const fields = fc.array(fc.record({ kind, label: words(4, 6) }), { minLength: 1, maxLength: 4 });
    const texts = fc.array(words(16, 14), { minLength: 1, maxLength: 5 });
    const draft = fc.constantFrom<{ plate?: string }>({}, { plate: 'Draft. Do not sign here.' });
    const short = words(4, 9);
    await fc.assert(
      fc.asyncProperty(
        fc.tuple(fields, draft),
        texts,
        fc.tuple(short, short, direction),
        async ([row, plate], said, [one, other, way]) => {
          const paragraphs = said.map((text) => para(text));
          await expectSetWell(
            {
              type: 'talk',
              columns: { box: one, line: other },
              statements: [paragraphs, ...paragraphs.map((one) => [one])],
              origin,
            },
            way,
          );
          const boxes = [one, other];
          await expectSetWell({ type: 'teach-back', boxes, lines: 2, questions: paragraphs, origin }, way);
          const columns = [one, other, one].map((heading) => ({
            heading,
            boxes: heading === one,
            items: paragraphs,
          }));
          await expectSetWell({ type: 'asides', columns, origin }, way);
          await expectSetWell({ type: 'signatures', rows: [{ fields: row, origin }], ...plate, origin }, way);
          const interpreter = { heading: one, ways: [one, other, one], body: paragraphs, fields: row };
          await expectSetWell({ type: 'interpreter', ...interpreter, ...plate, origin }, way);
        },
      ),
      { numRuns: 25 },
    );
  });
});
