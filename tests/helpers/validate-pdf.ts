import { execFile, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';

// The independent judge: veraPDF, brought by Maven as tests/tooling/pdf-validator/pom.xml says; its class path is kept
// outside the tree of sources. Without Java or Maven the tests that need it are reported as skipped, by name.

const root = resolve(import.meta.dirname, '../..');
const classPathFile = join(root, 'node_modules/.cache/plainleaf/validator-classpath.txt');

/** `ua1` is PDF/UA-1 (ISO 14289-1), `3a` is PDF/A-3a (ISO 19005-3). */
export type Flavour = 'ua1' | '3a';

export interface Verdict {
  readonly file: string;
  readonly passed: boolean;
  /** Clause and test numbers that failed, for example `7.21.4.2-2`. */
  readonly failedRules: readonly string[];
}

export interface NamedPdf {
  /** Shown in the verdict; letters, digits, dots and hyphens. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** True if Java is here and the validator is, or could be brought now. */
export function validatorAvailable(): boolean {
  if (spawnSync('java', ['-version']).status !== 0) return false;
  return existsSync(classPathFile) || bringValidator();
}

function bringValidator(): boolean {
  mkdirSync(dirname(classPathFile), { recursive: true });
  const pom = join(root, 'tests/tooling/pdf-validator/pom.xml');
  const args = ['-q', '-B', '-f', pom, 'dependency:build-classpath', `-Dmdep.outputFile=${classPathFile}`];
  return spawnSync('mvn', args, { stdio: 'ignore' }).status === 0;
}

/** Judges files on disk, in one run of the validator. Rejects if it gives no verdict on one of them. */
export async function validatePdf(files: readonly string[], flavour: Flavour): Promise<readonly Verdict[]> {
  const program = 'org.verapdf.apps.GreenfieldCliWrapper';
  const classPath = readFileSync(classPathFile, 'utf8').trim();
  const args = ['-cp', classPath, program, '-f', flavour, '--format', 'text', '-v', ...files];
  const report = await run('java', args);
  return files.map((file) => verdictOn(file, report.split(/^(?=PASS |FAIL )/m), report));
}

/** The same for bytes in memory; the files are gone when it returns. */
export async function validateBytes(
  pdfs: readonly NamedPdf[],
  flavour: Flavour,
): Promise<readonly Verdict[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-validate-'));
  try {
    const files = pdfs.map(({ name, bytes }) => {
      const file = join(folder, `${name}.pdf`);
      writeFileSync(file, bytes);
      return file;
    });
    const verdicts = await validatePdf(files, flavour);
    return verdicts.map((verdict, index) => ({ ...verdict, file: pdfs[index]?.name ?? verdict.file }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Standard output of a program that says by its exit code that a file failed. */
async function run(program: string, args: readonly string[]): Promise<string> {
  try {
    return (await promisify(execFile)(program, args, { maxBuffer: 1 << 26 })).stdout;
  } catch (error) {
    if (error instanceof Error && 'stdout' in error && error.stdout !== '') return String(error.stdout);
    throw error;
  }
}

function verdictOn(file: string, sections: readonly string[], report: string): Verdict {
  const section = sections.find(
    (text) => text.startsWith(`PASS ${file} `) || text.startsWith(`FAIL ${file} `),
  );
  if (section === undefined) throw new Error(`the validator gave no verdict on ${file}:\n${report}`);
  const failedRules = [...section.matchAll(/^ +FAIL (\S+)/gm)].map((match) => match[1] ?? '');
  return { file, passed: section.startsWith('PASS '), failedRules };
}
