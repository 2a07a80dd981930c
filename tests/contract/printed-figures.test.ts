import { createHash } from 'node:crypto';
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { expectNoMisleadingChance, expectStandardWordsOnEveryPage } from './every-page.ts';
import type { Ended, Language, Packet, Page, StoredRecord } from './packets.ts';
import {
  changedExample,
  comparisonText,
  filesIn,
  hasPoppler,
  languages,
  plainleaf,
  poppler,
  readPacket,
  readRecord,
  removeFolder,
  storedRecord,
  storedRecords,
  temporaryFolder,
  today,
  wordsOf,
} from './packets.ts';

// One invented woman who smokes, takes ibuprofen, has reflux and plans a pregnancy: many figures and many cautions.
const person = {
  name: 'Philippa Oakenshade-Merriweather',
  born: '1988-11-09',
  weightKg: 131.2,
  heightM: 1.78,
};
const source = changedExample('QB-1067', {
  'case: "QB-1067"': 'case: "CT-2001"',
  'name: Tobiah Wrenfield': `name: ${person.name}`,
  'born: 1975-11-09': `born: ${person.born}`,
  'sex: male': 'sex: female',
  'smoking: current': 'smoking: current\n  pregnancy: {planned_within_months: 6}',
  'comparison, questions, sources, clinician-sheet': 'comparison, sources, clinician-sheet',
});
const identifying = [...person.name.split(/[ -]/), person.born];
const poundKg = 0.45359237;

let folder: string;
let made: Ended;
let packets: Record<Language, Packet>;

beforeAll(async () => {
  folder = temporaryFolder();
  writeFileSync(join(folder, 'case.yaml'), source);
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
  made = await plainleaf(['make', 'case.yaml', '--date', today, '--out', 'out'], { folder });
  if (made.code !== 0) throw new Error(made.err);
  if (!hasPoppler) return;
  packets = {
    en: readPacket(join(folder, 'out/CT-2001/en')),
    es: readPacket(join(folder, 'out/CT-2001/es')),
  };
});
afterAll(() => {
  removeFolder(folder);
});

/** A chance as a whole number of people, in the same way for every figure. */
function inPeople({ value }: StoredRecord, of: number): number {
  const { events, n, percent } = value;
  const share = events !== undefined && n !== undefined ? events / n : (percent ?? NaN) / 100;
  return Math.round(share * of);
}

/** Option codes by the name that the packet prints. */
function optionsByName(language: Language): ReadonlyMap<string, string> {
  const words = Object.entries(wordsOf(language, 'options'));
  return new Map(words.map(([code, { name = '' }]) => [name, code]));
}

/** The records behind one option of the comparison. */
function recordsBehind(packet: Packet, option: string): readonly StoredRecord[] {
  return packet.derivations
    .filter(({ document }) => /-e[ns]-1-/.test(document))
    .flatMap(({ record }) => storedRecord(record) ?? [])
    .filter((record) => record.option === (option === 'no-operation' ? 'usual-care' : option));
}

interface Cell {
  readonly option: string;
  readonly number: number;
  readonly of: number;
}

/** The numbers of people that stand alone in the rows of a table, each in a column of its own. */
function tableCells(page: Page, head: RegExp, names: ReadonlyMap<string, string>): readonly Cell[] {
  const start = page.lines.findIndex((line) => head.test(line));
  if (start < 0) return [];
  const of = Number(head.exec(page.lines[start] ?? '')?.[1]?.replace(',', ''));
  return page.lines.slice(start).flatMap((line) => {
    const label = /^(\S+( \S+)*) {2,}/.exec(line)?.[1] ?? '-';
    const option = [...names].find(([name]) => label.length > 4 && name.startsWith(label))?.[1];
    if (option === undefined) return [];
    return [...line.matchAll(/(?<= {2})\d{1,3}(?= {2}|$)/g)].map(([number]) => ({
      option,
      number: Number(number),
      of,
    }));
  });
}

/** A sentence as it stands after the colon that names its option: Spanish goes on with a small letter. */
function afterColon(sentence: string, language: Language): string {
  return language === 'es' ? sentence.charAt(0).toLowerCase() + sentence.slice(1) : sentence;
}

