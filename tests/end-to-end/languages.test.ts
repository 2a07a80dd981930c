import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { openDesk } from '../helpers/run-command.ts';

// What a coordinator does with the words of a language: sends them out, takes them back, has them signed, and finds later
// what changed. Everything is written in memory.

const clinicText = readFileSync('examples/clinic.yaml', 'utf8');
const commonText = readFileSync('locales/es/common.yaml', 'utf8');
const reader = ['--name', 'M. Example', '--role', 'translator', '--qualification', 'certified'];

function desk(files: Readonly<Record<string, string>> = {}) {
  const at = openDesk({ 'clinic/clinic.yaml': clinicText, ...files });
  return { ...at, run: (...args: readonly string[]) => at.run('languages', ...args) };
}

/** Signs the Spanish words and puts the entry that is printed into the clinic profile. */
async function signed(...more: readonly string[]): Promise<ReturnType<typeof desk>> {
  const at = desk();
  const { code, out } = await at.run('sign', 'es', '--clinic', 'clinic/clinic.yaml', ...reader, ...more);
  expect(code).toBe(0);
  const entry = out.slice(out.indexOf('reviewed:'));
  expect(parse(entry)).toMatchObject({ reviewed: [{ language: 'es', on: '2026-11-25' }] });
  await at.put('clinic/clinic.yaml', `${clinicText}\n${entry}\n`);
  return at;
}

/** The Spanish of one text of the example clinic. */
const whichSpanish = /(?<=^ {4}sleeve: \{ ?en: [^,]*), es: [^}]*(?=\})/m;

const list = ['list', '--clinic', 'clinic/clinic.yaml', '--language', 'es'] as const;

