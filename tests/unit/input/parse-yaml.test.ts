import { describe, expect, it } from 'vitest';
import { limits } from '../../../src/input/limits.ts';
import { parseYaml } from '../../../src/input/parse-yaml.ts';

function codes(text: string): string[] {
  return parseYaml(text, 'a.yaml').diagnostics.map(
    ({ code, span }) => `${code} ${String(span?.line)}:${String(span?.column)}`,
  );
}

function value(text: string): unknown {
  const { tree, diagnostics } = parseYaml(text, 'a.yaml');
  expect(diagnostics).toEqual([]);
  return tree?.value;
}

describe('what YAML is taken for', () => {
  it('is version 1.2: yes, no and on are words, and dates stay text', () => {
    expect(value('a: yes\nb: no\nc: on\nd: 2026-01-02\ne: 12:30\n')).toEqual({
      a: 'yes',
      b: 'no',
      c: 'on',
      d: '2026-01-02',
      e: '12:30',
    });
  });

  it('keys are words, whatever they look like', () => {
    expect(value('1: a\ntrue: b\nnull: c\n<<: d\n')).toEqual({ '1': 'a', true: 'b', null: 'c', '<<': 'd' });
  });

  it('reads blocks, brackets, quotes and folded words', () => {
    expect(value('a: [1, {b: "c"}]\nd: >-\n  e\n  f\ng: \'h\'\ni:\n- j\n')).toEqual({
      a: [1, { b: 'c' }],
      d: 'e f',
      g: 'h',
      i: ['j'],
    });
  });

  it('a key: value in square brackets is a map of one', () => {
    expect(value('a: [b: c, d]\n')).toEqual({ a: [{ b: 'c' }, 'd'] });
  });
});

describe('what is refused', () => {
  it.each([
    ['a: *b\n', 'YAML_ALIAS_REFUSED 1:4'],
    ['a: &b c\n', 'YAML_ALIAS_REFUSED 1:4'],
    ['*a : b\n', 'YAML_ALIAS_REFUSED 1:1'],
    ['a: !!str b\n', 'YAML_TAG_REFUSED 1:4'],
    ['a: !b c\n', 'YAML_TAG_REFUSED 1:4'],
    ['%YAML 1.1\n---\na: b\n', 'YAML_TAG_REFUSED 1:1'],
    ['a: b\n---\nc: d\n', 'YAML_MANY_DOCUMENTS 3:1'],
    ['a: b\n---\n', 'YAML_MANY_DOCUMENTS 2:4'],
    ['a: b\na: c\n', 'YAML_DUPLICATE_KEY 2:1'],
    ['a: b\n"a": c\n', 'YAML_DUPLICATE_KEY 2:1'],
    ['{a: b, a: c}\n', 'YAML_DUPLICATE_KEY 1:8'],
    ['__proto__: b\n', 'CASE_UNKNOWN_FIELD 1:1'],
    ['a: "b\nc: d\n', 'YAML_SYNTAX 1:4'],
    ["a: 'b\nc: d\n", 'YAML_SYNTAX 1:4'],
    ['a: [b\nc: d\n', 'YAML_SYNTAX 2:1'],
    ['a: b: c\n', 'YAML_SYNTAX 1:4'],
    ['a: "\\q"\n', 'YAML_SYNTAX 1:5'],
    ['a: @b\n', 'YAML_SYNTAX 1:4'],
    ['a:\n\tb: c\n', 'YAML_SYNTAX 2:1'],
    ['[a]: b\n', 'YAML_SYNTAX 1:1'],
    ['{a: b}: c\n', 'YAML_SYNTAX 1:1'],
    ['? [a]\n: b\n', 'YAML_SYNTAX 1:3'],
    ['a: b\u0000\n', 'YAML_SYNTAX 1:5'],
    ['a: \ud800\n', 'YAML_SYNTAX 1:4'],
    ['a: \u001b[31m\n', 'YAML_SYNTAX 1:4'],
  ])('%j: %s', (text, expected) => {
    expect(codes(text)).toEqual([expected]);
  });

  it('signs inside quotes and comments are only signs', () => {
    expect(value('a: "*b &c !d [[["\n# *b &c !d [[[\ne: f # *g\n')).toEqual({ a: '*b &c !d [[[', e: 'f' });
  });

  it('a file over 1 MiB, counted in bytes', () => {
    const text = `a: "${'é'.repeat(limits.bytes / 2)}"\n`;
    expect(text.length).toBeLessThan(limits.bytes);
    expect(codes(text)).toEqual(['YAML_TOO_LARGE 1:1']);
  });

  it('32 levels are read, 33 are not, in brackets as in blocks', () => {
    const flow = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}\n`;
    const block = (depth: number): string =>
      Array.from({ length: depth }, (_, index) => `${' '.repeat(index)}a:`).join('\n');
    expect(codes(flow(limits.depth))).toEqual([]);
    expect(codes(flow(limits.depth + 1))).toEqual(['YAML_TOO_DEEP 1:33']);
    expect(codes(block(limits.depth))).toEqual([]);
    expect(codes(block(limits.depth + 1))).toEqual(['YAML_TOO_DEEP 33:35']);
  });

  it('brackets that the indentation closed do not hide what comes after', () => {
    expect(codes(`a: [\nb: c\n${'- '.repeat(3000)}\n`)).toContain('YAML_TOO_DEEP 3:201');
  });

  it('more than 20,000 entries, or lines', () => {
    expect(codes(`a: [${'b,'.repeat(limits.tokens)}]\n`)).toEqual(['YAML_TOO_LARGE 1:20001']);
    expect(codes('\n'.repeat(limits.lines))).toEqual(['YAML_TOO_LARGE 1:1']);
  });

  it('more than a hundred aliases are not a slip', () => {
    expect(codes('*a '.repeat(5000)).length).toBe(101);
  });
});
