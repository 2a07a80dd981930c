import { beforeAll, describe, expect, it } from 'vitest';

import { amountInWords } from '../../../../src/compose/view/say-amount.ts';
import { coveredLine } from '../../../../src/compose/view/say-covered.ts';
import { fewPeopleInWords, limitsInWords, othersInWords } from '../../../../src/compose/view/say-share.ts';
import { isShare } from '../../../../src/compose/view/say-share.ts';
import type { ShareCell } from '../../../../src/compose/view/say-share.ts';
import { otherTime, sayLength, sayTime } from '../../../../src/compose/view/say-time.ts';
import { isWeight, otherWeights, warningInWords } from '../../../../src/compose/view/say-weight.ts';
import type { WeightCell } from '../../../../src/compose/view/say-weight.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type { Amount, KnownCell } from '../../../../src/model/comparison.ts';
import {
  fiveYears,
  month,
  shareCell,
  unknownCell,
  useOf,
  weightCell,
} from '../../../helpers/compose-inputs.ts';
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

describe('times', () => {
  it('are said in the unit people use for them', () => {
    expect(sayLength(scene, { days: 30 })).toBe('30 days');
    expect(sayLength(scene, { months: 1 })).toBe('1 month');
    expect(sayLength(scene, { months: 18 })).toBe('18 months');
    expect(sayLength(scene, { months: 62.4 })).toBe('62 months');
    expect(sayLength(scene, { months: 60.8 })).toBe('5 years');
    expect(sayLength(scene, { months: 0.2 })).toBe('1 month');
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
    expect(others(0, 0.0004)).toBe('Other studies: none to fewer than 1.');
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
  const line = (...covered: Parameters<typeof useOf>[1][]): string =>
    plain(
      coveredLine(
        scene,
        covered.map((use) => shareCell(place, [5, 100], use)),
      )?.markup,
    );

  it('spans all figures of a strip, and keeps an end open that one study leaves open', () => {
    expect(
      line(
        { covered: { bmiLow: 38.2, bmiHigh: 52, ageLow: 24 } },
        { covered: { bmiLow: 40, bmiHigh: 60, ageLow: 18 } },
      ),
    ).toContain('with a BMI of 38.2 to 60, aged 18 or more.');
    expect(line({ covered: { bmiLow: 35 } }, { covered: { bmiLow: 40, bmiHigh: 60 } })).toContain(
      'with a BMI of 35 or more.',
    );
    expect(line({ covered: { bmiHigh: 60 } })).toContain('with a BMI of 60 or less.');
    expect(line({ covered: { ageLow: 18, ageHigh: 60 } })).toContain('people aged 18 to 60.');
  });

  it('is left out where no study says', () => {
    expect(coveredLine(scene, [unknownCell(place), shareCell(place, [5, 100], { covered: {} })])).toBeNull();
  });
});
