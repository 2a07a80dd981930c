/** Copies the project to a folder of its own and puts every mutant of the sources into it, each behind a switch. */
import { cpSync, mkdtempSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';

export interface Mutant {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly mutator: string;
  readonly replacement: string;
}

const copied = [
  'src',
  'tests',
  'examples',
  'locales',
  'templates',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
];
const quiet = {
  isDebugEnabled: () => false,
  debug: () => undefined,
  info: () => undefined,
  warn: () => undefined,
};

/** Every source of a folder, in order of their paths. */
export function listSources(root: string, folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`)
    .sort();
}

/** The folder of the copy, and what can be switched on in it. */
export async function instrument(
  root: string,
  folder: string,
): Promise<{ copy: string; mutants: readonly Mutant[] }> {
  const copy = mkdtempSync(join(tmpdir(), 'mutation-'));
  for (const name of copied) cpSync(join(root, name), join(copy, name), { recursive: true });
  symlinkSync(resolve(root, 'node_modules'), join(copy, 'node_modules'));
  const sources = listSources(root, folder).map((name) => ({
    name,
    mutate: true,
    content: readFileSync(join(root, name), 'utf8'),
  }));
  const { files, mutants } = await new Instrumenter(quiet as never).instrument(sources, {
    plugins: null,
    excludedMutations: [],
    ignorers: [],
    mutator: { plugins: null, excludedMutations: [] },
  } as never);
  for (const { name, content } of files) writeFileSync(join(copy, name), countOnlyWhileMeasured(content));
  replaceTestRunner(copy);
  return {
    copy,
    mutants: mutants.map(({ id, fileName, location, mutatorName, replacement }) => ({
      id,
      file: fileName,
      line: location.start.line + 1,
      column: location.start.column + 1,
      mutator: mutatorName,
      replacement,
    })),
  };
}

/** Counting what is passed takes most of the time, and is wanted only once. */
function countOnlyWhileMeasured(content: string): string {
  return content.replace('var c = cov.static;', 'if (ns.measured) return; var c = cov.static;');
}

/**
 * In the copy, tests are kept as functions instead of being run by vitest, and properties look at fewer people: what
 * a property tells from chance it tells within a few, and each mutant pays for all of them.
 */
function replaceTestRunner(copy: string): void {
  const keeper = join(copy, 'tests/tooling/mutation/keep-tests.ts');
  for (const name of listSources(copy, 'tests')) {
    const text = readFileSync(join(copy, name), 'utf8');
    writeFileSync(
      join(copy, name),
      text.replace("from 'vitest'", `from '${keeper}'`).replace(/numRuns: \d+/g, 'numRuns: 4'),
    );
  }
}
