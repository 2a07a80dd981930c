import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { expectNoMisleadingChance, expectStandardWordsOnEveryPage } from './every-page.ts';
import type { Ended, Language, Packet } from './packets.ts';
import {
  changedExample,
  comparisonText,
  hasPoppler,
  languages,
  plainleaf,
  readPacket,
  removeFolder,
  storedRecord,
  temporaryFolder,
  today,
} from './packets.ts';

// A week of the clinic: three people in whom most studies were not made, and one case with a mistake.
const shorter = { 'comparison, questions, sources, clinician-sheet': 'comparison' };
const names = [
  'Wilhelmina',
  'Featherstonehaugh',
  'Bettany',
  'Oyelan',
  'Kirsch',
  'Marisela',
  'Quenby',
  'Fontaine',
];
const births = ['2009-02-17', '1983-04-17', '1968-09-30'];
const week = {
  'a-band': changedExample('QB-0755', {
    'comparison, questions, sources, clinician-sheet': 'comparison, questions',
  }),
  'b-broken': changedExample('QB-1041', {
    ...shorter,
    'case: "QB-1041"': 'case: "CT-3001"',
    'name: Marisela Quenby-Fontaine': 'name: Wilhelmina Featherstonehaugh',
    'weight: 118.4 kg': 'weight: 118,4 kg',
  }),
  'c-pregnant': changedExample('QB-1041', {
    ...shorter,
    'case: "QB-1041"': 'case: "CT-3002"',
    'languages: [en, es]': 'languages: [en]',
    'smoking: never': 'smoking: never\n  pregnancy: {now: true}',
  }),
  'd-young': changedExample('QB-1041', {
    ...shorter,
    'case: "QB-1041"': 'case: "CT-3003"',
    'languages: [en, es]': 'languages: [es]',
    'born: 1983-04-17': 'born: 2009-02-17',
  }),
};

let folder: string;
let made: Ended;

beforeAll(async () => {
  folder = temporaryFolder();
  mkdirSync(join(folder, 'week'));
  for (const [name, text] of Object.entries(week)) writeFileSync(join(folder, 'week', `${name}.yaml`), text);
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
  made = await plainleaf(['batch', 'week', '--date', today, '--out', 'out'], { folder });
});
afterAll(() => {
  removeFolder(folder);
});

function packetOf(reference: string, language: Language): Packet {
  return readPacket(join(folder, 'out', reference, language));
}

describe('a week with one broken case', () => {
  it('ends with exit code 8 and the packets of all the other cases', () => {
    expect(made.code).toBe(8);
    const out = readdirSync(join(folder, 'out')).sort((a, b) => a.localeCompare(b));
    expect(out).toEqual(['CT-3002', 'CT-3003', 'QB-0755']);
    expect(made.out).toMatch(/^4 packets made, 1 not made\.$/m);
  });

  it('names the case that was not made, where its mistake is and what to write', () => {
    const line = week['b-broken'].split('\n').findIndex((text) => text.includes('118,4')) + 1;
    expect(made.out).toMatch(/^week\/b-broken\.yaml +not made +CASE_DECIMAL_COMMA$/m);
    expect(made.err).toContain(`week/b-broken.yaml:${line}:11`);
    expect(made.err).toMatch(/hint: .*118\.4 kg/);
  });

  it('says nothing of who the people are', () => {
    const said = made.out + made.err;
    expect([...names, ...births].filter((part) => said.includes(part))).toEqual([]);
  });
});

