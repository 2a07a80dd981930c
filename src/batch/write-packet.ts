import { join } from 'node:path';

import { canonicalJson, sha256 } from '../io/digest.ts';
import type { Workspace } from '../io/workspace.ts';
import type { FinishedPacket } from '../model/packet.ts';

/** Where a packet was put, and what tells whether it is still the same. */
export interface WrittenPacket {
  readonly pdf: string;
  readonly record: string;
  /** The HTML edition, if there is one. */
  readonly html?: string;
  /** SHA-256 of the PDF. */
  readonly sha256: string;
}

/** Writes a packet, or one document of it, and the record of that to OUT/CASE/LANGUAGE. Each file is whole or not there. */
export async function writePacket(
  workspace: Workspace,
  out: string,
  packet: FinishedPacket,
): Promise<WrittenPacket> {
  const folder = join(out, packet.caseReference, packet.language);
  const name = stemOf(packet);
  const written = {
    pdf: join(folder, `${name}.pdf`),
    record: join(folder, `${name}.json`),
    sha256: sha256(packet.pdf),
    ...(packet.html === undefined ? {} : { html: join(folder, `${name}.html`) }),
  };
  await workspace.write(written.pdf, packet.pdf);
  if (packet.html !== undefined && written.html !== undefined)
    await workspace.write(written.html, packet.html.bytes);
  await workspace.write(written.record, describe(packet, written));
  return written;
}

/** Large print has a name of its own: it stands beside the other edition and never overwrites it. */
function stemOf({ name, edition }: FinishedPacket): string {
  return edition === 'standard' ? name : `${name}-${edition}`;
}

/** What stands beside the PDF: its digest and that of its HTML edition, the provenance record that is also inside it, and the report of its check. */
function describe(packet: FinishedPacket, { sha256: digest }: WrittenPacket): string {
  const { pdf, html, provenance, verification } = packet;
  const name = stemOf(packet);
  const file = { name: `${name}.pdf`, bytes: pdf.length, pages: verification.pages, sha256: digest };
  const page =
    html === undefined
      ? {}
      : {
          html: { name: `${name}.html`, bytes: html.bytes.length, sha256: html.sha256 },
          htmlVerification: html.verification,
        };
  const sorted: unknown = JSON.parse(canonicalJson({ file, ...page, provenance, verification }));
  return `${JSON.stringify(sorted, null, 2)}\n`;
}
