// Makes a fresh checkout ready: packages, and with --tests the system programs that some tests use.
// Plain JavaScript without packages, because it runs before any are there.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');
const cache = join(root, 'node_modules/.cache/plainleaf');

function run(command, args, options = {}) {
  return spawnSync(command, args, { cwd: root, encoding: 'utf8', ...options });
}

function found(program) {
  return run('sh', ['-c', `command -v ${program}`]).status === 0;
}

function installPackages() {
  const mark = join(root, 'node_modules/.package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(join(root, 'package-lock.json')).mtimeMs) return;
  console.log('Installing the packages that plainleaf is built from (npm ci) …');
  const result = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], { stdio: 'inherit' });
  if (result.status !== 0) {
    console.error('npm ci failed. Check the network and run the command again.');
    process.exit(result.status ?? 1);
  }
}

const programs = [
  { program: 'pdftotext', debian: 'poppler-utils', use: 'a second reader of the PDF' },
  { program: 'qpdf', debian: 'qpdf', use: 'the structure check of the PDF' },
  { program: 'java', debian: 'default-jre-headless', use: 'the PDF/UA and PDF/A validator' },
  { program: 'mvn', debian: 'maven', use: 'bringing the PDF/UA and PDF/A validator' },
  { program: 'chromium', debian: 'chromium', use: 'the browser in which the HTML edition is checked' },
];

/** Installs what is missing where this account may; what stays missing makes its tests skip, by name. */
function installPrograms() {
  const missing = programs.filter(({ program }) => !found(program));
  if (missing.length === 0) return;
  const names = missing.map(({ debian }) => debian);
  if (found('apt-get') && process.getuid?.() === 0) {
    console.log(`Installing ${names.join(', ')} for the tests …`);
    run('apt-get', ['update', '-qq']);
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names], {
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
  for (const { program, debian, use } of missing.filter(({ program }) => !found(program))) {
    console.log(
      `Missing: ${program}, ${use}. Its tests are skipped. On Debian or Ubuntu: sudo apt-get install ${debian}`,
    );
  }
}

/** Brings the validator and writes its class path where the tests look for it. */
function installValidator() {
  const classPath = join(cache, 'validator-classpath.txt');
  if (existsSync(classPath) || !found('mvn') || !found('java')) return;
  mkdirSync(cache, { recursive: true });
  console.log('Bringing the PDF/UA and PDF/A validator (Maven) …');
  const pom = join(root, 'tests/tooling/pdf-validator/pom.xml');
  const result = run(
    'mvn',
    ['-q', '-B', '-f', pom, 'dependency:build-classpath', `-Dmdep.outputFile=${classPath}`],
    { stdio: ['ignore', 'ignore', 'ignore'] },
  );
  if (result.status !== 0)
    console.log('The validator could not be brought (Maven Central). Its tests are skipped.');
}

installPackages();
if (process.argv.includes('--tests')) {
  installPrograms();
  installValidator();
}
