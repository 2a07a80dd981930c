import { describe, expect, it } from 'vitest';

import { lintLocales, openLanguages } from '../../../src/localize/index.ts';
import { localeSettings } from '../../helpers/locale-settings.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const languages = (lengths: string) =>
  createMemoryWorkspace({
    'locales/en/locale.yaml': localeSettings('the, and, of, your, with'),
    'locales/en/common.yaml': 'greeting: Hello\nother: Hello to all\n',
    'locales/lengths.yaml': lengths,
  });

const faults = [
  ['a length in words', '# Room.\ncommon.*: five\n', 2, 'common.*: expected a whole number of characters'],
  ['a length of none', 'common.greeting: 9\ncommon.*: 0\n', 2, 'common.*: '],
  ['a half character', 'common.*: 4.5\n', 1, 'common.*: '],
  ['a list', '- common.greeting\n', 1, ''],
  ['nothing', '', 1, ''],
  ['a key twice', 'common.*: 5\ncommon.*: 6\n', 2, 'Map keys must be unique'],
  ['a bracket left open', 'common.*: [5\n', 2, 'Flow sequence'],
] as const;

describe('the room that texts have', () => {
  it('is a number of characters by the key of a text, with * for any part of it', async () => {
    const found = await lintLocales(languages('common.gre*: 5\ncommon.*: 6\n'), 'locales');
    expect(found).toMatchObject([{ severity: 'warning', span: { file: 'locales/en/common.yaml', line: 2 } }]);
  });

  it('takes a mark in a key for itself', async () => {
    expect(await lintLocales(languages('common.gre.*: 1\ncommon.(other): 1\n'), 'locales')).toEqual([]);
  });

  it.each(faults)('is refused at its line where the file holds %s', async (...[, text, line, message]) => {
    const fault = {
      code: 'LOCALE_INVALID',
      severity: 'error',
      message: expect.stringContaining(message) as string,
      hint: 'Correct lengths.yaml.',
      span: { file: 'locales/lengths.yaml', line },
    };
    expect(await lintLocales(languages(text), 'locales')).toMatchObject([fault]);
    expect(await openLanguages(languages(text), 'locales')).toMatchObject({
      ok: false,
      diagnostics: [fault],
    });
  });
});
