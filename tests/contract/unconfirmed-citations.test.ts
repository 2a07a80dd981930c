import { expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { demand, exampleCases, openExample } from '../helpers/example-packets.ts';

it.each(exampleCases)(
  'what is still open in %s counts every study that its sources mark as not yet confirmed',
  async (reference) => {
    const { prepared, open } = await openExample(reference, (text) =>
      text.replace(/^documents: .*$/m, 'documents: [sources]'),
    );
    const identity = identifyPacket(prepared, open, 'en');
    const { documents } = demand(composePacket(prepared, open, identity));
    const marked = documents.flatMap(expectedText).filter(({ text }) => text.includes('Not yet confirmed:'));
    const [point] = identity.openPoints.filter(({ code }) => code === 'citations');
    expect(marked.length).toBeGreaterThan(0);
    expect(point).toEqual({ code: 'citations', count: marked.length });
  },
);

it('counts none in pages that say nothing of studies', async () => {
  const { prepared, open } = await openExample('QB-1041', (text) =>
    text.replace(/^documents: .*$/m, 'documents: [questions, language-notice]'),
  );
  const codes = identifyPacket(prepared, open, 'en').openPoints.map(({ code }) => code);
  expect(codes).not.toContain('citations');
  expect(codes).toContain('words');
});
