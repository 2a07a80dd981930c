// Who was measured, read on the published pages named beside each expectation:
// - Wadden TA et al., JAMA 2021;325:1403-1413 (abstract, PubMed 33625476): 611 adults without diabetes, 407 and 204;
// - Swedish Obese Subjects: a BMI of 34 and over for men, 38 and over for women (Sjöström L et al., Int J Obes
//   1992;16:465-479, and every later report; abstract on the pages of the University of Gothenburg);
// - Mingrone G et al., Lancet 2021;397:293-304 (abstract, PubMed 33485454): 60 people, shared out 1:1:1;
// - Aarts EO et al., Obes Surg 2011;21:207-211 (link.springer.com/doi/10.1007/s11695-010-0316-7): 36 men and 24 women with
//   a mean BMI of 56.8 ± 10.9 and a mean age of 44 (18-70), a first step to a switch; followed in the first year.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

interface Told {
  readonly id: string;
  readonly people: {
    readonly diabetes: string;
    readonly bmi?: { readonly low?: number; readonly mean?: number; readonly sd?: number };
    readonly bmi_by_sex?: Readonly<Record<'female' | 'male', { readonly low?: number }>>;
  };
  readonly value: { readonly n?: number; readonly n_is?: string };
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
});
