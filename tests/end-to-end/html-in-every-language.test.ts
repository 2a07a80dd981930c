import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser } from 'playwright-core';

import { allLanguages } from '../helpers/all-languages.ts';
import {
  copyParagraphs,
  findAt,
  findOverflow,
  findOverlaps,
  findParted,
  findViolations,
  hasChromium,
  openBrowser,
  openPage,
} from '../helpers/browser.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { examplePage } from '../helpers/example-pages.ts';
import { comparisonCases } from '../helpers/language-packets.ts';

// What is printed is looked at in tests/external/packets.verapdf-pdfjs-poppler.test.ts, with fewer cases: a page is made
// in a tenth of the time.
const everything = comparisonCases.flatMap((reference) =>
  allLanguages.map((language) => ({ reference, language })),
);
const looked = allLanguages.flatMap((language) => [
  { reference: 'QB-1041', language },
  { reference: 'QB-1141', language },
]);

/** Widths of the smallest phone and of a desk. */
const sizes = [{ width: 320 }, { width: 1280 }];

describe('the example cases in every language', () => {
  it.each(everything)(
    'come back whole as pages: $reference in $language',
    async ({ reference, language }) => {
      const { edition, packet } = await examplePage(reference, language);
      expect(edition.verification.findings).toEqual([]);
      expect(edition.verification.statements).toBeGreaterThan(300);
      expect(packet.documents.every((tree) => tree.language === language)).toBe(true);
    },
  );
});

describe.skipIf(!hasChromium)('their HTML edition in a real browser (chromium, axe-core)', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  it.each(looked)(
    'breaks no rule of accessibility: $reference in $language',
    async ({ reference, language }) => {
      const { html } = await examplePage(reference, language);
      expect(await findAt({ browser, html }, sizes, findViolations)).toEqual([]);
    },
  );

  it.each(looked)('keeps to its width, and no words to others: $reference in $language', async (one) => {
    const { html } = await examplePage(one.reference, one.language);
    expect(await findAt({ browser, html }, sizes, findOverflow)).toEqual([]);
    expect(await findAt({ browser, html }, sizes, findOverlaps)).toEqual([]);
    expect(await findAt({ browser, html }, sizes, findParted)).toEqual([]);
  });

  it.each(['fr', 'ru', 'en'])(
    'gives its own letters to whoever copies a paragraph in %s',
    async (language) => {
      const { html, packet } = await examplePage('QB-1041', language);
      const { page } = await openPage(browser, html, { width: 320 });
      const copied = (await copyParagraphs(page)).filter((text) => text !== '');
      const told = packet.documents.flatMap((tree) => expectedText(tree).map(({ text }) => text));
      const strange = copied.join('').match(/[\u00ad\u200b-\u200f\u2060]/g) ?? [];
      expect(strange).toEqual([]);
      expect(copied.filter((text) => told.includes(text)).length).toBeGreaterThan(150);
      await page.context().close();
    },
  );

  it.each(looked)('says its language and its direction: $reference in $language', async (one) => {
    const { html, packet } = await examplePage(one.reference, one.language);
    const { page } = await openPage(browser, html, { width: 1280 });
    const said = await page.evaluate(
      '[document.documentElement.lang, getComputedStyle(document.body).direction]',
    );
    expect(said).toEqual([one.language, packet.documents[0]?.direction]);
    await page.context().close();
  });

  it('is the mirror image of English in Arabic: marks at the other side of their words', async () => {
    const rowsOf = async (language: string): Promise<readonly (readonly number[])[]> => {
      const { html } = await examplePage('QB-1041', language);
      const { page } = await openPage(browser, html, { width: 1280 });
      const found: unknown = await page.evaluate(`[...document.querySelectorAll('[role=row]')]
        .filter((row) => row.querySelector('svg') !== null && row.querySelector('p') !== null).slice(0, 4)
        .flatMap((row) => [row.querySelector('svg'), row.querySelector('p')].map((part) => {
          const { left, right } = part.getBoundingClientRect();
          return [left, right];
        }))`);
      await page.context().close();
      return found as readonly (readonly number[])[];
    };
    const english = await rowsOf('en');
    expect(english.length).toBe(8);
    const mirrored = english.map((sides) => sides.map((x) => Math.round(1280 - x)).reverse());
    expect((await rowsOf('ar')).map((sides) => sides.map(Math.round))).toEqual(mirrored);
  });
});
