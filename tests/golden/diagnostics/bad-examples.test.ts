import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { diagnosticCatalogue, stageOf } from '../../../src/diagnostics/codes.ts';
import type { DiagnosticCode } from '../../../src/diagnostics/codes.ts';
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { formatDiagnostics } from '../../../src/diagnostics/format.ts';
import type { SourceFile } from '../../../src/input/index.ts';
import { checkFile, open } from '../../helpers/check-file.ts';

const update = process.env['UPDATE'] === '1';
if (update && process.env['CI'] === '1')
  throw new Error('UPDATE=1 is refused when CI=1: goldens are read by a person first');

const files = readdirSync(new URL('../../../examples/bad/', import.meta.url))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => open(`examples/bad/${name}`));

// Too large, or not text, to stand in the examples folder.
const made: readonly SourceFile[] = [
  { file: 'over-1-mib.yaml', text: `plainleaf: 1\ncase: "${'x'.repeat(1024 * 1024)}"\n` },
  { file: 'too-many-entries.yaml', text: `plainleaf: 1\n${'- 1\n'.repeat(40_000)}` },
  { file: 'nul.yaml', text: 'plainleaf: 1\ncase: "QB\u0000"\n' },
];

interface Checked {
  readonly source: SourceFile;
  readonly found: readonly Diagnostic[];
}

const checked: readonly Checked[] = [...files, ...made].map((source) => ({
  source,
  found: checkFile(source),
}));

function leadingCode({ found }: Checked): DiagnosticCode {
  return (found.find(({ severity }) => severity === 'error') ?? found[0])?.code ?? 'INTERNAL';
}

function describePlace({ code, span }: Diagnostic, own: string): string {
  const file = span === undefined || span.file === own ? '' : `${span.file} `;
  return `${file}${code} ${String(span?.line)}:${String(span?.column)}`;
}

function expectedPlaces(text: string): string[] {
  return [...text.matchAll(/# expect (.+)$/gm)].flatMap((match) => (match[1] ?? '').split(', '));
}

describe('bad examples', () => {
  it.each(checked.filter(({ source }) => source.file.startsWith('examples/')))(
    '$source.file gives exactly what is written beside its lines',
    ({ source, found }) => {
      expect(found.map((one) => describePlace(one, source.file))).toEqual(expectedPlaces(source.text));
      expect(found.length).toBeGreaterThan(0);
      expect(source.text).toMatch(/^# [A-Z0-9].*\n/);
    },
  );

  const byCode = new Map<DiagnosticCode, Checked[]>();
  for (const one of checked) byCode.set(leadingCode(one), [...(byCode.get(leadingCode(one)) ?? []), one]);

  it.each([...byCode])('%s looks as it did when it was last read by a person', (code, group) => {
    const sources = new Map(group.map(({ source }) => [source.file, source.text]));
    const read = (file: string): string => sources.get(file) ?? open(file).text;
    const text = group.map(({ found }) => formatDiagnostics(found, { source: read })).join('\n\n') + '\n';
    const golden = new URL(`${code}.txt`, import.meta.url);
    if (update) writeFileSync(golden, text);
    expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(text);
  });

  it('there is one for every code that a case or a clinic profile can give', () => {
    const codes = Object.keys(diagnosticCatalogue) as DiagnosticCode[];
    const seen = new Set(checked.flatMap(({ found }) => found.map(({ code }) => code)));
    expect(codes.filter((code) => stageOf(code) === 'case' && !seen.has(code))).toEqual([]);
  });

  it('no golden stands for a code that nothing gives any more', () => {
    const names = readdirSync(new URL('.', import.meta.url)).filter((name) => name.endsWith('.txt'));
    expect(names.filter((name) => !byCode.has(name.replace('.txt', '') as DiagnosticCode))).toEqual([]);
  });
});
