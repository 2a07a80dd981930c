import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { PacketIdentity } from '../../src/identify-packet.ts';
import { makeHtml } from '../../src/make-html.ts';
import type { HtmlEdition, PacketTree } from '../../src/model/packet.ts';
import { demand, openExample } from './example-packets.ts';
import { inEveryLanguage } from './language-packets.ts';

export interface ExamplePage {
  readonly packet: PacketTree;
  readonly identity: PacketIdentity;
  readonly edition: HtmlEdition;
  readonly html: string;
}

const made = new Map<string, Promise<ExamplePage>>();

/** The HTML edition of an example case, without its PDF; made once. A draft is of the same case, not marked as an example. */
export function examplePage(
  reference: string,
  language: string,
  state: 'example' | 'draft' = 'example',
): Promise<ExamplePage> {
  const key = `${reference} ${language} ${state}`;
  const page = made.get(key) ?? makePage(reference, language, state);
  made.set(key, page);
  return page;
}

async function makePage(reference: string, language: string, state: string): Promise<ExamplePage> {
  const { prepared, open } = await openExample(reference, (text) => {
    const own = state === 'draft' ? text.replace(/^example: true$/m, 'example: false') : text;
    return /^languages: .*/m.exec(own)?.[0].includes(language) === true ? own : inEveryLanguage(own);
  });
  const identity = identifyPacket(prepared, open, language);
  const packet = demand(composePacket(prepared, open, identity));
  const edition = demand(makeHtml(packet, identity));
  return { packet, identity, edition, html: new TextDecoder().decode(edition.bytes) };
}
