import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { readDocument } from '../../src/readability/index.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import { demand, exampleLanguages, makeExample, openExample } from '../helpers/example-packets.ts';
import { pageFaults, planPagesOf } from '../helpers/page-faults.ts';

/** The pages about an operation, for every operation that is drawn: those of the example with another one chosen. */
const afterBand = 'earlier_operations: [{operation: band, date: 2012-05, trouble: reflux, status: in-place}]';
const afterSleeve = afterBand.replace('operation: band', 'operation: sleeve');
const chosen: readonly (readonly [option: string, earlier: string])[] = [
  ['sleeve', ''],
  ['sleeve', afterBand],
  ['bypass', ''],
  ['bypass', afterSleeve],
  ['one-anastomosis-bypass', ''],
  ['one-anastomosis-bypass', afterSleeve],
  ['sleeve', afterSleeve],
  ['bypass', afterBand.replace('operation: band', 'operation: one-anastomosis-bypass')],
  ['duodenal-switch', ''],
  ['single-anastomosis-switch', afterSleeve],
  ['band', ''],
  ['band-removal', afterBand],
  ['plication', ''],
  ['endoscopic-sleeve', ''],
  ['balloon', ''],
];

/** The text of the example, for another operation and after another one. */
function changeTo(option: string, earlier: string): (text: string) => string {
  return (text) => {
    const changed = text
      .replace(/documents: .*/, 'documents: [operation]')
      .replace(/options: .*/, `options: [${[...new Set([option, 'sleeve', 'no-operation'])].join(', ')}]`)
      .replace(/chosen: .*/, `chosen: ${option}`);
    return earlier === ''
      ? changed
      : changed
          .replace('asked: first-operation', 'asked: second-operation')
          .replace('smoking: never', `smoking: never\n  ${earlier}`);
  };
}

async function pagesOf(change: (text: string) => string, language: string): Promise<DocumentTree> {
  const { prepared, open } = await openExample('QB-1128', change);
  const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, language)));
  const [tree] = documents;
  if (tree?.kind !== 'operation') throw new Error('the packet does not begin with the operation');
  return tree;
}

beforeAll(async () => {
  await loadFonts();
});

describe.each(chosen)('the pages about %s %s', (option, earlier) => {
  it.each(exampleLanguages)('are easy to read in %s, well filled, and hold its drawing', async (language) => {
    const tree = await pagesOf(changeTo(option, earlier), language);
    const hard = readDocument(tree).results.filter(({ passes }) => !passes);
    expect(hard.map(({ formula, score }) => `${formula} ${score.toFixed(1)}`)).toEqual([]);
    expect((await planPagesOf([tree])).flatMap(pageFaults)).toEqual([]);
    const blocks = tree.blocks.flatMap((block) => (block.type === 'topic' ? block.blocks : []));
    const drawings = blocks.filter(({ type }) => type === 'drawing');
    expect(drawings).toHaveLength(1);
  });
});

describe('the pages about an operation', () => {
  it.each(['single-anastomosis-switch', 'endoscopic-sleeve'])(
    'come back whole from the finished file, for %s too',
    async (option) => {
      const { verification } = await makeExample('QB-1128', 'es', changeTo(option, ''));
      expect(verification).toMatchObject({ passed: true, findings: [] });
    },
  );

  it('say why there is no line where the weight is known from no single study', async () => {
    const texts = expectedText(await pagesOf(changeTo('duodenal-switch', ''), 'en')).map(({ text }) => text);
    expect(texts.some((text) => text.startsWith('There is no line here.'))).toBe(true);
    expect(
      texts.some((text) => /^Weight after \d+ years, on average:/.test(text.replaceAll('\u00a0', ' '))),
    ).toBe(true);
  });

  it('say where a guideline stands in for the clinic', async () => {
    const texts = expectedText(await pagesOf(changeTo('duodenal-switch', ''), 'en')).map(({ text }) => text);
    expect(texts.filter((text) => text.startsWith('A guideline says'))).toHaveLength(1);
    expect(texts.some((text) => text.includes('ERAS Society'))).toBe(true);
  });
});
