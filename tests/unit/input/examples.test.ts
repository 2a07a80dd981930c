import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCase, readClinic, withNoOperation } from '../../../src/input/index.ts';
import { packetDocuments } from '../../../src/model/codes.ts';
import { documentsOf } from '../../../src/model/case.ts';
import { afterTopics, protocolOf } from '../../../src/model/protocol-of.ts';
import { bodyMassIndex } from '../../../src/model/quantity.ts';
import { readShippedFacts } from '../../helpers/aftercare-inputs.ts';
import { checkFile, open } from '../../helpers/check-file.ts';
import { readShippedEvidence } from '../../helpers/compare-inputs.ts';
import { context } from '../../helpers/sample-case.ts';

const names = readdirSync(new URL('../../../examples/cases/', import.meta.url));

function read(name: string) {
  const { text, file } = open(`examples/cases/${name}`);
  const result = readCase(text, file, context);
  if (!result.ok) throw new Error(`${name} is refused`);
  return result.value;
}

function readExampleClinic() {
  const { text, file } = open('examples/clinic.yaml');
  const result = readClinic(text, file, context);
  if (!result.ok) throw new Error('refused');
  return result.value;
}

describe('the examples', () => {
  it.each(names)('%s has no error and no warning, also together with the example clinic', (name) => {
    expect(checkFile(open(`examples/cases/${name}`))).toEqual([]);
  });

  it.each(names)('%s is an example of an invented person, named after its reference', (name) => {
    const example = read(name);
    expect(example.example).toBe(true);
    expect(`${example.case}.yaml`).toBe(name);
    expect(example.languages).toEqual(['en', 'es']);
    // Before a choice all that helps to choose; after it the record of the talk and the operation.
    const choosing = ['comparison', 'questions', 'sources', 'clinician-sheet'];
    const after = ['consent', 'operation', 'homecare', 'warning-signs', 'vitamins', 'clinician-sheet'];
    const home = ['contents', 'homecare', 'warning-signs', 'vitamins', 'language-notice'];
    const { chosen } = example.decision;
    expect(documentsOf(example)).toEqual(chosen === null ? choosing : chosen === 'bypass' ? home : after);
  });

  it('cover what tells people apart: BMI from 27 to 62, age to 68, units, what was done before, and opinions', () => {
    const all = names.map(read);
    const bmis = all
      .map(({ patient }) => bodyMassIndex(patient.weight.kg, patient.height.m))
      .sort((a, b) => a - b);
    expect(bmis[0]).toBeCloseTo(27, 1);
    expect(bmis.at(-1)).toBeGreaterThan(60);
    expect(all.map(({ patient }) => patient.born).sort((a, b) => (a < b ? -1 : 1))[0]).toBe('1958-03-08');
    expect(new Set(all.map(({ patient }) => patient.weight.written))).toEqual(new Set(['kg', 'lb']));
    expect(new Set(all.map(({ decision }) => decision.asked))).toEqual(
      new Set(['first-operation', 'second-operation']),
    );
    expect(all.some(({ decision }) => decision.leaning === null)).toBe(true);
  });

  it('the clinic says its practice for every option that can be chosen, and has a count of none and one of few', () => {
    const { protocol, surgeons } = readExampleClinic();
    const choosable = context.options.filter((option) => option.choosable).map(({ code }) => code);
    const { stay, time_off, visits, for_life } = protocol;
    for (const topic of [stay, time_off, visits, for_life]) {
      expect(Object.keys(topic)).toEqual(expect.arrayContaining(choosable));
      for (const words of Object.values(topic)) expect(Object.keys(words)).toEqual(['en', 'es']);
    }
    const results = surgeons.flatMap((surgeon) => surgeon.results);
    expect(results.some(({ events, n }) => events === 0 && n >= 30)).toBe(true);
    expect(results.some(({ n }) => n < 30)).toBe(true);
  });

  it('the clinic has painkillers avoided for life where the caution has them avoided, and not only asked about', () => {
    const { for_life: forLife } = readExampleClinic().protocol;
    const caution = readShippedEvidence().cautions.find(({ id }) => id === 'anti-inflammatory-after-surgery');
    expect(caution?.options).toContain('sleeve');
    for (const option of ['bypass', ...(caution?.options ?? [])]) {
      const words: Readonly<Record<string, string>> = forLife[option] ?? {};
      expect(words['en']).toMatch(/(Avoid|No) (painkillers like )?ibuprofen/);
      expect(words['es']).toMatch(/(Evite|Sin) (analgésicos como el )?ibuprofeno/);
      for (const said of Object.values(words)) expect(said).not.toMatch(/Ask before|Pregunte antes/);
    }
  });

  it('the clinic says all of the time afterwards for three operations, taking a band out, and a medicine', () => {
    const { protocol } = readExampleClinic();
    const options = ['sleeve', 'bypass', 'one-anastomosis-bypass', 'band-removal', 'semaglutide'];
    const silent = options.flatMap((option) =>
      afterTopics
        .filter((topic) => protocolOf(protocol, topic, option) === undefined)
        .map((topic) => [option, topic]),
    );
    // A medicine leaves no wounds.
    expect(silent).toEqual([['semaglutide', 'wound']]);
  });

  it('every amount of a supplement lies inside one that was read, and in the same unit', () => {
    const { protocol } = readExampleClinic();
    const read = readShippedFacts().filter(({ seen }) => seen !== 'memory');
    for (const option of ['sleeve', 'bypass', 'one-anastomosis-bypass']) {
      const entries = protocolOf(protocol, 'supplements', option)?.practice ?? [];
      expect(entries.length).toBeGreaterThan(4);
      for (const { supplement, dose, times_a_day: times = 1 } of entries) {
        const unit = `${String(dose?.unit)}/day`;
        const total = (dose?.amount ?? 0) * times;
        const within = read.filter(
          ({ subject, value }) =>
            subject === supplement &&
            typeof value === 'object' &&
            'unit' in value &&
            value.unit === unit &&
            total >= (value.low ?? 0) &&
            total <= (value.high ?? Infinity),
        );
        expect([supplement, within.length > 0]).toEqual([supplement, true]);
      }
    }
  });

  it('its thresholds are those of the sources that give any', () => {
    const warnings = protocolOf(readExampleClinic().protocol, 'warnings', 'one-anastomosis-bypass')?.practice;
    const read = readShippedFacts();
    const valueOf = (id: string): unknown => read.find((fact) => fact.id === id)?.value;
    expect(valueOf('warning-emergency.fever-number.cooper-2011')).toMatchObject({
      low: warnings?.fever?.celsius,
    });
    expect(valueOf('warning-emergency.fast-heart-number.bellorin-2011')).toMatchObject({
      low: warnings?.pulse,
    });
  });
});

describe('doing nothing more', () => {
  it('is added at the end, once, without touching the case that was given', () => {
    const given = read('QB-1041.yaml');
    expect(withNoOperation(given)).toBe(given);
    const without = { ...given, decision: { ...given.decision, options: ['sleeve', 'bypass'] } };
    expect(withNoOperation(without).decision.options).toEqual(['sleeve', 'bypass', 'no-operation']);
    expect(without.decision.options).toEqual(['sleeve', 'bypass']);
  });

  it('the documents are those listed, or those of the named packet', () => {
    expect(documentsOf({ documents: ['questions'] })).toEqual(['questions']);
    expect(documentsOf({ packet: 'choosing' })).toEqual(packetDocuments.choosing);
    expect(documentsOf({})).toEqual([]);
  });
});
