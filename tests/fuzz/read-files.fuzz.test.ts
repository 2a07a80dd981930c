import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Diagnostic, Result } from '../../src/diagnostics/diagnostic.ts';
import { formatDiagnostics } from '../../src/diagnostics/format.ts';
import { readCase, readClinic } from '../../src/input/index.ts';
import { open } from '../helpers/check-file.ts';
import { readKnownCodes, testDay } from '../helpers/known-codes.ts';
import { mutateYaml } from '../helpers/mutate-yaml.ts';
import { seededRandom } from '../helpers/random.ts';

const context = { ...readKnownCodes(), today: testDay };
const cases = readdirSync(new URL('../../examples/cases/', import.meta.url)).map(
  (name) => open(`examples/cases/${name}`).text,
);
const clinic = open('examples/clinic.yaml').text;
// Processor time of this process, so that a busy machine does not make a fast reader look slow.
const slowest = 1000; // milliseconds an input

function complaints(result: Result<unknown>): readonly Diagnostic[] {
  return result.ok ? [] : result.diagnostics;
}

/** What is wrong with an outcome: nothing when it is a value, or errors that each have a place in the file. */
function judge(text: string, read: () => Result<unknown>): string | undefined {
  const start = process.cpuUsage();
  const result = read();
  const found = complaints(result);
  formatDiagnostics(found, { source: () => text, limit: Infinity });
  const { user, system } = process.cpuUsage(start);
  if ((user + system) / 1000 > slowest) return 'too slow';
  if (result.ok) return undefined;
  if (!found.some(({ severity }) => severity === 'error')) return 'refused without an error';
  const lines = text.split('\n').length;
  const lost = found.find(
    ({ span }) => span === undefined || span.line < 1 || span.line > lines || span.column < 1,
  );
  return lost === undefined ? undefined : `no place for ${lost.code}`;
}

describe('files damaged at random', () => {
  it.each(cases.map((text, index) => [index + 1, text] as const))(
    'example case %i is read, or refused with places, never a throw',
    (seed, text) => {
      const random = seededRandom(seed);
      const outcomes = Array.from({ length: 200 }, () => {
        const mutated = mutateYaml(text, random);
        return { ...mutated, wrong: judge(mutated.text, () => readCase(mutated.text, 'fuzz.yaml', context)) };
      });
      expect(outcomes.filter(({ wrong }) => wrong !== undefined)).toEqual([]);
    },
  );

  it('the example clinic profile is read, or refused with places, never a throw', () => {
    const random = seededRandom(77);
    const outcomes = Array.from({ length: 60 }, () => {
      const mutated = mutateYaml(clinic, random);
      return { ...mutated, wrong: judge(mutated.text, () => readClinic(mutated.text, 'fuzz.yaml', context)) };
    });
    expect(outcomes.filter(({ wrong }) => wrong !== undefined)).toEqual([]);
  });
});

const large = 1024 * 1024 - 100;
function fill(unit: string): string {
  return unit.repeat(Math.floor(large / unit.length));
}

describe('files made to be slow', () => {
  it.each([
    ['open brackets', fill('[')],
    ['open braces with keys', fill('{a: ')],
    ['dashes on one line', fill('- ')],
    ['dashes on one line, then a key', `${'- '.repeat(90)}\na: 1`],
    ['question marks', fill('? ')],
    ['colons', fill('a: ')],
    ['commas in a bracket', `[${fill(',')}`],
    ['one key again and again', fill('a: 1\n')],
    ['many different keys', Array.from({ length: 3900 }, (_, index) => `k${String(index)}: 1`).join('\n')],
    [
      'many unknown keys near a known one',
      `patient:\n${Array.from({ length: 2800 }, (_, index) => `  weigh${String(index)}: 1`).join('\n')}`,
    ],
    ['a list of many wrong options', `decision: {options: [${'sleve, '.repeat(6_000)}]}`],
    ['empty lines', fill('\n')],
    ['one long word', `case: ${fill('x')}`],
    ['many words', `patient:\n  name: ${fill('y ')}`],
    ['an open quote', `case: "${fill('a\n ')}`],
    ['tabs', fill('\t')],
    ['hashes', fill('# ')],
    ['documents', fill('---\n')],
    ['directives', fill('%\n')],
    ['anchors', fill('&a ')],
    ['aliases', fill('*a ')],
    ['tags', fill('!a ')],
    ['block scalars', fill('|\n')],
    ['deep indentation', Array.from({ length: 150 }, (_, index) => `${' '.repeat(index)}a:`).join('\n')],
  ])('%s: refused within a second', (_, text) => {
    expect(judge(text, () => readCase(text, 'slow.yaml', context))).toBeUndefined();
    expect(readCase(text, 'slow.yaml', context).ok).toBe(false);
  });
});
