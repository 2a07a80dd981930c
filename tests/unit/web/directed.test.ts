import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, Inline } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { directedParts } from '../../../src/web/directed.tsx';
import { shippedLocale } from '../../helpers/locale-words.ts';
import { smallTree } from '../../helpers/small-tree.ts';
import { attributeOf, elementsOf, htmlOf, readBackHtml, textOf } from '../../helpers/web-page.ts';
import type { Element } from '../../helpers/web-page.ts';

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('ar');
});

const origin = 'sample.hbs:1';
const arabic = (value: string): Inline => ({ type: 'text', value });
const english = (value: string): Inline => ({ type: 'text', value, language: 'en' });
const paragraph = (...inlines: readonly Inline[]): Block => ({
  type: 'paragraph',
  role: 'body',
  inlines,
  origin,
});

function documentOf(...blocks: Block[]) {
  return { ...smallTree(blocks), language: 'ar', direction: 'rtl' as const };
}

function elements(tag: string, ...blocks: Block[]): readonly Element[] {
  return elementsOf(htmlOf([documentOf(...blocks)], locale)).filter(({ tagName }) => tagName === tag);
}

/** Phrases that the page keeps from left to right. */
function isolated(...blocks: Block[]): readonly string[] {
  return elements('bdi', ...blocks)
    .filter((element) => attributeOf(element, 'dir') === 'ltr')
    .map(textOf);
}

describe('words from left to right on a page from right to left', () => {
  it('keep their full stop in a sentence of another language, and leave that of the Arabic one alone', () => {
    expect(isolated(paragraph(arabic('قال: '), english('The band has slipped.')))).toEqual([
      'The band has slipped.',
    ]);
    expect(isolated(paragraph(arabic('من Nurse line, 8 to 5.')))).toEqual(['Nurse line, 8 to 5']);
  });

  it('leave a number of the sentence before its full stop outside, and hold a sign that stands by itself', () => {
    expect(isolated(paragraph(arabic('الدراسة 42. pubmed.org/38078870.')))).toEqual(['pubmed.org/38078870']);
    expect(isolated(paragraph(arabic('≤ في أي وقت')))).toEqual(['≤']);
    expect(isolated(paragraph(arabic('الفئة C. 4 نقاط')))).toEqual(['C']);
    expect(isolated(paragraph(arabic('الفئة C. نقاط')))).toEqual([]);
  });

  it('are one phrase with an address after them, though only a part is marked', () => {
    expect(isolated(paragraph(english('Outcomes. (2025).'), arabic(' PubMed 39821905. لم')))).toEqual([
      'Outcomes. (2025). PubMed 39821905',
    ]);
  });

  it('keep a label whole that is not Arabic at all', () => {
    const value = 'Nurse line (Monday to Friday, 8 to 5)';
    expect(isolated({ type: 'facts', origin, items: [{ label: 'رقم', value }] })).toEqual([value]);
  });

  it('begin at their own side where they are a whole paragraph in another language', () => {
    const heading: Block = { type: 'heading', level: 3, text: 'English', language: 'en', origin };
    const free = paragraph(english('Do you speak English?'));
    const [name] = elements('h1', heading, free);
    expect(name && attributeOf(name, 'dir')).toBe('ltr');
    expect(name && attributeOf(name, 'lang')).toBe('en');
    const own = elements('p', free, paragraph(arabic('Dr. Velde'))).filter(
      (one) => attributeOf(one, 'class') === 'body',
    );
    expect(own.map((one) => attributeOf(one, 'dir'))).toEqual(['ltr', undefined]);
  });

  it('lose no letter to the phrases', () => {
    const inlines = [arabic('من '), english('a b.'), arabic(' (x) 555-0142، 30–45 لم'), english(' c')];
    const parts = directedParts(inlines).flatMap(({ pieces }) => pieces);
    expect(parts.map(({ text }) => text).join('')).toBe(inlines.map(({ value }) => value).join(''));
  });

  it('pass the gate that reads the page back', () => {
    const codesOf = (block: Block) => {
      const documents = [documentOf(block)];
      return readBackHtml(htmlOf(documents, locale), documents, locale).findings.map(({ code }) => code);
    };
    const mixed = paragraph(arabic('من Nurse line, 8 to 5. '), english('Call us.'));
    expect(codesOf(mixed)).toEqual(codesOf(paragraph(arabic('من'))));
    expect(codesOf(mixed)).not.toContain('VERIFY_ACTIVE_CONTENT');
  });
});
