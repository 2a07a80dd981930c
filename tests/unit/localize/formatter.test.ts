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
  range_word: rangeWord,
  common_words: [],
  misleading: { never: [], only_with_count: [] },
  passive: null,
  reader_words: [],
  sentence_words: 24,
  reviewed: null,
});
const english = makeFormatter(settings('en-US'));

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

  it('ties the day to its month', () => {
    expect(english.date('2026-11-05')).toBe('November\u00A05, 2026');
    expect(makeFormatter(settings('es-419')).date('2026-11-05')).toBe('5\u00A0de noviembre de 2026');
  });

  // Order of parts and short names: Unicode CLDR 44, en and es-419, as Node prints them.
  it('writes a day with its weekday, without its year, and short', () => {
    const spanish = makeFormatter(settings('es-419'));
    expect(english.weekdayDate('2027-01-14')).toBe('Thursday, January\u00A014, 2027');
    expect(spanish.weekdayDate('2027-01-14')).toBe('jueves, 14\u00A0de enero de 2027');
    expect([english.monthDay('2027-01-04'), spanish.monthDay('2027-01-04')]).toEqual([
      'January\u00A04',
      '4\u00A0de enero',
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
    expect(english.date('2019-03')).toBe('March 2019');
    expect(english.monthYear('2026-11-05')).toBe('November 2026');
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
    expect(list(['siete', 'ocho'], 'or')).toBe('siete u ocho');
  });

  it('writes every day of a century as the same day, whatever the clock of the machine says', () => {
    const day = fc.date({ min: new Date('1926-01-01'), max: new Date('2126-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(day, (moment) => {
        const [iso = ''] = moment.toISOString().split('T');
        const [year, , date] = iso.split('-');
        expect(english.date(iso)).toMatch(
          new RegExp(`^[A-Z][a-z]+\u00A0${String(Number(date))}, ${year ?? ''}$`),
        );
      }),
    );
  });
});
