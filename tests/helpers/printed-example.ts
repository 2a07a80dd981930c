import { readFileSync } from 'node:fs';

import { composeDocument } from '../../src/compose/index.ts';
import type { Result } from '../../src/diagnostics/diagnostic.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import type { DocumentKind } from '../../src/model/codes.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import type { RenderedPacket } from '../../src/model/packet.ts';
import { openCase } from '../../src/pipeline.ts';
import { prepare } from '../../src/prepare.ts';
import { renderPdf } from '../../src/render/index.ts';

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
  const prepared = demand(await prepare(createNodeWorkspace(), '.'));
  const source = (file: string) => ({ file, text: readFileSync(file, 'utf8') });
  const files = { case: source(`examples/cases/${reference}.yaml`), clinic: source('examples/clinic.yaml') };
  const open = demand(openCase(prepared, { files, date: '2026-11-25' }));
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

function demand<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(result.diagnostics.map(({ code, message }) => `${code} ${message}`).join('\n'));
}
