import { composeDocument } from './compose/index.ts';
import { success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import type { PacketIdentity } from './identify-packet.ts';
import type { DocumentKind } from './model/codes.ts';
import type { CheckedElement } from './model/consent-element.ts';
import type { DocumentScore } from './model/document-score.ts';
import type { DocumentTree } from './model/document.ts';
import type { OpenCase, PacketTree } from './model/packet.ts';
import { printedFigures } from './model/printed-figures.ts';
import type { PrintedFigures } from './model/printed-figures.ts';
import type { DocumentReading } from './model/reading-level.ts';
import type { Prepared } from './prepare.ts';
import { readDocument, tooHard, tooPassive, unexplained } from './readability/index.ts';
import { checkConsent, conditionsOf, scoreDocuments } from './score/index.ts';

/**
 * In this order, each knowing what the ones before came to: what a patient reads; the sources, which say how hard that
 * is to read; the clinician sheet, which holds all of it against published criteria.
 */
const stepOf = (kind: DocumentKind): number => ['sources', 'clinician-sheet'].indexOf(kind) + 1;

type Made = ReadonlyMap<DocumentKind, Result<DocumentTree>>;

/** What the documents made so far came to. */
interface Report {
  readonly readings?: readonly DocumentReading[];
  readonly printed?: PrintedFigures;
  readonly score?: DocumentScore;
  readonly consent?: readonly CheckedElement[];
}

/** Every document of a packet, in its order; those that report on the others are made after them, and none twice. */
export function composePacket(
  prepared: Prepared,
  open: OpenCase,
  identity: PacketIdentity,
): Result<PacketTree> {
  const { evidence, templates } = prepared;
  const { locale, kinds } = identity;
  const make = (step: number, report: Report): Made =>
    new Map(
      kinds
        .filter((kind) => stepOf(kind) === step)
        .map((kind) => {
          const documentId = identity.documentIds[kinds.indexOf(kind)] ?? '';
          const input = { ...identity, ...open, ...report, evidence, templates, kind, documentId };
          return [kind, composeDocument(input)];
        }),
    );
  const first = make(0, {});
  const readings = treesOf(first).map(readDocument);
  const sources = make(1, { readings });
  const report = (): Report => {
    const documents = [...treesOf(first), ...treesOf(sources)];
    const elements = evidence.consentElements;
    return {
      readings,
      printed: printedFigures(documents.filter(({ audience }) => audience === 'patient')),
      score: scoreDocuments({ documents, readings, locale, evidence }),
      consent: checkConsent({ documents, locale, elements, conditions: conditionsOf(open) }),
    };
  };
  const last = kinds.some((kind) => stepOf(kind) === 2) ? make(2, report()) : [];
  const made = new Map([...first, ...sources, ...last]);
  return assemble(made, {
    open,
    identity,
    readings: [...readings, ...treesOf(sources).map(readDocument)],
  });
}

interface Setting {
  readonly open: OpenCase;
  readonly identity: PacketIdentity;
  /** Of every document for the patient. */
  readonly readings: readonly DocumentReading[];
}

function assemble(made: Made, { open, identity, readings }: Setting): Result<PacketTree> {
  const composed = identity.kinds.flatMap((kind) => made.get(kind) ?? []);
  const documents = composed.flatMap((result) => (result.ok ? [result.value] : []));
  if (documents.length < composed.length) return failAll(composed);
  const title = documents[0]?.title ?? '';
  const author = open.clinic.clinic.name;
  const names = { caseReference: open.case.case, language: identity.locale.tag, title, author };
  const forPatients = documents.filter(({ audience }) => audience === 'patient');
  const warnings = [
    ...composed.flatMap((result) => (result.ok ? result.warnings : [])),
    ...forPatients.flatMap((tree) => tooPassive(tree, identity.locale.passive)),
    ...forPatients.flatMap((tree) => unexplained(tree, identity.locale.glossary)),
  ];
  return success({ ...names, documents }, [...warnings, ...readings.flatMap(tooHard)]);
}

function treesOf(made: Made): readonly DocumentTree[] {
  return [...made.values()].flatMap((result) => (result.ok ? [result.value] : []));
}
