import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

// Two readers of PDF that share no code with plainleaf nor with each other: qpdf (structure) and poppler (text).

export function qpdfAvailable(): boolean {
  return spawnSync('qpdf', ['--version']).status === 0;
}

export function popplerAvailable(): boolean {
  return spawnSync('pdftotext', ['-v']).status === 0;
}

/** Complaints of `qpdf --check`; empty if the file is sound. */
export function checkWithQpdf(pdf: Uint8Array): string {
  const { status, stdout, stderr } = runOn(pdf, 'qpdf', (file) => ['--check', file]);
  return status === 0 ? '' : `${stdout}${stderr}`;
}

/** The file as qpdf reads it: all objects of all trees, as JSON (version 2 of its format). */
export function objectsByQpdf(pdf: Uint8Array): string {
  return runOn(pdf, 'qpdf', (file) => ['--json=2', '--json-key=qpdf', file]).stdout;
}

/** Text of each page by poppler, in the order of the content. */
export function readWithPoppler(pdf: Uint8Array): readonly string[] {
  const { stdout } = runOn(pdf, 'pdftotext', (file) => ['-raw', '-enc', 'UTF-8', file, '-']);
  return stdout.split('\f').slice(0, -1);
}

/** The structure tree with its text, by poppler. */
export function structureByPoppler(pdf: Uint8Array): string {
  return runOn(pdf, 'pdfinfo', (file) => ['-struct-text', file]).stdout;
}

/** Text of each document of a packet, as its part of the structure tree has it, by poppler. */
export function partsByPoppler(pdf: Uint8Array): readonly string[] {
  const [, ...parts] = structureByPoppler(pdf).split(/^ {2}Part.*$/m);
  return parts.map((part) => [...part.matchAll(/^ *"(.*)"$/gm)].map(([, text]) => text).join(''));
}

function runOn(pdf: Uint8Array, program: string, args: (file: string) => readonly string[]) {
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-read-'));
  const file = join(folder, 'packet.pdf');
  try {
    writeFileSync(file, pdf);
    return spawnSync(program, args(file), { encoding: 'utf8', maxBuffer: 1 << 28 });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
