import { beforeAll, describe, expect, it } from 'vitest';

import { composePacket } from '../../../src/compose-packet.ts';
import { identifyPacket } from '../../../src/identify-packet.ts';
import { documentKinds, packetDocuments } from '../../../src/model/codes.ts';
import type { DocumentTree, TextRun } from '../../../src/model/document.ts';
import { expectedText } from '../../../src/model/tree-text.ts';
import { allLanguages } from '../../helpers/all-languages.ts';
import { blocksOfType, realLocale, textOf } from '../../helpers/compose-inputs.ts';
import { demand, openExample } from '../../helpers/example-packets.ts';

const reference = 'QB-1141';
const asks = 'documents: [contents, homecare, warning-signs, vitamins, language-notice]';

async function trees(language: string, change = ''): Promise<readonly DocumentTree[]> {
  const { prepared, open } = await openExample(reference, (text) =>
    text.replace(asks, change === '' ? asks : change),
  );
  return demand(composePacket(prepared, open, identifyPacket(prepared, open, language))).documents;
}

function one(documents: readonly DocumentTree[], kind: string): DocumentTree {
  const found = documents.find((tree) => tree.kind === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
}

describe('the first page of a packet', () => {
  it('names every other document of the patient by its title, and what it is for', async () => {
    const documents = await trees('en');
    const rows = blocksOfType(one(documents, 'contents'), 'strip').flatMap((strip) => strip.rows);
    const others = documents.filter(({ kind }) => kind !== 'contents');
    expect(rows.map(({ name }) => name)).toEqual(others.map(({ title }) => title));
    expect(textOf(one(documents, 'contents'))).toContain('Put “Call now” on your fridge.');
  });

  it('leaves out the sheet for the clinician', async () => {
    const documents = await trees('en', 'documents: [contents, homecare, clinician-sheet]');
    const rows = blocksOfType(one(documents, 'contents'), 'strip').flatMap((strip) => strip.rows);
    expect(rows.map(({ name }) => name)).toEqual(['My time at home']);
  });

  it.each([
    ['choosing', 'What should I choose?'],
    ['operation', 'What happens in my operation?'],
    ['going-home', 'What do I do at home?'],
  ] as const)('begins the packet %s with what it answers', async (packet, question) => {
    const documents = await trees('en', `packet: ${packet}`);
    expect(documents.map(({ kind }) => kind)).toEqual(packetDocuments[packet]);
    expect(documents[0]?.blocks[0]).toMatchObject({ type: 'cover', question });
  });
});

describe('the notice of language help', () => {
  let spanish: DocumentTree;
  beforeAll(async () => {
    spanish = one(await trees('es'), 'language-notice');
  });

  function runs(node: unknown): readonly TextRun[] {
    if (typeof node !== 'object' || node === null) return [];
    if ('type' in node && node.type === 'text' && 'value' in node) return [node as TextRun];
    return Object.values(node).flatMap(runs);
  }

  it('says in each language that the clinic lists, and marked as such, whom to call', () => {
    const said = runs(spanish.blocks).filter(({ value }) => value.includes('555-0128'));
    expect(said.map(({ language }) => language ?? 'es')).toEqual(['en', 'es']);
    expect(said[0]?.value).toContain('An interpreter is free for you');
    expect(said[1]?.value).toContain('El servicio de intérprete es gratis');
  });

  it('names each language in itself, and marks the name as being in it', () => {
    const names = blocksOfType(spanish, 'heading').filter(({ level }) => level === 3);
    expect(names.map(({ text, language }) => [text, language])).toEqual([
      ['English', 'en'],
      ['Español', undefined],
    ]);
    expect(expectedText(spanish).filter(({ kind }) => kind === 'heading')).toContainEqual(
      expect.objectContaining({ text: 'English', foreign: ['English'] }),
    );
  });
});

it('every kind of document for a patient has a line for the first page', async () => {
  const { prepared } = await openExample(reference);
  const others = documentKinds.filter((kind) => kind !== 'contents' && kind !== 'clinician-sheet');
  for (const locale of prepared.locales.values())
    expect(others.filter((kind) => !locale.translator.has(`contents.about.${kind}`))).toEqual([]);
  expect(expectedText(one(await trees('en'), 'contents')).length).toBeGreaterThan(8);
});

/** In large print they may take two pages: so the line cannot say which. */
it.each(allLanguages)('what to put on the fridge is named as its heading names it, in %s', async (tag) => {
  const { translator } = await realLocale(tag);
  expect(translator.text('contents.about.warning-signs')).toContain(
    translator.text('warning-signs.now.heading'),
  );
});
