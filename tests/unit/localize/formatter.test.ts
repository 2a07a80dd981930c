import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { makeFormatter } from '../../../src/localize/formatter.ts';
import { weekdays } from '../../../src/model/calendar-day.ts';
import type { LocaleSettings } from '../../../src/model/locale-settings.ts';

const settings = (format: string, rangeWord = 'to'): LocaleSettings => ({
  name: format,
  direction: 'ltr',
  first_weekday: 'sunday',
  format,
  units: { kilogram: '{{n}} kg', pound: '{{n}} lb' },
  own_names: null,
  semicolon: ';',
  range_word: rangeWord,
  common_words: [],
  misleading: { never: [], only_with_count: [] },
  passive: null,
  reader_words: [],
  sentence_words: 24,
});
const english = makeFormatter(settings('en-US'));

const numbered = (mark: string, count: number): string[] =>
  Array.from({ length: count }, (_, at) => `${mark}${String(at + 1)}`);
const invented = {
  months: numbered('m', 12),
  short_months: numbered('s', 12),
  weekdays: numbered('d', 7),
  short_weekdays: numbered('k', 7),
  date: 'le {{day}} {{month}} {{year}}',
  month_day: '{{day}} {{month}}',
  month_year: '{{month}}/{{year}}',
  weekday_date: '{{weekday}}: {{date}}',
  list: { and: ' ak ', or: ' oswa ' },
  languages: { en: 'Angle' },
};

