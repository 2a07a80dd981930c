import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { createNodeWorkspace, openCase, prepare } from '../../src/index.ts';
import type { Prepared } from '../../src/index.ts';
import { documentKinds } from '../../src/model/codes.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { checkGlyphs } from '../../src/render/check-glyphs.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import { checkFit, planDocument } from '../../src/render/make-up.ts';
import { demand } from '../helpers/example-packets.ts';
import { pageFaults, setAsProduct } from '../helpers/page-faults.ts';
import { stressfulInputs } from '../helpers/stressful-inputs.ts';
import type { StressfulInputs } from '../helpers/stressful-inputs.ts';
import { textFaults } from '../helpers/text-faults.ts';

/** Each makes a packet of every kind: a few seconds. */
const runsPerEdition = 3;

let prepared: Prepared;

beforeAll(async () => {
  await loadFonts();
  prepared = demand(await prepare(createNodeWorkspace(), '.'));
});

function documentsOf(inputs: StressfulInputs): readonly DocumentTree[] {
  const files = {
    case: { file: 'case.yaml', text: inputs.case },
    clinic: { file: 'clinic.yaml', text: inputs.clinic },
  };
  const open = demand(openCase(prepared, { files, date: '2026-11-25' }));
  return demand(composePacket(prepared, open, identifyPacket(prepared, open, inputs.language))).documents;
}

async function faultsOf(trees: readonly DocumentTree[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const set of await setAsProduct(trees)) {
    const plan = planDocument(set);
    const faults = [
      ...pageFaults(plan),
      ...(await textFaults(plan)),
      ...checkFit(set, []).map((one) => one.message),
    ];
    found.push(...faults.map((fault) => `${set.draft.tree.kind}: ${fault}`));
  }
  return found;
}

const editions = (['en', 'es'] as const).flatMap((language) =>
  (['letter', 'a4'] as const).map((paper) => ({ language, paper })),
);

describe.each(editions)('documents of every kind in $language on $paper', (edition) => {
  it('stand well on their pages, whatever a clinic writes in its case and its profile', async () => {
    await fc.assert(
      fc.asyncProperty(stressfulInputs(edition), async (inputs) => {
        const trees = documentsOf(inputs);
        expect(new Set(trees.map(({ kind }) => kind))).toEqual(new Set(documentKinds));
        expect(checkGlyphs(trees)).toEqual([]);
        expect(await faultsOf(trees)).toEqual([]);
      }),
      { numRuns: runsPerEdition, endOnFailure: true },
    );
  }, 240_000);
});
