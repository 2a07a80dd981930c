import { readdirSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { main } from '../../src/cli/main.ts';
import { createTerminal } from '../../src/cli/terminal.ts';
import { readBack } from '../../src/verify/read-back.ts';
import { inventedFiles } from '../helpers/invented-option.ts';
import { createOverlay } from '../helpers/overlay-workspace.ts';
import { popplerAvailable, readWithPoppler } from '../helpers/second-readers.ts';

// An option, an outcome and records that exist nowhere are added by data and words alone; the program is as it is.

type Files = Readonly<Record<string, string>>;

/** The words of what is invented are in two languages. */
const otherLanguages = readdirSync('locales')
  .filter((name) => !name.includes('.') && !['en', 'es'].includes(name))
  .map((tag) => `locales/${tag}/`);

/** Runs a command over this checkout with some of its data files changed. */
async function call(args: readonly string[], files: Files) {
  const { workspace, memory } = createOverlay(files, otherLanguages);
  const printed = { out: '', err: '' };
  const terminal = createTerminal({
    out: { write: (text) => (printed.out += String(text)) !== '' },
    err: { write: (text) => (printed.err += String(text)) !== '' },
  });
  const code = await main(args, { workspace, terminal, root: '.' });
  return { code, ...printed, memory };
}

interface Made {
  readonly pdf: Uint8Array;
  readonly text: string;
  readonly record: string;
}

const packets = new Map<string, Made>();
let made: Awaited<ReturnType<typeof call>>;

beforeAll(async () => {
  made = await call(['make', 'week/case.yaml', '--out', 'out', '--date', '2026-11-25'], inventedFiles());
  for (const language of ['en', 'es']) {
    const pdf = made.memory.files.get(`out/QB-1041/${language}/packet.pdf`);
    if (!(pdf instanceof Uint8Array)) throw new Error(`no packet: ${made.err}`);
    const read = await readBack(pdf);
    const text = (read?.pages ?? []).join(' ').replace(/\s+/g, ' ');
    packets.set(language, {
      pdf,
      text,
      record: String(made.memory.files.get(`out/QB-1041/${language}/packet.json`)),
    });
  }
});

describe('an invented option, with an outcome and records, added through data and words alone', () => {
  it('keeps every rule of the evidence, and lacks no words', async () => {
    expect(await call(['evidence', 'lint'], inventedFiles())).toMatchObject({
      code: 0,
      out: 'The evidence is in order.\n',
    });
  });

  it('is listed, shown and due like any other', async () => {
    const listed = await call(['evidence', 'list', '--option', 'clasp'], inventedFiles());
    expect(listed.out).toMatch(/^clasp\.leak\.30d\.clasp-trial .* events 29, n 1731$/m);
    const due = await call(['evidence', 'due', '--by', '2027-11-20'], inventedFiles());
    expect(due.out).toMatch(/^ {2}2027-11-20 {2}clasp-trial\n {4}read at {2}https:\/\/example\.org\/clasp$/m);
  });

  it('is made into a packet in each language', () => {
    expect(made.code).toBe(0);
    expect(made.out).toContain('2 packets made.');
  });

  it.each([
    ['en', ['Stomach clasp', 'Nothing is taken out.', 'Hiccups that come back every day.', 'Hiccups']],
    ['es', ['Broche gástrico', 'No se quita nada.', 'Hipo: un hipo que vuelve todos los días.', 'Hipo']],
  ])('is named and explained in %s', (language, words) => {
    const { text = '' } = packets.get(language) ?? {};
    expect(words.filter((word) => !text.includes(word))).toEqual([]);
  });

  // 118.4 kg less 23.7% is 90.3 kg; 29 of 1,731 are 16.8 in 1,000; 613 are 35.4 and 211 of 1,697 are 12.4 in 100.
  const figures: Readonly<Record<string, readonly string[]>> = {
    en: [
      'Stomach clasp 199 lb (90 kg)',
      'Stomach clasp not known 17 not known not known',
      'Stomach clasp 35 note 1 not known',
      '1 Stomach clasp (Hiccups), Sleeve (Hiccups, Reflux): These numbers are not very sure.',
      '29 of 1,731',
      '35 out of 100. Counted: 613 of 1,731',
      '12 out of 100. Counted: 211 of 1,697',
    ],
    es: [
      'Broche gástrico 199 lb (90 kg)',
      'Broche gástrico no se sabe 17 no se sabe no se sabe',
      'Broche gástrico 35 nota 1 no se sabe',
      '1 Broche gástrico (Hipo), Manga gástrica (Hipo, Reflujo): estos números no son muy seguros.',
      '29 de 1,731',
      '35 de 100. Se contó: 613 de 1,731',
      '12 de 100. Se contó: 211 de 1,697',
    ],
  };

  it.each(Object.keys(figures))('has its figures in the finished file in %s', (language) => {
    const { text = '' } = packets.get(language) ?? {};
    expect(figures[language]?.filter((figure) => !text.includes(figure))).toEqual([]);
  });

  it.skipIf(!popplerAvailable()).each(Object.keys(figures))(
    'has them for another reader too in %s',
    (language) => {
      const pages = readWithPoppler(packets.get(language)?.pdf ?? new Uint8Array());
      const text = pages.join(' ').replace(/\s+/g, ' ');
      expect(figures[language]?.filter((figure) => !text.includes(figure))).toEqual([]);
    },
  );

  it.each(['en', 'es'])('is followed to its records in the packet of %s', (language) => {
    const { record = '' } = packets.get(language) ?? {};
    for (const id of [
      'clasp.leak.30d.clasp-trial',
      'clasp.weight-loss.60m.clasp-trial',
      'clasp.hiccups.12m.clasp-trial',
      'sleeve.hiccups.12m.clasp-trial',
    ])
      expect(record).toContain(`"record:${id}"`);
  });
});

describe('an invented option of which a part is missing', () => {
  it.each([
    { left: ['src/evidence/data/options.yaml'], said: ['the option "clasp" is not defined'] },
    { left: ['src/evidence/data/outcomes.yaml'], said: ['the outcome "hiccups" is not defined'] },
    { left: ['src/evidence/data/studies/invented.yaml'], said: ['the study "clasp-trial" is not defined'] },
    {
      left: ['src/evidence/data/reversibility.yaml'],
      said: ['nothing says whether clasp can be undone'],
    },
    { left: ['src/evidence/data/caution-coverage.yaml'], said: ['nothing is said about clasp'] },
    {
      left: ['locales/en/options.yaml', 'locales/es/options.yaml', 'locales/es/outcomes.yaml'],
      said: [
        'en has no words for options.clasp.name',
        'es has no words for options.clasp.for_life',
        'es has no words for outcomes.hiccups.explained',
      ],
    },
  ])('is told so, without $left', async ({ left, said }) => {
    const others = Object.entries(inventedFiles()).filter(([path]) => !left.includes(path));
    const { code, err } = await call(['evidence', 'lint'], Object.fromEntries(others));
    expect([4, 5]).toContain(code);
    expect(said.filter((one) => !err.includes(one))).toEqual([]);
  });

  it('is told by check too, each missing word once', async () => {
    const { ['locales/es/outcomes.yaml']: spanish, ...others } = inventedFiles();
    expect(spanish).toContain('hiccups');
    const { code, out, err } = await call(['check', 'week/clinic.yaml'], others);
    expect(code).toBe(5);
    expect(out).toMatch(/^words of en, es +2 errors$/m);
    expect(err.match(/LOCALE_KEY_MISSING {2}outcomes\.hiccups\.name$/gm)).toHaveLength(1);
  });
});
