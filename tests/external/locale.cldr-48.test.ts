// Unicode CLDR, as published in github.com/unicode-org/cldr-json, read 2026-11-25 (Unicode licence; values only):
// cldr-core/supplemental/plurals.json (en, es), cldr-numbers-full/main/es-419/numbers.json (symbols, minimal pairs),
// cldr-dates-full/main/es-419/ca-gregorian.json (long, yMMMM), cldr-dates-full/main/en/ca-generic.json (long, yyyyMMMM),
// cldr-misc-full/main/es-419/listPatterns.json.
import { beforeAll, describe, expect, it } from 'vitest';

import type { Locale } from '../../src/model/locale.ts';
import { shippedLocale } from '../helpers/locale-words.ts';

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

describe('numbers, dates and lists against CLDR', () => {
  let english: Locale;
  let spanish: Locale;
  beforeAll(async () => {
    english = await shippedLocale('en');
    spanish = await shippedLocale('es');
  });

  it('groups by comma and divides by point in both, as the symbols of es-419 say, from four digits on', () => {
    for (const { formatter } of [english, spanish]) {
      expect(formatter.number(1000)).toBe('1,000');
      expect(formatter.number(218922)).toBe('218,922');
      expect(formatter.number(0.5)).toBe('0.5');
    }
  });

  it('writes a long date by the patterns MMMM d, y and d de MMMM de y', () => {
    expect(plain(english.formatter.date('2026-11-05'))).toBe('November 5, 2026');
    expect(plain(spanish.formatter.date('2026-11-05'))).toBe('5 de noviembre de 2026');
  });

  it('writes a month by the patterns MMMM y and MMMM de y', () => {
    expect(plain(english.formatter.monthYear('2021-01'))).toBe('January 2021');
    expect(plain(spanish.formatter.monthYear('2021-01'))).toBe('enero de 2021');
  });

  it('joins Spanish lists without a comma before the last', () => {
    expect(spanish.formatter.list(['uno', 'dos', 'tres'], 'and')).toBe('uno, dos y tres');
    expect(spanish.formatter.list(['uno', 'dos', 'tres'], 'or')).toBe('uno, dos o tres');
  });

  it('chooses plural forms by the rules, with the minimal pairs {0} día, {0} de días, {0} días', () => {
    const days = (count: number): string => spanish.translator.text('codes.time.days', { count });
    expect([1, 0, 2, 16, 100000, 1.5].map(days)).toEqual([
      '1 día',
      '0 días',
      '2 días',
      '16 días',
      '100,000 días',
      '1.5 días',
    ]);
    expect(days(1_000_000)).toBe('1,000,000 de días');
    const english1 = [0, 1, 2].map((count) => english.translator.text('codes.time.days', { count }));
    expect(english1).toEqual(['0 days', '1 day', '2 days']);
  });
});
