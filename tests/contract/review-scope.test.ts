import { describe, expect, it } from 'vitest';

import { composeDocument } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { Locale } from '../../src/model/locale.ts';
import { isInScope } from '../../src/model/review-scope.ts';
import { demand, exampleCases, openExample } from '../helpers/example-packets.ts';

// Whoever has reviewed a document has read all the words that it prints: none comes from outside its scope.

/** The locale, and every key that is asked of it. */
function listening(locale: Locale): { readonly locale: Locale; readonly asked: Set<string> } {
  const asked = new Set<string>();
  const { text, has } = locale.translator;
  const translator: Locale['translator'] = {
    has,
    text: (key, variables) => {
      asked.add(key);
      return text(key, variables);
    },
  };
  return { locale: { ...locale, translator }, asked };
}

describe('the words that a document prints', () => {
  it.each(exampleCases)('are all in the scope of its review, in %s', async (reference) => {
    const { prepared, open } = await openExample(reference);
    const { evidence, templates } = prepared;
    const identity = identifyPacket(prepared, open, 'en');
    for (const kind of identity.kinds) {
      const { locale, asked } = listening(identity.locale);
      demand(composeDocument({ ...identity, ...open, evidence, templates, kind, documentId: 'T', locale }));
      expect(asked.size).toBeGreaterThan(10);
      expect([...asked].filter((key) => !isInScope(key, [kind]))).toEqual([]);
    }
  });
});
