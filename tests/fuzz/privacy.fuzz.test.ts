import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatDiagnostics, formatJsonLines } from '../../src/diagnostics/format.ts';
import { readCase } from '../../src/input/index.ts';
import { open } from '../helpers/check-file.ts';
import { readKnownCodes, testDay } from '../helpers/known-codes.ts';
import { mutateYaml } from '../helpers/mutate-yaml.ts';
import { seededRandom } from '../helpers/random.ts';

const context = { ...readKnownCodes(), today: testDay };
const names = readdirSync(new URL('../../examples/cases/', import.meta.url));

/** A word that stands nowhere else; in forms that could pass for a key, a code, or words that lost their quotes. */
const secrets = [
  'zorvexqm',
  'Zorvexqm Zorvexqm-Zorvexqm',
  'zorvexqm, zorvexqm, zorvexqm',
  'zorvexqm: zorvexqm',
  'zorvexqm #zorvexqm',
  '"zorvexqm: [zorvexqm]"',
  "'zorvexqm''s zorvexqm'",
  '{zorvexqm: zorvexqm}',
  '[zorvexqm]',
  '>-\n    zorvexqm\n    zorvexqm: zorvexqm',
  '*zorvexqm',
  '!zorvexqm zorvexqm',
  '&zorvexqm zorvexqm',
  '"zorvexqm \\q zorvexqm"',
];
// No other date of the examples has this year.
const secretBirthday = '1946-03-19';

function plant(text: string, secret: string): string {
  return text
    .replace(/^( {2}name: ).*$/m, (_, key: string) => key + secret)
    .replace(/^( {2}born: ).*$/m, (_, key: string) => key + secretBirthday)
    .replace(
      /^( +)(en|es): .*$/gm,
      (_, space: string, key: string) => `${space}${key}: ${secret.replace(/\n {4}/g, `\n${space}  `)}`,
    );
}

function everythingSaid(text: string): string {
  const result = readCase(text, 'fuzz.yaml', context);
  const found = result.ok ? result.warnings : result.diagnostics;
  return `${formatDiagnostics(found, { source: () => text, limit: Infinity })}\n${formatJsonLines(found)}`;
}

function leaks(text: string): boolean {
  return /zorvex|vexqm|1946/i.test(everythingSaid(text));
}

describe('words about a person, planted and damaged', () => {
  it.each(names)('%s: no message, path, hint or excerpt ever repeats them', (name) => {
    const random = seededRandom(names.indexOf(name) + 1000);
    const text = open(`examples/cases/${name}`).text;
    const leaky = secrets.flatMap((secret) => {
      const planted = plant(text, secret);
      const inputs = [
        { text: planted, by: ['planted'] },
        ...Array.from({ length: 25 }, () => mutateYaml(planted, random)),
      ];
      return inputs.filter((input) => leaks(input.text));
    });
    expect(leaky).toEqual([]);
  });

  it('the planted words do reach the files, and would be seen if they were said', () => {
    const text = plant(open('examples/cases/QB-1041.yaml').text, 'zorvexqm');
    expect(text.match(/zorvexqm/g)?.length).toBeGreaterThan(3);
    expect(text).toContain(`born: ${secretBirthday}`);
    // Words of the name are hidden wherever they stand, so for once the name is another.
    const other = text.replace(/^ {2}name: .*$/m, '  name: Ada Lark');
    expect(leaks(other.replace('case: "QB-1041"', 'case: zorvexqm!'))).toBe(true);
  });
});
