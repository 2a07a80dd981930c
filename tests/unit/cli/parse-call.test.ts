import { describe, expect, it } from 'vitest';

import { parseCall } from '../../../src/cli/parse-call.ts';

describe('the command line', () => {
  it.each([[[]], [['--help']], [['-h']], [['help']]])('asks for help: %j', (args) => {
    expect(parseCall(args)).toEqual({ ask: 'help' });
  });

  it('asks for the help of a command', () => {
    expect(parseCall(['make', '--help'])).toMatchObject({ ask: 'help', command: { name: 'make' } });
  });

  it('asks for the version', () => {
    expect(parseCall(['--version'])).toEqual({ ask: 'version' });
  });

  it('calls a command with its files and options', () => {
    const request = parseCall([
      'make',
      'a.yaml',
      '--date',
      '2026-11-25',
      'b.yaml',
      '--json',
      '--out=packets',
    ]);
    expect(request).toMatchObject({
      ask: 'run',
      command: { name: 'make' },
      call: { files: ['a.yaml', 'b.yaml'] },
    });
    expect(request.ask === 'run' ? [...request.call.options] : []).toEqual([
      ['date', '2026-11-25'],
      ['json', true],
      ['out', 'packets'],
    ]);
  });

  it('keeps every text of an option that may be given again, also one that starts with a minus', () => {
    const request = parseCall([
      'compare',
      'a',
      '--what-if',
      'weight=140 kg',
      '--what-if',
      '-sleeve',
      '--what-if=+reflux',
      '--json',
    ]);
    expect(request.ask === 'run' ? [...request.call.options] : []).toEqual([
      ['what-if', ['weight=140 kg', '-sleeve', '+reflux']],
      ['json', true],
    ]);
  });

  it.each([
    [
      'a word that is no command',
      ['mak'],
      'mak is not a command; there are make, batch, check, compare, evidence, languages, schema',
    ],
    ['no file', ['make'], 'make takes CASE…'],
    ['too many files', ['compare', 'a', 'b'], 'compare takes CASE'],
    ['an option of another command', ['check', 'a', '--out', 'x'], "Unknown option '--out'"],
    [
      'an option that may be given again without its value',
      ['compare', 'a', '--what-if'],
      "Option '--what-if <value>' argument missing",
    ],
    ['an option without its value', ['make', 'a', '--date'], "Option '--date <value>' argument missing"],
    [
      'a day that does not exist',
      ['make', 'a', '--date', '2026-02-30'],
      '--date 2026-02-30 is not a day written year-month-day',
    ],
    [
      'a day in another form',
      ['make', 'a', '--date', '25.11.2026'],
      '--date 25.11.2026 is not a day written year-month-day',
    ],
  ])('is refused with %s', (_, args, why) => {
    expect(parseCall(args)).toEqual({ ask: 'nothing', why });
  });
});