describe('the formatter', () => {
  it('ties a weight to its unit and rounds to whole kilograms and pounds', () => {
    expect(english.weight(93.44, 'metric')).toBe('93\u00A0kg');
    expect(english.weight(93.44, 'us')).toBe('206\u00A0lb');
    expect(english.weight(93.44, 'both')).toBe('206\u00A0lb (93\u00A0kg)');
  });

  it('rounds pounds from the weight itself, not from rounded kilograms', () => {
    // 93.4 kg is 205.9 lb; 93 kg would be 205.0 lb.
    expect(english.weight(93.4, 'us')).toBe('206\u00A0lb');
  });

  it('says the unit of a range once and ties the range word to the higher end', () => {
    expect(english.weightRange(81.6, 105.2, 'both')).toBe('180 to\u00A0232\u00A0lb (82 to\u00A0105\u00A0kg)');
    expect(makeFormatter(settings('es-419', 'a')).range('82', '105')).toBe('82 a\u00A0105');
  });

  it('writes units as the language does, with a space or without', () => {
    const korean = makeFormatter({
      ...settings('ko', '~'),
      units: { kilogram: '{{n}}kg', pound: '{{n}} 파운드' },
    });
    expect(korean.weight(93.44, 'both')).toBe('206\u00A0파운드(93kg)');
    expect(korean.weightRange(81.6, 105.2, 'metric')).toBe('82\u00A0~\u00A0105kg');
  });

  it('takes the names of days and months from the language where Unicode has none', () => {
    const own = makeFormatter({ ...settings('fr-HT', 'a'), own_names: invented });
    expect(own.date('2026-11-05')).toBe('le\u00A05\u00A0m11\u00A02026');
    expect([own.date('2026-11'), own.date('2026'), own.monthYear('2026-11-05')]).toEqual([
      'm11/2026',
      '2026',
      'm11/2026',
    ]);
    // 2027-01-14 is a Thursday.
    expect(own.weekdayDate('2027-01-14')).toBe('d4: le\u00A014\u00A0m1\u00A02027');
    expect([own.monthDay('2027-02-01'), own.shortDay('2027-02-01'), own.shortDate('2027-02-01')]).toEqual([
      '1\u00A0m2',
      '1\u00A0s2',
      'le\u00A01\u00A0s2 2027',
    ]);
    const first = makeFormatter({
      ...settings('fr-HT', 'a'),
      own_names: { ...invented, first_day: '1ye' },
    });
    expect([first.monthDay('2027-02-01'), first.monthDay('2027-02-11')]).toEqual([
      '1ye\u00A0m2',
      '11\u00A0m2',
    ]);
    expect(weekdays.map(own.weekday)).toEqual(['k1', 'k2', 'k3', 'k4', 'k5', 'k6', 'k7']);
    expect(own.list(['a', 'b', 'c'], 'and')).toBe('a, b ak c');
    expect([own.list(['a', 'b'], 'or'), own.list(['a'], 'or'), own.list([], 'or')]).toEqual([
      'a oswa b',
      'a',
      '',
    ]);
    expect([own.languageName('en'), own.languageName('es')]).toEqual(['Angle', 'espagnol']);
  });

  it('ties the parts of a date, but not its weekday', () => {
    expect(english.date('2026-11-05')).toBe('November\u00A05,\u00A02026');
    expect(makeFormatter(settings('es-419')).date('2026-11-05')).toBe(
      '5\u00A0de\u00A0noviembre\u00A0de\u00A02026',
    );
    // In Korean a line may end within a date.
    expect(makeFormatter(settings('ko')).date('2026-11-05')).toBe('2026년 11월 5일');
  });

  it('ties the year to what follows it, with a day and without', () => {
    const russian = makeFormatter(settings('ru'));
    expect(russian.date('2021-11')).toBe('ноябрь\u00A02021\u00A0г.');
    expect(russian.date('2021-11-05')).toBe('5\u00A0ноября\u00A02021\u00A0г.');
  });

  it('writes the first of a month as an ordinal where the language does', () => {
    const french = makeFormatter(settings('fr'));
    expect(french.weekdayDate('2026-12-01')).toBe('mardi\u00A01er\u00A0décembre\u00A02026');
    expect(french.monthDay('2026-12-01')).toBe('1er\u00A0décembre');
    expect(french.date('2026-12-11')).toBe('11\u00A0décembre\u00A02026');
    expect(french.date('2026-12-21')).toBe('21\u00A0décembre\u00A02026');
    expect(makeFormatter(settings('pt-BR')).date('2026-12-01')).toBe(
      '1º\u00A0de\u00A0dezembro\u00A0de\u00A02026',
    );
    expect(makeFormatter(settings('es-419')).monthDay('2026-12-01')).toBe('1\u00A0de\u00A0diciembre');
  });

  it('names a language as it stands within a sentence', () => {
    const name = (format: string): string => makeFormatter(settings(format)).languageName('en');
    expect(['vi', 'fr', 'pt-BR', 'es-419', 'ru', 'en-US'].map(name)).toEqual([
      'tiếng Anh',
      'anglais',
      'inglês',
      'inglés',
      'английский',
      'English',
    ]);
  });

  it('keeps the range word of Hindi on the line of the number before it, and that of English with the next', () => {
    const hindi = makeFormatter({ ...settings('hi'), range_word: 'से' });
    expect(hindi.range('185', '216')).toBe('185\u00a0से\u00a0216');
    expect(makeFormatter(settings('en-US')).range('185', '216')).toBe('185 to\u00a0216');
  });

  it('writes a range of Chinese without spaces, and a second unit in the brackets of the language', () => {
    const units = { kilogram: '{{n}} 公斤', pound: '{{n}} 磅' };
    const chinese = makeFormatter({ ...settings('zh-Hans'), range_word: '至', units });
    expect(chinese.range('36', '127')).toBe('36至127');
    expect(chinese.weight(90, 'both')).toBe('198\u00A0磅（90\u00A0公斤）');
  });

  // Order of parts and short names: Unicode CLDR 44, en and es-419, as Node prints them.
  it('writes a day with its weekday, without its year, and short', () => {
    const spanish = makeFormatter(settings('es-419'));
    expect(english.weekdayDate('2027-01-14')).toBe('Thursday, January\u00A014,\u00A02027');
    expect(spanish.weekdayDate('2027-01-14')).toBe('jueves, 14\u00A0de\u00A0enero\u00A0de\u00A02027');
    expect([english.monthDay('2027-01-04'), spanish.monthDay('2027-01-04')]).toEqual([
      'January\u00A04',
      '4\u00A0de\u00A0enero',
    ]);
    expect([english.shortDay('2027-02-01'), spanish.shortDay('2027-02-01')]).toEqual([
      'Feb\u00A01',
      '1\u00A0feb',
    ]);
    expect(english.shortDate('2027-02-01')).toBe('Feb\u00A01, 2027');
  });

  it('names the days of the week', () => {
    expect(weekdays.map(english.weekday)).toEqual(['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun']);
    expect(makeFormatter(settings('es-419')).weekday('sunday')).toBe('dom');
  });

  it.each(['2027-02-30', '2027-02', '1 Feb 2027'])('refuses %j as a day', (iso) => {
    expect(() => english.weekdayDate(iso)).toThrow(/to be printed/);
  });

  it('prints no more of a date than is known', () => {
    expect(english.date('2019-03')).toBe('March\u00A02019');
    expect(english.monthYear('2026-11-05')).toBe('November\u00A02026');
    expect(english.date('2019')).toBe('2019');
  });

  it.each(['12 March 2019', '2026-13-01', ''])('refuses the date %j', (iso) => {
    expect(() => english.date(iso)).toThrow(/a date to be printed/);
  });

  it('keeps the places asked for, else two at most, and never prints -0', () => {
    expect(english.number(27.449, 1)).toBe('27.4');
    expect(english.number(27, 1)).toBe('27.0');
    expect(english.number(2.005)).toBe('2.01');
    expect(english.number(46)).toBe('46');
    expect(english.number(-0.2, 0)).toBe('0');
    expect(english.number(-3, 0)).toBe('-3');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (value) => {
    expect(() => english.number(value)).toThrow(/not finite/);
  });

  it('uses Western digits, and no narrow spaces, in whatever language', () => {
    for (const format of ['ar-EG', 'fr-FR', 'hi-IN', 'fa-IR', 'de-CH']) {
      const { number, date } = makeFormatter(settings(format));
      expect(`${number(1234567.5)} ${date('2026-11-05')}`).not.toMatch(
        /[\u202F\u2009\u0660-\u0669\u06F0-\u06F9\u0966-\u096F]/,
      );
    }
    expect(makeFormatter(settings('fr-FR')).number(12345)).toBe('12\u00A0345');
  });

  it('changes y to e and o to u where Spanish ears ask for it', () => {
    const { list } = makeFormatter(settings('es-419'));
    expect(list(['padres', 'hijos'], 'and')).toBe('padres e hijos');
    expect(list(['corazón', 'hígado graso'], 'and')).toBe('corazón e hígado graso');
    expect(list(['agua', 'hierro'], 'and')).toBe('agua y hierro');
    expect(list(['siete', 'ocho'], 'or')).toBe('siete u ocho');
  });

  it('ends a list after a denial with the word of the language for it, else with that for or', () => {
    const spanish = makeFormatter({ ...settings('es-419'), nor_word: 'ni' });
    expect(spanish.list(['una', 'otra', 'ocho'], 'nor')).toBe('una, otra ni ocho');
    expect([spanish.list(['una'], 'nor'), spanish.list([], 'nor')]).toEqual(['una', '']);
    expect(spanish.list(['siete', 'ocho'], 'or')).toBe('siete u ocho');
    expect(english.list(['a', 'b'], 'nor')).toBe('a or b');
    const own = { ...settings('fr-HT', 'a'), own_names: invented };
    expect(makeFormatter(own).list(['a', 'b'], 'nor')).toBe('a oswa b');
    expect(makeFormatter({ ...own, nor_word: 'ni' }).list(['a', 'b'], 'nor')).toBe('a ni b');
  });

  it('sets no comma between figures whose decimals a comma shows', () => {
    const list = (format: string, items: readonly string[]): string =>
      makeFormatter(settings(format)).list(items, 'and');
    expect(list('ru', ['0,25', '0,5', '1'])).toBe('0,25; 0,5 и 1');
    const french = makeFormatter({ ...settings('fr'), semicolon: ' ;' });
    expect(french.list(['0,25', '0,5', '1'], 'and')).toBe('0,25\u00A0; 0,5 et 1');
    expect(list('ru', ['1', '2', '3'])).toBe('1, 2 и 3');
    expect(list('en-US', ['1,000', '2,000', '3,000'])).toBe('1,000, 2,000, and 3,000');
    const own = makeFormatter({ ...settings('fr-HT', 'a'), own_names: invented });
    expect(own.list(['0,25', '0,5', '1'], 'and')).toBe('0,25; 0,5 ak 1');
  });

  it('writes every day of a century as the same day, whatever the clock of the machine says', () => {
    const day = fc.date({ min: new Date('1926-01-01'), max: new Date('2126-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(day, (moment) => {
        const [iso = ''] = moment.toISOString().split('T');
        const [year, , date] = iso.split('-');
        expect(english.date(iso)).toMatch(
          new RegExp(`^[A-Z][a-z]+\u00A0${String(Number(date))},\u00A0${year ?? ''}$`),
        );
      }),
    );
  });
});