describe('languages list', () => {
  it('names every language in English, and says that nobody has reviewed it', async () => {
    const { code, out } = await desk().run('list', '--clinic', 'clinic/clinic.yaml');
    expect(code).toBe(0);
    expect(out).toMatch(/^es +Spanish +\d+ texts +all translated .* not reviewed: packets stay drafts$/m);
    expect(out).toMatch(/^tl +Tagalog /m);
  });

  it('counts the texts of the clinic that a language lacks, and names each at its line', async () => {
    const at = openDesk({ 'clinic/clinic.yaml': clinicText.replace(whichSpanish, '') });
    const { out } = await at.run('languages', 'list', '--clinic', 'clinic/clinic.yaml');
    const all = clinicText.match(/\ben: ["\w]/g)?.length ?? 0;
    expect(all).toBeGreaterThan(100);
    expect(out).toMatch(new RegExp(`^en .* all ${all} clinic texts written `, 'm'));
    expect(out).toMatch(new RegExp(`^es .* 1 of ${all} clinic texts not written `, 'm'));
    expect(out).toMatch(new RegExp(`^ko .* ${all} of ${all} clinic texts not written `, 'm'));
    const one = await at.run('languages', ...list);
    const line = clinicText.split('\n').findIndex((text) => whichSpanish.test(text)) + 1;
    const named = one.out.split('\n').filter((text) => text.includes('not written in this language'));
    expect(named).toEqual([
      `  clinic/clinic.yaml:${line}  protocol.stay.sleeve  not written in this language`,
    ]);
    const json = await at.run('languages', ...list, '--json');
    expect(JSON.parse(json.out)).toMatchObject({
      languages: [{ clinic: { texts: all, unwritten: [{ line, field: 'protocol.stay.sleeve' }] } }],
    });
  });

  it('says nothing about reviews where it was given no profile to read them in', async () => {
    const { code, out } = await desk().run('list');
    expect(code).toBe(0);
    expect(out).toMatch(/^es +Spanish +\d+ texts +all translated$/m);
    expect(out).not.toContain('not reviewed');
    expect(out).not.toContain('clinic texts');
    expect(out).toContain('Who has reviewed them stands in a clinic profile: give it with --clinic FILE.');
  });

  it('counts what is not translated, and gives all of it as JSON', async () => {
    const lacking = commonText.replace(/^quote: .*\n/m, '');
    const { out } = await desk({ 'locales/es/common.yaml': lacking }).run(
      'list',
      '--language',
      'es',
      '--json',
    );
    expect(JSON.parse(out)).toMatchObject({ languages: [{ tag: 'es', untranslated: 1, reviews: [] }] });
  });

  it('refuses a language that is not there', async () => {
    expect(await desk().run('list', '--language', 'xx')).toMatchObject({ code: 2 });
  });
});

describe('a review that was signed', () => {
  it('stands as long as the words stay as they were', async () => {
    const at = await signed();
    const { out } = await at.run(...list);
    expect(out).toContain('all reviewed by M. Example (translator) on 2026-11-25');
    expect(out).not.toContain('changed');
  });

  it('names each text that changed since, and why', async () => {
    const at = await signed();
    const english = readFileSync('locales/en/common.yaml', 'utf8');
    await at.put('locales/es/common.yaml', commonText.replace(/^quote: .*$/m, "quote: '«{{words}}»'"));
    await at.put('locales/en/common.yaml', english.replace('draft_edge: Draft', 'draft_edge: A draft'));
    const { out } = await at.run(...list);
    expect(out).toContain('on 2026-11-25, 2 texts changed since: packets are drafts');
    expect(out).toMatch(/^ {2}common\.furniture\.draft_edge +the English changed$/m);
    expect(out).toMatch(/^ {2}common\.quote +the translation changed$/m);
  });

  it('says so where nothing was kept of what was read', async () => {
    const at = await signed();
    await at.put('locales/es/common.yaml', commonText.replace(/^quote: .*$/m, "quote: '«{{words}}»'"));
    const profile = at.written('clinic/clinic.yaml');
    const { out } = await desk({
      'clinic/clinic.yaml': profile,
      'locales/es/common.yaml': at.written('locales/es/common.yaml'),
    }).run(...list);
    expect(out).toContain('every text must be read again');
  });

  it('may be for some documents alone', async () => {
    const at = await signed('--documents', 'comparison,questions');
    const { out } = await at.run(...list);
    expect(out).toContain('comparison, questions reviewed by M. Example');
  });

  it.each([
    ['without a clinic profile', ['sign', 'es', ...reader]],
    [
      'without a name',
      ['sign', 'es', '--clinic', 'clinic/clinic.yaml', '--role', 'x', '--qualification', 'y'],
    ],
    ['of a language that is not there', ['sign', 'xx', '--clinic', 'clinic/clinic.yaml', ...reader]],
    [
      'of a document that is none',
      ['sign', 'es', '--clinic', 'clinic/clinic.yaml', ...reader, '--documents', 'x'],
    ],
  ])('is refused %s', async (_what, args) => {
    expect(await desk().run(...args)).toMatchObject({ code: 2, out: '' });
  });
});

describe('a file for a translator', () => {
  it('is written with every text, and brings back what the translator changed, and nothing else', async () => {
    const at = desk();
    expect(await at.run('export', 'es', '--out', 'es.xlf')).toMatchObject({ code: 0 });
    const file = at.written('es.xlf');
    const mended = file.replaceAll('<target>Borrador</target>', '<target>Borrador sin firma</target>');
    expect(mended).not.toBe(file);
    await at.put('es.xlf', mended);
    const { code, out } = await at.run('import', 'es.xlf');
    expect([code, out]).toEqual([0, expect.stringContaining('1 file of words changed')]);
    const [before, after] = [commonText, at.written('locales/es/common.yaml')].map((text) =>
      text.split('\n'),
    );
    const other = after?.filter((line, at) => line !== before?.[at]) ?? [];
    expect(other).toEqual(['  draft_edge: Borrador sin firma']);
  });

  it('holds only what nobody has read as it stands, if asked', async () => {
    const at = await signed();
    await at.put('locales/es/common.yaml', commonText.replace(/^quote: .*$/m, "quote: '«{{words}}»'"));
    const args = ['export', 'es', '--clinic', 'clinic/clinic.yaml', '--changed', '--out', 'es.xlf'];
    expect((await at.run(...args)).out).toContain('1 text written to es.xlf');
    expect(at.written('es.xlf')).toContain('name="common.quote"');
  });

  it('is refused where a code was lost, and nothing is taken from it', async () => {
    const at = desk();
    await at.run('export', 'es', '--out', 'es.xlf');
    const file = at.written('es.xlf').replaceAll('<target>Borrador</target>', '<target>Otro</target>');
    const lost = file.replace(/(<unit id="common\.quote".*<target>[^<]*)<ph [^>]*\/>/, '$1');
    expect(lost).not.toBe(file);
    await at.put('es.xlf', lost);
    const { code, err } = await at.run('import', 'es.xlf');
    expect(code).toBe(5);
    expect(err).toMatch(/es\.xlf:\d+:\d+ +error TRANSLATION_CODE_LOST +common\.quote/);
    expect(err).toContain('lost {{words}}');
    expect(at.written('locales/es/common.yaml')).toBe('');
  });

  it('is refused where its words would break a rule of the words', async () => {
    const at = desk();
    await at.run('export', 'es', '--out', 'es.xlf');
    const rare = at.written('es.xlf').replaceAll('<target>Borrador</target>', '<target>Rara vez</target>');
    await at.put('es.xlf', rare);
    const { code, err } = await at.run('import', 'es.xlf');
    expect(code).toBe(5);
    expect(err).toContain('LOCALE_WORDING');
    expect(at.written('locales/es/common.yaml')).toBe('');
  });

  it.each([
    ['a file that is not there', ['import', 'none.xlf'], 'FILE_NOT_FOUND'],
    ['a language that is the source', ['export', 'en'], 'other than en'],
    ['a work that is none', ['praise'], 'languages takes'],
  ])('is refused for %s', async (_what, args, said) => {
    const done = await desk().run(...args);
    expect(done.code).toBe(2);
    expect(done.err).toContain(said);
  });

  it('is refused for a language that has no folder yet', async () => {
    const at = desk();
    await at.run('export', 'de', '--out', 'de.xlf');
    const { code, err } = await at.run('import', 'de.xlf');
    expect(code).toBe(5);
    expect(err).toContain('there is no folder for the language de');
  });
});
