import { readFileSync } from 'node:fs';

import { composePacket } from '../../src/compose-packet.ts';
import { attachRecord, identifyPacket, withFonts } from '../../src/identify-packet.ts';
import { documentKinds } from '../../src/model/codes.ts';
import type { PacketTree, VerificationReport } from '../../src/model/packet.ts';
import type { PagePlace } from '../../src/verify/page-furniture.ts';
import { recordProvenance } from '../../src/provenance/index.ts';
import { reflowPacket } from '../../src/reflow/index.ts';
import { renderPdf } from '../../src/render/index.ts';
import { verifyPacket } from '../../src/verify/index.ts';
import { allLanguages } from './all-languages.ts';
import { demand, exampleCases, openExample } from './example-packets.ts';

export interface AskedPacket {
  readonly name: string;
  readonly reference: string;
  readonly language: string;
  readonly largePrint?: boolean;
  /** Alters the text of the case. */
  readonly change?: (text: string) => string;
}

/** The text of a case with other entries of one line each. */
function withLine(key: string, value: string): (text: string) => string {
  return (text) => text.replace(new RegExp(`^${key}: .*$`, 'm'), `${key}: ${value}`);
}

export const inEveryLanguage = withLine('languages', `[${allLanguages.join(', ')}]`);

/** Cases of people who have not chosen yet. */
export const comparisonCases = exampleCases.filter((reference) =>
  /^documents: .*\bcomparison\b/m.test(readFileSync(`examples/cases/${reference}.yaml`, 'utf8')),
);

const chosen = 'QB-1128';
const beforeTheChoice: readonly string[] = ['comparison', 'questions', 'sources'];
const afterTheChoice = withLine(
  'documents',
  `[${documentKinds.filter((kind) => !beforeTheChoice.includes(kind)).join(', ')}]`,
);

/**
 * Every language has one of the cases that compare, in turn, and the case after a choice with all other documents. So each
 * language has every kind of document, and each case stands in several languages; all cases in all languages would take
 * a quarter of an hour. Besides these: large print in scripts of their own, and drafts from both directions.
 */
export const languagePackets: readonly AskedPacket[] = [
  ...allLanguages.flatMap((language, index): AskedPacket[] => {
    const reference = comparisonCases[index % comparisonCases.length] ?? '';
    return [
      { name: `${reference}-${language}`, reference, language },
      { name: `${chosen}-${language}`, reference: chosen, language, change: afterTheChoice },
    ];
  }),
  ...['ar', 'hi', 'ko', 'zh-Hans'].map((language) => {
    const reference = 'QB-1141';
    return { name: `${reference}-${language}-large`, reference, language, largePrint: true };
  }),
  ...['ar', 'es'].map((language) => {
    const reference = 'QB-1141';
    return {
      name: `${reference}-${language}-draft`,
      reference,
      language,
      change: withLine('example', 'false'),
    };
  }),
];

export interface PrintedPacket {
  readonly name: string;
  /** As the edition prints it. */
  readonly packet: PacketTree;
  readonly pdf: Uint8Array;
  readonly pages: readonly (PagePlace & { readonly document: number })[];
  readonly report: VerificationReport;
}

/** A packet as the product makes it, with its trees and the place of each page beside it. */
export async function printPacket(asked: AskedPacket): Promise<PrintedPacket> {
  const { name, language, largePrint = false, change } = asked;
  const { prepared, open } = await openExample(asked.reference, (text) =>
    inEveryLanguage(change === undefined ? text : change(text)),
  );
  const identity = identifyPacket(prepared, { ...open, largePrint }, language);
  const packet = reflowPacket(demand(composePacket(prepared, open, identity)), identity.edition);
  const record = recordProvenance({ ...(await withFonts(identity, packet)), packet });
  const attachments = [attachRecord(record)];
  const made = { createdOn: open.date, producer: `plainleaf ${prepared.program.version}`, attachments };
  const { pdf, pages } = demand(
    await renderPdf(packet, { ...made, written: [open.files.case, open.files.clinic] }),
  );
  const report = await verifyPacket({ ...identity, pdf, pages, packet, attachments });
  return { name, packet, pdf, pages, report };
}
