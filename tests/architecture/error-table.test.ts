import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { diagnosticCatalogue, exitCodes } from '../../src/diagnostics/codes.ts';

const file = resolve(import.meta.dirname, '../../DEVELOPERS.md');
const mark = '<!-- codes -->';

it('DEVELOPERS.md lists every diagnostic code as the program has it (UPDATE=1 rewrites)', () => {
  const rows = Object.entries(diagnosticCatalogue).map(
    ([code, { stage, when, todo }]) => `| \`${code}\` | ${String(exitCodes[stage])} | ${when} | ${todo} |`,
  );
  const table = ['| code | exit | when | what to do |', '| --- | --- | --- | --- |', ...rows].join('\n');
  const text = readFileSync(file, 'utf8');
  const [before = ''] = text.split(mark);
  const expected = `${before}${mark}\n\n${table}\n`;
  if (process.env['UPDATE'] === '1' && process.env['CI'] === undefined) writeFileSync(file, expected);
  expect(readFileSync(file, 'utf8')).toBe(expected);
});
