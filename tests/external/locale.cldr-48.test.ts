// Source: Unicode CLDR 48.2.0 (Unicode licence; values only), as locale.cldr-48.mjs took it from the packages cldr-core,
// cldr-numbers-full, cldr-dates-full, cldr-misc-full and cldr-units-full on 2026-11-29. CLDR has no data of its own for
// Haitian Creole: what it gives under `ht` is French, so its names are held to the table of its own locale.yaml.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { weekdays } from '../../src/model/calendar-day.ts';
import { allLanguages } from '../helpers/all-languages.ts';
import { shippedLocale, shippedWords } from '../helpers/locale-words.ts';

interface ListPatterns {
  readonly 2: string;
  readonly start: string;
  readonly middle: string;
  readonly end: string;
}
type Format = 'date' | 'weekdayDate' | 'monthYear' | 'monthDay' | 'shortDay' | 'shortDate';
interface Cldr {
  readonly decimal: string;
  readonly group: string;
  readonly minimumGrouping: number;
  readonly pattern: string;
  /** The same of a share, with its sign; Arabic with marks of direction around it. */
  readonly percent: string;
  readonly formats: Readonly<Record<Format, string>>;
  readonly months: readonly string[];
  readonly monthsAlone: readonly string[];
  readonly shortMonths: readonly string[];
  /** From Sunday. */
  readonly weekdays: readonly string[];
  readonly shortWeekdays: readonly string[];
  readonly and: ListPatterns;
  readonly or: ListPatterns;
  readonly kilogram: readonly string[];
  readonly pound: readonly string[];
  /** Whole numbers by plural category. */
  readonly plurals: Readonly<Record<string, readonly number[]>>;
  readonly firstDay: string;
}

const published = JSON.parse(readFileSync('tests/external/locale.cldr-48.json', 'utf8')) as Record<
  string,
  Cldr
>;

function cldrOf(tag: string): Cldr {
  const data = published[tag];
  if (data === undefined) throw new Error(`locale.cldr-48.json has nothing on ${tag}`);
  return data;
}

/** No face has the narrow no-break space, and ours keep words together: all are spaces here. */
const plain = (text: string): string => text.replace(/[\u00A0\u202F]/g, ' ');

const inCldr = allLanguages.filter((tag) => tag !== 'ht');

/** A number by the symbols and groups of CLDR; `pattern` is #,##0.### or #,##,##0.###. */
function grouped(value: string, { decimal, group, minimumGrouping, pattern }: Cldr): string {
  const [whole = '', part] = value.split('.');
  const further = pattern.includes('#,##,##0') ? 2 : 3;
  const groups = [whole.slice(-3)];
  for (let left = whole.slice(0, -3); left !== ''; left = left.slice(0, -further))
    groups.unshift(left.slice(-further));
  const joined = whole.length < 3 + minimumGrouping ? whole : groups.join(group);
  return plain(part === undefined ? joined : joined + decimal + part);
}

/** A day by a pattern of CLDR (Unicode Technical Standard 35, part 4, section 8). */
function dated(iso: string, pattern: string, cldr: Cldr): string {
  const day = new Date(`${iso}T00:00:00Z`);
  const month = day.getUTCMonth();
  const fields: Readonly<Record<string, string | undefined>> = {
    d: String(day.getUTCDate()),
    M: String(month + 1),
    MMM: cldr.shortMonths[month],
    MMMM: cldr.months[month],
    LLLL: cldr.monthsAlone[month],
    y: String(day.getUTCFullYear()),
    EEEE: cldr.weekdays[day.getUTCDay()],
  };
  return plain(
    pattern.replace(/'([^']*)'|([a-zA-Z])\2*/g, (field, quoted: string | undefined) =>
      quoted === undefined ? (fields[field] ?? `?${field}`) : quoted,
    ),
  );
}

