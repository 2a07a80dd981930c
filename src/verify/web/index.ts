import type { Locale } from '../../model/locale.ts';
import type { PacketTree, VerificationReport } from '../../model/packet.ts';
import { webPageWords } from '../../model/web-page.ts';
import type { WebPageIdentity } from '../../model/web-page.ts';
import { reportOn } from '../report.ts';
import { textRules } from '../rules/text-rules.ts';
import { nothingActive } from './nothing-active.ts';
import { readPage } from './read-page.ts';
import { readWebDocument } from './read-web-document.ts';
import {
  alternativesPresent,
  documentsPresent,
  headingOrder,
  pageParts,
  repeatedOnlyIfSaid,
} from './rules.ts';
import type { WebRule } from './rules.ts';

const webRules: readonly WebRule[] = [
  documentsPresent,
  headingOrder,
  alternativesPresent,
  repeatedOnlyIfSaid,
  pageParts,
  nothingActive,
];

export interface WebVerificationInput {
  readonly html: string;
  readonly packet: PacketTree;
  readonly locale: Locale;
  /** The languages it could be mistaken for. */
  readonly otherLocales: readonly Locale[];
  /** For each document the keys of the words it must contain. */
  readonly required: readonly (readonly string[])[];
  /** What the foot of the page says of the packet. */
  readonly page: WebPageIdentity;
}

/**
 * Opens the finished page with an independent parser and compares it with the trees it was made from: the text, and of
 * every picture its text alternative. A report that has not passed means: withhold the page.
 */
export function verifyHtml(input: WebVerificationInput): VerificationReport {
  const { html, packet, locale, otherLocales, required } = input;
  const page = readPage(html);
  const documents = packet.documents.map((tree, index) => readWebDocument(tree, index, page));
  const pages = documents.flatMap((document) => document.pages.map(({ text }) => text));
  const file = { pages, language: page.language, attachments: new Map<string, Uint8Array>() };
  const reading = {
    packet,
    locale,
    otherLocales,
    required,
    attachments: [],
    pagesMade: pages.length,
    file,
    documents,
  };
  const words = webPageWords(locale, input.page);
  const findings = [
    ...textRules.flatMap((rule) => rule(reading)),
    ...webRules.flatMap((rule) => rule({ page, packet, words })),
  ];
  return reportOn(findings, pages.length, documents);
}
