import { describe, expect, it } from 'vitest';

import { openLocale } from '../../../src/localize/index.ts';
import type { ReviewScope } from '../../../src/model/review-scope.ts';
import { localeSettings as settings } from '../../helpers/locale-settings.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const files = {
  'locales/en/locale.yaml': settings('the, and, of, your, with'),
  'locales/en/common.yaml': "hello: Hello\nday_one: a day\nday_other: '{{count}} days'\n",
  'locales/en/consent.yaml': 'title: Consent\n',
  'locales/ru/locale.yaml': settings('что, это, как, ваш, для'),
  'locales/ru/common.yaml':
    "hello: Привет\nday_one: день\nday_few: '{{count}} дня'\nday_many: '{{count}} дней'\nday_other: '{{count}} дня'\n",
  'locales/ru/consent.yaml': 'title: Согласие\n',
};

async function digest(changed: Readonly<Record<string, string>>, scope: ReviewScope = 'all', tag = 'ru') {
  const opened = await openLocale(createMemoryWorkspace({ ...files, ...changed }), 'locales', tag);
  if (!opened.ok) throw new Error(JSON.stringify(opened.diagnostics));
  return opened.value.wordsDigest(scope);
}

const path = (name: keyof typeof files): keyof typeof files => name;
const change = (name: keyof typeof files, from: string, to: string): Readonly<Record<string, string>> => {
  expect(files[name]).toContain(from);
  return { [name]: files[name].replace(from, to) };
};

describe('the digest of words that were read', () => {
  it.each([
    ['a text', change(path('locales/ru/common.yaml'), 'Привет', 'Здравствуйте')],
    ['the text that it was translated from', change(path('locales/en/common.yaml'), 'Hello', 'Good day')],
    ['a plural form', change(path('locales/ru/common.yaml'), 'дней', 'суток')],
    [
      'the text from which a plural form comes that English has not',
      change(path('locales/en/common.yaml'), '{{count}} days', '{{count}} nights'),
    ],
    ['a unit', change(path('locales/ru/locale.yaml'), '{{n}} kg', '{{n}} кг')],
    ['the word of a range', change(path('locales/ru/locale.yaml'), 'range_word: to', 'range_word: до')],
  ])('changes with %s', async (_what, changed) => {
    expect(await digest(changed)).not.toBe(await digest({}));
  });

  it.each([
    ['a comment', { 'locales/ru/consent.yaml': '# words\ntitle: Согласие\n' }],
    [
      'the order of texts',
      {
        'locales/ru/common.yaml':
          "day_one: день\nday_few: '{{count}} дня'\nday_many: '{{count}} дней'\nday_other: '{{count}} дня'\nhello: Привет\n",
      },
    ],
    [
      'a list that only checks read',
      change(path('locales/ru/locale.yaml'), 'sentence_words: 12', 'sentence_words: 20'),
    ],
  ])('stays with %s', async (_what, changed) => {
    expect(await digest(changed)).toBe(await digest({}));
  });

  it('covers only the words of its scope', async () => {
    const changed = change(path('locales/ru/consent.yaml'), 'Согласие', 'Разговор');
    expect(await digest(changed, ['comparison'])).toBe(await digest({}, ['comparison']));
    expect(await digest(changed, ['consent'])).not.toBe(await digest({}, ['consent']));
  });

  it('of the base language is that of its words alone', async () => {
    expect(await digest({}, 'all', 'en')).not.toBe(await digest({}));
    const changed = change(path('locales/ru/common.yaml'), 'Привет', 'Здравствуйте');
    expect(await digest(changed, 'all', 'en')).toBe(await digest({}, 'all', 'en'));
  });
});
