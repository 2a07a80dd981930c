import { beforeAll, describe, expect, it } from 'vitest';
import type { Locale } from '../../../src/model/locale.ts';
import { longestWhole, splitHeading, splitWholePhrases } from '../../../src/web/whole-phrases.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';
import { paragraph, smallTree, words } from '../../helpers/small-tree.ts';
import { attributeOf, bodyOf, htmlOf, readBackHtml, within } from '../../helpers/web-page.ts';

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('en');
});

const wholeIn = (text: string): readonly string[] =>
  splitWholePhrases(text)
    .filter(({ whole }) => whole)
    .map(({ text: phrase }) => phrase);

describe('words of a Chinese heading that a line of the web page does not part', () => {
  it.each([
    ['我可以选择什么？', ['可以', '选择', '什么？']],
    ['5年后我的体重会是多少？', ['5年后', '我的', '体重', '会是', '多少？']],
    ['Which treatment after 24 months?', ['24 months?']],
  ])('%s', (text, whole) => {
    const parts = splitHeading(text);
    expect(parts.map((part) => part.text).join('')).toBe(text);
    expect(parts.filter((part) => part.whole).map((part) => part.text)).toEqual(whole);
  });

  it('are parted where they are long: no heading is wider than a small phone', () => {
    const long = '缩胃手术'.repeat(3);
    expect(splitHeading(`(${long})`).filter(({ whole, text }) => whole && text.length > 8)).toEqual([]);
  });
});

describe('phrases that a line of the web page does not part', () => {
  it.each([
    ['They weighed 252 lb after 5 years.', ['252 lb', '5 years.']],
    ['Ask Dr. Okoye about vitamin D, please.', ['Dr. Okoye', 'vitamin D,']],
    ['This happens in 2 out of 1,000. See note 1.', ['2 out', 'of 1,000.', 'note 1.']],
    ['Feeling sick within 16 months, in 12 of 40 people', ['16 months,', '12 of', '40 people']],
    ['Que pourrais-je faire ?', ['pourrais-je']],
    ['Dites-le-nous : peut-être demain.', ['Dites-le-nous', 'peut-être']],
    ['Сообщите, если что-то болит.', ['что-то']],
    ['for 2–4 of them, up to 40 mg/dL', ['for 2–4', '40 mg/dL']],
    ['24 개월 뒤', ['24 개월']],
    ['1000人中24人要住院1\u00a0个月', ['1000人', '24人', '1\u00a0个月']],
    ['很确定。研究13、25，32.2\u00a0kg/m²，流程*。', ['研究13', '32.2\u00a0kg/m²', '程*']],
    ['विकल्प – स्लीव', ['विकल्प –']],
    ['在2027年2月10日星期三。', ['2027年', '2月', '10日', '星期三']],
  ])('%s', (text, whole) => {
    expect(wholeIn(text)).toEqual(whole);
  });

  it.each([
    'Nothing here.',
    'a - b',
    '2021 and after',
    'and so on-',
    'https://example.org/a-long-address/of-a-page',
    '24 biểu-hiện-dài-dài',
  ])('are none in: %s', (text) => {
    expect(wholeIn(text).filter((phrase) => phrase.length > longestWhole)).toEqual([]);
    expect(wholeIn(text)).toEqual([]);
  });

  it('keep as much of a long chain as is short', () => {
    expect(wholeIn('call 555 0142 555 0143 555 now')).toEqual(['555 0142 555', '0143 555 now']);
  });

  it('are marked by a style alone: the letters of the page are those of the tree', () => {
    const text = 'After 24 months peut-être 1\u00a0000 people.';
    const tree = smallTree([paragraph('a.hbs:1', [words(text)])]);
    const body = bodyOf(tree.blocks, locale);
    const marked = within(body).filter((element) => attributeOf(element, 'class') === 'whole');
    expect(marked.length).toBe(3);
    const html = htmlOf([tree], locale);
    expect(html.replace(/<\/?span[^>]*>/g, '')).toContain(`>${text}<`);
    expect(readBackHtml(html, [tree], locale).findings).toEqual([]);
  });
});
