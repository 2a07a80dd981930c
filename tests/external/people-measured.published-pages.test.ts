// Who was measured, read on the published pages named beside each expectation:
// - Wadden TA et al., JAMA 2021;325:1403-1413 (abstract, PubMed 33625476): 611 adults without diabetes, 407 and 204;
// - Swedish Obese Subjects: a BMI of 34 and over for men, 38 and over for women (Sjöström L et al., Int J Obes
//   1992;16:465-479, and every later report; abstract on the pages of the University of Gothenburg);
// - Mingrone G et al., Lancet 2021;397:293-304 (abstract, PubMed 33485454): 60 people, shared out 1:1:1;
// - Aarts EO et al., Obes Surg 2011;21:207-211 (link.springer.com/doi/10.1007/s11695-010-0316-7): 36 men and 24 women with
//   a mean BMI of 56.8 ± 10.9 and a mean age of 44 (18-70), a first step to a switch; followed in the first year;
// - zepbound.lilly.com/hcp/clinical-data-weight: SURMOUNT-1 had arms of 630, 636, 630 and 643 adults with a BMI from 30, or
//   from 27 with an illness, "excluding type 2 diabetes"; the other trial had a BMI from 27 and type 2 diabetes;
// - Aronne LJ et al., JAMA 2024;331:38-48 (abstract, PubMed 38078870): a BMI from 30, or from 27 with a complication,
//   "excluding diabetes"; of the 670 the mean age was 48 and 71 % were women;
// - Lingvay I et al., Obesity 2023;31:111-122 (PMC10107832): SELECT had 72.5 % men, an age of 61.6 ± 8.9, a BMI of 33.34 ± 5.04;
// - Dreifuss NH et al., Obes Surg 2022 (distantreader.org/stacks/cord/cord-0686783-cz9y2ju8.txt): the mean age of 43.4 is of the
//   14,624 who went home on the day, not of those who stayed;
// - Arterburn D et al., Ann Intern Med 2018;169:741-750 (abstract, PubMed 30383139): aged 20 to 79, a BMI of 35 or more;
// - Lee WJ et al., Ann Surg 2005;242:20-28 as told at nature.com/articles/ncpendmet0003: a BMI over 40, or over 35 with illness;
// - Sammour T et al., Obes Surg 2010;20:271-275 (link.springer.com/article/10.1007/s11695-009-0038-x): the first 100 sleeves of
//   Counties Manukau, March 2007 to July 2008: age 43 (20-60), BMI 50.3 (34.5-72.8); Lemanu DP et al. followed 96 of that
//   hospital and those months.
// - Burgos AM et al., Obes Surg 2013;23:1481-1486 (link.springer.com/article/10.1007%2Fs11695-013-0963-6): 5 of 717 with a narrow
//   sleeve; Frutos MD et al., Obes Surg 2009;19:1631-1635 (rd.springer.com/article/10.1007%2Fs11695-009-9962-z): 23 of 676 with a
//   narrow join of a bypass; doi 10.1007/s11695-010-0154-7: 105 of 1,330; none says how long all were followed.
// When it was measured, likewise:
// - Coupaye M et al., Surg Obes Relat Dis 2015;11:779-784 (abstract, PubMed 25851775): symptoms "during the follow-up", which
//   the abstract does not measure; only the stones of any kind are told "at 2 years";
// - Kang X et al. (abstract at sages.org): 8.8 % "over four years"; medicine for 90 days since "two years ago".
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

interface Told {
  readonly id: string;
  readonly people: {
    readonly diabetes: string;
    readonly bmi?: { readonly low?: number; readonly mean?: number; readonly sd?: number };
    readonly age?: { readonly low?: number; readonly mean?: number };
    readonly bmi_by_sex?: Readonly<Record<'female' | 'male', { readonly low?: number }>>;
  };
  readonly value: { readonly n?: number; readonly n_is?: string };
  readonly time: { readonly months?: number; readonly basis: string };
}

function recordsOf(option: string): readonly Told[] {
  return parse(readFileSync(`src/evidence/data/records/${option}.yaml`, 'utf8')) as readonly Told[];
}

function record(id: string): Told {
  const found = recordsOf(id.split('.')[0] ?? '').find((one) => one.id === id);
  if (found === undefined) throw new Error(`no record ${id}`);
  return found;
}

