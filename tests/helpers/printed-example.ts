import { composeDocument } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentKind } from '../../src/model/codes.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import type { RenderedPacket } from '../../src/model/packet.ts';
import { renderPdf } from '../../src/render/index.ts';
import { demand, openExample } from './example-packets.ts';

export interface PrintedExample {
  readonly tree: DocumentTree;
  readonly rendered: RenderedPacket;
}

/** One document of an example case, as it is really printed. */
export async function printExample(
  reference: string,
  kind: DocumentKind,
  language: string,
): Promise<PrintedExample> {
  const { prepared, open } = await openExample(reference);
  const { evidence, templates } = prepared;
  const identity = identifyPacket(prepared, open, language);
  const documentId = `${reference}-${language}-1`;
  const tree = demand(composeDocument({ ...identity, ...open, evidence, templates, kind, documentId }));
  const packet = {
    caseReference: reference,
    language,
    title: tree.title,
    author: 'Clinic',
    documents: [tree],
  };
  const rendered = demand(
    await renderPdf(packet, { createdOn: '2026-11-25', producer: 'plainleaf', attachments: [] }),
  );
  return { tree, rendered };
}
