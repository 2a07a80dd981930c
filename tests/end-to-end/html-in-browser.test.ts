import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser } from 'playwright-core';
import {
  findAt,
  findOverflow,
  findOverlaps,
  findViolations,
  hasChromium,
  openBrowser,
  openPage,
  readSizes,
} from '../helpers/browser.ts';
import { exampleCases, exampleLanguages } from '../helpers/example-packets.ts';
import { examplePage } from '../helpers/example-pages.ts';

const examples = exampleCases.flatMap((reference) =>
  exampleLanguages.map((language) => ({ reference, language })),
);

/** Widths of a phone, a tablet on end and a desk. */
const phone = 390;
const tablet = 768;
const desk = 1280;

describe.skipIf(!hasChromium)('the HTML edition in a real browser (chromium, axe-core)', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  it.each(examples)(
    '$reference in $language breaks no rule of accessibility, on a phone and on a desk',
    async ({ reference, language }) => {
      const { html } = await examplePage(reference, language);
      const sizes = [{ width: phone }, { width: desk }];
      expect(await findAt({ browser, html }, sizes, findViolations)).toEqual([]);
    },
    180_000,
  );

  it.each(examples)(
    '$reference in $language is never wider than its page, also with text of twice the size',
    async ({ reference, language }) => {
      const { html } = await examplePage(reference, language);
      const sizes = [
        { width: 360 },
        { width: 320 },
        { width: tablet },
        { width: 1000 },
        { width: desk, textSize: 32 },
        { width: phone, textSize: 32 },
      ];
      expect(await findAt({ browser, html }, sizes, findOverflow)).toEqual([]);
    },
    180_000,
  );

  it.each(examples)(
    '$reference in $language sets no words on others, nor on what is to be filled in',
    async ({ reference, language }) => {
      const { html } = await examplePage(reference, language);
      const sizes = [320, phone, tablet, desk].map((width) => ({ width }));
      expect(await findAt({ browser, html }, sizes, findOverlaps)).toEqual([]);
    },
    180_000,
  );

  it.each(exampleLanguages)(
    'sets text in %s large enough, in lines of a length that the eye follows',
    async (language) => {
      const { html } = await examplePage('QB-1041', language);
      const { page } = await openPage(browser, html, { width: desk });
      const { body, smallest, lines } = await readSizes(page);
      expect(body).toBe(18);
      expect(smallest).toBeGreaterThanOrEqual(16);
      expect(lines.length).toBeGreaterThan(20);
      expect(lines.filter((letters) => letters > 75)).toEqual([]);
      await page.context().close();
    },
  );

  it('leads from the first key press past the ways around the page, to a link that can be seen', async () => {
    const { html } = await examplePage('QB-1141', 'en');
    const { page } = await openPage(browser, html, { width: phone });
    const top = (): Promise<number> =>
      page.evaluate("document.querySelector('.skip').getBoundingClientRect().bottom");
    expect(await top()).toBeLessThanOrEqual(0);
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.className')).toBe('skip');
    await page.waitForFunction("document.querySelector('.skip').getBoundingClientRect().top >= 0");
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('text');
    await page.context().close();
  });
});
