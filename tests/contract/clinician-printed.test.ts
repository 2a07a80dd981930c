import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree, FigureRun, Inline } from '../../src/model/document.ts';
import { blocksOfType } from '../helpers/compose-inputs.ts';
import { demand, exampleCases, openExample } from '../helpers/example-packets.ts';

// Years later the sheet must show what this person was given, so each figure on it is held against the pages as composed.

/** Where a number came from, wherever in a tree it stands: words with a figure, or a point of a line. */
function sourcesIn(node: unknown): readonly string[] {
  if (typeof node !== 'object' || node === null) return [];
  if ('cell' in node && 'records' in node && Array.isArray(node.records))
    return node.records.map((record) => `${String(node.cell)} ${String(record)}`);
  return Object.values(node).flatMap(sourcesIn);
}

const figuresOf = (inlines: readonly Inline[]): readonly FigureRun[] =>
  inlines.filter((inline) => inline.type === 'figure');

async function treesOf(reference: string): Promise<readonly DocumentTree[]> {
  // Papers for the way home come without the sheet; here each packet has it.
  const { prepared, open } = await openExample(reference, (text) =>
    /^documents:.*clinician-sheet/m.test(text)
      ? text
      : text.replace(/^(documents: \[[^\]]*)\]/m, '$1, clinician-sheet]'),
  );
  return demand(composePacket(prepared, open, identifyPacket(prepared, open, 'en'))).documents;
}

/** The figures of one of the two tables. */
function tabled(sheet: DocumentTree, heading: string): readonly string[] {
  const topics = blocksOfType(sheet, 'topic').filter(({ question }) => question === heading);
  return sourcesIn(topics.flatMap(({ blocks }) => blocks.filter(({ type }) => type === 'table')));
}

/** The ranges beside the leading records: those before and those after the words that part them. */
function ranges(sheet: DocumentTree): { readonly on: readonly string[]; readonly off: readonly string[] } {
  const items = blocksOfType(sheet, 'list').flatMap(({ items: all }) => all.flat());
  const parted = items.map(({ inlines }) => {
    const at = inlines.findIndex(({ value }) => value.includes('On no patient page:'));
    const end = at === -1 ? inlines.length : at;
    return { on: figuresOf(inlines.slice(0, end)), off: figuresOf(inlines.slice(end)) };
  });
  return { on: sourcesIn(parted.map(({ on }) => on)), off: sourcesIn(parted.map(({ off }) => off)) };
}

describe.each(exampleCases)('the clinician sheet of %s', (reference) => {
  let pages: ReadonlySet<string>;
  let sheet: DocumentTree;
  beforeAll(async () => {
    const trees = await treesOf(reference);
    pages = new Set(trees.filter(({ audience }) => audience === 'patient').flatMap(sourcesIn));
    const found = trees.find(({ kind }) => kind === 'clinician-sheet');
    if (found === undefined) throw new Error('no sheet');
    sheet = found;
  });

  it('says of each figure truly whether a page of the patient prints it', () => {
    const printed = tabled(sheet, 'Figures printed on the patient pages of this packet');
    const left = tabled(sheet, 'Figures that fit this person, on no patient page of this packet');
    expect(printed.length + left.length).toBeGreaterThan(0);
    expect(printed.filter((one) => !pages.has(one))).toEqual([]);
    expect(left.filter((one) => pages.has(one))).toEqual([]);
  });

  it('says of each range of other studies truly whether a page of the patient prints it', () => {
    const { on, off } = ranges(sheet);
    // A pooled figure stands on the leading record too, and is for clinicians alone.
    expect(on.filter((one) => !pages.has(one))).toEqual([]);
    const leads = tabled(sheet, 'Figures printed on the patient pages of this packet');
    expect(off.filter((one) => pages.has(one) && !leads.includes(one))).toEqual([]);
  });

  it('names every record behind a figure of the patient pages', () => {
    const named = new Set([
      ...tabled(sheet, 'Figures printed on the patient pages of this packet'),
      ...ranges(sheet).on,
    ]);
    expect([...pages].filter((one) => !named.has(one))).toEqual([]);
  });
});

it('tells both apart in cases where both occur', async () => {
  const trees = await treesOf('QB-1115');
  const sheet = trees.find(({ kind }) => kind === 'clinician-sheet');
  if (sheet === undefined) throw new Error('no sheet');
  const left = tabled(sheet, 'Figures that fit this person, on no patient page of this packet');
  expect(left).toContain('plication/weight-loss/12m plication.weight-loss.12m.gudaityte-2021.ebmil');
  expect(left.some((one) => one.includes('hospital-stay'))).toBe(true);
  expect(ranges(sheet).off.length).toBeGreaterThan(3);
});
