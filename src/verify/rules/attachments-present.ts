import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** What was to be attached (the provenance record) is inside, byte for byte. */
export const attachmentsPresent: Rule = ({ attachments, file }) =>
  attachments
    .filter(({ name, content }) => !sameBytes(file.attachments.get(name), content))
    .map(({ name }) => finding('VERIFY_ATTACHMENT', { at: `attachment ${name}` }));

function sameBytes(found: Uint8Array | undefined, wanted: Uint8Array): boolean {
  return found?.length === wanted.length && found.every((byte, index) => byte === wanted[index]);
}
