import type { Locale } from '../model/locale.ts';
import type { PacketTree, PdfAttachment, RenderedPacket, VerificationReport } from '../model/packet.ts';
import { reportOn } from './report.ts';
import { readBack } from './read-back.ts';
import type { ReadBack } from './read-back.ts';
import { readDocument } from './read-document.ts';
import type { DocumentReading } from './read-document.ts';
import { finding } from './reading.ts';
import type { Rule } from './reading.ts';
import { attachmentsPresent } from './rules/attachments-present.ts';
import { pageNumbers } from './rules/page-numbers.ts';
import { textRules } from './rules/text-rules.ts';

export { verifyHtml } from './web/index.ts';

const rules: readonly Rule[] = [pageNumbers, ...textRules, attachmentsPresent];

export interface VerificationInput {
  readonly pdf: Uint8Array;
  readonly packet: PacketTree;
  readonly pages: RenderedPacket['pages'];
  readonly locale: Locale;
  /** The languages it could be mistaken for. */
  readonly otherLocales: readonly Locale[];
  /** For each document the keys of the words it must contain. */
  readonly required?: readonly (readonly string[])[];
  /** Files that must be inside, byte for byte. */
  readonly attachments?: readonly PdfAttachment[];
}

/**
 * Opens the finished file with an independent reader and compares it with the trees it was made from. A report
 * that has not passed means: withhold the file. Findings name places and kinds, never what stands on a page.
 */
export async function verifyPacket(input: VerificationInput): Promise<VerificationReport> {
  const file = await readBack(input.pdf);
  if (file === null) return reportOn([finding('VERIFY_UNREADABLE', {})], 0, []);
  const documents = input.packet.documents.map((tree, index) =>
    readDocument(tree, pagesOf(input, file, index)),
  );
  const reading = {
    packet: input.packet,
    locale: input.locale,
    otherLocales: input.otherLocales,
    attachments: input.attachments ?? [],
    required: input.required ?? [],
    pagesMade: input.pages.length,
    file,
    documents,
  };
  return reportOn(
    rules.flatMap((rule) => rule(reading)),
    file.pages.length,
    documents,
  );
}

function pagesOf(input: VerificationInput, file: ReadBack, document: number): DocumentReading['pages'] {
  return file.pages.flatMap((text, index) => {
    const made = input.pages[index];
    return made?.document === document
      ? [{ text, number: index + 1, page: made.page, pages: made.pages }]
      : [];
  });
}
