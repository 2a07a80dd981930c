import { describe, expect, it } from 'vitest';

import { tooPassive } from '../../../src/readability/index.ts';
import { findPassives } from '../../../src/model/passive-voice.ts';
import type { DocumentTree } from '../../../src/model/document.ts';
import { realLocale } from '../../helpers/compose-inputs.ts';
import { exampleCases, exampleLanguages, demand, openExample } from '../../helpers/example-packets.ts';
import { composePacket } from '../../../src/compose-packet.ts';
import { identifyPacket } from '../../../src/identify-packet.ts';
import { para } from '../../helpers/sample-documents.ts';
import { smallTree } from '../../helpers/small-tree.ts';

async function found(tag: string, text: string): Promise<readonly string[]> {
  const { passive } = await realLocale(tag);
  return passive === null ? [] : findPassives([text], passive).passive;
}

describe('a passive sentence', () => {
  it.each([
    ['en', 'The larger part is taken out.'],
    ['en', 'The wound was not closed.'],
    ['en', 'You will be told again.'],
    ['es', 'La parte más grande es retirada.'],
    ['es', 'Los números no son conocidos.'],
  ])('is found, in %s: %s', async (tag, text) => {
    expect(await found(tag, text)).toEqual([text]);
  });

  it.each([
    ['en', 'The surgeon takes out the larger part.'],
    ['en', 'You are not sure.'],
    ['en', 'Your leg is red.'],
    ['en', 'One person is in bed, and the doctor closed the door.'],
    ['en', 'It is what you asked.'],
    ['es', 'El cirujano retira la parte más grande.'],
    ['es', 'Su pierna está hinchada.'],
    ['es', 'Es una salida.'],
  ])('is not found where somebody does something or is something, in %s: %s', async (tag, text) => {
    expect(await found(tag, text)).toEqual([]);
  });
});

describe('a document with many of them', () => {
  const active = 'The surgeon helps you.';
  const passive = 'You are helped.';
  const treeOf = (texts: readonly string[]): DocumentTree => smallTree(texts.map((text) => para(text)));
  const repeat = (text: string, count: number): readonly string[] =>
    Array.from({ length: count }, () => text);

  it('draws a warning over one in five, and none at one in five', async () => {
    const { passive: words } = await realLocale('en');
    const warned = (actives: number, passives: number): number =>
      tooPassive(treeOf([...repeat(active, actives), ...repeat(passive, passives)]), words).length;
    expect([warned(8, 2), warned(8, 3), warned(0, 9), warned(0, 10)]).toEqual([0, 1, 0, 1]);
  });

  it('is not judged in a language without words for it', () => {
    expect(tooPassive(treeOf(repeat(passive, 20)), null)).toEqual([]);
  });
});

describe.each(exampleCases)('the pages of %s', (reference) => {
  it.each(exampleLanguages)('say who does what in four of five sentences, in %s', async (language) => {
    const { prepared, open } = await openExample(reference);
    const identity = identifyPacket(prepared, open, language);
    const { documents } = demand(composePacket(prepared, open, identity));
    const patients = documents.filter(({ audience }) => audience === 'patient');
    expect(patients.flatMap((tree) => tooPassive(tree, identity.locale.passive))).toEqual([]);
  });
});
