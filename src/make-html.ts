import { failure, success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import type { PacketIdentity } from './identify-packet.ts';
import { sha256 } from './io/digest.ts';
import type { HtmlEdition, PacketTree } from './model/packet.ts';
import { verifyHtml } from './verify/index.ts';
import { renderHtml } from './web/index.ts';

/** The same documents as one HTML page, read back as the PDF is: a page that does not come back whole is withheld. */
export function makeHtml(packet: PacketTree, identity: PacketIdentity): Result<HtmlEdition> {
  const page = { ...identity, caseReference: packet.caseReference };
  const html = renderHtml(packet, identity.locale, page);
  const verification = verifyHtml({ ...identity, html, packet, page });
  if (!verification.passed) return failure(verification.findings);
  const bytes = new TextEncoder().encode(html);
  return success({ bytes, sha256: sha256(bytes), verification });
}
