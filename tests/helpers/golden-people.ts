import { readFileSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';

import { composeDocument } from '../../src/compose/index.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { createNodeWorkspace, openCase, prepare } from '../../src/index.ts';
import type { OpenCase, Prepared } from '../../src/index.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { demand } from './example-packets.ts';
import { testDay } from './known-codes.ts';

const root = resolve(import.meta.dirname, '../..');
export const peopleFolder = resolve(root, 'tests/golden/comparison');

/** An invented person, opened as the product opens a case, and what the comparison for the patient prints. */
export interface GoldenPerson {
  readonly slug: string;
  readonly open: OpenCase;
  /** Figures of the patient's page by cell, in the order of the page, each once. */
  readonly printed: ReadonlyMap<string, readonly string[]>;
}

/** File names of the people, without ending, in order. */
export const slugs: readonly string[] = readdirSync(peopleFolder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace(/\.yaml$/, ''))
  .sort((a, b) => (a < b ? -1 : 1));

let ready: Promise<Prepared> | undefined;

/** Opens a person of the folder with the clinic where their surgeon works. */
export async function openPerson(slug: string): Promise<GoldenPerson> {
  const { prepared, open } = await openUnprinted(slug);
  return { slug, open, printed: findPrinted(prepared, open) };
}

/** The same, without composing a page. */
export async function openUnprinted(slug: string): Promise<{ prepared: Prepared; open: OpenCase }> {
  ready ??= prepare(createNodeWorkspace(), root).then(demand);
  const prepared = await ready;
  const read = (file: string): { file: string; text: string } => ({
    file,
    text: readFileSync(resolve(root, file), 'utf8'),
  });
  const source = read(`tests/golden/comparison/${slug}.yaml`);
  const abroad = source.text.includes('surgeon: harrow');
  const clinic = read(abroad ? 'tests/golden/comparison/clinics/metric.yaml' : 'examples/clinic.yaml');
  const open = demand(openCase(prepared, { files: { case: source, clinic }, date: testDay }));
  return { prepared, open };
}

function findPrinted(prepared: Prepared, open: OpenCase): ReadonlyMap<string, readonly string[]> {
  const { evidence, templates } = prepared;
  const identity = identifyPacket(prepared, open, 'en');
  const tree = demand(
    composeDocument({ ...identity, ...open, evidence, templates, kind: 'comparison', documentId: 'GC' }),
  );
  const printed = new Map<string, string[]>();
  for (const { cell, value } of expectedText(tree).flatMap(({ figures }) => figures)) {
    const known = printed.get(cell) ?? [];
    if (!known.includes(value)) printed.set(cell, [...known, value]);
  }
  return printed;
}