describe.each(languages)('the figures for a patient in %s', (language) => {
  it.skipIf(!hasPoppler)('stand on records that were read at their source, and on no others', () => {
    const { derivations } = packets[language];
    const options = new Set(derivations.map(({ record }) => storedRecord(record)?.option));
    const unread = [...storedRecords().values()].filter((record) => record.seen !== 'page');
    expect(unread.some((record) => options.has(record.option))).toBe(true);
    expect(derivations.length).toBeGreaterThan(50);
    expect(derivations.filter(({ record }) => storedRecord(record)?.seen !== 'page')).toEqual([]);
  });

  const strip = {
    en: { row: String.raw`(\d+) out of (100|1,000) (\d+) do not\.`, head: /There are (100|1,000) / },
    es: { row: String.raw`(\d+) de (100|1,000) A (\d+) no les pasa\.`, head: /Hay (100|1,000) / },
  }[language];

  it.skipIf(!hasPoppler)('say both sides of one denominator in a strip, as the records have it', () => {
    const names = optionsByName(language);
    const row = new RegExp(`(${[...names.keys()].join('|')}) ${strip.row}`, 'g');
    let rows = 0;
    for (const { text } of packets[language].pages.filter((page) => strip.head.test(page.text))) {
      const denominator = strip.head.exec(text)?.[1] ?? '';
      const of = Number(denominator.replace(',', ''));
      for (const [, name = '', having, each, others] of text.matchAll(row)) {
        rows += 1;
        expect(each).toBe(denominator);
        expect(Number(having) + Number(others)).toBe(of);
        const possible = recordsBehind(packets[language], names.get(name) ?? '').map((one) =>
          inPeople(one, of),
        );
        expect(possible).toContain(Number(having));
      }
    }
    expect(rows).toBeGreaterThanOrEqual(3);
  });

  const table = { en: /^ *Out of (100|1,000) people/, es: /^ *De (100|1,000) personas/ }[language];

  it.skipIf(!hasPoppler)('are in a table the number of people that a record of that option gives', () => {
    const cells = packets[language].pages.flatMap((page) => tableCells(page, table, optionsByName(language)));
    const wrong = cells.filter(({ option, number, of }) =>
      recordsBehind(packets[language], option).every((record) => inPeople(record, of) !== number),
    );
    expect(wrong).toEqual([]);
    expect(cells.length).toBeGreaterThan(15);
  });

  const lighter = { en: 'less than today', es: 'menos que hoy' }[language];

  it.skipIf(!hasPoppler)('give weights that follow from this person and a record, by hand', () => {
    const { weightKg, heightM } = person;
    const excess = weightKg - 25 * heightM ** 2;
    const lost = ({ value: { metric, estimate = NaN } }: StoredRecord): number =>
      ({ TWL: (estimate / 100) * weightKg, EWL: (estimate / 100) * excess, kg: estimate })[metric ?? ''] ??
      NaN;
    const names = optionsByName(language);
    const row = new RegExp(
      `(${[...names.keys()].join('|')}) (\\d+) lb \\((\\d+) kg\\) (\\d+) lb ${lighter}`,
      'g',
    );
    const rows = [...comparisonText(packets[language]).matchAll(row)];
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const [, name = '', pounds, kilograms, fewer] of rows) {
      const weights = recordsBehind(packets[language], names.get(name) ?? '')
        .filter((record) => record.kind === 'weight')
        .map((record) => weightKg - lost(record));
      expect(weights.map((kg) => `${Math.round(kg / poundKg)} lb ${Math.round(kg)} kg`)).toContain(
        `${pounds} lb ${kilograms} kg`,
      );
      expect(Number(pounds) + Number(fewer)).toBe(Math.round(weightKg / poundKg));
    }
  });

  it.skipIf(!hasPoppler)('are counted in the sources as the cited study counted them', () => {
    const known = packets[language].derivations
      .map(({ record }) => storedRecord(record)?.value)
      .map((value) => `${value?.events} of ${value?.n}`);
    const printed = packets[language].pages
      .filter(({ document }) => /-e[ns]-2-/.test(document))
      .flatMap(({ text }) => [...text.matchAll(/\b(\d[\d,]*) (?:of|de) (\d+,[\d,]*\d)/g)])
      .filter(([, , n]) => n !== '1,000')
      .map(([, events, n]) => `${events} of ${n}`.replaceAll(',', ''));
    expect(printed.length).toBeGreaterThan(5);
    expect(printed.filter((one) => !known.includes(one))).toEqual([]);
  });

  it.skipIf(!hasPoppler)('are never put as one in so many, as rare, or as a ratio alone', () => {
    expectNoMisleadingChance(packets[language], language);
  });

  it.skipIf(!hasPoppler)('come with whom to call, the deferral and the page number on every page', () => {
    expectStandardWordsOnEveryPage(packets[language], language);
  });
});