function listed(items: readonly string[], patterns: ListPatterns): string {
  const join = (pattern: string, one: string, other: string): string =>
    pattern.replace('{0}', one).replace('{1}', other);
  const [first = '', second = ''] = items;
  if (items.length === 2) return join(patterns[2], first, second);
  const [last = '', ...before] = [...items].reverse();
  const [next = '', ...rest] = before;
  return rest.reduce(
    (all, item, at) => {
      return join(at === rest.length - 1 ? patterns.start : patterns.middle, item, all);
    },
    join(patterns.end, next, last),
  );
}

const days = Array.from({ length: 12 }, (_, month) => `2027-${String(month + 1).padStart(2, '0')}-05`);
const formats = ['date', 'weekdayDate', 'monthYear', 'monthDay', 'shortDay', 'shortDate'] as const;

/** Where our units are others than the short, narrow and long ones of CLDR, and why. */
const ownUnits: Readonly<Record<string, string>> = {
  'hi kilogram':
    'the word people say and scales show; CLDR has the written form with its marks of shortening',
  'hi pound': 'the spelling of newspapers and of clinics; CLDR has the older one',
  'ht pound': 'the Creole word; CLDR has the French one',
  'vi pound': 'what Vietnamese speakers in the United States say; CLDR has lb and a spelling few people know',
  'zh-Hans kilogram': 'the everyday word; CLDR has the sign of physics, or the word of school books',
};

/** Where a share is written in another way than in CLDR, and why. */
const ownPercents: Readonly<Record<string, { readonly pattern: string; readonly why: string }>> = {
  ht: { pattern: '{0}%', why: 'CLDR has the white of French before the sign; texts in Creole have none' },
};

/** A percent sign of any script, with the number at either side of it. */
const shareInText = /\d ?[%\u066a\uff05\ufe6a]|[%\u066a\uff05\ufe6a] ?\d/g;

/** Where our weeks begin on another day than those of the territory, and why. */
const ownWeeks: Readonly<Record<string, string>> = {
  ht: 'CLDR has no entry for Haiti, so its own is that of the world, Monday; printed calendars there begin on Sunday',
};

