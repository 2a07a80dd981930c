import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCase, readClinic, withNoOperation } from '../../../src/input/index.ts';
import { packetDocuments } from '../../../src/model/codes.ts';
import { documentsOf } from '../../../src/model/case.ts';
import { bodyMassIndex } from '../../../src/model/quantity.ts';
import { checkFile, open } from '../../helpers/check-file.ts';
import { context } from '../../helpers/sample-case.ts';

const names = readdirSync(new URL('../../../examples/cases/', import.meta.url));

function read(name: string) {
  const { text, file } = open(`examples/cases/${name}`);
  const result = readCase(text, file, context);
  if (!result.ok) throw new Error(`${name} is refused`);
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
    expect(documentsOf(example)).toEqual(['comparison', 'questions', 'sources', 'clinician-sheet']);
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
    const { text, file } = open('examples/clinic.yaml');
    const result = readClinic(text, file, context);
    if (!result.ok) throw new Error('refused');
    const choosable = context.options.filter((option) => option.choosable).map(({ code }) => code);
    for (const topic of Object.values(result.value.protocol)) {
      expect(Object.keys(topic)).toEqual(expect.arrayContaining(choosable));
      for (const words of Object.values(topic)) expect(Object.keys(words)).toEqual(['en', 'es']);
    }
    const results = result.value.surgeons.flatMap((surgeon) => surgeon.results);
    expect(results.some(({ events, n }) => events === 0 && n >= 30)).toBe(true);
    expect(results.some(({ n }) => n < 30)).toBe(true);
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
