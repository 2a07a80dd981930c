/**
 * One warm process with all kept tests in it. Lines of JSON come in, each naming a mutant and the tests to try in
 * order; a line goes out for each: the test that failed, or none. `measure` as first line: every test once, with what
 * it passed.
 */
import { createInterface } from 'node:readline';
import { resolve } from 'node:path';
import fc from 'fast-check';

import { readGolden, slugs } from './golden-people.kept.ts';
import { it, keepFile, kept } from './keep-tests.ts';
import type { KeptTest } from './keep-tests.ts';
import { beginTest, readCoverage, switchMutant } from './switch-mutants.ts';

export interface Measured {
  readonly name: string;
  readonly ms: number;
  readonly passes: readonly string[];
}

const [root = '.', ...files] = process.argv.slice(2);
const out = (value: unknown): void => void process.stdout.write(`${JSON.stringify(value)}\n`);

/** The same people every time, and no search for the smallest one: a failure is enough. */
fc.configureGlobal({ seed: 1, endOnFailure: true });

async function failsAt(test: KeptTest): Promise<string | null> {
  try {
    await test.run();
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

async function measure(): Promise<object> {
  const times: { name: string; ms: number }[] = [];
  for (const [at, test] of kept.entries()) {
    beginTest(String(at));
    const began = performance.now();
    const failure = await failsAt(test);
    times.push({ name: test.name, ms: performance.now() - began });
    if (failure !== null) throw new Error(`without any mutant, this fails: ${test.name}: ${failure}`);
  }
  beginTest(undefined);
  const { imports, tests } = readCoverage();
  return {
    imports,
    tests: times.map(({ name, ms }, at) => ({ name, ms, passes: tests.get(String(at)) ?? [] })),
  };
}

/** The first of the tests that fails, or null. */
async function judge(mutant: string, tests: readonly number[]): Promise<number | null> {
  switchMutant(mutant);
  for (const at of tests) {
    const test = kept[at];
    if (test !== undefined && (await failsAt(test)) !== null) return at;
  }
  return null;
}

switchMutant(process.env['MUTANT']);
try {
  for (const file of files) await keepFile(file, resolve(root, file));
} catch (error) {
  out({ broken: String(error) });
  process.exit(0);
}
for (const slug of slugs)
  it(`golden person ${slug}`, async () => {
    const { read, golden } = await readGolden(slug);
    if (read !== golden) throw new Error('reads otherwise');
  });
out({ ready: kept.length });

for await (const line of createInterface({ input: process.stdin })) {
  const asked = JSON.parse(line) as { measure?: true; mutant: string; tests: readonly number[] };
  if (asked.measure) out(await measure());
  else out({ mutant: asked.mutant, caught: await judge(asked.mutant, asked.tests) });
}
