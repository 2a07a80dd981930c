import { beforeAll, describe, expect, it } from 'vitest';

import { amountInWords } from '../../../../src/compose/view/say-amount.ts';
import { coveredLine } from '../../../../src/compose/view/say-covered.ts';
import { roundShare } from '../../../../src/compose/round-counts.ts';
import {
  couldBeInWords,
  fewPeopleInWords,
  isShare,
  limitsInWords,
  moreEarlyInWords,
  othersInWords,
  restInWords,
  shareInTable,
  shareInWords,
} from '../../../../src/compose/view/say-share.ts';
import type { ShareCell } from '../../../../src/compose/view/say-share.ts';
import { otherTime, sayLength, sayTime } from '../../../../src/compose/view/say-time.ts';
import {
  changeInWords,
  isWeight,
  otherWeights,
  warningInWords,
  weightRange,
} from '../../../../src/compose/view/say-weight.ts';
import type { WeightCell } from '../../../../src/compose/view/say-weight.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type { Amount, KnownCell } from '../../../../src/model/comparison.ts';
import {
  fiveOptions,
  fiveYears,
  makeComparison,
  month,
  shareCell,
  unknownCell,
  useOf,
  weightCell,
} from '../../../helpers/compose-inputs.ts';
import { makeRecord } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

let scene: Scene;
beforeAll(async () => {
  scene = await sceneFor('en');
});

const place = { option: 'sleeve', outcome: 'leak', asked: month };
const plain = (markup: string | undefined): string =>
  (markup ?? '').replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');

function share(events: number, n: number): ShareCell {
  const cell = shareCell(place, [events, n]);
  if (!isShare(cell)) throw new Error('not a share');
  return cell;
}

function weight(averageKg: number, more: Partial<KnownCell> = {}): WeightCell {
  const cell = { ...weightCell({ ...place, asked: fiveYears }, averageKg), ...more };
  if (!isWeight(cell)) throw new Error('not a weight');
  return cell;
}

function amount(value: Partial<Amount>): KnownCell {
  return { ...shareCell(place, [1, 2]), value: { kind: 'amount', value: 2, unit: 'days', ...value } };
}

describe('more in the first month than until a later time', () => {
  /** A scene whose first month has this share of a leak after a sleeve; of the other outcomes nothing. */
  async function sceneWith(events: number, n: number, study = 'study-early'): Promise<Scene> {
    const comparison = makeComparison(fiveOptions);
    const early = share(events, n);
    const cells = [{ ...early, lead: { ...early.lead, study } }];
    const row = { outcome: 'leak', asked: month, cells };
    const topic = { id: 'first-month', denominator: 1000, picture: null, rows: [row] } as const;
    return sceneFor('en', { comparison: { ...comparison, topics: [topic] } });
  }
  const later = (events: number, n: number, asked = fiveYears): ShareCell => ({ ...share(events, n), asked });

  it('is said, with the number in the count of the picture', async () => {
    const scene29 = await sceneWith(29, 1000);
    expect(plain(moreEarlyInWords(scene29, later(1, 43), 100)?.markup)).toBe(
      'Another study counted more in the first month alone: 3 out of 100.',
    );
    expect(moreEarlyInWords(scene29, later(1, 43), 100)?.markup).toContain('sleeve/leak');
  });

  it('is not said where it is not so, where both read alike, nor of the first month itself', async () => {
    const scene29 = await sceneWith(29, 1000);
    expect(moreEarlyInWords(scene29, later(4, 100), 100)).toBeNull();
    expect(moreEarlyInWords(scene29, later(27, 1000), 100)).toBeNull();
    expect(moreEarlyInWords(scene29, later(1, 43, month), 100)).toBeNull();
    expect(moreEarlyInWords(scene29, { ...later(1, 43), outcome: 'ulcer' }, 100)).toBeNull();
    expect(moreEarlyInWords(scene29, { ...later(1, 43), option: 'bypass' }, 100)).toBeNull();
    const same = await sceneWith(29, 1000, later(1, 43).lead.study);
    expect(moreEarlyInWords(same, later(1, 43), 100)).toBeNull();
  });
});

