import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

// The independent judge of XLIFF: the Okapi XLIFF Toolkit, brought by Maven as tests/tooling/xliff-toolkit/pom.xml says.
// Without Java or Maven the tests that need it are reported as skipped, by name.

const root = resolve(import.meta.dirname, '../..');
const tool = join(root, 'tests/tooling/xliff-toolkit');
const classPathFile = join(root, 'node_modules/.cache/plainleaf/xliff-classpath.txt');

/** True if Java is here and the toolkit is, or could be brought now. */
export function toolkitAvailable(): boolean {
  if (spawnSync('java', ['-version']).status !== 0) return false;
  if (existsSync(classPathFile)) return true;
  mkdirSync(dirname(classPathFile), { recursive: true });
  const goal = ['dependency:build-classpath', `-Dmdep.outputFile=${classPathFile}`];
  return (
    spawnSync('mvn', ['-q', '-B', '-f', join(tool, 'pom.xml'), ...goal], { stdio: 'ignore' }).status === 0
  );
}

/** The file as the toolkit writes it after reading it with every check, and what it counted. Throws on a broken rule. */
export function throughToolkit(xliff: string): { readonly written: string; readonly counted: string } {
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-xliff-'));
  try {
    const [given, written] = [join(folder, 'given.xlf'), join(folder, 'written.xlf')];
    writeFileSync(given, xliff);
    const classPath = readFileSync(classPathFile, 'utf8').trim();
    const program = join(tool, 'RoundTrip.java');
    const counted = execFileSync('java', ['-cp', classPath, program, given, written], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    return { written: readFileSync(written, 'utf8'), counted: counted.trim() };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
