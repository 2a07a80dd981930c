import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import type { TranslationUnit } from '../../../src/model/translation.ts';
import { readPieces, writePieces } from '../../../src/xliff/inline-codes.ts';
import { checkReturned, readXliff, writeXliff } from '../../../src/xliff/index.ts';
import type { ReturnedTranslation } from '../../../src/xliff/index.ts';

const unit = (given: Partial<TranslationUnit>): TranslationUnit => ({
  key: 'comparison.lead',
  source: 'You weigh {{weight}}. <b>There is time</b> &amp; room for {{count}} choices.',
  target: 'Usted pesa {{weight}}. <b>Hay tiempo</b> &amp; lugar para {{count}} opciones.',
  note: 'On the cover.',
  longest: null,
  reviewed: false,
  ...given,
});
const write = (units: readonly TranslationUnit[]): string =>
  writeXliff({ sourceLanguage: 'en', language: 'es', units });

function read(text: string): ReturnedTranslation {
  const result = readXliff(text, 'es.xlf');
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value;
}

/** Faults as `code line message`. */
const faultsOf = (text: string, present: readonly TranslationUnit[]): readonly string[] => {
  const result = readXliff(text, 'es.xlf');
  const found = result.ok ? checkReturned(result.value.units, present) : result.diagnostics;
  return found.map(({ code, span, message }) => `${code} ${String(span?.line)} ${message}`);
};

/** What a translator's tool may do to a file. */
const edit = (text: string, from: string | RegExp, to: string): string => {
  const edited = text.replace(from, to);
  expect(edited).not.toBe(text);
  return edited;
};
const codeOf = (name: string): RegExp =>
  new RegExp(`<ph id="${name}"[^>]*/>(?=[^<]*(?:<(?!/source)[^<]*)*</target>)`);

describe('a text with codes', () => {
  const words = fc.string({ unit: fc.constantFrom('a', 'é', '病', '&amp;', '&lt;', ' ', '.', 'ب') });
  const variable = fc.constantFrom('{{count}}', '{{weight}}', '{{option_name}}');
  const inner = fc.array(fc.oneof(words, variable)).map((parts) => parts.join(''));
  const whole = fc
    .array(
      fc.oneof(
        inner,
        inner.map((text) => `<b>${text}</b>`),
      ),
    )
    .map((parts) => parts.join(''));

  it('is the same after it was taken apart and put together', () => {
    fc.assert(
      fc.property(whole, (text) => {
        expect(writePieces(readPieces(text) ?? [])).toBe(text);
      }),
    );
  });

  it.each(['<b>open', 'closed</b>', '<b><b>twice</b></b>'])(
    'is none where its marks do not pair: %s',
    (text) => {
      expect(readPieces(text)).toBeNull();
    },
  );

  it('comes back from a file as it was, whatever is in it', () => {
    fc.assert(
      fc.property(whole, whole, (source, target) => {
        const [back] = read(write([unit({ source, target })])).units;
        // A target without a character is none.
        expect(back).toMatchObject({
          source,
          target: target === '' ? null : target,
        });
      }),
    );
  });
});

describe('a file for a translator', () => {
  it('carries each text with its key, note, longest length and state', () => {
    const text = write([
      unit({ key: 'options.sleeve.name', source: 'Sleeve', target: 'Manga', longest: 26, reviewed: true }),
      unit({ key: 'codes.doses.g/kg/day', target: null, note: '' }),
      unit({}),
    ]);
    expect(text).toContain('srcLang="en" trgLang="es"');
    expect(text).toMatch(
      /<unit id="options\.sleeve\.name" name="options\.sleeve\.name"[^>]* slr:sizeRestriction="26"/,
    );
    expect(text).toContain('<note>On the cover.</note>');
    expect(text).toContain('id="codes.doses.g_kg_day" name="codes.doses.g/kg/day"');
    expect([...text.matchAll(/state="(\w+)"/g)].map(([, state]) => state)).toEqual([
      'final',
      'initial',
      'translated',
    ]);
    expect([...text.matchAll(/<file id="(\w+)"/g)].map(([, id]) => id)).toEqual([
      'options',
      'codes',
      'comparison',
    ]);
  });

  it('is read back with a text that nobody translated as none', () => {
    expect(read(write([unit({ target: null })])).units[0]?.target).toBeNull();
  });

  it('may come back with its text in several segments, and with marks of a tool', () => {
    const text = edit(
      write([unit({ source: 'One. Two.', target: 'Uno. Dos.' })]),
      /<segment.*<\/segment>/,
      '<segment><source>One. </source><target>Uno. </target></segment>' +
        '<segment><source><mrk id="m1" type="term">Two</mrk>.</source><target><![CDATA[Dos]]>.</target></segment>',
    );
    expect(read(text).units[0]).toMatchObject({ source: 'One. Two.', target: 'Uno. Dos.' });
  });
});