describe('times', () => {
  it('are said in the unit people use for them, on one line with their number', () => {
    expect(sayLength(scene, { days: 30 })).toBe('30\u00a0days');
    expect(sayLength(scene, { months: 1 })).toBe('1\u00a0month');
    expect(sayLength(scene, { months: 18 })).toBe('18\u00a0months');
    expect(sayLength(scene, { months: 62.4 })).toBe('62\u00a0months');
    expect(sayLength(scene, { months: 60.8 })).toBe('5\u00a0years');
    expect(sayLength(scene, { months: 0.2 })).toBe('1\u00a0month');
    expect(sayLength(scene, {})).toBe('at a time that the study does not state');
  });

  it('say how they are meant', () => {
    expect(sayTime(scene, { months: 60 }, 'by')).toBe('within 5 years');
    expect(sayTime(scene, { months: 60 }, 'at')).toBe('after 5 years');
    expect(sayTime(scene, { months: 60 }, 'mean-follow-up')).toBe('on average 5 years later');
    expect(sayTime(scene, { days: 30 }, 'unclear')).toBe('at about 30 days');
    expect(sayTime(scene, {}, 'peri-operative')).toBe('around the operation');
    expect(sayTime(scene, {}, 'by')).toBe('at a time that the study does not state');
  });

  it('stand beside a figure only where they are not the time asked', () => {
    const at = (horizon: { days?: number; months?: number }, timeBasis: string): string | null =>
      otherTime(scene, month, useOf('r', { horizon, timeBasis }));
    expect(at({ days: 30 }, 'by')).toBeNull();
    expect(at({ months: 1 }, 'by')).toBeNull();
    expect(at({ days: 90 }, 'by')).toBe('within 90 days');
    expect(at({}, 'peri-operative')).toBe('around the operation');
    expect(
      otherTime(scene, fiveYears, useOf('r', { horizon: { months: 60 }, timeBasis: 'mean-follow-up' })),
    ).toBe('on average 5 years later');
    expect(otherTime(scene, fiveYears, useOf('r', { horizon: { months: 61 }, timeBasis: 'at' }))).toBeNull();
  });
});

describe('shares', () => {
  it('say other studies from lowest to highest, in words where a number would mislead', () => {
    const others = (low: number, high: number, records = ['a', 'b']): string =>
      plain(othersInWords(scene, { ...share(24, 1000), others: { low, high, records } }, 1000)?.markup);
    expect(others(0.018, 0.031)).toBe('Other studies: 18 to 31.');
    expect(others(0, 0.0004)).toBe('Other studies: none or fewer than 1.');
    expect(others(0.018, 0.0181)).toBe('Other studies: 18.');
    expect(others(0.02, 0.02, ['a'])).toBe('Another study: 20.');
    expect(othersInWords(scene, share(24, 1000), 1000)).toBeNull();
  });

  it('say how few people or events a number stands on', () => {
    expect(plain(fewPeopleInWords(scene, share(3, 31))?.markup)).toBe('Only 31 people were counted.');
    expect(plain(fewPeopleInWords(scene, share(1, 1))?.markup)).toBe('Only 1 person was counted.');
    expect(plain(fewPeopleInWords(scene, share(1, 130))?.markup)).toBe('1 of 130 people had this.');
    expect(fewPeopleInWords(scene, share(5, 130))).toBeNull();
    expect(fewPeopleInWords(scene, share(0, 31))).toBeNull();
  });

  it('say of nearly everybody and of everybody what is left over', () => {
    const said = (cell: ShareCell, denominator: 100 | 1000): readonly string[] => {
      const rounded = roundShare(cell.value, denominator);
      return [
        shareInWords(scene, rounded, denominator),
        shareInTable(scene, rounded),
        plain(restInWords(scene, cell, denominator).markup),
      ];
    };
    expect(said(share(9996, 10_000), 100)).toEqual([
      'More than 99 out of 100',
      'more than 99',
      'Fewer than 1 does not.',
    ]);
    expect(said(share(40, 40), 100)).toEqual(['100 out of 100', '100', 'Everyone who was counted.']);
    expect(said(share(1, 10_000), 1000)).toEqual([
      'Fewer than 1 out of 1,000',
      'fewer than 1',
      'More than 999 do not.',
    ]);
    expect(said(share(99, 100), 100)).toEqual(['99 out of 100', '99', '1 does not.']);
  });

  it('say how far a number could go where fewer than 30 events make it unsure', () => {
    const between = (cell: ShareCell): ShareCell => ({
      ...cell,
      value: { ...cell.value, interval: { low: 0.0361, high: 0.1268, basis: 'published' } },
    });
    const couldBe = (cell: ShareCell): string | null => {
      const words = couldBeInWords(scene, cell, 1000);
      return words === null ? null : plain(words.markup);
    };
    expect(couldBe(between(share(29, 400)))).toBe('Could be 36 to 127.');
    expect(couldBe(between(share(30, 400)))).toBeNull();
    expect(couldBe(share(29, 400))).toBeNull();
    // A share given in percent alone stands on as many events as its people make it.
    const percent = (n: number | undefined): ShareCell => {
      const cell = between(share(29, 400));
      const { low, high } = { low: 0.0361, high: 0.1268 };
      const value = {
        kind: 'proportion' as const,
        value: 0.1,
        interval: { low, high, basis: 'score' as const },
      };
      return { ...cell, value: n === undefined ? value : { ...value, n } };
    };
    expect(couldBe(percent(299))).toBe('Could be 36 to 127.');
    expect(couldBe(percent(301))).toBeNull();
    expect(couldBe(percent(undefined))).toBeNull();
    expect(couldBeInWords(scene, between(share(29, 400)), 1000)?.markup).toContain(
      'records="sleeve.leak.study-a"',
    );
  });

  it('never round a limit to nothing', () => {
    expect(plain(limitsInWords(scene, { low: 0.0002, high: 0.0121 }, 1000))).toBe('fewer than 1 to 13');
    expect(plain(limitsInWords(scene, { low: 0.0002, high: 0.0008 }, 1000))).toBe('fewer than 1');
    expect(plain(limitsInWords(scene, { low: 0, high: 0.0172 }, 1000))).toBe('0 to 18');
  });
});

