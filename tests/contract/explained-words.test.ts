import { describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { composeDocument } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import { findUnexplained } from '../../src/model/explained-terms.ts';
import type { GlossaryTerm } from '../../src/model/glossary.ts';
import { demand, exampleCases, exampleLanguages, openExample } from '../helpers/example-packets.ts';
import { openPerson, slugs } from '../helpers/golden-people.ts';

const aboutChoices = ['comparison', 'questions', 'sources'] as const;

/** "comparison: reflux" for each word that a patient's document does not explain where it is met first. */
function unexplainedIn(trees: readonly DocumentTree[], glossary: readonly GlossaryTerm[]): readonly string[] {
  return trees
    .filter(({ audience }) => audience === 'patient')
    .flatMap((tree) =>
      findUnexplained(tree, glossary).map(({ term, piece }) => `${tree.kind}: ${term.id} in “${piece.text}”`),
    );
}

describe.each(exampleLanguages)('medical words on the pages for patients, in %s,', (language) => {
  it.each(exampleCases)('are explained where a reader meets them first, in %s', async (reference) => {
    const { prepared, open } = await openExample(reference);
    const identity = identifyPacket(prepared, open, language);
    const { documents } = demand(composePacket(prepared, open, identity));
    expect(documents.length).toBeGreaterThan(1);
    expect(unexplainedIn(documents, identity.locale.glossary)).toEqual([]);
  });

  it.each(slugs)('are explained in the comparison, questions and sources of %s', async (slug) => {
    const { trees, glossary } = await choosingPages(slug, language);
    expect(unexplainedIn(trees, glossary)).toEqual([]);
  });

  it('are found in these documents at all, all but those that only other people need', async () => {
    const used = new Set<string>();
    for (const slug of slugs) {
      const { trees, glossary } = await choosingPages(slug, language);
      // Without a single explanation every term that is used is unexplained.
      const bare = glossary.map((term) => ({ ...term, explained: ['\uE000'] }));
      for (const { term } of trees.flatMap((tree) => findUnexplained(tree, bare))) used.add(term.id);
    }
    expect([...used].length).toBeGreaterThan(15);
  });
});

interface ChoosingPages {
  readonly trees: readonly DocumentTree[];
  readonly glossary: readonly GlossaryTerm[];
}

const composed = new Map<string, ChoosingPages>();

async function choosingPages(slug: string, language: string): Promise<ChoosingPages> {
  const key = `${slug} ${language}`;
  const before = composed.get(key);
  if (before !== undefined) return before;
  const { prepared } = await openExample('QB-1041');
  const { open } = await openPerson(slug);
  const { evidence, templates } = prepared;
  const identity = identifyPacket(prepared, open, language);
  const trees = aboutChoices.map((kind) =>
    demand(composeDocument({ ...identity, ...open, evidence, templates, kind, documentId: 'GC' })),
  );
  const made = { trees, glossary: identity.locale.glossary };
  composed.set(key, made);
  return made;
}

describe('a medical word that nobody explained', () => {
  const plant = (text: string): string =>
    text.replace('I want to see my children grow up.', 'I do not want dumping.');

  it('is a warning of the packet, with the document and the word', async () => {
    const { prepared, open } = await openExample('QB-1041', plant);
    const composed = composePacket(prepared, open, identifyPacket(prepared, open, 'en'));
    const warnings = composed.ok ? composed.warnings : [];
    const found = warnings.filter(({ code }) => code === 'TERM_UNEXPLAINED');
    expect(found.map(({ severity, message }) => `${severity}: ${message.split(' (')[0] ?? ''}`)).toEqual([
      'warning: comparison does not explain "dumping" where a reader meets it first',
    ]);
  });

  it('draws no warning where nothing is planted', async () => {
    const { prepared, open } = await openExample('QB-1041');
    const composed = composePacket(prepared, open, identifyPacket(prepared, open, 'en'));
    const warnings = composed.ok ? composed.warnings : [];
    expect(composed.ok).toBe(true);
    expect(warnings.filter(({ code }) => code === 'TERM_UNEXPLAINED')).toEqual([]);
  });
});
