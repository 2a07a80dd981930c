import { describe, expect, it } from 'vitest';
import { composePacket } from '../../../src/compose-packet.ts';
import { identifyPacket } from '../../../src/identify-packet.ts';
import { sha256 } from '../../../src/io/digest.ts';
import { makeHtml } from '../../../src/make-html.ts';
import { demand, openExample } from '../../helpers/example-packets.ts';

async function composed(reference: string) {
  const { prepared, open } = await openExample(reference);
  const identity = identifyPacket(prepared, open, 'es');
  return { identity, packet: demand(composePacket(prepared, open, identity)) };
}

describe('the HTML edition of a packet', () => {
  it('is handed out with its digest and what was found on it, figures among it', async () => {
    const { identity, packet } = await composed('QB-0755');
    const { bytes, sha256: digest, verification } = demand(makeHtml(packet, identity));
    expect(digest).toBe(sha256(bytes));
    expect(verification.passed).toBe(true);
    expect(verification.figures).toBeGreaterThan(10);
    expect(verification.pages).toBe(packet.documents.length);
    expect(bytes.length).toBeLessThan(400_000);
  });

  it('is withheld where words that its kind must say are not on it', async () => {
    const { identity, packet } = await composed('QB-1141');
    const required = packet.documents.map(() => ['consent.title']);
    const made = makeHtml(packet, { ...identity, required });
    expect(made.ok).toBe(false);
    expect(made.ok ? [] : made.diagnostics.map(({ code }) => code)).toContain('VERIFY_STATEMENT_ABSENT');
  });
});