describe.each(languages)('someone with a BMI of 27 after a band, in %s', (language) => {
  const words = {
    en: {
      whose: 'No study tells this for people like you.',
      unknown: 'Not known.',
      weight: 'How much might I weigh',
      next: 'Who has a serious',
    },
    es: {
      whose: 'Ningún estudio lo dice para personas como usted.',
      unknown: 'No se sabe.',
      weight: '¿Cuánto podría pesar',
      next: '¿Quién tiene un',
    },
  }[language];

  function weightPage(): string {
    const text = comparisonText(packetOf('QB-0755', language));
    return text.slice(text.indexOf(words.weight), text.indexOf(words.next));
  }

  it.skipIf(!hasPoppler)(
    'is told that the weight after each choice is not known, and why, in a sentence',
    () => {
      const [head, ...reasons] = weightPage().split(words.unknown);
      expect(head).toContain(words.whose);
      expect(reasons.map((reason) => /^ \p{Lu}[^.]{20,}\./u.test(reason))).toEqual([true, true, true, true]);
    },
  );

  it.skipIf(!hasPoppler)('finds no weight there but the own weight of today', () => {
    const weights = weightPage().match(/\d+ (lb|kg)\b/g) ?? [];
    expect(weights.filter((weight) => !['162 lb', '74 kg'].includes(weight))).toEqual([]);
    const { derivations } = packetOf('QB-0755', language);
    expect(derivations.length).toBeGreaterThan(0);
    expect(derivations.filter(({ record }) => storedRecord(record)?.kind === 'weight')).toEqual([]);
  });

  it.skipIf(!hasPoppler)('is shown figures only of people who had a band, read at their source', () => {
    const { derivations } = packetOf('QB-0755', language);
    const behind = derivations.map(({ record }) => storedRecord(record));
    expect(new Set(behind.map((record) => `${record?.seen} ${record?.people.indication}`))).toEqual(
      new Set(['page after-band']),
    );
  });

  it.skipIf(!hasPoppler)('reads the standard words on every page, and no chance that misleads', () => {
    expectStandardWordsOnEveryPage(packetOf('QB-0755', language), language);
    expectNoMisleadingChance(packetOf('QB-0755', language), language);
  });
});

describe('someone who is pregnant', () => {
  it.skipIf(!hasPoppler)('is told to wait, and why', () => {
    expect(comparisonText(packetOf('CT-3002', 'en'))).toMatch(/You are pregnant\. Wait .*?baby/);
  });

  it.skipIf(!hasPoppler)('sees no figure of any treatment: every cell is not known', () => {
    const packet = packetOf('CT-3002', 'en');
    const text = comparisonText(packet);
    expect(packet.derivations).toEqual([]);
    expect(text).not.toMatch(/\d out of 1|less than today|do not\. /);
    const untilUndoing = text.slice(0, text.lastIndexOf('Can it be undone?'));
    const weights = untilUndoing.match(/\d+ (lb|kg)\b/g) ?? [];
    expect(weights.filter((weight) => !['261 lb', '118 kg'].includes(weight))).toEqual([]);
    const short = packet.pages
      .flatMap(({ lines }) => lines)
      .filter((line) => /^(Sleeve|Gastric bypass|Tirzepatide|Food and|No new) {2,}not known /.test(line));
    expect(short.length).toBeGreaterThanOrEqual(5);
    expect(text).toContain('No study tells this for people like you.');
    expect(text.match(/Not known\. [^.]*\bpregnancy\./g)?.length).toBeGreaterThanOrEqual(5);
  });
});

describe('someone of 17', () => {
  it.skipIf(!hasPoppler)('is compared only with people who were under 18 too', () => {
    // At the times asked no figure of adolescents can be turned into this person's weight, so there may be none at all.
    const { derivations, pages } = packetOf('CT-3003', 'es');
    const people = derivations.map(({ record }) => storedRecord(record)?.people);
    expect(pages.length).toBeGreaterThan(5);
    expect(people.filter((one) => one?.group !== 'adolescents' || (one.age?.high ?? 99) > 19)).toEqual([]);
  });

  it.skipIf(!hasPoppler)('is told that the studies were in adults where they were', () => {
    const text = comparisonText(packetOf('CT-3003', 'es'));
    expect(text).toContain('Usted tiene menos de 18 años.');
    expect(text).toContain('Ningún estudio lo dice para personas como usted.');
    expect(text.match(/No se sabe\. [^.]*\badultas\b/g)?.length).toBeGreaterThanOrEqual(4);
  });
});

describe('what the pages say of other people', () => {
  it.skipIf(!hasPoppler).each([
    ['CT-3003', 'es', '¿Se puede deshacer?', /¿Podrían mejorar|¿Qué no sabe/],
    ['CT-3002', 'en', 'Can it be undone?', /Could my other illnesses|What does nobody know/],
  ] as const)('%s reads on undoing no figure that was measured in other people', (...place) => {
    const [reference, language, head, next] = place;
    const text = comparisonText(packetOf(reference, language));
    const rest = text.slice(text.lastIndexOf(head));
    expect(rest.slice(0, rest.search(next))).not.toMatch(/\d+ ?%|\b\d+ (people|personas)\b|\d (kg|lb)\b/);
  });
});
