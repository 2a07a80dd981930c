import { describe, expect, it } from 'vitest';

import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { WordsError } from '../../../src/diagnostics/words-error.ts';
import { listLanguages, openLocale } from '../../../src/localize/index.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const settings = `name: English
direction: ltr
format: en-US
first_weekday: sunday
range_word: to
common_words: [the, and, of, your, with]
misleading: {never: [], only_with_count: []}
sentence_words: 24
units: { kilogram: '{{n}} kg', pound: '{{n}} lb' }
`;
const common = `# words
greeting: Hello {{name}}
plain: Ready
weight: from {{low}} to {{high}} kg
stay:
  nights_one: '{{count}} night'
  nights_other: '{{count}} nights'
only_few_one: '{{count}} day'
`;
const files = { 'locales/en/locale.yaml': settings, 'locales/en/common.yaml': common };

async function open(given: Readonly<Record<string, string>> = files): Promise<Locale> {
  const opened = await openLocale(createMemoryWorkspace(given), 'locales', 'en');
  if (!opened.ok) throw new Error(JSON.stringify(opened.diagnostics));
  return opened.value;
}

async function refusals(given: Readonly<Record<string, string>>, tag = 'en'): Promise<readonly Diagnostic[]> {
  const opened = await openLocale(createMemoryWorkspace(given), 'locales', tag);
  return opened.ok ? [] : opened.diagnostics;
}

function refusal(act: () => unknown): Diagnostic {
  try {
    act();
  } catch (error) {
    if (error instanceof WordsError) return error.diagnostic;
    throw error;
  }
  throw new Error('the text was said');
}

describe('the translator', () => {
  it('says a text with its variables, counts and nested keys', async () => {
    const { translator } = await open();
    expect(translator.text('common.plain')).toBe('Ready');
    expect(translator.text('common.greeting', { name: 'Ilsa' })).toBe('Hello Ilsa');
    expect(translator.text('common.stay.nights', { count: 1 })).toBe('1 night');
    expect(translator.text('common.stay.nights', { count: 2000 })).toBe('2,000 nights');
  });

  it('ties numbers to units and to the range word', async () => {
    const { translator } = await open();
    expect(translator.text('common.weight', { low: '82', high: '105' })).toBe('from 82 to\u00A0105\u00A0kg');
  });

  it('escapes plain values, and only those', async () => {
    const { translator } = await open();
    expect(translator.text('common.greeting', { name: `<b>"A" & 'B'` })).toBe(
      'Hello &lt;b&gt;&quot;A&quot; &amp; &apos;B&apos;',
    );
    expect(translator.text('common.greeting', { name: { markup: '<b>A &amp; B</b>' } })).toBe(
      'Hello <b>A &amp; B</b>',
    );
    expect(translator.text('common.greeting', { name: 1234.5 })).toBe('Hello 1,234.5');
  });

  it.each(['{{low}}', '$t(common.plain)', '$1 $& $$', '{{- name}}'])(
    'leaves %j in a value as it is',
    async (name) => {
      const { translator } = await open();
      expect(translator.text('common.greeting', { name })).toBe(`Hello ${name.replace('&', '&amp;')}`);
    },
  );

  it.each(['context', 'defaultValue', 'lng', 'ns', 'returnObjects', 'keySeparator', 'postProcess'])(
    'takes no variable named %s for an option of its own',
    async (name) => {
      const { translator } = await open();
      expect(translator.text('common.plain', { [name]: 'x' })).toBe('Ready');
      expect(() => translator.text('common.absent', { [name]: 'x' })).toThrow(WordsError);
    },
  );

  it('refuses a missing key and says where to add it', async () => {
    const { translator } = await open();
    expect(refusal(() => translator.text('questions.first'))).toEqual({
      code: 'LOCALE_KEY_MISSING',
      severity: 'error',
      message: 'the language en has no words for questions.first',
      hint: 'Add questions.first to locales/en/questions.yaml.',
      path: 'questions.first',
    });
  });

  it.each(['common.stay', 'common', 'common.stay.nights_', '', 'constructor'])(
    'has no text for %j',
    async (key) => {
      const { translator } = await open();
      expect(translator.has(key)).toBe(false);
      expect(refusal(() => translator.text(key)).code).toBe('LOCALE_KEY_MISSING');
    },
  );

  it('refuses a missing variable and says which, and where the text stands', async () => {
    const { translator } = await open();
    expect(refusal(() => translator.text('common.weight', { low: 1 }))).toEqual({
      code: 'LOCALE_VARIABLE_MISSING',
      severity: 'error',
      message: 'common.weight needs a value for {{high}}',
      hint: 'Pass high, or take it out of the text.',
      path: 'common.weight',
      span: { file: 'locales/en/common.yaml', line: 4, column: 9 },
    });
  });

  it('refuses a counted text without a count', async () => {
    const { translator } = await open();
    const { code, message } = refusal(() => translator.text('common.stay.nights', {}));
    expect(code).toBe('LOCALE_VARIABLE_MISSING');
    expect(message).toContain('without a count');
  });

  it('refuses a count for which the language has no form', async () => {
    const { translator } = await open();
    expect(translator.text('common.only_few', { count: 1 })).toBe('1 day');
    const { code, hint, span } = refusal(() => translator.text('common.only_few', { count: 2 }));
    expect([code, hint]).toEqual(['LOCALE_PLURAL_MISSING', 'Add it; the forms there are: one.']);
    expect(span?.line).toBe(8);
  });

  it('knows which words it has, in one form or several', async () => {
    const { translator } = await open();
    expect(['common.plain', 'common.stay.nights', 'common.other'].map(translator.has)).toEqual([
      true,
      true,
      false,
    ]);
  });
});

describe('plural forms', () => {
  it('are those that the settings name, where they name a language', async () => {
    const russian = `${settings}plurals: ru\n`;
    const words =
      "days_one: '{{count}} a'\ndays_few: '{{count}} b'\ndays_many: '{{count}} c'\ndays_other: '{{count}} d'\n";
    const { translator } = await open({ 'locales/en/locale.yaml': russian, 'locales/en/common.yaml': words });
    const said = [1, 2, 5, 1.5].map((count) => translator.text('common.days', { count }));
    expect(said).toEqual(['1 a', '2 b', '5 c', '1.5 d']);
  });
});

describe('opening a language', () => {
  it('gives its settings, and a digest that any change of a file changes', async () => {
    const locale = await open();
    expect(locale).toMatchObject({
      tag: 'en',
      direction: 'ltr',
      name: 'English',
    });
    expect(locale.digest).toMatch(/^[0-9a-f]{64}$/);
    expect((await open()).digest).toBe(locale.digest);
    const changed = await open({ ...files, 'locales/en/common.yaml': `${common}# more\n` });
    expect(changed.digest).not.toBe(locale.digest);
    const renamed = await open({ 'locales/en/locale.yaml': settings, 'locales/en/other.yaml': common });
    expect(renamed.digest).not.toBe(locale.digest);
  });

  it('lists the folders that are languages', async () => {
    const workspace = createMemoryWorkspace({
      ...files,
      'locales/notes/readme.txt': 'x',
      'locales/es/locale.yaml': settings,
    });
    expect(await listLanguages(workspace, 'locales')).toEqual(['en', 'es']);
  });

  it('names the languages there are when one is unknown', async () => {
    const [found] = await refusals(files, 'vi');
    expect(found).toMatchObject({ code: 'LOCALE_UNKNOWN', hint: 'Choose one of en.' });
  });

  it.each([
    ['broken YAML', 'a: x\n]\n', 2],
    ['a key twice', 'a: x\na: y\n', 2],
    ['a text that is a list', 'a: x\nb: [y]\n', 2],
    ['an empty text', 'a: x\nb:\n', 2],
    ['a variable with a space', 'a: x\nb: "{{two words}}"\n', 2],
    ['an unescaped variable', 'b: "{{- name}}"\n', 1],
    ['an unclosed variable', 'b: "{{name"\n', 1],
    ['a nested text', 'b: $t(common.a)\n', 1],
    ['a key with a dot', 'a: x\nb.c: y\n', 2],
    ['an alias', 'a: &x y\nb: *x\n', 2],
  ])('refuses %s, at its line', async (_what, text, line) => {
    const found = await refusals({ ...files, 'locales/en/common.yaml': text });
    expect(found.map(({ code }) => code)).toContain('LOCALE_INVALID');
    expect(found[0]?.span).toMatchObject({ file: 'locales/en/common.yaml', line });
  });

  it.each([
    ['an unknown setting', `${settings}colour: red\n`, 1],
    ['a wrong direction', settings.replace('ltr', 'up'), 2],
    ['a locale that is none', settings.replace('en-US', 'no such'), 3],
    ['a unit without a place for its number', settings.replace('{{n}} lb', 'lb'), 9],
    ['common words that are no list', settings.replace('[the, and, of, your, with]', 'the'), 6],
    ['broken YAML', settings.replace('ltr', ']'), 2],
  ])('refuses settings with %s', async (_what, text, line) => {
    const [found] = await refusals({ ...files, 'locales/en/locale.yaml': text });
    expect(found).toMatchObject({ code: 'LOCALE_INVALID', span: { file: 'locales/en/locale.yaml', line } });
  });
});
