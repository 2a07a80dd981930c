import { describe, expect, it } from 'vitest';
import { groupKeys, maskedKeys, redactLine, shortKeys, shownKeys } from '../../../src/diagnostics/redact.ts';
import { formatKeys } from '../../../src/input/vocabulary.ts';

/** The last line of a text as it may be shown. */
function last(text: string): string {
  const lines = text.split('\n');
  return redactLine(lines, lines.length - 1);
}

describe('a line as it may be shown', () => {
  it('every key of both formats is sorted: shown, group, masked or short', () => {
    const sorted = [...shownKeys, ...groupKeys, ...maskedKeys, ...shortKeys];
    expect([...formatKeys].filter((key) => !sorted.includes(key))).toEqual([]);
    expect(sorted.filter((key) => !formatKeys.has(key))).toEqual([]);
    expect(new Set(sorted).size).toBe(sorted.length);
  });

  it.each([
    ['weight: 114,5 kg', 'weight: 114,5 kg'],
    ['patient:\n  weight: 114,5 kg', '  weight: 114,5 kg'],
    ['patient:\n  name: A Secret', '  name: …'],
    ['patient:\n  "name": A Secret', '  "name": …'],
    ['patient:\n  name:', '  name:'],
    ['patient:\n  born: 1981-01-01', '  born: …'],
    ['patient: {sex: female, name: A Secret, height: 163}', 'patient: {sex: female, name: …'],
    ['patient: A Secret', 'patient: …'],
    ['patient: {A Secret}', 'patient: …'],
    ['patient:\n  wieght: A Secret', '  wieght: …'],
    ['patient:\n  Wright: A Secret', '  …'],
    ['patient:\n  casey: A Secret', '  …'],
    ['patient:\n  surname: A Secret', '  …'],
    ['patient:\n  A Secret', '  …'],
    ['A Secret', '…'],
    ['A Secret: b', '…'],
    ['case: "a"  # A Secret', 'case: "a"  …'],
    ['# A Secret', '…'],
    ['', ''],
    ['options:\n  - sleve', '  - sleve'],
    ['options:\n- sleve', '- sleve'],
    ['decision:\n  matters_most:\n    - text: {en: A Secret}', '    - text: …'],
    ['decision:\n  matters_most:\n    - text:\n        en: A Secret', '        …'],
    ['decision:\n  matters_most:\n    - text:\n        en: >-\n          sex: A Secret', '          …'],
    ['decision:\n  matters_most:\n    - text:\n        en: "A\n          smoking: Secret', '          …'],
    ['patient:\n  name: A\n    sex: Secret', '    …'],
    ['patient:\n  name: "A\n    options:\n      - Secret', '      - …'],
    ['  reasons: [{code: reflux-better, text: {en: A Secret}}]', '  reasons: [{code: reflux-better, text: …'],
    ['bor\nn: 1981-01-01', 'n: …'],
    ['results:\n  - {events: 3, n: 2}', '  - {events: 3, n: 2}'],
    ['protocol:\n  stay:\n    slevee: {en: one night}', '    slevee: {…'],
    ['case:\n  sex: Secret', '  …'],
    ['---\n    sex: Secret', '    …'],
    ['- - - sex: Secret', '- - - …'],
    ['\t\tname: A Secret', '\t\tname: …'],
  ])('%j is shown as %j', (text, shown) => {
    expect(last(text)).toBe(shown);
  });

  it('hides words of the name and the birth date wherever else they were written', () => {
    const lines = [
      'case: "Zenobia-1984-07-21"',
      'patient:',
      '  name: Zenobia Quartermaine',
      '  born: 1984-07-21',
      '  sex: zenobia',
    ];
    expect(redactLine(lines, 0)).toBe('case: …');
    expect(redactLine(lines, 4)).toBe('  sex: …');
    expect(redactLine([...lines, 'health:', '  conditions: [Quartermaine]'], 6)).toBe('  conditions: …');
    expect(redactLine([...lines, 'health:', '  conditions: [reflux]'], 6)).toBe('  conditions: [reflux]');
  });

  it('is not slow on a line without end', () => {
    const start = process.cpuUsage();
    expect(redactLine([`name ${'x'.repeat(1_000_000)}`], 0)).toBe('…');
    expect(redactLine(['options:', `  - ${'? '.repeat(500_000)}`], 1).length).toBeLessThan(1100);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(500);
  });
});
