import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

interface Cruise {
  readonly summary: {
    readonly totalCruised: number;
    readonly violations: readonly { readonly rule: { readonly name: string }; readonly from: string }[];
  };
}

const root = resolve(import.meta.dirname, '../..');
const config = join(root, 'tests/tooling/dependency-cruiser.mjs');

function cruise(folder: string): Cruise {
  const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const args = [program, '--config', config, '--output-type', 'json', 'src'];
  return JSON.parse(
    execFileSync('node', args, { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 28 }),
  ) as Cruise;
}

/** A small tree with one file per broken rule, so that the checker itself is checked. */
function plant(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-imports-'));
  writeFileSync(
    join(folder, 'tsconfig.json'),
    '{"compilerOptions":{"module":"nodenext","allowImportingTsExtensions":true,"noEmit":true}}',
  );
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(resolve(folder, path, '..'), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

describe('import rules', () => {
  it('hold in the whole of src, and every file of src was looked at', () => {
    const result = cruise(root);
    const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((name) =>
      /\.tsx?$/.test(name),
    );
    expect(result.summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`)).toEqual([]);
    expect(result.summary.totalCruised).toBeGreaterThanOrEqual(files.length);
  });

  it('catch a stage that imports a stage, opens a file, or takes more than a type from io, and a circle', () => {
    const folder = plant({
      'src/io/workspace.ts': 'export interface Workspace { a: 1 } export const open = 1;',
      'src/evidence/index.ts':
        "import type { Workspace } from '../io/workspace.ts'; export const b: Workspace = { a: 1 };",
      'src/compare/index.ts': "import { b } from '../evidence/index.ts'; export const c = b;",
      'src/compare/read.ts': "import { readFileSync } from 'node:fs'; export const d = readFileSync;",
      'src/verify/index.ts': "import { open } from '../io/workspace.ts'; export const e = open;",
      'src/model/a.ts': "import { g } from './b.ts'; export const f = () => g;",
      'src/model/b.ts': "import { f } from './a.ts'; export const g = () => f;",
      'src/diagnostics/x.ts': "import { f } from '../model/a.ts'; export const h = f;",
    });
    const found = new Set(cruise(folder).summary.violations.map(({ rule }) => rule.name));
    for (const rule of [
      'stage-isolation',
      'fs-only-in-io',
      'io-as-type-only',
      'no-circular',
      'diagnostics-is-leaf',
    ])
      expect(found).toContain(rule);
    expect(cruise(folder).summary.violations.some(({ from }) => from === 'src/evidence/index.ts')).toBe(
      false,
    );
  });
});