describe('the way of writing of every language, against CLDR', () => {
  it('is known of each', () => {
    expect(Object.keys(published).sort()).toEqual([...allLanguages].sort());
  });

  it.each(allLanguages)('groups and divides numbers, in digits from 0 to 9: %s', async (tag) => {
    const { formatter } = await shippedLocale(tag);
    for (const value of ['7', '999', '1000', '21892', '218922', '1234567', '0.5', '4321.25']) {
      expect(plain(formatter.number(Number(value)))).toBe(grouped(value, cldrOf(tag)));
    }
  });

  it.each(allLanguages)(
    'sets the percent sign to its number as CLDR does, or says why not: %s',
    async (tag) => {
      const { translator, formatter } = await shippedLocale(tag);
      const { entries } = await shippedWords(tag);
      // Marks of direction are no part of our texts: the pages isolate what is read from left to right.
      const pattern = plain(cldrOf(tag).percent.replaceAll('\u200e', '')).replace(/[#,]+0/, '{0}');
      const number = formatter.number(22.5, 1);
      const printed = translator.text('clinician-sheet.units.%', { n: number });
      const texts = [...entries.values()].map(({ text }) => text.replaceAll(/\{\{\w+\}\}/g, '0'));
      const written = [...texts, printed].flatMap((text) => plain(text).match(shareInText) ?? []);
      expect(written.length).toBeGreaterThan(20);
      const ours = new Set(written.map((share) => share.replace(/\d/, '{0}')));
      expect([...ours]).toEqual([ownPercents[tag]?.pattern ?? pattern]);
      expect(ours.has(pattern)).toBe(!(tag in ownPercents));
    },
  );

  it.each(inCldr.flatMap((tag) => formats.map((format) => [tag, format] as const)))(
    'writes days in the order and with the names of the Gregorian calendar: %s, %s',
    async (tag, format) => {
      const { formatter } = await shippedLocale(tag);
      const cldr = cldrOf(tag);
      const written = days.map((day) => plain(formatter[format](day)));
      expect(written).toEqual(days.map((day) => dated(day, cldr.formats[format], cldr)));
    },
  );

  it.each(inCldr)('names the days of the week over a calendar: %s', async (tag) => {
    const { formatter } = await shippedLocale(tag);
    const written = weekdays.map((day) => plain(formatter.weekday(day)));
    const [sunday, ...others] = cldrOf(tag).shortWeekdays;
    expect(written).toEqual([...others, sunday]);
  });

  it.each(inCldr)('joins what is named with and, and with or: %s', async (tag) => {
    const { formatter } = await shippedLocale(tag);
    const cldr = cldrOf(tag);
    for (const items of [
      ['A', 'B'],
      ['A', 'B', 'C'],
      ['A', 'B', 'C', 'D'],
    ])
      for (const join of ['and', 'or'] as const)
        expect(plain(formatter.list(items, join))).toBe(listed(items, cldr[join]));
  });

  it.each(allLanguages)('takes the plural form that the rules name: %s', async (tag) => {
    const { translator, formatter } = await shippedLocale(tag);
    const { entries } = await shippedWords(tag);
    const { plurals } = cldrOf(tag);
    for (const [category, counts] of Object.entries(plurals)) {
      const form = entries.get(`codes.time.days_${category}`)?.text;
      expect({ category, form }).toEqual({ category, form: expect.any(String) as string });
      for (const count of counts) {
        const written = plain(translator.text('codes.time.days', { count }));
        expect(written).toBe(plain((form ?? '').replace('{{count}}', formatter.number(count))));
      }
    }
  });

  it.each(allLanguages)('begins the week as its territory does, or says why not: %s', async (tag) => {
    const { firstWeekday } = await shippedLocale(tag);
    expect(firstWeekday.startsWith(cldrOf(tag).firstDay)).toBe(!(tag in ownWeeks));
  });

  it.each(
    allLanguages.flatMap((tag) => (['kilogram', 'pound'] as const).map((unit) => [tag, unit] as const)),
  )('writes a weight as CLDR does, or says why not: %s, %s', async (tag, unit) => {
    const { settings } = await shippedWords(tag);
    const ours = settings.units[unit].replace('{{n}}', '{0}');
    const known = cldrOf(tag)[unit].map(plain).includes(ours);
    expect(known).toBe(!(`${tag} ${unit}` in ownUnits));
  });
});

describe('the names of Haitian Creole, which are its own', () => {
  it('are those of the spelling of 1979, in the order day, month, year', async () => {
    const { formatter } = await shippedLocale('ht');
    expect(days.map((day) => plain(formatter.date(day)))).toEqual(
      [
        'janvye',
        'fevriye',
        'mas',
        'avril',
        'me',
        'jen',
        'jiyè',
        'out',
        'septanm',
        'oktòb',
        'novanm',
        'desanm',
      ].map((month) => `5 ${month} 2027`),
    );
    expect(plain(formatter.weekdayDate('2027-01-08'))).toBe('vandredi 8 janvye 2027');
    expect(plain(formatter.monthYear('2027-08'))).toBe('out 2027');
    expect(plain(formatter.shortDay('2027-09-05'))).toBe('5 sept');
    expect(weekdays.map(formatter.weekday)).toEqual(['len', 'mad', 'mèk', 'jed', 'van', 'sam', 'dim']);
  });

  it('are no names of French, which the platform would give', async () => {
    const { formatter } = await shippedLocale('ht');
    const french = new Set([...cldrOf('ht').months, ...cldrOf('ht').weekdays]);
    const words = days.flatMap((day) => plain(formatter.weekdayDate(day)).split(' '));
    // One month is spelled the same in both.
    expect(words.filter((word) => french.has(word))).toEqual(['avril']);
  });

  it('join what is named with words of its own', async () => {
    const { formatter } = await shippedLocale('ht');
    expect(formatter.list(['A', 'B'], 'and')).toBe('A ak B');
    expect(formatter.list(['A', 'B', 'C'], 'or')).toBe('A, B oswa C');
  });
});
