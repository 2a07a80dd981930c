import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { allLanguages } from '../helpers/all-languages.ts';
import { hasChromium, openBrowser, openPage } from '../helpers/browser.ts';
import { examplePage } from '../helpers/example-pages.ts';

const phone = 360;
const desk = 1280;

/** Days of the calendars that a narrow page lists whose weekday has no room on one line, or whose words leave their row. */
async function crampedDays(
  page: Page,
): Promise<{ readonly days: number; readonly cramped: readonly string[] }> {
  const found: unknown = await page.evaluate(`(() => {
    const shown = [...document.querySelectorAll('.calendar .week > td')].filter((day) => day.checkVisibility());
    const cramped = shown.filter((day) => {
      const probe = document.createElement('span');
      probe.style.whiteSpace = 'nowrap';
      probe.textContent = day.dataset.label;
      day.parentElement.append(probe);
      const style = getComputedStyle(day);
      probe.style.font = style.font;
      const needed = probe.getBoundingClientRect().width;
      probe.remove();
      return parseFloat(style.gridTemplateColumns) < needed - 0.5 || day.scrollWidth > day.clientWidth;
    });
    return { days: shown.length, cramped: cramped.map((day) => day.dataset.label + ' ' + day.textContent) };
  })()`);
  return found as { days: number; cramped: readonly string[] };
}

/** For each room of a draft with words in it: hatching left free at each side, and whether the words fill their room. */
async function plateSides(page: Page): Promise<readonly (readonly number[])[]> {
  const found: unknown = await page.evaluate(`[...document.querySelectorAll('.room p')].map((plate) => {
    const room = plate.parentElement.getBoundingClientRect();
    const own = plate.getBoundingClientRect();
    return [own.left - room.left, room.right - own.right, own.top - room.top, room.bottom - own.bottom];
  })`);
  return found as readonly (readonly number[])[];
}

/** Bottoms of the rooms of each row of fields, whole pixels; a row is what begins at one height. */
async function linesOfRows(page: Page): Promise<readonly (readonly number[])[]> {
  const found: unknown = await page.evaluate(`[...document.querySelectorAll('.fields')].flatMap((fields) => {
    const rows = new Map();
    for (const item of fields.children) {
      const top = Math.round(item.getBoundingClientRect().top);
      const line = Math.round(item.firstElementChild.getBoundingClientRect().bottom);
      rows.set(top, [...(rows.get(top) ?? []), line]);
    }
    return [...rows.values()];
  })`);
  return found as readonly (readonly number[])[];
}

/** Pairs of Korean letters of one word that stand on different lines. */
async function partedSyllables(page: Page): Promise<readonly string[]> {
  const found: unknown = await page.evaluate(`(() => {
    const walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    const parted = [];
    const topOf = (at) => {
      range.setStart(walker.currentNode, at);
      range.setEnd(walker.currentNode, at + 1);
      return range.getBoundingClientRect().top;
    };
    while (walker.nextNode() !== null) {
      const text = walker.currentNode.data;
      const around = walker.currentNode.parentElement;
      if (!around.checkVisibility() || around.closest('thead, .unseen, title, desc') !== null) continue;
      for (const { index, 0: pair } of text.matchAll(/[가-힣](?=[가-힣])/gu))
        if (Math.abs(topOf(index + 1) - topOf(index)) > 4) parted.push(pair + text[index + 1] + ' in ' + text);
    }
    return parted;
  })()`);
  return found as readonly string[];
}

/** Heads that stand beside their values in stacked rows, with the lines that each takes. */
async function linesOfHeads(page: Page): Promise<readonly (readonly [string, number])[]> {
  const found: unknown = await page.evaluate(`(() => {
    const beside = [...document.querySelectorAll('.stacked.choices td[data-label]')];
    const lines = new Map();
    for (const cell of beside) {
      const probe = document.createElement('div');
      probe.style.width = getComputedStyle(cell).gridTemplateColumns.split(' ')[0];
      probe.style.lineHeight = '20px';
      probe.textContent = cell.dataset.label;
      cell.parentElement.append(probe);
      lines.set(cell.dataset.label, Math.round(probe.getBoundingClientRect().height / 20));
      probe.remove();
    }
    return [...lines];
  })()`);
  return found as readonly (readonly [string, number])[];
}

