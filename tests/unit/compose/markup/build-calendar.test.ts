import { describe, expect, it } from 'vitest';

import { buildBlocks } from '../../../../src/compose/markup/build-blocks.ts';
import { MarkupError } from '../../../../src/compose/markup/element.ts';
import { addDays, weekdays } from '../../../../src/model/calendar-day.ts';
import type { Calendar } from '../../../../src/model/calendar.ts';

const file = 'sample/main.hbs';

interface Written {
  readonly first?: string;
  readonly heads?: number;
  /** First day and how many. */
  readonly from?: string;
  readonly days?: number;
  readonly stages?: readonly string[];
  readonly extra?: string;
}

function written({
  first = 'sunday',
  heads = 7,
  from = '2027-01-14',
  days = 3,
  stages = [],
  extra = '',
}: Written): string {
  const weekday = weekdays.slice(0, heads).map((day) => `<weekday label="${day.slice(0, 3)}"/>`);
  const day = Array.from({ length: days }, (_, index) => {
    const date = addDays(from, index);
    return `<day date="${date}" label="${date.slice(8)}" dated="${date}"/>`;
  });
  return `<calendar first-weekday="${first}" listed="Days with something new.">${weekday.join('')}${stages.join('')}${day.join('')}${extra}</calendar>`;
}

const stage = (pattern: string, from: string, to: string): string =>
  `<stage pattern="${pattern}" label="${pattern}" from="${from}" to="${to}" dated="${pattern}, from ${from}"/>`;

function build(of: Written): Calendar {
  const [calendar] = buildBlocks(written(of), file);
  if (calendar?.type !== 'calendar') throw new Error('no calendar');
  return calendar;
}

const labels = ({ weeks }: Calendar): readonly unknown[] =>
  weeks.map((week) => week.map((day) => day?.label ?? '-'));

describe('building a calendar', () => {
  it('keeps the language of the name of a stage, also beside its dates', () => {
    const name = '<lang code="en">Clear liquids</lang>';
    const period = '<label>LABEL</label><dated>LABEL: hasta el 20 de enero</dated>'.replaceAll('LABEL', name);
    const stages = [`<stage pattern="dots" from="2027-01-14" to="2027-01-20">${period}</stage>`];
    const english = { type: 'text', value: 'Clear liquids', language: 'en' };
    expect(build({ stages }).stages).toMatchObject([
      { label: [english], dated: [english, { type: 'text', value: ': hasta el 20 de enero' }] },
    ]);
  });

  it('lays the days out under their weekdays, as the week of the locale begins', () => {
    // 14 January 2027 is a Thursday.
    expect(labels(build({ days: 4 }))).toEqual([
      ['-', '-', '-', '-', '14', '15', '16'],
      ['17', '-', '-', '-', '-', '-', '-'],
    ]);
    expect(labels(build({ first: 'monday', days: 4 }))).toEqual([['-', '-', '-', '14', '15', '16', '17']]);
    expect(labels(build({ first: 'saturday', days: 1 }))).toEqual([['-', '-', '-', '-', '-', '14', '-']]);
    expect(labels(build({ first: 'thursday', days: 7 }))).toEqual([
      ['14', '15', '16', '17', '18', '19', '20'],
    ]);
  });

  it('goes over the end of a month and a leap day', () => {
    expect(labels(build({ from: '2028-02-27', days: 4 }))).toEqual([['27', '28', '29', '01', '-', '-', '-']]);
  });

  it('finds the stage of each day; a stage may reach beyond the days on both sides', () => {
    const { weeks, stages } = build({
      days: 5,
      stages: [stage('dots', '2027-01-01', '2027-01-14'), stage('mid', '2027-01-16', '2027-12-31')],
    });
    expect(weeks.flat().flatMap((day) => (day === null ? [] : [day.stage]))).toEqual([0, undefined, 1, 1, 1]);
    expect(stages.map(({ pattern, dated }) => [pattern, dated])).toEqual([
      ['dots', 'dots, from 2027-01-01'],
      ['mid', 'mid, from 2027-01-16'],
    ]);
  });

  it('keeps what happens on a day, and whether it is one to come in', () => {
    const extra =
      '<day date="2027-01-17" label="17" dated="2027-01-17" comes-in="true"><note>Visit</note><note>9:30 am</note></day>' +
      '<day date="2027-01-18" label="18" dated="2027-01-18" comes-in=""/>';
    const [, week = []] = build({ extra }).weeks;
    expect(week.slice(0, 2)).toMatchObject([
      { label: '17', comesIn: true, notes: ['Visit', '9:30 am'] },
      { label: '18', comesIn: false, notes: [] },
    ]);
  });

  it('takes eight weeks and no more', () => {
    expect(build({ first: 'thursday', days: 56 }).weeks).toHaveLength(8);
    expect(() => build({ first: 'thursday', days: 57 })).toThrow('more than 8 weeks');
    expect(() => build({ first: 'friday', days: 56 })).toThrow('more than 8 weeks');
  });

  const threeNotes = `<day date="2027-01-17" label="17" dated="2027-01-17">${'<note>n</note>'.repeat(3)}</day>`;
  it.each<[string, Written, string]>([
    ['six weekdays', { heads: 6 }, 'takes seven <weekday>'],
    ['a week that begins on no weekday', { first: '1' }, 'is not one of monday'],
    ['no day', { days: 0 }, 'has no <day>'],
    [
      'a day left out',
      { extra: '<day date="2027-01-18" label="18" dated="2027-01-18"/>' },
      'is not the one after',
    ],
    [
      'a day twice',
      { extra: '<day date="2027-01-16" label="16" dated="2027-01-16"/>' },
      'is not the one after',
    ],
    [
      'a date that is not there',
      { extra: '<day date="2027-02-30" label="30" dated="2027-02-30"/>' },
      'is not a date',
    ],
    ['a date in words', { extra: '<day date="17 Jan" label="17" dated="17 Jan"/>' }, 'is not a date'],
    ['three notes a day', { extra: threeNotes }, 'more than 2 <note>'],
    [
      'a stage that ends first',
      { stages: [stage('dots', '2027-01-15', '2027-01-14')] },
      'ends before it begins',
    ],
    ['a stage after the days', { stages: [stage('dots', '2027-01-17', '2027-02-14')] }, 'has no day in'],
    ['a stage before the days', { stages: [stage('dots', '2027-01-01', '2027-01-13')] }, 'has no day in'],
    [
      'a pattern that is none',
      { stages: [stage('stars', '2027-01-14', '2027-01-15')] },
      'is not one of dots',
    ],
    [
      'two stages on one day',
      { stages: [stage('dots', '2027-01-14', '2027-01-15'), stage('mid', '2027-01-15', '2027-01-16')] },
      'begins before the one before it has ended',
    ],
    [
      'neighbours that look alike',
      { stages: [stage('dots', '2027-01-14', '2027-01-14'), stage('dots', '2027-01-15', '2027-01-16')] },
      'has the pattern of the one before it',
    ],
  ])('refuses %s', (_, of, message) => {
    expect(() => build(of)).toThrow(MarkupError);
    expect(() => build(of)).toThrow(message);
  });
});
