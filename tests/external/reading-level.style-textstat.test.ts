// Sources: GNU style 1.11 (Debian diction 1.11-1+b1) run on the Gettysburg Address (public domain) and on one sentence;
// textstat 0.7 (Python) run on the opening of Don Quijote (public domain), with the counts it printed; McLaughlin, SMOG
// Grading (Journal of Reading 1969;12:639-646), his own example by hand. All run or read in November 2026.
import { describe, expect, it } from 'vitest';

import { countTexts } from '../../src/readability/count-text.ts';
import {
  fernandezHuerta,
  fleschKincaidGrade,
  smogGrade,
  szigrisztPazos,
} from '../../src/readability/formulas.ts';
import { findPassives } from '../../src/model/passive-voice.ts';
import { realLocale } from '../helpers/compose-inputs.ts';
import { syllable } from 'syllable';

const address = [
  'Four score and seven years ago our fathers brought forth on this continent, a new nation, conceived in Liberty, and dedicated to the proposition that all men are created equal.',
  'Now we are engaged in a great civil war, testing whether that nation, or any nation so conceived and so dedicated, can long endure. We are met on a great battle-field of that war. We have come to dedicate a portion of that field, as a final resting place for those who here gave their lives that that nation might live. It is altogether fitting and proper that we should do this.',
  'But, in a larger sense, we can not dedicate, we can not consecrate, we can not hallow, this ground. The brave men, living and dead, who struggled here, have consecrated it, far above our poor power to add or detract. The world will little note, nor long remember what we say here, but it can never forget what they did here. It is for us the living, rather, to be dedicated here to the unfinished work which they who fought here have thus far so nobly advanced. It is rather for us to be here dedicated to the great task remaining before us, that from these honored dead we take increased devotion to that cause for which they gave the last full measure of devotion, that we here highly resolve that these dead shall not have died in vain, that this nation, under God, shall have a new birth of freedom, and that government of the people, by the people, for the people, shall not perish from the earth.',
];

describe('the Gettysburg Address', () => {
  const counts = countTexts(address, syllable);

  it('has the words and sentences that style prints', () => {
    expect(counts).toMatchObject({ words: 271, sentences: 10 });
  });

  it('has the grade that style prints, but for how syllables are counted', () => {
    // style: 10.3, with 1.30 syllables a word; ours 1.35.
    expect(Math.abs(fleschKincaidGrade(counts) - 10.3)).toBeLessThan(0.7);
    expect(fleschKincaidGrade({ ...counts, syllables: 351 })).toBeCloseTo(10.3, 1);
  });

  it('has the SMOG grade that style prints, which leaves out a constant and a factor', () => {
    // style prints 3 + sqrt(30 P / S) = 10.3 for 18 long words; the exact form is 1.043 sqrt(30 P / S) + 3.1291.
    const exact = smogGrade({ ...counts, longWords: 18 });
    expect((exact - 3.1291) / 1.043 + 3).toBeCloseTo(10.3, 1);
  });
});

describe('passive sentences', () => {
  it('are among those in which style finds a form of "to be", and by hand five in the address', async () => {
    const { passive: words } = await realLocale('en');
    if (words === null) throw new Error('no words');
    const { sentences, passive } = findPassives(address, words);
    expect(sentences).toBe(10);
    // style counts six of ten: it also takes "It is altogether fitting", which is none.
    expect(passive.map((sentence) => sentence.split(' ').slice(0, 4).join(' '))).toEqual([
      'Four score and seven',
      'Now we are engaged',
      'We are met on',
      'It is for us',
      'It is rather for',
    ]);
  });
});

describe('one short sentence', () => {
  it('has the grade that style prints', () => {
    expect(fleschKincaidGrade(countTexts(['The cat sat on the mat.'], syllable))).toBeCloseTo(-1.45, 2);
  });
});

describe('the example of the author of SMOG', () => {
  it('gives grade 13 for 95 long words in 30 sentences', () => {
    expect(Math.floor(smogGrade({ sentences: 30, longWords: 95 }))).toBe(13);
  });
});

describe('the opening of Don Quijote', () => {
  // textstat counts syllables by the places where a printer may divide a word, which finds fewer; its counts are used.
  const counts = { sentences: 4, words: 135, syllables: 232, longWords: 0 };

  it('has the two scores that textstat prints for its own counts', () => {
    expect(fernandezHuerta(counts)).toBeCloseTo(69.30388888888889, 9);
    // textstat rounds the constant of the second, 206.835, to 206.84.
    expect(szigrisztPazos(counts) + 0.005).toBeCloseTo(66.02629629629631, 9);
  });
});
