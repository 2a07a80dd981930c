// Writes locale.cldr-48.json from the packages cldr-core, cldr-numbers-full, cldr-dates-full, cldr-misc-full and
// cldr-units-full of Unicode CLDR 48.2.0 (Unicode licence; values only). They are 280 MB, so they are no packages of this
// project: install them in a folder of their own, and run `node locale.cldr-48.mjs FOLDER` beside the JSON.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const [folder = '.'] = process.argv.slice(2);
const read = (path) => JSON.parse(readFileSync(join(folder, 'node_modules', path), 'utf8'));
const of = (pack, locale, file) => read(`cldr-${pack}-full/main/${locale}/${file}.json`).main[locale];

/** Tag of plainleaf: locale of CLDR, its language in the plural rules, the territory whose weeks it prints. */
const languages = {
  ar: ['ar', 'ar', 'SA'],
  en: ['en', 'en', 'US'],
  es: ['es-419', 'es', 'US'],
  fr: ['fr', 'fr', 'FR'],
  hi: ['hi', 'hi', 'IN'],
  ht: ['ht', 'en', 'HT'],
  ko: ['ko', 'ko', 'KR'],
  'pt-BR': ['pt', 'pt', 'BR'],
  ru: ['ru', 'ru', 'RU'],
  tl: ['fil', 'fil', 'PH'],
  vi: ['vi', 'vi', 'VN'],
  'zh-Hans': ['zh-Hans', 'zh', 'CN'],
};

const plurals = read('cldr-core/supplemental/plurals.json').supplemental['plurals-type-cardinal'];
const { firstDay } = read('cldr-core/supplemental/weekData.json').supplemental.weekData;

/** Whole numbers that CLDR names for a category; of `2~16` both ends and every number between. */
function samples(rule) {
  const [, listed = ''] = /@integer ([^@]*)/.exec(rule) ?? [];
  return listed
    .split(', ')
    .filter((part) => /\d/.test(part))
    .flatMap((part) => {
      const [low, high = low] = part.trim().split('~').map(Number);
      return Number.isInteger(low) ? Array.from({ length: high - low + 1 }, (_, at) => low + at) : [];
    });
}

function unitsOf(units, name) {
  return ['short', 'narrow', 'long'].flatMap((width) =>
    Object.entries(units[width][name]).flatMap(([key, text]) =>
      key.startsWith('unitPattern-count') ? [text] : [],
    ),
  );
}

function dataOf([locale, language, territory]) {
  const { numbers } = of('numbers', locale, 'numbers');
  const { gregorian } = of('dates', locale, 'ca-gregorian').dates.calendars;
  const { listPatterns } = of('misc', locale, 'listPatterns');
  const { units } = of('units', locale, 'units');
  const { decimal, group, percentSign } = numbers['symbols-numberSystem-latn'];
  const { yMMMM, MMMMd, MMMd, yMMMd } = gregorian.dateTimeFormats.availableFormats;
  const { months, days, dateFormats } = gregorian;
  return {
    locale,
    decimal,
    group,
    minimumGrouping: Number(numbers.minimumGroupingDigits),
    pattern: numbers['decimalFormats-numberSystem-latn'].standard,
    percent: numbers['percentFormats-numberSystem-latn'].standard.replace('%', percentSign),
    formats: {
      date: dateFormats.long,
      weekdayDate: dateFormats.full,
      monthYear: yMMMM,
      monthDay: MMMMd,
      shortDay: MMMd,
      shortDate: yMMMd,
    },
    months: Object.values(months.format.wide),
    monthsAlone: Object.values(months['stand-alone'].wide),
    shortMonths: Object.values(months.format.abbreviated),
    weekdays: Object.values(days.format.wide),
    shortWeekdays: Object.values(days['stand-alone'].abbreviated),
    and: listPatterns['listPattern-type-standard'],
    or: listPatterns['listPattern-type-or'],
    kilogram: [...new Set(unitsOf(units, 'mass-kilogram'))],
    pound: [...new Set(unitsOf(units, 'mass-pound'))],
    plurals: Object.fromEntries(
      Object.entries(plurals[language]).map(([key, rule]) => [
        key.replace('pluralRule-count-', ''),
        samples(rule),
      ]),
    ),
    firstDay: firstDay[territory] ?? firstDay['001'],
  };
}

const data = Object.fromEntries(Object.entries(languages).map(([tag, names]) => [tag, dataOf(names)]));
writeFileSync(new URL('locale.cldr-48.json', import.meta.url), `${JSON.stringify(data, null, 1)}\n`);
