import { describe, expect, it } from 'vitest';

import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { lintLocales } from '../../../src/localize/index.ts';
import { localeSettings as settings } from '../../helpers/locale-settings.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const english = `greeting: Hello {{name}}
stay:
  nights_one: a night
  nights_other: '{{count}} nights'
note: 6 out of 1,000 have it.
`;
const spanish = `greeting: Hola {{name}}
stay:
  nights_one: una noche
  nights_many: '{{count}} de noches'
  nights_other: '{{count}} noches'
note: 6 de cada 1,000 lo tienen.
`;
const files = {
  'locales/en/locale.yaml': settings('the, and, of, your, with'),
  'locales/en/common.yaml': english,
  'locales/es/locale.yaml': settings('el, los, que, para, usted'),
  'locales/es/common.yaml': spanish,
};

/** Findings as `severity code file:line:column message`. */
async function lint(changed: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const found = await lintLocales(createMemoryWorkspace({ ...files, ...changed }), 'locales');
  return found.map(({ severity, code, span, message }) => {
    const place = `${span?.file.replace('locales/', '') ?? ''}:${String(span?.line)}:${String(span?.column)}`;
    return `${severity} ${code} ${place} ${message}`;
  });
}
const lintSpanish = async (text: string): Promise<readonly string[]> =>
  lint({ 'locales/es/common.yaml': text });
const lintEnglish = async (text: string): Promise<readonly string[]> =>
  lint({
    'locales/en/common.yaml': `${english}${text}\n`,
    'locales/es/common.yaml': `${spanish}last: Todo bien\n`,
  });

describe('the lint of words', () => {
  it('finds nothing wrong where nothing is', async () => {
    expect(await lint({})).toEqual([]);
  });

  it('asks whose plural forms a language has that Unicode does not know', async () => {
    const words = { 'locales/ht/common.yaml': english, 'locales/en/common.yaml': english };
    const at = 'locales/ht/locale.yaml';
    const unknown = await lint({ ...words, [at]: settings('ak, nan, yo, pou, gen') });
    expect(unknown).toEqual(['error LOCALE_INVALID ht/locale.yaml:1:1 the plural forms of ht are not known']);
    const named = `${settings('ak, nan, yo, pou, gen')}plurals: en\n`;
    expect(await lint({ ...words, [at]: named })).toEqual([]);
    expect(await lint({ ...words, [at]: named.replace('plurals: en', 'plurals: xx-nowhere') })).toEqual([
      expect.stringContaining('LOCALE_INVALID'),
    ]);
  });

  it('wants a word of the trade translated in one way', async () => {
    const terms = {
      'locales/en/terms.yaml': 'night: [night, nights]\n',
      'locales/es/terms.yaml': 'night: { words: [noche*], except: [common.stay.nights_many] }\n',
    };
    expect(await lint(terms)).toEqual([]);
    const other = spanish.replace('una noche', 'una velada').replace('de noches', 'de veladas');
    const said = await lint({ ...terms, 'locales/es/common.yaml': other });
    expect(said).toEqual([
      'error LOCALE_WORDING es/common.yaml:3:15 common.stay.nights_one says night in another way than the terms of es',
    ]);
    const lacking = await lint({ 'locales/en/terms.yaml': terms['locales/en/terms.yaml'] });
    expect(lacking).toEqual(['error LOCALE_KEY_MISSING es/terms.yaml:1:1 the terms of es lack night']);
  });

  it('takes no variable for a word of the trade', async () => {
    const terms = { 'locales/en/terms.yaml': 'x: [name]\n', 'locales/es/terms.yaml': 'x: [nombre]\n' };
    expect(await lint(terms)).toEqual([]);
  });

  it('finds a key that is not translated', async () => {
    expect(await lintSpanish(spanish.replace('greeting: Hola {{name}}\n', ''))).toEqual([
      'error LOCALE_KEY_MISSING es/common.yaml:1:1 es has no words for common.greeting',
    ]);
  });

  it('finds a key that the base language has not', async () => {
    expect(await lintSpanish(`${spanish}extra: de más\n`)).toEqual([
      'error LOCALE_KEY_UNUSED es/common.yaml:7:8 en has no common.extra',
    ]);
  });

  it('says once that a whole file is not translated', async () => {
    expect(await lint({ 'locales/en/sources.yaml': 'a: one\nb: two\n' })).toEqual([
      'error LOCALE_KEY_MISSING es/sources.yaml:1:1 es lacks this file',
    ]);
  });

  it('finds a variable lost or invented in translation', async () => {
    expect(await lintSpanish(spanish.replace('Hola {{name}}', 'Hola {{nombre}}'))).toEqual([
      'error LOCALE_VARIABLE_MISSING es/common.yaml:1:11 common.greeting lacks {{name}} and has {{nombre}}, which nobody gives it',
    ]);
  });

  it('finds a plural form that does not say the count', async () => {
    expect(await lintSpanish(spanish.replace('{{count}} de noches', 'muchas noches'))).toEqual([
      'error LOCALE_VARIABLE_MISSING es/common.yaml:4:16 common.stay.nights lacks {{count}}'.replace(
        'nights lacks',
        'nights_many lacks',
      ),
    ]);
  });

  it('finds an absent plural form', async () => {
    expect(await lintSpanish(spanish.replace("  nights_many: '{{count}} de noches'\n", ''))).toEqual([
      'error LOCALE_PLURAL_MISSING es/common.yaml:3:15 common.stay.nights lacks _many',
    ]);
  });

  it('finds a plural form that the language never uses', async () => {
    const text = english.replace('note:', "  nights_few: '{{count}} nights'\nnote:");
    expect(await lint({ 'locales/en/common.yaml': text })).toEqual([
      'error LOCALE_KEY_UNUSED en/common.yaml:5:15 common.stay.nights_few is never used: the language has other plural forms',
    ]);
  });

  it('finds a counted text that was translated in one form only', async () => {
    const found = await lintSpanish(
      'greeting: Hola {{name}}\nstay:\n  nights: "{{count}} noches"\nnote: 6 de 1,000.\n',
    );
    expect(found).toEqual([
      'error LOCALE_PLURAL_MISSING es/common.yaml:3:11 common.stay.nights lacks _many, _one, _other',
    ]);
  });

  it('takes a key that only looks like a plural form for what it is', async () => {
    const text = 'own:\n  too_few: not enough\n';
    expect(await lint({ 'locales/en/own.yaml': text, 'locales/es/own.yaml': text })).toEqual([]);
  });

  it('finds a single text beside plural forms', async () => {
    const found = await lint({
      'locales/en/common.yaml': english.replace('stay:', "stay:\n  nights: '{{count}} n.'"),
    });
    expect(found).toEqual([
      'error LOCALE_KEY_UNUSED en/common.yaml:3:11 common.stay.nights is never used: the language has other plural forms',
    ]);
  });

  it.each([
    ['last: a <i>b</i>', 'a < that does not begin <b> or </b>'],
    ['last: under < 5', 'a < that does not begin <b> or </b>'],
    ['last: you & me', 'an & that does not begin &amp;, &lt;, &gt;, &quot; or &apos;'],
    ['last: a&nbsp;b', 'an & that does not begin &amp;, &lt;, &gt;, &quot; or &apos;'],
    ['last: <b>open', '<b> and </b> do not come in pairs'],
    ['last: <b>a<b>b</b></b>', '<b> and </b> do not come in pairs'],
    ['last: </b>a<b>', '<b> and </b> do not come in pairs'],
    ['last: "two\\nlines"', 'a line break or a space of an odd kind'],
    ['last: "a\u202Fb"', 'a line break or a space of an odd kind'],
    ['last: "a  b"', 'a space too many'],
  ])('finds the markup fault in %j', async (line, message) => {
    expect(await lintEnglish(line)).toEqual([`error LOCALE_MARKUP en/common.yaml:6:7 ${message}`]);
  });

  it('lets good markup be', async () => {
    expect(await lintEnglish('last: <b>No.</b> You &amp; me, &lt; 5. <b>A</b> <b>B</b>')).toEqual([]);
  });

  it.each([
    ['This is rare.', 'rare'],
    ['Rare, but 5 of 100.', 'rare'],
    ['About 1 in 20.', '1 in #'],
    ['About 1 in {{n}}.', '1 in #'],
    ['A common trouble.', 'common'],
  ])('finds the misleading chance in %j', async (text, phrase) => {
    const found = await lint({
      'locales/en/common.yaml': `${english}last: '${text}'\n`,
      'locales/es/common.yaml': `${spanish}last: '${text.includes('{{') ? '{{n}}' : 'Bien'}'\n`,
    });
    expect(found).toEqual([
      `error LOCALE_WORDING en/common.yaml:6:7 common.last says a chance as "${phrase}"`,
    ]);
  });

  it.each(['A common trouble: 5 of 100.', 'Ask about the rarest.', 'Take 11 in 20 days.', 'uncommonly good'])(
    'lets %j be',
    async (text) => {
      expect(await lintEnglish(`last: '${text}'`)).toEqual([]);
    },
  );

  it('lets clinicians read the words of the trade', async () => {
    const sheet = 'note: rare, 1 in 20\n';
    const found = await lint({
      'locales/en/clinician-sheet.yaml': sheet,
      'locales/es/clinician-sheet.yaml': sheet,
    });
    expect(found).toEqual([]);
  });

  it('warns of a long sentence, counting each sentence alone', async () => {
    const short = 'This sentence has just seven words, yes. So does the one that follows now.';
    expect(await lintEnglish(`last: ${short}`)).toEqual([]);
    expect(await lintEnglish(`last: ${short.replace('. So', ' and so')}`)).toEqual([
      'warning LOCALE_WORDING en/common.yaml:6:7 common.last has a sentence of 15 words',
    ]);
  });

  it('finds a common word that two languages claim', async () => {
    expect(await lint({ 'locales/es/locale.yaml': settings('the, los, que, para, usted') })).toEqual([
      'error LOCALE_WORDING en/locale.yaml:1:1 the common word "the" is one of another language too',
      'error LOCALE_WORDING es/locale.yaml:1:1 the common word "the" is one of another language too',
    ]);
  });

  it('finds a medical word that a language does not explain, or explains in a way that no text has', async () => {
    const glossary = (id: string, explained: string): string =>
      `${id}:\n  words: [note]\n  explained: [${explained}]\n`;
    const found = await lint({
      'locales/en/glossary.yaml': glossary('note', 'nobody has it, Out of 1'),
      'locales/es/glossary.yaml': glossary('nota', 'lo tiene nadie'),
    });
    expect(found).toEqual([
      'error LOCALE_WORDING en/glossary.yaml:1:1 no text explains note with "nobody has it"',
      'error LOCALE_KEY_MISSING es/glossary.yaml:1:1 the glossary of es lacks note',
      'error LOCALE_KEY_UNUSED es/glossary.yaml:1:1 the glossary of en has no nota',
      'error LOCALE_WORDING es/glossary.yaml:1:1 no text explains nota with "lo tiene nadie"',
    ]);
  });

  it('finds a glossary that is not written as one', async () => {
    const found = await lint({ 'locales/es/glossary.yaml': 'Note:\n  words: []\n' });
    expect(found.filter((line) => line.includes('LOCALE_INVALID es/glossary.yaml')).length).toBeGreaterThan(
      0,
    );
  });

  it('reports files that cannot be read, and lints the rest', async () => {
    const found = await lint({
      'locales/fr/locale.yaml': 'name: x\n',
      'locales/en/common.yaml': `${english}last: a & b\n`,
    });
    expect(found.filter((line) => line.includes('LOCALE_INVALID fr/locale.yaml')).length).toBeGreaterThan(0);
    expect(found.some((line) => line.includes('LOCALE_MARKUP en/common.yaml:6:7'))).toBe(true);
  });

  it('finds no error in the shipped words', async () => {
    const folder = new URL('../../../locales', import.meta.url).pathname;
    const found = await lintLocales(createNodeWorkspace(), folder);
    const errors = found.filter(({ severity }) => severity === 'error');
    expect(errors.map(({ span, message }) => `${span?.file ?? ''}:${String(span?.line)} ${message}`)).toEqual(
      [],
    );
  });
});
