import { findOpenPoints } from './compose/index.ts';
import { InternalError } from './diagnostics/diagnostic.ts';
import { canonicalJson, sha256 } from './io/digest.ts';
import { documentsOf } from './model/case.ts';
import type { DocumentKind } from './model/codes.ts';
import type { PrintEdition } from './model/edition.ts';
import type { Locale } from './model/locale.ts';
import type { OpenPoint } from './model/open-point.ts';
import type { FinishedPacket, OpenCase, PacketState, PacketTree, PdfAttachment } from './model/packet.ts';
import type { ProvenanceRecord } from './model/provenance.ts';
import { judgeReviews, stateOfWords } from './model/words-review.ts';
import type { WordsStanding } from './model/words-review.ts';
import type { Prepared } from './prepare.ts';
import type { ProvenanceInput } from './provenance/index.ts';
import { digestFontsOf } from './render/index.ts';

/** What a packet is, before a word of it is written. */
export interface PacketIdentity extends Omit<ProvenanceInput, 'packet' | 'html'> {
  readonly kinds: readonly DocumentKind[];
  /** What stands between it and a final one. */
  readonly openPoints: readonly OpenPoint[];
  /** For each document the keys of the words it must contain. */
  readonly required: readonly (readonly string[])[];
  readonly locale: Locale;
  readonly otherLocales: readonly Locale[];
}

/**
 * Which documents a packet holds, under which ids, from which inputs. An id ends in six digits of a digest of all
 * inputs, so that two packets for one case are told apart on paper when anything behind them differs; that of a large
 * print says so before them.
 */
export function identifyPacket(prepared: Prepared, open: OpenCase, language: string): PacketIdentity {
  const { templates, evidence, program } = prepared;
  const locale = prepared.locales.get(language);
  if (locale === undefined) throw new InternalError('a case asks for a language that is not there');
  const kinds = documentsOf(open.case);
  const digests = {
    case: sha256(open.files.case.text),
    clinic: sha256(open.files.clinic.text),
    templates: templates.digest,
    words: locale.digest,
    fonts: prepared.fonts,
  };
  const edition = editionOf(open);
  const openPoints = findOpenPoints({ ...open, evidence, locale });
  const large = edition === 'standard' ? {} : { edition };
  const inputs = canonicalJson({ ...digests, evidence: evidence.digest, date: open.date, program, ...large });
  const print = sha256(inputs).slice(0, 6);
  const mark = edition === 'standard' ? '' : '-large';
  return {
    kinds,
    required: kinds.map((kind) => templates.documents.get(kind)?.required ?? []),
    documentIds: kinds.map(
      (_, index) => `${open.case.case}-${language}-${String(index + 1)}${mark}-${print}`,
    ),
    edition,
    openPoints,
    state: stateOf(open, openPoints),
    date: open.date,
    digests,
    review: reviewOf(open, locale, kinds),
    evidence,
    program,
    locale,
    otherLocales: [...prepared.locales.values()].filter((other) => other !== locale),
  };
}

/** The digests with that of the fonts which the packet itself is set in: a script of its own brings a typeface of its own. */
export async function withFonts(identity: PacketIdentity, packet: PacketTree): Promise<PacketIdentity> {
  const text = JSON.stringify(packet.documents);
  const fonts = await digestFontsOf(text);
  return { ...identity, digests: { ...identity.digests, fonts } };
}

/** Large print where the case asks for it or the caller does. */
function editionOf({ case: asked, largePrint = false }: OpenCase): PrintEdition {
  return largePrint || asked.patient.large_print ? 'large-print' : 'standard';
}

/** The identity of one document as a file of its own; it keeps the id that it has in the packet. */
export function documentAlone(identity: PacketIdentity, index: number): PacketIdentity {
  const only = <T>(list: readonly T[]): readonly T[] => list.slice(index, index + 1);
  const { kinds, required, documentIds } = identity;
  return { ...identity, kinds: only(kinds), required: only(required), documentIds: only(documentIds) };
}

/** What is said of a packet without opening it. */
export function describePacket(
  { state, edition, openPoints }: PacketIdentity,
  { caseReference, language }: PacketTree,
): Pick<FinishedPacket, 'caseReference' | 'language' | 'state' | 'edition' | 'openPoints'> {
  return { caseReference, language, state, edition, openPoints };
}

/** How the words of the packet stand in the ledger of its clinic. */
function reviewOf({ clinic }: OpenCase, locale: Locale, kinds: readonly DocumentKind[]): WordsStanding {
  return {
    digest: locale.wordsDigest('all'),
    state: stateOfWords(locale, clinic.reviewed, kinds).state,
    reviews: judgeReviews(locale, clinic.reviewed, kinds),
  };
}

function stateOf({ case: asked }: OpenCase, points: readonly OpenPoint[]): PacketState {
  if (asked.example) return 'example';
  return points.length === 0 ? 'final' : 'draft';
}

/** The record as it goes into the PDF: one spelling, so that it can be compared byte for byte. */
export function attachRecord(record: ProvenanceRecord): PdfAttachment {
  return {
    name: 'provenance.json',
    mediaType: 'application/json',
    description: 'What this file was made from (W3C PROV-JSON)',
    content: new TextEncoder().encode(canonicalJson(record)),
  };
}
