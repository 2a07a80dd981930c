import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
  .trim()
  .split('\n');

function linesOf(path: string): readonly string[] {
  return readFileSync(join(root, path), 'utf8').split('\n');
}

describe('the tree', () => {
  it('has at its top level exactly what was agreed', () => {
    const top = [...new Set(files.map((file) => file.split('/')[0] ?? ''))].sort((a, b) =>
      a.localeCompare(b),
    );
    const agreed = [
      '.ci',
      '.gitignore',
      'DEVELOPERS.md',
      'examples',
      'locales',
      'package-lock.json',
      'package.json',
      'README.md',
      'src',
      'templates',
      'tests',
      'tsconfig.json',
    ];
    expect(top).toEqual([...agreed].sort((a, b) => a.localeCompare(b)));
  });

  it('keeps every template free of unescaped output', () => {
    const templates = files.filter((file) => file.startsWith('templates/'));
    expect(templates.length).toBeGreaterThan(0);
    const raw = templates.filter((file) => linesOf(file).some((line) => /\{\{\{|\{\{&/.test(line)));
    expect(raw).toEqual([]);
  });

  it('shows the order of the stages in one short file', () => {
    expect(linesOf('src/pipeline.ts').length).toBeLessThanOrEqual(81);
  });

  it('pins every package to one version', () => {
    const { dependencies, devDependencies } = JSON.parse(
      readFileSync(join(root, 'package.json'), 'utf8'),
    ) as Record<string, Record<string, string>>;
    const versions = Object.entries({ ...dependencies, ...devDependencies });
    expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
    const reasons = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
    expect(versions.map(([name]) => name).filter((name) => !reasons.includes(`\`${name}\``))).toEqual([]);
  });
});
