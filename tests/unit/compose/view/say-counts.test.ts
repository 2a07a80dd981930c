import { describe, expect, it } from 'vitest';

import { roundShare } from '../../../../src/compose/round-counts.ts';
import {
  couldBeOutOf,
  isShare,
  othersInWords,
  shareInSentence,
} from '../../../../src/compose/view/say-share.ts';
import type { ShareCell } from '../../../../src/compose/view/say-share.ts';
import { dated } from '../../../../src/compose/view/say-aftercare.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { asMarkup, plainSeries } from '../../../../src/compose/view/words.ts';
import { month, shareCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const plain = (words: { readonly markup: string } | null): string =>
  (words?.markup ?? '').replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');

function share(events: number, n: number): ShareCell {
  const cell = shareCell({ option: 'sleeve', outcome: 'leak', asked: month }, [events, n]);
  if (!isShare(cell)) throw new Error('not a share');
  return cell;
}

function couldBe(scene: Scene, low: number, high: number): string {
  const cell = share(2, 1000);
  const value = { ...cell.value, interval: { low, high, basis: 'exact' as const } };
  return plain(couldBeOutOf(scene, { ...cell, value }, 1000));
}

function others(scene: Scene, low: number, high: number): string {
  const cell = { ...share(2, 1000), others: { low, high, records: ['a', 'b'] } };
  return plain(othersInWords(scene, cell, 1000));
}

/** A range from under one to thirteen; one that ends under one; other studies from none to thirteen. */
const ranges: readonly (readonly [tag: string, said: readonly string[]])[] = [
  [
    'en',
    [
      'Could be fewer than 1 to 13 out of 1,000.',
      'Could be fewer than 1 out of 1,000.',
      'Other studies: none to 13.',
    ],
  ],
  [
    'fr',
    [
      'Ce pourrait être de moins de 1 à 13 sur 1 000.',
      'Ce pourrait être moins de 1 sur 1 000.',
      'D’autres études : de 0 à 13.',
    ],
  ],
  [
    'ru',
    [
      'Может быть: от менее чем 1 до 13 из 1 000.',
      'Может быть: меньше 1 из 1 000.',
      'Другие исследования: от 0 до 13.',
    ],
  ],
  [
    'hi',
    [
      '1,000 में से 1 से भी कम से लेकर 13 तक हो सकता है।',
      '1,000 में से 1 से कम हो सकता है।',
      'दूसरे अध्ययनों में 0 से 13 तक है।',
    ],
  ],
  [
    'ko',
    [
      '1,000명 중 1명 미만에서 13명 사이일 수 있습니다.',
      '1,000명 중 1명 미만일 수 있습니다.',
      '다른 연구: 0명에서 13명 사이.',
    ],
  ],
  [
    'vi',
    [
      'Có thể là từ dưới 1 đến 13 trong số 1.000.',
      'Có thể là dưới 1 trong số 1.000.',
      'Nghiên cứu khác: từ 0 đến 13.',
    ],
  ],
  ['zh-Hans', ['可能是每1,000人中不到1人到13人。', '可能是每1,000人中不到1人。', '其他研究：0至13人。']],
];

describe('a range of people whose low end is under one', () => {
  it.each(ranges)('is one phrase of the language: %s', async (tag, said) => {
    const scene = await sceneFor(tag);
    expect([couldBe(scene, 0.0004, 0.013), couldBe(scene, 0.0001, 0.0004), others(scene, 0, 0.013)]).toEqual(
      said,
    );
  });

  it('counts both ends as people where the language has a counter', async () => {
    expect(couldBe(await sceneFor('ko'), 0.036, 0.127)).toBe('1,000명 중 36 ~ 127명일 수 있습니다.');
    expect(couldBe(await sceneFor('zh-Hans'), 0.036, 0.127)).toBe('可能是每1,000人中36至127人。');
  });
});

describe('a share within a sentence', () => {
  it.each([
    ['en', 'fewer than 1 out of 1,000', 'more than 999 out of 1,000'],
    ['ko', '1,000명 중 1명 미만', '1,000명 중 999명 초과'],
    ['hi', '1,000 में से 1 से कम', '1,000 में से 999 से ज़्यादा'],
    ['zh-Hans', '每1,000人中不到1人', '每1,000人中超过999人'],
  ])('is one phrase of the language too: %s', async (tag, fewer, more) => {
    const scene = await sceneFor(tag);
    const said = (value: number): string =>
      shareInSentence(scene, roundShare({ value }, 1000), 1000).replaceAll('\u00a0', ' ');
    expect(said(0.0004)).toBe(fewer);
    expect(said(0.9996)).toBe(more);
  });
});

describe('parts that the program joins', () => {
  it('have the marks of the language between them and after a label', async () => {
    const scene = await sceneFor('zh-Hans');
    expect(plainSeries(scene.words, 'items', ['a', 'b', 'c'])).toBe('a，b，c');
    expect(plainSeries(scene.words, 'clauses', ['a', 'b'])).toBe('a；b');
    expect(plainSeries(scene.words, 'items', [])).toBe('');
    expect(dated(scene, '1月28日起', asMarkup('走路'))).toEqual({ markup: '<b>1月28日起</b>：走路' });
    const french = await sceneFor('fr');
    expect(plainSeries(french.words, 'clauses', ['a', 'b'])).toBe('a\u00a0; b');
    const arabic = await sceneFor('ar');
    expect(plainSeries(arabic.words, 'items', ['a', 'b'])).toBe('a، b');
  });
});