describe('the people of a figure', () => {
  it.each([
    ['semaglutide.weight-loss.16m.step-3.twl', 407],
    ['lifestyle.weight-loss.16m.step-3.twl', 204],
  ])('%s had no diabetes, and are counted', (id, n) => {
    const { people, value } = record(id);
    expect(people).toMatchObject({ diabetes: 'none', bmi: { low: 27, mean: 38, sd: 6.7 } });
    expect(value).toMatchObject({ n, n_is: 'start' });
  });

  it('of the Swedish Obese Subjects were women from a BMI of 38 and men from 34; 38 holds for both', () => {
    const theirs = ['usual-care', 'any-surgery']
      .flatMap(recordsOf)
      .filter(({ id, people }) => /\.sos-(2013|diabetes|survival)/.test(id) && people.bmi !== undefined);
    expect(theirs.length).toBeGreaterThan(10);
    const said = theirs.map(({ people: { bmi, bmi_by_sex: bySex } }) => [
      bmi?.low,
      bySex?.female.low,
      bySex?.male.low,
    ]);
    expect(new Set(said.map(String))).toEqual(new Set(['38,38,34']));
  });

  it('who lacked iron in the first year after a sleeve had a BMI of 57 on average', () => {
    expect(record('sleeve.deficiency-iron.12m.sleeve-micronutrients-2011')).toMatchObject({
      people: { bmi: { mean: 56.8, sd: 10.9 }, age: { mean: 44, low: 18, high: 70 }, female_percent: 40 },
      time: { months: 12, basis: 'by' },
    });
  });

  it.each(['bypass', 'duodenal-switch', 'usual-care'])(
    'of the trial in Rome were 20 in the group of %s',
    (option) => {
      const { value } = record(`${option}.diabetes-remission.120m.mingrone-2021`);
      expect(value).toMatchObject({ n: 20, n_is: 'start' });
    },
  );

  it('of tirzepatide 5 mg in the label was without diabetes; other doses had both trials, all from a BMI of 27', () => {
    const label = ['tirzepatide', 'lifestyle']
      .flatMap(recordsOf)
      .filter(({ id }) => /\.tirzepatide-(us-label|fda-safety)/.test(id));
    expect(label).toHaveLength(24);
    for (const { id, people, value } of label) {
      const alone = id.endsWith('.5mg');
      expect({ id, people }).toMatchObject({
        people: { diabetes: alone ? 'none' : 'mixed', bmi: { low: 27 } },
      });
      expect(value.n === 630).toBe(alone);
    }
  });

  it.each(['weight-loss', 'weight-regain'])('who stopped tirzepatide (%s) had no diabetes', (outcome) => {
    const theirs = recordsOf('tirzepatide').filter(({ id }) => id.includes(`.${outcome}.20m.surmount-4.`));
    expect(theirs.length).toBeGreaterThan(0);
    for (const { people } of theirs)
      expect(people).toMatchObject({
        diabetes: 'none',
        bmi: { low: 27 },
        age: { mean: 48 },
        female_percent: 71,
      });
  });

  it('of SELECT were mostly men of about 62', () => {
    const theirs = ['semaglutide', 'usual-care']
      .flatMap(recordsOf)
      .filter(({ id }) =>
        /\.(select-(safety|glycaemia|mortality)|semaglutide-product-information\.select)/.test(id),
      );
    expect(theirs.length).toBeGreaterThan(9);
    for (const { people } of theirs) {
      expect(people).toMatchObject({ female_percent: 27.5, age: { mean: 61.6, sd: 8.9, low: 45 } });
      expect(people.bmi).toEqual({ low: 27, mean: 33.34, sd: 5.04 });
    }
  });

  it('on the page of the Hong Kong label have neither an age nor a sex in print', () => {
    expect(record('semaglutide.gallstones.16m.semaglutide-product-information').people).toEqual({
      indication: 'none',
      diabetes: 'mixed',
    });
  });

  it('who stayed a night after a sleeve do not get the age of those who went home on the day', () => {
    const start = 'sleeve.readmission.30d.mbsaqip-sleeve-sameday-2015-2018';
    expect(record(`${start}.inpatient`).people.age).toBeUndefined();
    expect(record(`${start}.same-day`).people.age).toEqual({ mean: 43.4 });
  });

  it.each([
    [
      'pcornet-pcori-summary',
      { of: ['sleeve', 'bypass', 'band'], count: 9 },
      { bmi: { low: 35 }, age: { low: 20, high: 79 } },
    ],
    ['oagb-rct-taiwan-2005', { of: ['bypass', 'one-anastomosis-bypass'], count: 5 }, { bmi: { low: 35 } }],
    [
      'lemanu-2014',
      { of: ['sleeve'], count: 8 },
      { bmi: { mean: 50.3, low: 34.5, high: 72.8 }, age: { mean: 43, low: 20, high: 60 } },
    ],
  ])('of %s are told as on its page', (study, { of, count }, people) => {
    const theirs = of.flatMap(recordsOf).filter(({ id }) => id.includes(`.${study}`));
    expect(theirs).toHaveLength(count);
    for (const one of theirs) expect(one.people).toMatchObject(people);
  });
});

describe('the time of a figure', () => {
  it.each([
    ['sleeve.stricture.unclear.burgos-2013', 5, 717],
    ['bypass.stricture.unclear.frutos-2009', 23, 676],
    ['bypass.stricture.unclear.bypass-stricture-dilation-1330', 105, 1330],
  ])('%s is not stated, how many is', (id, events, n) => {
    expect(record(id)).toMatchObject({ time: { basis: 'unclear' }, value: { events, n } });
  });

  it.each([
    ['sleeve.gallstones.24m.gallstones-ultrasound-2015', 24],
    ['bypass.gallstones.24m.gallstones-ultrasound-2015', 24],
    ['bypass.ulcer.48m.ulcer-ppi-ontario', 48],
    ['bypass.ulcer.24m.ulcer-ppi-ontario.90-day-acid-medicine', 24],
  ])('%s is not clear', (id, months) => {
    expect(record(id).time).toEqual({ months, basis: 'unclear' });
  });
});