describe('a file that came back', () => {
  const present = [unit({})];
  const good = write(present);

  it('is taken where its codes are all there, in whatever order', () => {
    const moved = write([unit({ target: 'Hay {{count}} opciones. Usted pesa {{weight}}.' })]);
    expect(faultsOf(moved, present)).toEqual([]);
    expect(faultsOf(good, present)).toEqual([]);
  });

  it('is refused where a code was lost', () => {
    expect(faultsOf(edit(good, codeOf('weight'), '92 kg'), present)).toEqual([
      'TRANSLATION_CODE_LOST 4 the translation of comparison.lead lost {{weight}}',
    ]);
  });

  it('is refused where a code became another', () => {
    const other = write([unit({ target: '{{count}} {{height}}' })]);
    expect(faultsOf(other, present)).toEqual([
      'TRANSLATION_CODE_LOST 4 the translation of comparison.lead lost {{weight}} and has {{height}}, which is not in the source',
    ]);
  });

  it('may say a count of none, one or two in words', () => {
    const forms = ['one', 'two', 'few'].map((form) =>
      unit({ key: `codes.days_${form}`, source: '{{count}} days', target: 'x' }),
    );
    expect(faultsOf(write(forms), forms)).toEqual([
      'TRANSLATION_CODE_LOST 6 the translation of codes.days_few lost {{count}}',
    ]);
  });

  it('may say the count where the source says it in words', () => {
    const one = unit({ key: 'codes.days_one', source: 'a day', target: '{{count}} день' });
    expect(faultsOf(write([one]), [one])).toEqual([]);
    const plain = unit({ key: 'codes.day', source: 'a day', target: '{{count}} день' });
    expect(faultsOf(write([plain]), [plain])).toHaveLength(1);
  });

  it('is refused where the text that it translates is another by now', () => {
    expect(faultsOf(good, [unit({ source: 'You weigh {{weight}} and have {{count}} choices.' })])).toEqual([
      'TRANSLATION_OUTDATED 4 the text of comparison.lead has changed since this file was written',
    ]);
  });

  it('is refused with a text that the language has not', () => {
    expect(faultsOf(good, [])).toEqual([
      'TRANSLATION_UNKNOWN 4 there is no text comparison.lead to translate',
    ]);
  });

  it.each([
    ['no XML', 'comparison.lead: hello', 1],
    ['XML that ends too early', good.slice(0, good.indexOf('</segment>')), 4],
    ['another kind of XML', '<html xmlns="http://www.w3.org/1999/xhtml"/>', 1],
    ['the earlier XLIFF', '<xliff version="1.2" xmlns="urn:oasis:names:tc:xliff:document:1.2"/>', 1],
    ['no target language', edit(good, ' trgLang="es"', ''), 2],
    ['a code that stands for nothing', edit(good, codeOf('count'), '<ph id="new"/>'), 4],
    ['a code of another kind', edit(good, codeOf('count'), '<cp hex="0007"/>'), 4],
  ])('is refused when it is %s', (_what, text, line) => {
    const [found] = faultsOf(text, present);
    expect(found).toMatch(new RegExp(`^TRANSLATION_INVALID ${String(line)} `));
  });
});
