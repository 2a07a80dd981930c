import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/model/document.ts';
import { expectedText, repeatedTexts } from '../../../src/model/tree-text.ts';
import {
  asides,
  calendarOf,
  frame,
  say,
  sentence,
  vitaminTree,
  consentTree,
} from '../../helpers/sample-care-documents.ts';
import { para } from '../../helpers/sample-documents.ts';
import { smallTree } from '../../helpers/small-tree.ts';

const origin = 'sample.hbs:1';

function textsOf(...blocks: Block[]): string[] {
  return expectedText(smallTree(blocks)).map(({ text }) => text);
}

function repeated(...blocks: Block[]): string[] {
  return repeatedTexts(smallTree(blocks)).map(({ text }) => text);
}

describe('the order in which texts for going home are printed', () => {
  const warning: Block = {
    type: 'warning-frames',
    frames: [
      frame('today', ['Fever', 'Pain'], {
        heading: 'Call us',
        note: 'Day or night.',
        first: [{ type: 'text', value: 'Call the first one first.' }],
        phones: [{ label: 'Day', number: '555-0142' }, { number: '555-0177' }],
      }),
      frame('visit', ['Hair'], { heading: 'Tell us', phones: [] }),
    ],
    origin,
  };

  it('of warning frames: heading, note, label and number of each phone, which comes first, signs', () => {
    expect(textsOf(warning)).toEqual([
      'Call us',
      'Day or night.',
      'Day',
      '555-0142',
      '555-0177',
      'Call the first one first.',
      'Fever',
      'Pain',
      'Tell us',
      'Hair',
    ]);
  });

  it('holds every number of a frame to be a phone number, and nothing else', () => {
    const phones = expectedText(smallTree([warning])).filter(({ duty }) => duty === 'phone');
    expect(phones.map(({ text }) => text)).toEqual(['555-0142', '555-0177']);
  });

  it('of words to say: heading, then each sentence with nothing in its blanks', () => {
    expect(textsOf(say).map((text) => text.replace(/ +/g, ' '))).toEqual([
      'What to say',
      '“I am Teodora Lindqvist-Abara. I had a gastric bypass on 14 January 2027.',
      'I have since .”',
    ]);
    expect(textsOf({ type: 'answers', heading: 'H', sentences: [sentence('No: __')], origin })).toEqual([
      'H',
      'No:  ',
    ]);
  });

  it('of short lists: each heading with its items', () => {
    expect(textsOf(asides).slice(0, 5)).toEqual([
      'Every day',
      'Walk 5 times',
      'Sip all day long',
      'Take your vitamins',
      'Not yet',
    ]);
  });

  it('of a calendar: names that had no room, weekdays, then each week with its days and its labels', () => {
    const calendar = calendarOf({
      before: 5,
      days: 4,
      begins: [0, 1],
      notes: { 0: ['Operation'], 1: ['Home', 'at noon'] },
    });
    const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
    expect(textsOf(calendar)).toEqual([
      'Clear liquids: 14 and 15 January',
      ...weekdays,
      '14 Jan',
      'Operation',
      '15',
      'Home',
      'at noon',
      '16',
      '17',
      'Thick liquids',
    ]);
    expect(repeated(calendar)).toEqual(weekdays);
  });

  it('of a checklist: heads, then each item with its detail', () => {
    const checklists = expectedText(vitaminTree).map(({ text }) => text);
    expect(checklists.slice(3, 9)).toEqual([
      'Multivitamin with minerals',
      '1 tablet in the morning, with food.',
      'Calcium citrate',
      '500 mg three times a day, two hours apart from iron.',
      'Vitamin B12',
      '1 mg by injection every 3 months.',
    ]);
    expect(checklists.slice(10, 16)).toEqual([
      'Test',
      '14 April 2027',
      '14 July 2027',
      '14 January 2028',
      'Then every year',
      'Blood count, iron',
    ]);
    expect(repeatedTexts(vitaminTree).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['Test', '14 April 2027']),
    );
  });
});

describe('the order in which texts of a consent are printed', () => {
  it('of a talk: both heads, then the statements; nothing where there are none', () => {
    const talk: Block = {
      type: 'talk',
      columns: { box: 'Explained', line: 'Initials' },
      statements: [[para('One.'), para('More of it.')], [para('Two.')]],
      origin,
    };
    expect(textsOf(talk)).toEqual(['Explained', 'Initials', 'One.', 'More of it.', 'Two.']);
    expect(repeated(talk)).toEqual(['Explained', 'Initials']);
    expect(textsOf({ ...talk, statements: [] })).toEqual([]);
  });

  it('of teach-back: each question with its boxes', () => {
    const questions = [para('What?'), para('When?')];
    expect(textsOf({ type: 'teach-back', boxes: ['Back', 'Again'], lines: 2, questions, origin })).toEqual([
      'What?',
      'Back',
      'Again',
      'When?',
      'Back',
      'Again',
    ]);
  });

  it('of fields: the plate before the label, and only where one would sign', () => {
    const fields = [
      { kind: 'name', label: 'Name' },
      { kind: 'signature', label: 'Signature' },
      { kind: 'date', label: 'Date' },
    ] as const;
    const rows = [{ fields, origin }];
    expect(textsOf({ type: 'signatures', plate: 'Not here.', rows, origin })).toEqual([
      'Name',
      'Not here.',
      'Signature',
      'Date',
    ]);
    expect(textsOf({ type: 'signatures', rows, origin })).toEqual(['Name', 'Signature', 'Date']);
    const box = { heading: 'Interpreter', ways: ['Video'], body: [para('I interpreted.')], fields };
    expect(textsOf({ type: 'interpreter', ...box, plate: 'Not here.', origin })).toEqual([
      'Interpreter',
      'Video',
      'I interpreted.',
      'Name',
      'Not here.',
      'Signature',
      'Date',
    ]);
  });

  it('says in a draft at every signature that nobody may sign', () => {
    const texts = expectedText(consentTree).map(({ text }) => text);
    expect(texts.filter((text) => text === 'Draft. Do not sign here.')).toHaveLength(3);
  });
});
