import { composeDocument } from './compose/index.ts';
import { success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import type { PacketIdentity } from './identify-packet.ts';
import type { DocumentKind } from './model/codes.ts';
import type { DocumentTree } from './model/document.ts';
import type { OpenCase, PacketTree } from './model/packet.ts';
import type { DocumentReading } from './model/reading-level.ts';
import type { Prepared } from './prepare.ts';
import { readDocument, tooHard } from './readability/index.ts';

/** Kinds that say how hard the others are to read, so they are made after them. */
const reporting: readonly DocumentKind[] = ['sources', 'clinician-sheet'];

/** Every document of a packet, in its order; those that report on the others know how hard they are to read. */
export function composePacket(
  prepared: Prepared,
  open: OpenCase,
  identity: PacketIdentity,
): Result<PacketTree> {
  const make = (kind: DocumentKind, readings: readonly DocumentReading[]): Result<DocumentTree> => {
    const { evidence, templates } = prepared;
    const documentId = identity.documentIds[identity.kinds.indexOf(kind)] ?? '';
    return composeDocument({ ...identity, ...open, evidence, templates, kind, documentId, readings });
  };
  const first = new Map(identity.kinds.filter(isFirst).map((kind) => [kind, make(kind, [])]));
  const readings = [...first.values()].flatMap((result) => (result.ok ? [readDocument(result.value)] : []));
  const composed = identity.kinds.map((kind) => first.get(kind) ?? make(kind, readings));
  const documents = composed.flatMap((result) => (result.ok ? [result.value] : []));
  if (documents.length < composed.length) return failAll(composed);
  const title = documents[0]?.title ?? '';
  const author = open.clinic.clinic.name;
  const names = { caseReference: open.case.case, language: identity.locale.tag, title, author };
  const warnings = composed.flatMap((result) => (result.ok ? result.warnings : []));
  const last = documents
    .filter(({ kind, audience }) => !isFirst(kind) && audience === 'patient')
    .map(readDocument);
  return success({ ...names, documents }, [...warnings, ...[...readings, ...last].flatMap(tooHard)]);
}

function isFirst(kind: DocumentKind): boolean {
  return !reporting.includes(kind);
}
