import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { canonicalJson } from '../../src/io/digest.ts';
import { readBack } from '../../src/verify/read-back.ts';

const program = resolve('src/cli/plainleaf.mjs');
const date = '2026-11-25';
const example = readFileSync('examples/cases/QB-0755.yaml', 'utf8');
const clinic = readFileSync('examples/clinic.yaml', 'utf8');
/** Every part of the name and the birth date: none of them may leave the packet itself. */
const identifying = [
  ...(/name: (.*)/.exec(example)?.[1] ?? '').split(/[ -]/),
  /born: (.*)/.exec(example)?.[1] ?? '',
];

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs plainleaf as a process of its own, from a folder that is not its own. */
async function plainleaf(folder: string, ...args: string[]): Promise<Ended> {
  return new Promise((ended) => {
    execFile(process.execPath, [program, ...args], { cwd: folder, maxBuffer: 1e8 }, (error, out, err) => {
      ended({ code: typeof error?.code === 'number' ? error.code : error === null ? 0 : -1, out, err });
    });
  });
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

function shortCase(reference: string): string {
  return example
    .replace(/^documents:.*$/m, 'documents: [questions]')
    .replace(/^case:.*$/m, `case: "${reference}"`);
}

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainleaf-'));
  mkdirSync(join(folder, 'week'));
  writeFileSync(join(folder, 'clinic.yaml'), clinic);
  writeFileSync(join(folder, 'example.yaml'), example);
  writeFileSync(
    join(folder, 'week/a.yaml'),
    shortCase('WK-1').replace(/^ {2}weight: .*$/m, '  weight: 73,5 kg'),
  );
  writeFileSync(join(folder, 'week/b.yaml'), shortCase('WK-2'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('plainleaf make', () => {
  let made: Ended;
  beforeAll(async () => {
    made = await plainleaf(folder, 'make', 'example.yaml', '--date', date);
  });

  it('makes a packet for each language of the case', () => {
    expect(made).toMatchObject({ code: 0 });
    expect(filesIn(join(folder, 'out')).sort((a, b) => (a < b ? -1 : 1))).toEqual(
      ['en/packet.json', 'en/packet.pdf', 'es/packet.json', 'es/packet.pdf'].map((name) =>
        join(folder, 'out/QB-0755', name),
      ),
    );
    expect(made.out).toMatch(/^QB-0755 +en +\d+ pages +example +out\/QB-0755\/en\/packet\.pdf$/m);
    expect(made.out).toMatch(/^2 packets made\.$/m);
  });

  it('keeps them for the user alone', () => {
    const modes = [
      'out',
      'out/QB-0755',
      'out/QB-0755/en',
      'out/QB-0755/en/packet.pdf',
      'out/QB-0755/en/packet.json',
    ].map((path) => (statSync(join(folder, path)).mode & 0o777).toString(8));
    expect(modes).toEqual(['700', '700', '700', '600', '600']);
  });

  it('says nothing that identifies the person, in what it prints or in the names and records of files', () => {
    const records = ['en', 'es'].map((tag) =>
      readFileSync(join(folder, `out/QB-0755/${tag}/packet.json`), 'utf8'),
    );
    const said = [made.out, made.err, ...filesIn(join(folder, 'out')), ...records].join('\n');
    expect(identifying.length).toBeGreaterThan(2);
    expect(identifying.filter((part) => said.includes(part))).toEqual([]);
  });

  it.each(['en', 'es'])(
    'puts the same provenance inside the %s file and beside it, with digest and pages',
    async (tag) => {
      const pdf = readFileSync(join(folder, `out/QB-0755/${tag}/packet.pdf`));
      const record = JSON.parse(readFileSync(join(folder, `out/QB-0755/${tag}/packet.json`), 'utf8')) as {
        file: { sha256: string; pages: number };
        provenance: { wasDerivedFrom: object };
        verification: { passed: boolean; figures: number };
      };
      const file = await readBack(new Uint8Array(pdf));
      expect(new TextDecoder().decode(file?.attachments.get('provenance.json'))).toBe(
        canonicalJson(record.provenance),
      );
      expect(record.file).toMatchObject({
        sha256: createHash('sha256').update(pdf).digest('hex'),
        pages: file?.pages.length,
      });
      expect(record.verification).toMatchObject({ passed: true });
      expect(Object.keys(record.provenance.wasDerivedFrom).length).toBeGreaterThan(0);
      expect(file?.language).toBe(tag);
      expect(file?.pages[0]).toContain(identifying[0]);
    },
  );

  it('names in the provenance exactly the records that the comparison stands on', async () => {
    const compared = await plainleaf(folder, 'compare', 'example.yaml', '--date', date, '--json');
    const { recordsUsed } = JSON.parse(compared.out) as { recordsUsed: readonly string[] };
    const { provenance } = JSON.parse(readFileSync(join(folder, 'out/QB-0755/en/packet.json'), 'utf8')) as {
      provenance: { wasDerivedFrom: Record<string, { 'prov:usedEntity': string }> };
    };
    const named = Object.values(provenance.wasDerivedFrom)
      .map((relation) => relation['prov:usedEntity'])
      .filter((id) => id.startsWith('record:'))
      .map((id) => id.slice('record:'.length));
    expect(recordsUsed.length).toBeGreaterThan(0);
    expect(new Set(named)).toEqual(new Set(recordsUsed));
  });
});

describe('plainleaf make with a case that has a mistake', () => {
  it('says what and where, writes nothing, and leaves an older packet as it was', async () => {
    const older = join(folder, 'kept/WK-1/en/packet.pdf');
    mkdirSync(join(folder, 'kept/WK-1/en'), { recursive: true });
    writeFileSync(older, 'older');
    const { code, out, err } = await plainleaf(
      folder,
      'make',
      'week/a.yaml',
      '--date',
      date,
      '--out',
      'kept',
    );
    expect(code).toBe(3);
    expect(err).toContain('week/a.yaml:');
    expect(err).toContain('CASE_DECIMAL_COMMA');
    expect(out).toMatch(/^0 packets made, 1 not made\.$/m);
    expect(identifying.filter((part) => (out + err).includes(part))).toEqual([]);
    expect(filesIn(join(folder, 'kept'))).toEqual([older]);
    expect(readFileSync(older, 'utf8')).toBe('older');
  });
});

describe('plainleaf compare with a what-if', () => {
  it('says what would change, in words and as JSON alike, and leaves the case file as it was', async () => {
    const what = [
      'compare',
      'example.yaml',
      '--date',
      date,
      '--what-if',
      'weight=200 lb',
      '--what-if',
      '-sleeve',
    ];
    const [said, json] = [await plainleaf(folder, ...what), await plainleaf(folder, ...what, '--json')];
    expect([said.code, json.code]).toEqual([0, 0]);
    const { difference } = JSON.parse(json.out) as {
      difference: { cellCount: number; cells: readonly { what: readonly string[] }[] };
    };
    const shown = difference.cells.filter(({ what: parts }) => parts.join() !== 'setAside').length;
    expect(said.out).toContain(`CELLS: ${String(shown)} of ${String(difference.cellCount)} change`);
    expect(said.out).toContain('→ 200 lb');
    expect(readFileSync(join(folder, 'example.yaml'), 'utf8')).toBe(example);
    expect(identifying.filter((part) => (said.out + json.out).includes(part))).toEqual([]);
  });

  it('refuses a weight without its unit, and says in which argument', async () => {
    const { code, out, err } = await plainleaf(
      folder,
      'compare',
      'example.yaml',
      '--date',
      date,
      '--what-if',
      '+reflux',
      '--what-if',
      'weight=140',
    );
    expect([code, out]).toEqual([3, '']);
    expect(err).toContain('--what-if 2:1:8  error CASE_BAD_UNIT  patient.weight');
  });
});

describe('plainleaf batch', () => {
  it('makes what can be made, says what cannot, and gives the same bytes for the same inputs', async () => {
    const first = await plainleaf(folder, 'batch', 'week', '--date', date, '--out', 'first', '--json');
    const second = await plainleaf(
      folder,
      'batch',
      'week',
      '--date',
      date,
      '--out',
      'second',
      '--language',
      'es',
    );
    expect([first.code, second.code]).toEqual([8, 8]);
    expect(JSON.parse(first.out)).toMatchObject({
      made: 2,
      notMade: 1,
      packets: [
        { file: 'week/a.yaml', made: false, diagnostics: [{ code: 'CASE_DECIMAL_COMMA' }] },
        { file: 'week/b.yaml', case: 'WK-2', language: 'en', made: true },
        { file: 'week/b.yaml', case: 'WK-2', language: 'es', made: true },
      ],
    });
    expect(second.out).toMatch(/^1 packet made, 1 not made\.$/m);
    const bytes = ['first', 'second'].map((name) => readFileSync(join(folder, name, 'WK-2/es/packet.pdf')));
    expect(bytes[0]?.equals(bytes[1] ?? Buffer.of())).toBe(true);
    expect(existsSync(join(folder, 'first/WK-1'))).toBe(false);
  });
});
