import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';

// The command line is used as a clinic uses it, and its files are read by poppler: nothing here is plainleaf's own code.

/** Day of every packet of these tests, so that ages and bytes are fixed. */
export const today = '2026-11-25';
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line from a folder; files are written with the widest rights that the caller would allow. */
export function plainleaf(
  args: readonly string[],
  { folder, root = '.', env = {} }: { folder: string; root?: string; env?: Record<string, string> },
): Promise<Ended> {
  const program = resolve(root, 'src/cli/plainleaf.mjs');
  const command = ['-c', 'umask 000; exec "$@"', 'sh', process.execPath, program, ...args];
  const options = { cwd: folder, env: { ...process.env, ...env }, maxBuffer: 1e8 };
  return new Promise((ended) => {
    execFile('/bin/sh', command, options, (error, out, err) => {
      ended({ code: typeof error?.code === 'number' ? error.code : error === null ? 0 : -1, out, err });
    });
  });
}

/** Programs of poppler: one reads the text, one takes out what is attached. */
export const poppler = { read: 'pdftotext', detach: 'pdfdetach' } as const;
export const hasPoppler = Object.values(poppler).every((name) => spawnSync(name, ['-v']).error === undefined);

export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'plainleaf-contract-'));
}

export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

/** A shipped example with some of its words changed; each must be there exactly once. */
export function changedExample(reference: string, changes: Readonly<Record<string, string>>): string {
  let text = readFileSync(`examples/cases/${reference}.yaml`, 'utf8');
  for (const [from, to] of Object.entries(changes)) {
    if (text.split(from).length !== 2) throw new Error(`${reference} does not hold once: ${from}`);
    text = text.replace(from, to);
  }
  return text;
}

export interface Derivation {
  readonly document: string;
  readonly record: string;
  readonly cells: readonly string[];
}

export interface Page {
  /** In reading order, all white space as one space. */
  readonly text: string;
  /** As it looks: columns kept apart by two spaces or more. */
  readonly lines: readonly string[];
  readonly document: string;
}

export interface PacketRecord {
  readonly file: { readonly sha256: string; readonly pages: number };
  readonly provenance: {
    readonly entity: Record<string, Record<string, string>>;
    readonly wasDerivedFrom?: Record<string, Record<string, string>>;
  };
}

export interface Packet {
  readonly folder: string;
  readonly pages: readonly Page[];
  readonly record: PacketRecord;
  /** Records behind the pages of patients, each by its id, with the document and the cells that it stands in. */
  readonly derivations: readonly Derivation[];
}

export function readRecord(folder: string): PacketRecord {
  return JSON.parse(readFileSync(join(folder, 'packet.json'), 'utf8')) as PacketRecord;
}

const packetsRead = new Map<string, Packet>();

/** A finished packet, as someone with another program would read it; each is read once. */
export function readPacket(folder: string): Packet {
  const packet = packetsRead.get(folder) ?? readWithPoppler(folder);
  packetsRead.set(folder, packet);
  return packet;
}

function readWithPoppler(folder: string): Packet {
  const record = readRecord(folder);
  const raw = pagesOf(folder, '-raw');
  const laidOut = pagesOf(folder, '-layout');
  const patient = Object.entries(record.provenance.entity)
    .filter(([, entity]) => entity['plainleaf:audience'] === 'patient')
    .map(([id]) => id.replace('document:', ''));
  const pages = raw.map((text, index) => ({
    text: text.replace(/\s+/g, ' '),
    lines: (laidOut[index] ?? '').split('\n'),
    document: /\b[A-Z]{2}-\d+-e[ns]-\d-[0-9a-f]+/.exec(text)?.[0] ?? '',
  }));
  const derivations = Object.values(record.provenance.wasDerivedFrom ?? {})
    .filter((derived) => derived['prov:usedEntity']?.startsWith('record:'))
    .map((derived) => ({
      document: (derived['prov:generatedEntity'] ?? '').replace('document:', ''),
      record: (derived['prov:usedEntity'] ?? '').replace('record:', ''),
      cells: [derived['plainleaf:cell'] ?? []].flat(),
    }));
  return {
    folder,
    record,
    pages: pages.filter((page) => patient.includes(page.document)),
    derivations: derivations.filter(({ document }) => patient.includes(document)),
  };
}

function pagesOf(folder: string, how: string): readonly string[] {
  const file = join(folder, 'packet.pdf');
  return spawnSync(poppler.read, [how, '-enc', 'UTF-8', file, '-'], { encoding: 'utf8', maxBuffer: 1e8 })
    .stdout.split('\f')
    .slice(0, -1);
}

/** The pages of the comparison as one text. */
export function comparisonText(packet: Packet): string {
  return packet.pages
    .filter(({ document }) => /-e[ns]-1-/.test(document))
    .map(({ text }) => text)
    .join(' ');
}

export interface StoredRecord {
  readonly id: string;
  readonly option: string;
  readonly outcome: string;
  readonly kind: string;
  readonly people: {
    readonly indication: string;
    readonly group?: string;
    readonly age?: { readonly low?: number; readonly high?: number };
  };
  readonly value: {
    readonly events?: number;
    readonly n?: number;
    readonly percent?: number;
    readonly metric?: string;
    readonly estimate?: number;
  };
  readonly seen: 'page' | 'page-2nd' | 'memory';
}

const recordsRead = new Map<string, StoredRecord>();

/** A published figure of the project's data by its id, as the file has it. */
export function storedRecord(id: string): StoredRecord | undefined {
  return storedRecords().get(id);
}

export function storedRecords(): ReadonlyMap<string, StoredRecord> {
  const folder = 'src/evidence/data/records';
  if (recordsRead.size === 0)
    for (const name of readdirSync(folder))
      for (const record of parse(readFileSync(join(folder, name), 'utf8')) as StoredRecord[])
        recordsRead.set(record.id, record);
  return recordsRead;
}

export function wordsOf(language: Language, part: string): Record<string, Record<string, string>> {
  return parse(readFileSync(`locales/${language}/${part}.yaml`, 'utf8')) as Record<
    string,
    Record<string, string>
  >;
}

export function removeFolder(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}
