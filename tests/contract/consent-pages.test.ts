import { beforeAll, describe, expect, it } from 'vitest';

import { loadFonts } from '../../src/render/fonts.ts';
import type { PlannedDocument } from '../../src/render/make-up.ts';
import type { PlannedPage } from '../../src/render/plan-pages.ts';
import { consentAbout, consentCase, wholeCase } from '../helpers/consent-cases.ts';
import { exampleLanguages } from '../helpers/example-packets.ts';
import { pageFaults, planPagesOf } from '../helpers/page-faults.ts';

beforeAll(async () => {
  await loadFonts();
});

const cases = {
  'a first operation': ['QB-1128', (text: string) => text],
  'an operation under study': wholeCase,
  'a medicine': ['QB-1115', consentAbout('semaglutide')],
  'nothing new': ['QB-1115', consentAbout('no-operation')],
  'many illnesses': ['QB-1102', consentAbout('duodenal-switch')],
  'a band that slipped': ['QB-0755', consentAbout('band-removal')],
  'reflux after a sleeve': ['QB-0983', consentAbout('bypass')],
} as const;

async function planOf(name: keyof typeof cases, language: string): Promise<PlannedDocument> {
  const [reference, change] = cases[name];
  const { documents } = await consentCase([reference, change], language);
  const [plan] = await planPagesOf(documents.filter(({ kind }) => kind === 'consent'));
  if (plan === undefined) throw new Error('there is no record of the talk');
  return plan;
}

/** Blocks of the template whose units stand on a page, by their place among the blocks of the document. */
function blocksOn({ draft }: PlannedDocument, page: PlannedPage): readonly string[] {
  return page.placements.map(
    ({ unit }) => draft.tree.blocks[Number(/^\d+/.exec(draft.units[unit]?.key ?? '')?.[0])]?.type ?? '',
  );
}

/** Pages with a field to sign on which nothing says what is signed. */
function lonelySignatures(plan: PlannedDocument, pages = plan.pages): readonly number[] {
  return pages.flatMap((page, index) => {
    const types = blocksOn(plan, page);
    return types.includes('signatures') && !(types.includes('paragraph') && types.includes('write-in'))
      ? [index + 1]
      : [];
  });
}

describe.each(Object.keys(cases) as (keyof typeof cases)[])('the record of the talk about %s', (name) => {
  it.each(exampleLanguages)(
    'in %s has all signatures on one page, under the sentence that is signed',
    async (language) => {
      const plan = await planOf(name, language);
      expect(pageFaults(plan)).toEqual([]);
      expect(plan.pages.filter((page) => blocksOn(plan, page).includes('signatures'))).toHaveLength(1);
      expect(lonelySignatures(plan)).toEqual([]);
    },
  );
});

it('signatures that are put on a page of their own are found', async () => {
  const plan = await planOf('a first operation', 'en');
  const alone = plan.pages.flatMap((page) => {
    const at = blocksOn(plan, page).indexOf('signatures');
    if (at === -1) return [page];
    return [
      { ...page, placements: page.placements.slice(0, at) },
      { ...page, placements: page.placements.slice(at) },
    ];
  });
  expect(lonelySignatures(plan, alone)).toHaveLength(1);
});
