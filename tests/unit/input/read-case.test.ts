import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { z } from 'zod';
import { readCase } from '../../../src/input/index.ts';
import { readFile } from '../../../src/input/read-file.ts';
import { OptionCodeSchema } from '../../../src/model/scalars.ts';
import { context, replaceIn, sampleCase } from '../../helpers/sample-case.ts';

function found(text: string, options = context): readonly Diagnostic[] {
  const result = readCase(text, 'case.yaml', options);
  return result.ok ? result.warnings : result.diagnostics;
}

function codes(text: string): string[] {
  return found(text).map(
    ({ code, path, span }) => `${code} ${path ?? ''} ${String(span?.line)}:${String(span?.column)}`,
  );
}

function swap(part: string, by: string): string {
  return replaceIn(sampleCase, part, by);
}

describe('reading a case', () => {
  it('gives the values, with weights in kilograms, heights in metres and what is left out filled in', () => {
    const result = readCase(sampleCase, 'case.yaml', context);
    if (!result.ok) throw new Error('refused');
    expect(result.warnings).toEqual([]);
    expect(result.value.case).toBe('QB-2001');
    expect(result.value.patient.weight).toEqual({ kg: 114.5, written: 'kg' });
    expect(result.value.patient.height).toEqual({ m: 1.63, written: 'cm' });
    expect(result.value.patient.ancestry_threshold).toBe('standard');
    expect(result.value.health.pregnancy).toEqual({ now: false, planned_within_months: null });
    expect(result.value.health.earlier_operations).toEqual([]);
    expect(result.value.decision).toMatchObject({
      matters_most: [],
      leaning: null,
      advised_against: [],
      chosen: null,
    });
    expect(result.value.interpreter).toEqual({ needed: false });
  });

  it('reads the same with a byte-order mark, with carriage returns, and with both', () => {
    const plain = readCase(sampleCase, 'a', context);
    const crlf = sampleCase.replace(/\n/g, '\r\n');
    expect(readCase(`\ufeff${sampleCase}`, 'a', context)).toEqual(plain);
    expect(readCase(crlf, 'a', context)).toEqual(plain);
    expect(readCase(`\ufeff${crlf}`, 'a', context)).toEqual(plain);
  });

  it('counts columns from the first letter after a byte-order mark', () => {
    expect(codes(`\ufeff${sampleCase.replace('plainleaf: 1', 'plainleaf: 2')}`)).toEqual([
      'CASE_NOT_SUPPORTED plainleaf 1:12',
    ]);
  });

  it('takes a bare year as the text it was meant to be', () => {
    const text = swap(
      '  smoking: never\n',
      '  smoking: never\n  earlier_operations: [{operation: sleeve, date: 2019, status: removed}]\n',
    );
    const result = readCase(text, 'a', context);
    expect(result.ok && result.value.health.earlier_operations[0]?.date).toBe('2019');
  });

  it('composes letters, and folds white space in words to single spaces', () => {
    const result = readCase(swap('Oriel Fenwick-Salt', '"Zoe\u0308   Fenwick\\n Salt "'), 'a', context);
    expect(result.ok && result.value.patient.name).toBe('Zoë Fenwick Salt');
  });

  it.each(['yes', 'no', 'on', 'NO', '~x'])(
    'reads the language word %s as text, never as true or false',
    (word) => {
      expect(codes(swap('[en, es]', `[en, ${word}]`))).toEqual(['CASE_UNKNOWN_CODE languages[1] 4:17']);
    },
  );

  it('finds everything at once, in reading order', () => {
    const text = sampleCase
      .replace('"QB-2001"', '00417')
      .replace('163 cm', '163')
      .replace('114.5 kg', '114,5 kg')
      .replace('[reflux]', '[refluks]')
      .replace('sleeve,', 'sleve, sleve,')
      .replace('first-operation', 'second-operation')
      .replace('plan: {surgeon: tamsin}', 'plan: {}');
    expect(codes(text)).toEqual([
      'CASE_ID_NOT_TEXT case 2:7',
      'CASE_BAD_UNIT patient.height 10:11',
      'CASE_DECIMAL_COMMA patient.weight 11:11',
      'CASE_UNKNOWN_CODE health.conditions[0] 13:16',
      'CASE_CONFLICT decision.asked 17:10',
      'CASE_UNKNOWN_OPTION decision.options[0] 18:13',
      'CASE_UNKNOWN_OPTION decision.options[1] 18:20',
      'CASE_MISSING_FIELD plan.surgeon 19:1',
    ]);
  });

  it('says one thing about one value', () => {
    expect(codes(swap('[sleeve, bypass, no-operation]', '[3, no-operation]'))).toEqual([
      'CASE_TYPE_MISMATCH decision.options[0] 18:13',
    ]);
  });

  it('refuses an alias, reads on, and says nothing about what the alias stands for', () => {
    expect(codes(swap('sex: female', 'sex: *x').replace('163 cm', '163'))).toEqual([
      'YAML_ALIAS_REFUSED  9:8',
      'CASE_BAD_UNIT patient.height 10:11',
    ]);
  });

  it('refuses a tag, and does not let it change the value', () => {
    expect(codes(swap('163 cm', '!!str 163 cm'))).toEqual(['YAML_TAG_REFUSED  10:11']);
  });

  it('points at the second of two equal keys, and at the first beside it', () => {
    const [diagnostic, ...others] = found(
      swap('  smoking: never\n', '  smoking: never\n  smoking: former\n'),
    );
    expect(others).toEqual([]);
    expect(diagnostic?.span).toMatchObject({ line: 16, column: 3 });
    expect(diagnostic?.related?.[0]?.span).toMatchObject({ line: 15, column: 3 });
  });

  it.each([
    ['a list', '[1, 2]\n', 'CASE_TYPE_MISMATCH'],
    ['a word', 'hello\n', 'CASE_TYPE_MISMATCH'],
    ['nothing', '', 'CASE_MISSING_FIELD'],
    ['only comments', '# nothing here\n', 'CASE_MISSING_FIELD'],
    ['three dashes', '---\n', 'CASE_MISSING_FIELD'],
  ])('refuses a file that holds %s', (_, text, code) => {
    const diagnostics = found(text);
    expect(diagnostics.map((one) => one.code)).toEqual([code]);
    expect(diagnostics[0]?.span?.line).toBe(1);
  });

  it('says so when it was given a clinic profile', () => {
    expect(found('clinic: {}\nsurgeons: []\n').map(({ message }) => message)).toEqual([
      'this is a clinic profile, not a case',
    ]);
  });

  it('checks no age and no past date when it is not told the day', () => {
    const { today, ...rest } = context;
    expect(today).toBeDefined();
    expect(found(swap('1984-07-21', '2084-07-21'), rest)).toEqual([]);
    expect(codes(swap('1984-07-21', '2084-07-21'))).toEqual(['CASE_CONFLICT patient.born 8:9']);
  });

  it.each([
    ['1926-11-25', []],
    ['1926-11-24', []],
    ['1925-11-25', ['CASE_CONFLICT patient.born 8:9']],
    ['2016-11-25', []],
    ['2016-11-26', ['CASE_CONFLICT patient.born 8:9']],
  ])('takes people from 10 to 100 years: born %s', (born, expected) => {
    expect(codes(swap('1984-07-21', born))).toEqual(expected);
  });

  it.each([
    ['2024-02-29', []],
    ['2026-02-29', ['CASE_BAD_DATE plan.next_visit 19:20']],
    ['2000-02-29', []],
    ['1900-02-29', ['CASE_BAD_DATE plan.next_visit 19:20']],
    ['2026-04-31', ['CASE_BAD_DATE plan.next_visit 19:20']],
    ['2026-13-01', ['CASE_BAD_DATE plan.next_visit 19:20']],
    ['2026-00-10', ['CASE_BAD_DATE plan.next_visit 19:20']],
  ])('knows which days exist: %s', (date, expected) => {
    expect(codes(swap('{surgeon', `{next_visit: ${date}, surgeon`))).toEqual(expected);
  });

  it.each(['0x10', '1e1', '0o7', '012', '+5', '1.0e1'])(
    'refuses the number %s, which reads as another',
    (number) => {
      const text = swap(
        '  smoking: never\n',
        `  smoking: never\n  pregnancy: {planned_within_months: ${number}}\n`,
      );
      expect(found(text).map(({ code, path }) => `${code} ${path ?? ''}`)).toEqual([
        'CASE_TYPE_MISMATCH health.pregnancy.planned_within_months',
      ]);
    },
  );

  it.each(['.nan', '.inf', '1.5', '"3"', 'true', '[3]', '{}'])(
    'refuses %s where a whole number belongs',
    (value) => {
      const text = swap(
        '  smoking: never\n',
        `  smoking: never\n  pregnancy: {planned_within_months: ${value}}\n`,
      );
      expect(found(text).map(({ code }) => code)).toEqual(['CASE_TYPE_MISMATCH']);
    },
  );

  it('shows which codes may be chosen when an option is unknown', () => {
    const [diagnostic] = found(swap('sleeve,', 'gastric-sleeve,'));
    expect(diagnostic?.hint).toContain('Choose one of: sleeve, bypass,');
    expect(diagnostic?.hint).not.toContain('any-surgery');
    expect(found(swap('sleeve,', 'slevee,'))[0]?.hint).toMatch(/^Did you mean sleeve\?/);
  });

  it('treats a key named after something every object has as any unknown key', () => {
    const text = swap('  sex: female\n', '  sex: female\n  constructor: x\n  toString: x\n');
    expect(found(text).map(({ code }) => code)).toEqual(['CASE_UNKNOWN_FIELD', 'CASE_UNKNOWN_FIELD']);
  });

  it('lets no key reach the prototype of an object', () => {
    const result = readCase(
      swap('  sex: female\n', '  sex: female\n  __proto__: {polluted: true}\n'),
      'a',
      context,
    );
    expect(result.ok).toBe(false);
    expect(Object.prototype).not.toHaveProperty('polluted');
  });

  it.each([
    ['  sex: female\n', '', 'patient.sex', 'Add sex: and one of female, male, not-stated.'],
    ['  name: Oriel Fenwick-Salt\n', '', 'patient.name', 'Add it, for example name: First Last.'],
    ['  options: [sleeve, bypass, no-operation]\n', '', 'decision.options', 'Add options: and a list.'],
    ['[reflux]', '[reflux, ~]', 'health.conditions[1]', 'Write the entry, or remove its dash or comma.'],
    ['plainleaf: 1\n', '', 'plainleaf', 'Add plainleaf: 1.'],
    ['plan:', 'interpreter: {}\nplan:', 'interpreter.needed', 'Add needed: true or needed: false.'],
    [
      'plan: {surgeon: tamsin}',
      'plan:',
      'plan',
      'Add plan: and under it next_visit, operation_date, stages, surgeon.',
    ],
    ['  smoking', '  pregnancy: {now: }\n  smoking', 'health.pregnancy.now', 'Add now: true or now: false.'],
  ])('says what to add where something is missing: %j written as %j', (...[part, by, path, hint]) => {
    expect(found(swap(part, by))).toMatchObject([{ code: 'CASE_MISSING_FIELD', path, hint }]);
  });

  it.each([
    ['sex: female', 'sex: 1', 'Choose one of: female, male, not-stated.'],
    ['plainleaf: 1', 'plainleaf: one', 'Write plainleaf: 1, without quotes.'],
    ['example: true', 'example: 1', 'Write true or false, without quotes.'],
    ['example: true', 'example: off', 'Write false.'],
    ['[reflux]', '{reflux: true}', 'Write it in square brackets: [one, two].'],
    ['plan: {surgeon: tamsin}', 'plan: tamsin', 'Write key: value, one a line, indented by two spaces.'],
    ['name: Oriel Fenwick-Salt', 'name: 12', 'Put it in quotes.'],
    [
      'name: Oriel Fenwick-Salt',
      'name: {first: Oriel}',
      'Put words that hold a colon, comma or bracket in quotes.',
    ],
    ['case: "QB-2001"', 'case: [QB]', 'Put words that hold a colon, comma or bracket in quotes.'],
  ])('says what to write where the kind is wrong: %j written as %j', (...[part, by, hint]) => {
    expect(found(swap(part, by))).toMatchObject([{ code: 'CASE_TYPE_MISMATCH', hint }]);
  });

  it('counts the entries of a list', () => {
    const many =
      'sleeve, bypass, band, balloon, plication, semaglutide, tirzepatide, lifestyle, duodenal-switch, endoscopic-sleeve, no-operation';
    expect(found(swap('sleeve, bypass, no-operation', many))).toMatchObject([
      { code: 'CASE_OUT_OF_RANGE', message: 'expected at most 10 entries' },
    ]);
  });

  it('always gives a reason, even if no check has words for it', () => {
    const kind = {
      schema: z.strictObject({ a: OptionCodeSchema }),
      rules: [],
      mistaken: (): undefined => undefined,
    };
    const odd = { ...context, options: [{ code: 'a!', kind: 'none' as const, choosable: true }] };
    const result = readFile({ text: 'a: a!\n', file: 'a' }, kind, odd);
    expect(result.ok ? [] : result.diagnostics).toMatchObject([
      { code: 'CASE_TYPE_MISMATCH', hint: 'Compare it with an example.' },
    ]);
  });
});
