import { describe, expect, it } from 'vitest';

import { composeDocument } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import type { DocumentKind } from '../../src/model/codes.ts';
import { demand, exampleCases, exampleLanguages, openExample } from '../helpers/example-packets.ts';

/** The cells whose published figures a document of an example prints. What the clinic counted itself has no study. */
async function cellsPrinted(
  reference: string,
  kind: DocumentKind,
  language: string,
): Promise<ReadonlySet<string>> {
  const { prepared, open } = await openExample(reference);
  const { evidence, templates } = prepared;
  const input = { ...identifyPacket(prepared, open, language), ...open, evidence, templates };
  const tree = demand(composeDocument({ ...input, kind, documentId: 'E-1' }));
  const cells = expectedText(tree).flatMap(({ figures }) => figures.map(({ cell }) => cell));
  return new Set(cells.filter((cell) => !cell.endsWith('/own')));
}

describe.each(exampleLanguages)('in %s, every figure that a patient is shown', (language) => {
  it.each(exampleCases)('in the comparison of %s is found again in the sources', async (reference) => {
    const shown = await cellsPrinted(reference, 'comparison', language);
    const sources = await cellsPrinted(reference, 'sources', language);
    expect(shown.size).toBeGreaterThan(0);
    expect([...shown].filter((cell) => !sources.has(cell))).toEqual([]);
  });
});