describe('amounts', () => {
  it('say a length of time, and which way a score moved', () => {
    expect(plain(amountInWords(scene, amount({})).markup)).toBe('2 days');
    expect(plain(amountInWords(scene, amount({ value: 1 })).markup)).toBe('1 day');
    expect(plain(amountInWords(scene, amount({ value: 2.55 })).markup)).toMatch(/^2\.[56] days$/);
    expect(
      plain(amountInWords(scene, amount({ value: -1.3, unit: 'percentage points', metric: 'HbA1c' })).markup),
    ).toBe('1.3 percentage points lower');
    expect(plain(amountInWords(scene, amount({ value: 10.5, unit: 'points', metric: 'GIQLI' })).markup)).toBe(
      '10.5 points higher',
    );
    expect(plain(amountInWords(scene, amount({ value: 3, unit: 'kg/m2', metric: 'BMI' })).markup)).toBe(
      '3 kg/m2 higher',
    );
  });

  it('are tied to their record', () => {
    expect(amountInWords(scene, amount({})).markup).toContain('records="sleeve.leak.study-a"');
  });

  it('fall back on the words of shares and weights', () => {
    expect(plain(amountInWords(scene, share(6, 1000)).markup)).toBe('6 out of 1,000');
    expect(plain(amountInWords(scene, weight(93.4)).markup)).toBe('206 lb (93 kg)');
  });
});

describe('weights', () => {
  it('say the averages of other studies', () => {
    const others = { low: 86.2, high: 96.2, records: ['a', 'b'] };
    expect(plain(otherWeights(scene, weight(93.4, { others }))?.markup)).toBe(
      'Other studies: 190 to 212 lb.',
    );
    expect(
      plain(otherWeights(scene, weight(93.4, { others: { low: 90, high: 90, records: ['a'] } }))?.markup),
    ).toBe('Another study: 198 lb.');
    expect(otherWeights(scene, weight(93.4))).toBeNull();
  });

  it('say the change that the reader would work out from the two numbers printed', () => {
    const change = (kg: number): string => plain(changeInWords(scene, weight(kg)).markup);
    expect(change(93.4)).toBe('46 lb less than today.');
    expect(change(116.1)).toBe('4 lb more than today.');
    // Today is 252.4 lb: both print as 252.
    expect(change(114.3)).toBe('About the same as today.');
  });

  it('say a range whose ends print alike as one number', () => {
    expect(weightRange(scene, { low: 90, high: 90.02 })).toBe('198\u00a0lb');
    expect(plain(weightRange(scene, { low: 90, high: 91 }))).toBe('198 to 201 lb');
  });

  it('warn in two steps', () => {
    const warned = (warning: 'under-18-5' | 'under-20'): string => {
      const cell = weight(50);
      return plain(warningInWords(scene, { ...cell, value: { ...cell.value, warning } })?.markup);
    };
    expect(warned('under-18-5')).toContain('too thin');
    expect(warned('under-20')).toContain('close to too thin');
    expect(warningInWords(scene, weight(50))).toBeNull();
  });
});

