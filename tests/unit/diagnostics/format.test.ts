import { describe, expect, it } from 'vitest';
import { comparePositions } from '../../../src/diagnostics/compare-positions.ts';
import { diagnosticCatalogue } from '../../../src/diagnostics/codes.ts';
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { formatDiagnostics, formatJsonLines } from '../../../src/diagnostics/format.ts';

function at(line: number, column: number, endColumn?: number): Diagnostic {
  const end = endColumn === undefined ? {} : { endLine: line, endColumn };
  return {
    code: 'CASE_BAD_UNIT',
    severity: 'error',
    message: 'expected a weight',
    hint: 'Write kg.',
    path: 'patient.weight',
    span: { file: 'a.yaml', line, column, ...end },
  };
}

function shown(text: string, diagnostic: Diagnostic): string {
  return formatDiagnostics([diagnostic], { source: () => text });
}

describe('a diagnostic for people', () => {
  it('says where, what, the line with carets under the place, and what to do', () => {
    expect(shown('patient:\n  weight: 114,5 kg\n', at(2, 11, 19))).toBe(
      [
        'a.yaml:2:11  error CASE_BAD_UNIT  patient.weight',
        '  expected a weight',
        '  2 |   weight: 114,5 kg',
        '    |           ^^^^^^^^',
        '  hint: Write kg.',
      ].join('\n'),
    );
  });

  it('keeps the carets under the place with line numbers of any width, wide letters and Windows line ends', () => {
    const lines = shown(`${'\r\n'.repeat(99)}case: "é😀é" \r\n`, at(100, 7, 13)).split('\n');
    expect(lines.slice(2, 4)).toEqual(['  100 | case: "é😀é" ', '      |       ^^^^^']);
  });

  it('shows one caret where no end is known, and carets to the end of the line where it ends on another', () => {
    expect(shown('case: abc\n', at(1, 7)).split('\n')[3]).toBe('    |       ^');
    const long: Diagnostic = {
      ...at(1, 7),
      span: { file: 'a.yaml', line: 1, column: 7, endLine: 3, endColumn: 2 },
    };
    expect(shown('case: abc\n', long).split('\n')[3]).toBe('    |       ^^^');
  });

  it('cuts a long line so that the place stays in sight', () => {
    const [, , line, carets] = shown(`case: ${'x'.repeat(300)}y${'x'.repeat(300)}\n`, at(1, 307, 308)).split(
      '\n',
    );
    expect(line?.length).toBeLessThan(110);
    expect(line?.[carets?.indexOf('^') ?? 0]).toBe('y');
    const start = shown(`case: ${'x'.repeat(300)}\n`, at(1, 7, 307)).split('\n');
    expect(start[2]).toMatch(/^ {2}1 \| case: x+$/);
    expect(start[3]?.length).toBe(start[2]?.length);
  });

  it('leaves the excerpt out where there is no text, no such line or nothing on it', () => {
    const bare = 'a.yaml:2:11  error CASE_BAD_UNIT  patient.weight\n  expected a weight\n  hint: Write kg.';
    expect(formatDiagnostics([at(2, 11)])).toBe(bare);
    expect(shown('one line', at(2, 11))).toBe(bare);
    expect(shown('one line\n   \n', at(2, 11))).toBe(bare);
    expect(formatDiagnostics([at(2, 11)], { source: () => undefined })).toBe(bare);
  });

  it('masks who the person is, and puts one caret under the mask', () => {
    expect(
      shown('patient:\n  name: A Secret\n', at(2, 9, 17))
        .split('\n')
        .slice(2, 4),
    ).toEqual(['  2 |   name: …', '    |         ^']);
  });

  it('shows evidence and words as they are, for they are about nobody', () => {
    const diagnostic: Diagnostic = { ...at(1, 7, 13), code: 'LOCALE_MARKUP' };
    expect(shown('name: <i>x</i>\n', diagnostic)).toContain('1 | name: <i>x</i>');
    expect(shown('name: <i>x</i>\n', { ...diagnostic, code: 'RENDER_GLYPH_MISSING' })).toContain(
      '1 | name: …',
    );
  });

  it('names related places, warnings, and things without a place', () => {
    const warning: Diagnostic = {
      code: 'CASE_CONFLICT',
      severity: 'warning',
      message: 'two things',
      related: [{ message: 'the other', span: { file: 'b.yaml', line: 3, column: 4 } }],
    };
    expect(formatDiagnostics([warning])).toBe(
      `warning CASE_CONFLICT\n  two things\n  see b.yaml:3:4: the other\n  hint: ${diagnosticCatalogue.CASE_CONFLICT.todo}`,
    );
  });

  it('shows 20 and counts the rest', () => {
    const many = Array.from({ length: 23 }, (_, index) => at(index + 1, 1));
    const text = formatDiagnostics(many);
    expect(text.match(/CASE_BAD_UNIT/g)).toHaveLength(20);
    expect(text.endsWith('\n\n… and 3 more')).toBe(true);
    expect(formatDiagnostics(many.slice(0, 20))).not.toContain('more');
    expect(formatDiagnostics(many, { limit: 1 })).toContain('… and 22 more');
    expect(formatDiagnostics([])).toBe('');
  });

  it('lets nothing in a file or its name steer the terminal', () => {
    const evil: Diagnostic = { ...at(1, 1), span: { file: 'a\u001b[2J.yaml', line: 1, column: 1 } };
    const text = shown('case: "\u001b[31m\u202e\tx"\n', evil);
    for (const sign of ['\u001b', '\u202e', '\t']) expect(text).not.toContain(sign);
    expect(text).toContain('case: "·[31m· x"');
  });
});

describe('diagnostics for machines', () => {
  it('are one JSON object a line, with a hint always and no text of the file', () => {
    const { hint, ...unhinted } = at(2, 11, 19);
    const lines = formatJsonLines([at(2, 11, 19), unhinted]).split('\n');
    expect(JSON.parse(lines[0] ?? '')).toEqual({ ...unhinted, hint });
    expect(JSON.parse(lines[1] ?? '')).toEqual({ ...unhinted, hint: diagnosticCatalogue.CASE_BAD_UNIT.todo });
    expect(formatJsonLines([])).toBe('');
  });
});

describe('the order of diagnostics', () => {
  it('is that of reading: those without a place first, then file, line, column, code', () => {
    const place = (where: string, code: Diagnostic['code'] = 'CASE_BAD_DATE'): Diagnostic => {
      const [file = '', line, column] = where.split(':');
      return { ...at(1, 1), code, span: { file, line: Number(line), column: Number(column) } };
    };
    const { span, ...nowhere } = at(1, 1);
    expect(span).toBeDefined();
    const sorted = [
      nowhere,
      place('a:1:2'),
      place('a:1:2', 'CASE_BAD_UNIT'),
      place('a:1:10'),
      place('a:9:1'),
      place('a:10:1'),
      place('b:1:1'),
    ];
    expect([...sorted].reverse().sort(comparePositions)).toEqual(sorted);
    expect(comparePositions(nowhere, nowhere)).toBe(0);
  });
});

describe('the catalogue', () => {
  it('says for each code when it is raised and what to do, as sentences', () => {
    for (const [code, entry] of Object.entries(diagnosticCatalogue)) {
      expect(code).toMatch(/^[A-Z]+(_[A-Z0-9]+)*$/);
      expect(entry.when).toMatch(/^[a-z].*[^.]$/);
      expect(entry.todo).toMatch(/^[A-Z].*\.$/);
    }
  });
});
