import { readFileSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';

import { createNodeWorkspace, formatDiagnostics, makePacket, openCase, prepare } from '../../src/index.ts';
import type { FinishedPacket, OpenCase, Prepared, Result } from '../../src/index.ts';

const root = resolve(import.meta.dirname, '../..');
const date = '2026-11-25';

/** References of the example cases, sorted. */
export const exampleCases = readdirSync(resolve(root, 'examples/cases'))
  .map((name) => name.replace(/\.yaml$/, ''))
  .sort((a, b) => a.localeCompare(b));

export const exampleLanguages = ['en', 'es'] as const;

type Ready = Awaited<ReturnType<typeof prepare>>;
let prepared: Promise<Ready> | undefined;

/** An example case, read and compared; `change` alters its text first. */
export async function openExample(
  reference: string,
  change: (text: string) => string = (text) => text,
): Promise<{ readonly prepared: Prepared; readonly open: OpenCase }> {
  prepared ??= prepare(createNodeWorkspace(), root);
  const ready = demand(await prepared);
  const read = (file: string): { file: string; text: string } => ({
    file,
    text: readFileSync(resolve(root, file), 'utf8'),
  });
  const source = read(`examples/cases/${reference}.yaml`);
  const files = { case: { ...source, text: change(source.text) }, clinic: read('examples/clinic.yaml') };
  return { prepared: ready, open: demand(openCase(ready, { files, date })) };
}

/** The packet of an example case, made by the product itself. */
export async function makeExample(
  reference: string,
  language: string,
  change?: (text: string) => string,
): Promise<FinishedPacket> {
  const example = await openExample(reference, change);
  return demand(await makePacket(example.prepared, example.open, language));
}

export function demand<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(formatDiagnostics(result.diagnostics));
}