/** Labels of the drawings of bodies: the least height of their type as shown, and those that leave the page or meet another. */
async function drawnLabels(
  page: Page,
): Promise<{ readonly size: number; readonly wrong: readonly string[] }> {
  const found: unknown = await page.evaluate(`(() => {
    const drawings = [...document.querySelectorAll('.drawing svg')];
    const sizes = drawings.map((svg) => (12 * svg.getBoundingClientRect().width) / svg.viewBox.baseVal.width);
    const wrong = drawings.flatMap((svg) => {
      const labels = [...svg.querySelectorAll('text')].map((label) => [label.textContent, label.getBoundingClientRect()]);
      const meet = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1
        && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 4;
      return labels.filter(([, box], at) => box.left < 0 || box.right > innerWidth
        || labels.slice(at + 1).some(([, other]) => meet(box, other))).map(([text]) => text);
    });
    return { size: Math.min(...sizes), wrong };
  })()`);
  return found as { size: number; wrong: readonly string[] };
}

describe.skipIf(!hasChromium)('the HTML edition as a real browser lays it out (chromium)', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  it.each(allLanguages)(
    'lists the days of a calendar on a phone with their weekdays whole, in %s',
    async (language) => {
      const { html } = await examplePage('QB-1141', language);
      const { page } = await openPage(browser, html, { width: phone });
      const { days, cramped } = await crampedDays(page);
      expect(days).toBeGreaterThan(4);
      expect(cramped).toEqual([]);
      await page.context().close();
    },
  );

  it.each(['en', 'fr', 'ru'])(
    'leaves hatching on all sides of the words of a draft, in %s',
    async (language) => {
      const { html } = await examplePage('QB-1128', language, 'draft');
      for (const width of [phone, desk]) {
        const { page } = await openPage(browser, html, { width });
        const sides = await plateSides(page);
        expect(sides.length).toBeGreaterThanOrEqual(5);
        expect(Math.min(...sides.flat())).toBeGreaterThanOrEqual(6);
        const rows = await linesOfRows(page);
        expect(rows.filter((row) => new Set(row).size > 1)).toEqual([]);
        await page.context().close();
      }
    },
  );

  it('ends a line between the words of Korean, not within one', async () => {
    for (const reference of ['QB-1041', 'QB-1141']) {
      const { html } = await examplePage(reference, 'ko');
      const { page } = await openPage(browser, html, { width: phone });
      expect(await partedSyllables(page)).toEqual([]);
      await page.context().close();
    }
  });

  it.each(['en', 'es'])(
    'sets the heads beside their values in three lines at most on a phone, in %s',
    async (language) => {
      const { html } = await examplePage('QB-1041', language);
      const { page } = await openPage(browser, html, { width: phone });
      const heads = await linesOfHeads(page);
      expect(heads.length).toBeGreaterThan(10);
      expect(heads.filter(([, lines]) => lines > 3)).toEqual([]);
      await page.context().close();
    },
  );

  it.each(allLanguages)(
    'keeps the labels of a drawing legible and apart on a phone, in %s',
    async (language) => {
      const { html } = await examplePage('QB-1128', language);
      const { page } = await openPage(browser, html, { width: phone });
      const { size, wrong } = await drawnLabels(page);
      expect(wrong).toEqual([]);
      // A word as long as Russian ones needs room that its letters lose.
      expect(size).toBeGreaterThanOrEqual(language === 'ru' ? 14 : 15);
      await page.context().close();
    },
  );

  it('leaves a value that is alone in its row all the width that its head does not need', async () => {
    const { html } = await examplePage('QB-0755', 'en');
    const { page } = await openPage(browser, html, { width: phone });
    const shares: unknown = await page.evaluate(
      `[...document.querySelectorAll('.choices td:nth-child(2):last-child[data-label="Death"]')].map((cell) =>
        cell.firstElementChild.getBoundingClientRect().width / cell.getBoundingClientRect().width)`,
    );
    expect((shares as readonly number[]).length).toBe(4);
    expect(Math.min(...(shares as readonly number[]))).toBeGreaterThan(0.7);
    await page.context().close();
  });

  it('sets the facts of the sheet for clinicians on one line of a desk', async () => {
    const { html } = await examplePage('QB-1128', 'en');
    const { page } = await openPage(browser, html, { width: desk });
    const tops: unknown = await page.evaluate(
      `[...document.querySelector('.clinician .facts').children].map((fact) => fact.getBoundingClientRect().top)`,
    );
    expect((tops as readonly number[]).length).toBe(5);
    expect(new Set(tops as readonly number[]).size).toBe(1);
    await page.context().close();
  });
});