describe('who was measured', () => {
  const two = ['study-a', 'study-b'];
  const one = 'Sleeve: The main number comes from one study. ';
  const same = 'Sleeve: The main numbers come from one study. ';
  const different = 'The numbers come from different studies. They may not have counted in the same way. ';
  /** The line under a strip whose figures come from records with these people, of as many studies. */
  const line = (people: readonly object[], studies: readonly string[] = []): string => {
    const records = people.map((who, index) =>
      makeRecord({
        id: `sleeve.leak.30d.${String(index)}`,
        people: { indication: 'first-operation', diabetes: 'mixed', ...who },
      }),
    );
    const cells = records.map(({ id }, index) => {
      const cell = shareCell(place, [5, 100], { study: studies[index] ?? 'study-a' });
      return { ...cell, lead: { ...cell.lead, record: id } };
    });
    const measured = { ...scene, records: new Map(records.map((record) => [record.id, record])) };
    return plain(coveredLine(measured, cells)?.markup);
  };

  it('is said from the averages that the studies state, from lowest to highest', () => {
    expect(line([{ bmi: { mean: 45.9, low: 35 }, age: { mean: 41.6 } }])).toBe(
      `${one}People in this study had a BMI of 46 on average. Your BMI is 43. They were 42 years old on average. You are 45.`,
    );
    expect(line([{ bmi: { mean: 49.2 } }, { bmi: { median: 43 } }], two)).toBe(
      `${different}People in these studies had a BMI of 43 to 49 on average. Your BMI is 43.`,
    );
  });

  it('is never said of studies that state no average from those that do', () => {
    expect(line([{ bmi: { low: 35 } }, { bmi: { mean: 45.9 }, age: { median: 39 } }])).toBe(
      `${same}Not every study gives an average BMI. Where one does, it is 46. Your BMI is 43. Not every study gives an average age. Where one does, it is 39. You are 45.`,
    );
    expect(line([{ bmi: { mean: 44 } }, {}])).toBe(
      `${same}Not every study gives an average BMI. Where one does, it is 44. Your BMI is 43.`,
    );
  });

  it('is said from their limits where no average is stated, and never from what was only assumed', () => {
    expect(line([{ bmi: { low: 40 } }, { bmi: { low: 35, high: 60 } }], two)).toBe(
      `${different}These studies took people with a BMI of 35 or more. Your BMI is 43.`,
    );
    expect(line([{ bmi: { low: 35 } }])).toBe(
      `${one}This study took people with a BMI of 35 or more. Your BMI is 43.`,
    );
    // The lower limit of one is not known, so no limit holds for all.
    expect(line([{ bmi: { low: 40 } }, { bmi: { high: 60 } }])).toBe(`${same}Your BMI is 43.`);
    expect(line([{}])).toBe(`${one}This study does not state the BMI. Your BMI is 43.`);
    expect(line([{}, {}], two)).toBe(`${different}These studies do not state the BMI. Your BMI is 43.`);
    expect(line([{ bmi: { low: 40 } }, {}], two)).toBe(
      `${different}These studies took people with a BMI of 40 or more. Not every study states the BMI. Your BMI is 43.`,
    );
  });

  it('says first when figures side by side come from different studies', () => {
    const people = [{ bmi: { mean: 44 } }, { bmi: { mean: 44 } }];
    expect(line(people, two)).toBe(
      `${different}People in these studies had a BMI of 44 on average. Your BMI is 43.`,
    );
    expect(line(people)).not.toContain('different studies');
  });

  it('names the choices that one study is about, unless each choice has a figure', () => {
    const cells = ['sleeve', 'bypass'].map((option) => shareCell({ ...place, option }, [5, 100]));
    const ofBoth = plain(coveredLine(scene, cells)?.markup);
    expect(ofBoth).toMatch(/^Sleeve, Gastric bypass: The main numbers come from one study\. This study /);
    const alone = { ...scene, options: scene.options.filter(({ code }) => code === 'sleeve') };
    expect(plain(coveredLine(alone, cells.slice(0, 1))?.markup)).toMatch(
      /^The main number comes from one study\. This study /,
    );
  });

  it('is left out where no option has a figure', () => {
    expect(coveredLine(scene, [unknownCell(place)])).toBeNull();
  });
});
