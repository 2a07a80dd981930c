import { describe, expect, it } from 'vitest';
import { readClinic } from '../../../src/input/index.ts';
import { context, replaceIn, sampleClinic } from '../../helpers/sample-case.ts';

function messages(part: string, by: string): string[] {
  const result = readClinic(replaceIn(sampleClinic, part, by), 'clinic.yaml', context);
  const found = result.ok ? result.warnings : result.diagnostics;
  return found.map(({ code, path, message, hint }) => `${code} ${path ?? ''}: ${message} / ${hint ?? ''}`);
}

describe('reading a clinic profile', () => {
  it('gives the values, with what is left out filled in', () => {
    const result = readClinic(sampleClinic, 'clinic.yaml', context);
    if (!result.ok) throw new Error('refused');
    expect(result.value.clinic.jurisdiction).toBe('international');
    expect(result.value.surgeons[0]).toMatchObject({ id: 'tamsin', pronoun: 'they' });
    expect(result.value.surgeons[0]?.results[0]).toMatchObject({ events: 1, n: 128, from: '2022-06' });
    expect(result.value).toMatchObject({ under_study: {}, prefer: [], cautions: {} });
  });

  it.each([
    ['"911"', '911', 'CASE_ID_NOT_TEXT clinic.phones.emergency', 'Put it in quotes: "911".'],
    ['"555-0128"', '5550128', 'CASE_ID_NOT_TEXT clinic.phones.day', 'Put it in quotes: "5550128".'],
    ['"555-0191"', '0800', 'CASE_ID_NOT_TEXT second_opinion[0].phone', 'Put it in quotes: "0800".'],
    ['id: tamsin', 'id: 007', 'CASE_ID_NOT_TEXT surgeons[0].id', 'Put it in quotes: "007".'],
    [
      ', emergency: "911"',
      '',
      'CASE_MISSING_FIELD clinic.phones.emergency',
      'Add it, for example emergency: "555-0100".',
    ],
    ['"911"', '"call us"', 'CASE_TYPE_MISMATCH clinic.phones.emergency', 'Write for example "555-0100".'],
    ['"911"', '""', 'CASE_TYPE_MISMATCH clinic.phones.emergency', 'Write for example "555-0100".'],
    ['paper: letter', 'paper: legal', 'CASE_UNKNOWN_CODE clinic.paper', 'Choose one of: letter, a4.'],
    ['days: 30', 'days: 0', 'CASE_OUT_OF_RANGE surgeons[0].results[0].days', 'Check the number.'],
    ['n: 128', 'n: "1,280"', 'CASE_DECIMAL_COMMA surgeons[0].results[0].n', 'nothing between thousands'],
    ['n: 128', 'n: 1e3', 'CASE_TYPE_MISMATCH surgeons[0].results[0].n', 'Write plain digits'],
    ['events: 1,', 'events: 129,', 'CASE_CONFLICT surgeons[0].results[0].events', 'Count people'],
    ['from: 2022-06', 'from: 2026', 'CASE_CONFLICT surgeons[0].results[0].to', 'Correct one of the two'],
    ['from: 2022-06', 'from: 2022-6', 'CASE_BAD_DATE surgeons[0].results[0].from', 'Write 2022-06.'],
    [
      'outcome: leak',
      'outcome: leaks',
      'CASE_UNKNOWN_CODE surgeons[0].results[0].outcome',
      'Did you mean leak?',
    ],
    [
      'outcome: leak',
      'outcome: happiness',
      'CASE_UNKNOWN_CODE surgeons[0].results[0].outcome',
      'plainleaf evidence',
    ],
    ['    bypass:', '    bypas:', 'CASE_UNKNOWN_OPTION protocol.stay.bypas', 'Did you mean bypass?'],
    [
      '    bypass: {en: 1 night',
      '    bypass: {English: 1 night',
      'CASE_UNKNOWN_CODE protocol.stay.bypass.…',
      'Words that hold a comma',
    ],
    [
      'approved: {by: Dr. Harun Velde, on: 2026-10-05}',
      'approved: yes',
      'CASE_TYPE_MISMATCH approved',
      'Write key: value',
    ],
    ['surgeons:\n', 'surgeons: none\nx:\n', 'CASE_TYPE_MISMATCH surgeons', 'Write it in square brackets'],
    [
      'protocol:',
      'prefer: [{record: "not one", reason: {en: a, es: b}}]\nprotocol:',
      'CASE_TYPE_MISMATCH prefer[0].record',
      'Write for example',
    ],
    [
      'protocol:',
      'cautions: {"not one": struck}\nprotocol:',
      'CASE_UNKNOWN_CODE cautions.…',
      'Write for example',
    ],
  ])('%s written as %s is refused', (...[part, by, place, hint]) => {
    const [first] = messages(part, by);
    expect(first).toContain(`${place}: `);
    expect(first).toContain(hint);
  });

  it('a period in one year may be written as years', () => {
    expect(messages('from: 2022-06, to: 2025-12', 'from: 2025, to: 2025-12')).toEqual([]);
    expect(messages('from: 2022-06, to: 2025-12', 'from: 2025-12, to: 2025')).toEqual([]);
  });

  it('a surgeon and a result stand once', () => {
    expect(messages('protocol:', '  - {id: tamsin, name: Dr. Other}\nprotocol:')).toEqual([
      expect.stringContaining('two surgeons have this id'),
    ]);
    const again =
      '      - {option: sleeve, outcome: leak, days: 30, events: 2, n: 99, from: 2020, to: 2021}\n';
    expect(messages('protocol:', `${again}protocol:`)).toEqual([
      expect.stringContaining('this result stands twice'),
    ]);
    expect(messages('protocol:', `${again.replace('days: 30', 'days: 90')}protocol:`)).toEqual([]);
  });

  it('records and cautions are checked where they are known', () => {
    const text =
      sampleClinic +
      'prefer: [{record: sleeve.leak.30d.x, reason: {en: a, es: b}}]\ncautions: {nothing: struck}\n';
    const codes = (records?: readonly string[]): string[] => {
      const result = readClinic(text, 'a', { ...context, ...(records === undefined ? {} : { records }) });
      return result.ok ? [] : result.diagnostics.map(({ code, path }) => `${code} ${path ?? ''}`);
    };
    expect(codes()).toEqual(['CASE_UNKNOWN_CODE cautions.…']);
    expect(codes(['sleeve.leak.30d.x'])).toEqual(['CASE_UNKNOWN_CODE cautions.…']);
    expect(codes([])).toEqual(['CASE_UNKNOWN_CODE prefer[0].record', 'CASE_UNKNOWN_CODE cautions.…']);
  });

  it('says so when it was given a case', () => {
    const result = readClinic('patient: {}\ndecision: {}\n', 'a', context);
    expect(result.ok ? [] : result.diagnostics.map(({ message }) => message)).toEqual([
      'this is a case, not a clinic profile',
    ]);
  });
});
