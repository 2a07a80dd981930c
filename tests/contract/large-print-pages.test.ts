import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { reflowPacket } from '../../src/reflow/index.ts';
import { loadFonts, loadTypefaces } from '../../src/render/fonts.ts';
import { typefacesFor } from '../../src/render/shaping/typefaces.ts';
import { demand, exampleLanguages, openExample } from '../helpers/example-packets.ts';
import { needlessWhite, pageFaults, partedFrames, planPagesOf } from '../helpers/page-faults.ts';
import { textFaults } from '../helpers/text-faults.ts';
import { textsUnder } from '../helpers/text-sizes.ts';

const asksForLargePrint = (text: string): string =>
  text.replace(/^patient:$/m, 'patient:\n  large_print: true');

async function treesOf(
  reference: string,
  language: string,
  change?: (text: string) => string,
): Promise<readonly DocumentTree[]> {
  const { prepared, open } = await openExample(reference, change);
  const identity = identifyPacket(prepared, open, language);
  const packet = demand(composePacket(prepared, open, identity));
  return reflowPacket(packet, identity.edition).documents;
}

beforeAll(async () => {
  await loadFonts();
  await treesOf('QB-1141', 'en');
}, 180_000);

/** A comparison of five choices with pictures, one without figures, every other document, a packet of going home. */
const largePages = ['QB-1041', 'QB-0983', 'QB-1128', 'QB-1141'].flatMap((reference) =>
  exampleLanguages.flatMap((language) =>
    (['letter', 'a4'] as const).map((paper) => ({ reference, language, paper })),
  ),
);

describe('the pages in large print', () => {
  it.each(largePages)(
    'of $reference in $language on $paper keep the same rules, and hold no text under 18 points',
    async ({ reference, language, paper }) => {
      const trees = await treesOf(reference, language, asksForLargePrint);
      const plans = await planPagesOf(trees.map((tree) => ({ ...tree, paper })));
      const faults: string[] = [];
      for (const plan of plans) {
        const found = [
          ...pageFaults(plan),
          ...(await textFaults(plan)),
          ...(plan.draft.tree.audience === 'patient' ? needlessWhite(plan) : []),
          ...partedFrames(plan),
        ];
        faults.push(...found.map((fault) => `${plan.draft.tree.kind}: ${fault}`));
      }
      expect(faults).toEqual([]);
      const forPatients = plans.filter(({ draft }) => draft.tree.audience === 'patient');
      expect(forPatients.length).toBeGreaterThan(2);
      expect(forPatients.flatMap((plan) => textsUnder(plan, 18))).toEqual([]);
    },
    180_000,
  );

  it('from right to left keep the tag of a treatment under study on the page, beside the way back', async () => {
    const trees = await treesOf('QB-1115', 'ar', asksForLargePrint);
    await loadTypefaces(typefacesFor(JSON.stringify(trees)));
    const [plan] = await planPagesOf(trees.filter(({ kind }) => kind === 'comparison'));
    if (plan === undefined) throw new Error('the case has no comparison');
    expect(JSON.stringify(plan.draft.tree)).toContain('"layout":"way-back"');
    expect(await textFaults(plan)).toEqual([]);
  }, 180_000);
});

describe('a text that is too small for large print', () => {
  it('is found: the standard edition has many, in the body and around it', async () => {
    const plans = await planPagesOf(await treesOf('QB-1141', 'en'));
    const small = plans.flatMap((plan) => textsUnder(plan, 18));
    expect(small.length).toBeGreaterThan(100);
    expect(small).toContainEqual(expect.stringMatching(/^Page 1 of/));
    expect(plans.flatMap((plan) => textsUnder(plan, 12))).toEqual([]);
  });
});

describe('signs to call about at once, in large print', () => {
  const papers = ['QB-1128', 'QB-1141'].flatMap((reference) =>
    exampleLanguages.flatMap((language) =>
      (['letter', 'a4'] as const).map((paper) => ({ reference, language, paper })),
    ),
  );

  it.each(papers)('stand on one page of $paper for $reference in $language', async (test) => {
    const { reference, language, paper } = test;
    const trees = await treesOf(reference, language, asksForLargePrint);
    const signs = trees.filter(({ kind }) => kind === 'warning-signs').map((tree) => ({ ...tree, paper }));
    const [plan] = await planPagesOf(signs);
    const keys = plan?.draft.units.map(({ key }) => key) ?? [];
    const frame = keys.map((key) => /^.*\.frame\.0\./.exec(key)?.[0]).find((found) => found !== undefined);
    const first = keys.flatMap((key, unit) => (key.startsWith(frame ?? '?') ? [unit] : []));
    expect(first.length).toBeGreaterThan(8);
    const pages = plan?.pages.filter(({ placements }) => placements.some(({ unit }) => first.includes(unit)));
    expect(pages).toHaveLength(1);
  });
});

describe('a page that breaks too soon, and a frame that is parted', () => {
  it('are found: each sign on a page of its own', async () => {
    const trees = await treesOf('QB-1141', 'en', asksForLargePrint);
    const [plan] = await planPagesOf(trees.filter(({ kind }) => kind === 'warning-signs'));
    if (plan === undefined) throw new Error('no warning signs');
    expect(needlessWhite(plan)).toEqual([]);
    expect(partedFrames(plan)).toEqual([]);
    const alone = {
      ...plan,
      pages: plan.draft.units.map((_, unit) => ({ placements: [{ unit, top: 0 }] })),
    };
    expect(needlessWhite(alone).length).toBeGreaterThan(5);
    expect(partedFrames(alone).length).toBeGreaterThan(1);
  });
});