describe.each(languages)('the cautions of this person in %s', (language) => {
  it.skipIf(!hasPoppler).each([
    ['reflux-sleeve', 'sleeve'],
    ['anti-inflammatory-bypass', 'bypass'],
    ['smoking-bypass', 'bypass'],
    ['pregnancy-wait', 'bypass'],
  ])('say %s, beside the option', (caution, option) => {
    const text = comparisonText(packets[language]);
    const statement = wordsOf(language, 'cautions')[caution]?.['statement']?.replace(/\s+/g, ' ') ?? '?';
    const at = text.indexOf(afterColon(statement, language));
    expect(at).toBeGreaterThan(0);
    expect(text.slice(Math.max(0, at - 120), at)).toContain(
      wordsOf(language, 'options')[option]?.['in_text'],
    );
  });

  it
    .skipIf(!hasPoppler)
    .each(['anti-inflammatory-joins', 'pregnancy-small-baby-others', 'hiatal-hernia-others'])(
    'say %s, which has no read source, only as something to ask and without a number',
    (caution) => {
      const ask = wordsOf(language, 'cautions')[caution]?.['ask']?.replace(/\s+/g, ' ') ?? '?';
      expect(ask).toMatch(language === 'en' ? /\b[Aa]sk\b/ : /\b[Pp]regunte\b/);
      expect(ask).not.toMatch(/\d/);
      expect(comparisonText(packets[language])).toContain(afterColon(ask, language));
    },
  );
});

it.skipIf(!hasPoppler)('what is usual practice only, and for clinicians, is on no page of a patient', () => {
  const all = spawnSync(poppler.read, ['-raw', join(packets.en.folder, 'packet.pdf'), '-'], {
    encoding: 'utf8',
  });
  const claims = [...all.stdout.replace(/\s+/g, ' ').matchAll(/Needs confirming\. ([^.]{20,}?\.)/g)];
  const patient = packets.en.pages.map(({ text }) => text).join(' ');
  expect(claims.length).toBeGreaterThanOrEqual(3);
  expect(claims.flatMap(([, claim = '']) => (patient.includes(claim) ? [claim] : []))).toEqual([]);
});

describe('the files of a packet', () => {
  it('are for the user alone, even where the system would let everyone read them', () => {
    const mode = (path: string) => (statSync(path).mode & 0o777).toString(8);
    const out = join(folder, 'out');
    const folders = [out, join(out, 'CT-2001'), ...languages.map((tag) => join(out, 'CT-2001', tag))];
    expect(folders.map(mode)).toEqual(folders.map(() => '700'));
    expect(filesIn(out).map(mode)).toEqual(['600', '600', '600', '600']);
  });

  it('say in no name, message or record who the person is', () => {
    const said = [made.out, made.err, ...filesIn(join(folder, 'out'))];
    const records = languages.map((tag) =>
      readFileSync(join(folder, `out/CT-2001/${tag}/packet.json`), 'utf8'),
    );
    const everything = [...said, ...records].join('\n').toLowerCase();
    expect(identifying.filter((part) => everything.includes(part.toLowerCase()))).toEqual([]);
  });

  it.skipIf(!hasPoppler).each(languages)(
    'hold inside the %s PDF the provenance that lies beside it',
    (tag) => {
      const packet = join(folder, 'out/CT-2001', tag);
      const inside = join(folder, `inside-${tag}`);
      mkdirSync(inside);
      spawnSync(poppler.detach, ['-saveall', '-o', inside, join(packet, 'packet.pdf')]);
      const { provenance, file } = readRecord(packet);
      expect(readdirSync(inside)).toEqual(['provenance.json']);
      expect(JSON.parse(readFileSync(join(inside, 'provenance.json'), 'utf8'))).toEqual(provenance);
      expect(file.sha256).toBe(sha256(readFileSync(join(packet, 'packet.pdf'))));
    },
  );

  it('are the same bytes when made again in another place, time zone and language of the machine', async () => {
    const elsewhere = temporaryFolder();
    writeFileSync(join(elsewhere, 'case.yaml'), source);
    const clinic = join(folder, 'clinic.yaml');
    const args = [
      'make',
      'case.yaml',
      '--date',
      today,
      '--language',
      'es',
      '--clinic',
      clinic,
      '--out',
      'again',
    ];
    const env = { TZ: 'Pacific/Kiritimati', LANG: 'ar_EG.UTF-8', LC_ALL: 'ar_EG.UTF-8' };
    const again = await plainleaf(args, { folder: elsewhere, env });
    const same = ['packet.pdf', 'packet.json'].map((name) =>
      readFileSync(join(elsewhere, 'again/CT-2001/es', name)).equals(
        readFileSync(join(folder, 'out/CT-2001/es', name)),
      ),
    );
    removeFolder(elsewhere);
    expect([again.code, ...same]).toEqual([0, true, true]);
  });
});

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
