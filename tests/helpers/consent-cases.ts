import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import type { OpenCase, Prepared } from '../../src/index.ts';
import { conditionsOf } from '../../src/score/check-consent.ts';
import type { ConsentInput } from '../../src/score/check-consent.ts';
import { demand, openExample } from './example-packets.ts';

const documents = /^documents: .*$/m;

/** What makes an example case one whose packet is the record of a talk about this option. */
export function consentAbout(chosen: string, more: (text: string) => string = (text) => text) {
  return (text: string): string =>
    more(
      text
        .replace(documents, 'documents: [consent, clinician-sheet]')
        .replace(/^ {2}chosen: .*\n/m, '')
        .replace(/^plan:/m, `  chosen: ${chosen}\nplan:`),
    );
}

export const withInterpreter = (text: string): string =>
  `${text.replace(/^interpreter: .*\n?/m, '').trimEnd()}\ninterpreter: {needed: true, language: es}\n`;

/** An operation under study, with somebody who interprets: every element applies. */
export const wholeCase = ['QB-1115', consentAbout('plication', withInterpreter)] as const;

export interface ConsentCase {
  readonly prepared: Prepared;
  readonly open: OpenCase;
  readonly documents: readonly DocumentTree[];
  readonly input: ConsentInput;
}

export async function consentCase(
  [reference, change]: readonly [string, (text: string) => string],
  language: string,
): Promise<ConsentCase> {
  const { prepared, open } = await openExample(reference, change);
  const identity = identifyPacket(prepared, open, language);
  const made = demand(composePacket(prepared, open, identity)).documents;
  const elements = prepared.evidence.consentElements;
  const input = { documents: made, locale: identity.locale, elements, conditions: conditionsOf(open) };
  return { prepared, open, documents: made, input };
}
