import { beforeAll, describe, expect, it } from 'vitest';
import type { DocumentTree } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { markOnPaper } from '../../../src/web/style/index.ts';
import { careTrees, turnedCareTrees } from '../../helpers/sample-care-documents.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';
import { para, sampleTrees, topic } from '../../helpers/sample-documents.ts';
import { smallTree } from '../../helpers/small-tree.ts';
import { attributeOf, elementsOf, htmlOf, readBackHtml, textOf, within } from '../../helpers/web-page.ts';

/** The sample of a clinician sheet has no numbers at its foot. */
const calledAtTheFoot = sampleTrees.map((tree) =>
  tree.audience === 'clinician' ? { ...tree, furniture: { ...tree.furniture, phones: [] } } : tree,
);

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('en');
});

describe('an HTML page', () => {
  it('says its language, its direction, its width and a policy that lets nothing run and nothing be fetched', () => {
    const html = htmlOf([smallTree([para('Hello.')], { language: 'es', direction: 'rtl' })], locale);
    const elements = elementsOf(html);
    const [root] = elements;
    expect(html.startsWith('<!doctype html>\n<html lang="es" dir="rtl">')).toBe(true);
    expect(root?.tagName).toBe('html');
    const meta = elements.filter(({ tagName }) => tagName === 'meta');
    expect(meta.map((one) => attributeOf(one, 'content') ?? attributeOf(one, 'charset'))).toEqual([
      'utf-8',
      'width=device-width, initial-scale=1',
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'",
      'light only',
      'no-referrer',
      'telephone=no',
    ]);
    const title = elements.find(({ tagName }) => tagName === 'title');
    expect(title && textOf(title)).toBe('My choices · Port Sennet Clinic');
  });

  it('says on every sheet of paper that it is no final, in words that cannot end the style sheet', () => {
    const tree = smallTree([para('Hello.')]);
    const styleOf = (furniture: Partial<DocumentTree['furniture']>): string => {
      const html = htmlOf([{ ...tree, furniture: { ...tree.furniture, ...furniture } }], locale);
      return /<style>(.*?)<\/style>/s.exec(html)?.[1] ?? '';
    };
    expect(styleOf({ tab: 'Draft. 2 points' })).toContain('@top-center{content:"Draft\\2e  2 points"');
    expect(styleOf({ tab: '</style>"}*{' })).toContain('content:"\\3c \\2f style\\3e \\22 \\7d \\2a \\7b "');
    expect(styleOf({ tab: 'Rascunho', draftEdges: ['Rascunho', 'Draft'] })).toContain(
      '"Rascunho \\b7  Draft"',
    );
    expect(markOnPaper([])).toBe('');
  });

  it('has one main landmark, a link past the ways around the page, and a foot with what it is', () => {
    const elements = elementsOf(htmlOf([smallTree([para('Hello.')])], locale));
    const count = (tag: string): number => elements.filter(({ tagName }) => tagName === tag).length;
    expect([count('header'), count('main'), count('footer')]).toEqual([1, 1, 1]);
    const main = elements.find(({ tagName }) => tagName === 'main');
    const skip = elements.find((element) => attributeOf(element, 'class') === 'skip');
    expect(skip && attributeOf(skip, 'href')).toBe(`#${main && attributeOf(main, 'id')}`);
    const foot = elements.find(({ tagName }) => tagName === 'footer');
    expect(foot && textOf(foot)).toContain('Reference: PE-0417');
    expect(foot && textOf(foot)).toContain('Made on November 25, 2026');
    expect(foot && textOf(foot)).toContain('Language: English');
    expect(foot && textOf(foot)).toContain('plainleaf 1.2.3, evidence 2026.11');
  });

  it('lists its documents and the parts of a long one, and every link leads to something', () => {
    const parts = ['What is it?', 'How long?', 'And then?'].map((question) => topic(question, [], []));
    const first = smallTree([{ type: 'heading', level: 1, text: 'One', origin: 'a:1' }, ...parts]);
    const second = smallTree([{ type: 'heading', level: 1, text: 'Two', origin: 'a:1' }]);
    const elements = elementsOf(htmlOf([first, second], locale));
    const ids = elements.map((element) => attributeOf(element, 'id')).filter((id) => id !== undefined);
    expect(new Set(ids).size).toBe(ids.length);
    const links = elements
      .filter(({ tagName }) => tagName === 'a')
      .map((one) => ({ to: attributeOf(one, 'href') ?? '', text: textOf(one) }));
    const inPage = links.filter(({ to }) => to.startsWith('#'));
    expect(inPage.filter(({ to }) => !ids.includes(to.slice(1)))).toEqual([]);
    const texts = inPage.map(({ text }) => text);
    expect(texts.filter((text) => text !== 'Back to the list at the top')).toEqual([
      'Skip to the text',
      'One',
      'Two',
      'What is it?',
      'How long?',
      'And then?',
    ]);
  });

  it('says at the head of each document that it is an example, and at its foot whom to call by a touch', () => {
    const elements = elementsOf(htmlOf([smallTree([]), smallTree([])], locale));
    const tabs = elements.filter((element) => attributeOf(element, 'class') === 'tab');
    expect(tabs.map(textOf)).toEqual(['Example. Invented person.', 'Example. Invented person.']);
    const phones = elements.filter((element) => attributeOf(element, 'class') === 'phone');
    expect(phones.slice(0, 3).map((one) => attributeOf(one, 'href'))).toEqual([
      'tel:5550142',
      'tel:5550199',
      'tel:911',
    ]);
  });

  it('has one heading of the first level in each document and skips no level', () => {
    const trees = [...sampleTrees, ...careTrees];
    const elements = elementsOf(htmlOf(trees, locale));
    const articles = elements.filter(({ tagName }) => tagName === 'article');
    expect(articles).toHaveLength(trees.length);
    for (const article of articles) {
      const levels = within(article).flatMap(({ tagName }) => /^h([1-6])$/.exec(tagName)?.[1] ?? []);
      expect(levels[0]).toBe('1');
      expect(levels.filter((level) => level === '1')).toHaveLength(1);
      levels.slice(1).forEach((level, index) => {
        expect(Number(level) - Number(levels[index])).toBeLessThanOrEqual(1);
      });
    }
  });

  it.each([
    ['of a comparison, questions, sources and a clinician sheet', calledAtTheFoot],
    ['for going home and for consent', careTrees],
    ['from right to left', turnedCareTrees],
  ])('holds every text of documents %s in their order, and nothing else', (_, trees) => {
    const report = readBackHtml(htmlOf(trees, locale), trees, locale);
    expect(report.findings).toEqual([]);
    expect(report.statements).toBeGreaterThan(50);
  });

  it('is the same bytes each time', () => {
    expect(htmlOf(sampleTrees, locale)).toBe(htmlOf(sampleTrees, locale));
  });
});
