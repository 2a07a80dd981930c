import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import type { PlannedDocument } from '../../src/render/make-up.ts';
import type { PlannedPage } from '../../src/render/plan-pages.ts';
import { setGalleys } from '../../src/render/set-galley.ts';
import { Lines } from '../../src/render/text.tsx';
import { demand, exampleCases, exampleLanguages, openExample } from '../helpers/example-packets.ts';
import { halfEmptyPages, pageFaults, planPagesOf } from '../helpers/page-faults.ts';
import { textFaults } from '../helpers/text-faults.ts';

beforeAll(async () => {
  await loadFonts();
});

type Paper = 'letter' | 'a4';

async function plansOf(
  reference: string,
  language: string,
  paper: Paper = 'letter',
): Promise<readonly PlannedDocument[]> {
  const { prepared, open } = await openExample(reference);
  const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, language)));
  return planPagesOf(documents.map((tree) => ({ ...tree, paper })));
}

describe.each(exampleCases)('the pages of %s', (reference) => {
  const editions = exampleLanguages.flatMap((language) =>
    (['letter', 'a4'] as const).map((paper) => ({ language, paper })),
  );

  it.each(editions)(
    'in $language on $paper are none half empty for no reason, end with no heading, part nothing and hold their words',
    async ({ language, paper }) => {
      const plans = await plansOf(reference, language, paper);
      expect(plans.length).toBeGreaterThan(1);
      const faults: string[] = [];
      for (const plan of plans) {
        const found = [...pageFaults(plan), ...halfEmptyPages(plan), ...(await textFaults(plan))];
        faults.push(...found.map((fault) => `${plan.draft.tree.kind}: ${fault}`));
      }
      expect(faults).toEqual([]);
    },
  );
});

describe('the page for the fridge', () => {
  // What cannot wait stands on the front, all else on the back.
  it.each(['en', 'ru'])('takes one sheet after a gastric bypass: %s', async (language) => {
    const { prepared, open } = await openExample('QB-1141', (text) =>
      text.replace(/^languages: .*$/m, 'languages: [en, es, ru]'),
    );
    const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, language)));
    const fridge = documents.filter(({ kind }) => kind === 'warning-signs');
    const plans = await planPagesOf(fridge.map((tree) => ({ ...tree, paper: 'letter' as const })));
    expect(plans.map(({ pages }) => pages.length)).toEqual([2]);
  });
});

describe('a plan that is bad on purpose is caught', () => {
  let plan: PlannedDocument;
  let units: readonly string[];

  beforeAll(async () => {
    const [first] = await plansOf('QB-1128', 'en');
    if (first === undefined) throw new Error('the example has no document');
    plan = first;
    units = plan.draft.units.map(({ key }) => key);
  });

  const faultsOf = (pages: readonly PlannedPage[]): readonly string[] => pageFaults({ ...plan, pages });
  const all = (): readonly PlannedPage['placements'][number][] =>
    plan.pages.flatMap(({ placements }) => placements);

  it('the plan itself has no fault', () => {
    expect(faultsOf(plan.pages)).toEqual([]);
  });

  it('a heading alone at the foot of a page', () => {
    const head = units.findIndex((key) => key.endsWith('.head'));
    const cut = (page: PlannedPage): readonly PlannedPage[] => {
      const at = page.placements.findIndex(({ unit }) => unit === head);
      if (at === -1) return [page];
      return [
        { placements: page.placements.slice(0, at + 1) },
        { placements: page.placements.slice(at + 1) },
      ];
    };
    expect(faultsOf(plan.pages.flatMap(cut))).toContain('page 1: a heading stands last');
  });

  it('a page of a few lines', () => {
    const [first, ...others] = plan.pages;
    const pages = [
      { placements: first?.placements.slice(0, 1) ?? [] },
      { placements: first?.placements.slice(1) ?? [] },
      ...others,
    ];
    expect(faultsOf(pages)).toContainEqual(expect.stringMatching(/^page 1: only \d+ in a hundred are used$/));
  });

  it('a page that ends though what follows had room on it', () => {
    const [first, ...others] = plan.pages;
    const at = first?.placements.findIndex(({ unit }) => (units[unit] ?? '').endsWith('.head')) ?? -1;
    expect(at).toBeGreaterThan(0);
    const cut = [
      { placements: first?.placements.slice(0, at) ?? [] },
      { placements: first?.placements.slice(at) ?? [] },
      ...others,
    ];
    expect(halfEmptyPages(plan)).toEqual([]);
    expect(halfEmptyPages({ ...plan, pages: cut })).toEqual([
      expect.stringMatching(/^page 1: \d+ in a hundred are used, and what follows had room$/),
    ]);
  });

  it('a row that runs over the foot of its page', () => {
    const at = plan.pages.findIndex(({ placements }) =>
      (units[placements.at(-1)?.unit ?? -1] ?? '').includes('.row.'),
    );
    const [last, ...before] = plan.pages[at]?.placements.toReversed() ?? [];
    if (last === undefined) throw new Error('no page ends with a row');
    const low = { ...last, top: plan.draft.geometry.bodyHeight - 10 };
    const pages = plan.pages.with(at, { placements: [...before.toReversed(), low] });
    expect(faultsOf(pages)).toContain(`page ${String(at + 1)}: a TR is cut by the foot of the page`);
  });

  it('a row that stands on two pages, or on none', () => {
    const row = units.findIndex((key) => key.includes('.row.'));
    const again = plan.pages.map((page, index) =>
      index < 2 ? page : { placements: [{ unit: row, top: 0 }] },
    );
    expect(faultsOf(again)).toContainEqual(expect.stringMatching(/^a TR stands on pages \[[12], 3/));
    const without = [{ placements: all().filter(({ unit }) => unit !== row) }];
    expect(faultsOf(without)).toContain('a TR stands on pages []');
  });

  it('words over other words, those of the footer among them', async () => {
    // As low as the first line of the footer, so that a block of one line meets it too.
    const low = plan.draft.geometry.bodyHeight + 24;
    const last = plan.pages[0]?.placements.at(-1);
    if (last === undefined) throw new Error('the first page is empty');
    const foot = [{ placements: [{ ...last, top: low }] }, ...plan.pages.slice(1)];
    expect(await textFaults({ ...plan, pages: foot })).toContainEqual(
      expect.stringMatching(/^page 1: words stand over other words/),
    );
  });

  it('a word wider than its column', async () => {
    const [first] = plan.draft.units;
    if (first === undefined) throw new Error('the document has no unit');
    const narrow = Lines({
      runs: [{ text: '20261124004172', weight: 400 }],
      size: 13,
      lineHeight: 18,
      width: 40,
      setting: 'filled',
    });
    const [blocks = []] = await setGalleys([{ width: plan.draft.geometry.contentWidth, elements: [narrow] }]);
    const one = { draft: { ...plan.draft, units: [first] }, blocks };
    const pages = [{ placements: [{ unit: 0, top: 0 }] }];
    expect(await textFaults({ ...one, pages })).toEqual(['page 1: words beyond their column']);
  });

  it('a block set over the one before', () => {
    const pages = plan.pages.map(({ placements }) => ({
      placements: placements.map(({ unit }) => ({ unit, top: 0 })),
    }));
    expect(faultsOf(pages)).toContainEqual(expect.stringMatching(/stands over the one before$/));
  });
});
