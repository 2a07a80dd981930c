import { spawnSync } from 'node:child_process';
import axe from 'axe-core';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';

/** Names of the browser on the machines that may run the tests. */
const names = ['chromium', 'chromium-browser', 'google-chrome'];

function findChromium(): string | undefined {
  const found = names.map((name) => spawnSync('sh', ['-c', `command -v ${name}`], { encoding: 'utf8' }));
  return found.find(({ status }) => status === 0)?.stdout.trim();
}

const executablePath = findChromium();
export const hasChromium = executablePath !== undefined;

/** Without these it looks for its maker's hosts at every start, which a closed network refuses one by one. */
const quiet = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export async function openBrowser(): Promise<Browser> {
  if (executablePath === undefined) throw new Error('no chromium on this machine');
  return chromium.launch({ executablePath, args: quiet, chromiumSandbox: false });
}

/** Opens a page of the given width and text size, and notes everything that it asks the network or the console for. */
export async function openPage(
  browser: Browser,
  html: string,
  { width, textSize = 16 }: { readonly width: number; readonly textSize?: number },
): Promise<{ readonly page: Page; readonly noise: readonly string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 844 } });
  const page = await context.newPage();
  const noise: string[] = [];
  page.on('request', (request) => noise.push(request.url().slice(0, 80)));
  page.on('console', (message) => noise.push(message.text()));
  page.on('dialog', (dialog) => noise.push(`dialog ${dialog.message()}`));
  if (textSize !== 16) {
    const session = await context.newCDPSession(page);
    await session.send('Page.setFontSizes', { fontSizes: { standard: textSize } });
  }
  await page.setContent(html);
  return { page, noise };
}

/** What is found wrong with a page in windows of these sizes, with all that it asks of the network or the console. */
export async function findAt(
  page: { readonly browser: Browser; readonly html: string },
  sizes: readonly { readonly width: number; readonly textSize?: number }[],
  find: (page: Page) => Promise<readonly unknown[]>,
): Promise<readonly unknown[]> {
  const found: unknown[] = [];
  for (const size of sizes) {
    const opened = await openPage(page.browser, page.html, size);
    const wrong = [...(await find(opened.page)), ...opened.noise];
    found.push(...wrong.map((one) => ({ ...size, wrong: one })));
    await opened.page.context().close();
  }
  return found;
}

export interface Violation {
  readonly rule: string;
  readonly places: readonly string[];
}

/** Success criteria of WCAG 2.2 at levels A and AA, and what axe-core's makers hold to be good practice. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe-core finds wrong with a page, with all that can be unfolded. */
export async function findViolations(page: Page): Promise<readonly Violation[]> {
  await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
  await page.evaluate(axe.source);
  const found: unknown = await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(tags)}, resultTypes: ['violations'] }).then(({ violations }) =>
      violations.map(({ id, nodes }) => ({ rule: id, places: nodes.map(({ html }) => html.slice(0, 120)) })))`,
  );
  return found as readonly Violation[];
}

/** Boxes that reach beyond the page at its end edge, and the width of the whole if that does. */
export async function findOverflow(page: Page): Promise<readonly string[]> {
  const found: unknown = await page.evaluate(`(() => {
    const beyond = [...document.querySelectorAll('body *')].filter((element) => {
      if (element.closest('.unseen, thead, .skip') !== null || element.closest('svg svg, svg *') !== null) return false;
      const box = element.getBoundingClientRect();
      return box.width > 0 && (box.right > innerWidth + 0.5 || box.left < -0.5);
    });
    const names = beyond.map((element) => element.tagName + ' ' + element.textContent.slice(0, 40));
    const whole = document.documentElement.scrollWidth;
    return whole > innerWidth ? [...names, 'page of ' + whole] : names;
  })()`);
  return found as readonly string[];
}

/** Words and things to write on that stand on one another: two lines of words, or a line or a box and words. */
export async function findOverlaps(page: Page): Promise<readonly string[]> {
  const found: unknown = await page.evaluate(`(() => {
    const seen = [];
    const add = (node, box, name) => {
      if (box.width > 1 && box.height > 4) seen.push({ node, left: box.left, right: box.right, top: box.top + 2, bottom: box.bottom - 2, name });
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    while (walker.nextNode() !== null) {
      const text = walker.currentNode;
      const around = text.parentElement;
      if (text.textContent.trim() === '' || around.closest('.unseen, .skip, svg, thead') !== null || !around.checkVisibility()) continue;
      range.selectNodeContents(text);
      for (const box of range.getClientRects()) add(text, box, text.textContent.trim().slice(0, 30));
    }
    for (const one of document.querySelectorAll('svg.box, .line, .blank')) add(one, one.getBoundingClientRect(), 'a ' + one.classList);
    seen.sort((a, b) => a.top - b.top);
    return seen.flatMap((one, at) => {
      const others = [];
      for (let next = at + 1; next < seen.length && seen[next].top < one.bottom; next += 1) {
        const other = seen[next];
        const within = one.node.contains(other.node) || other.node.contains(one.node);
        const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        if (!within && wide > 1) others.push(one.name + ' | ' + other.name);
      }
      return others;
    });
  })()`);
  return found as readonly string[];
}

export interface Sizes {
  /** Of the text and of the smallest text outside pictures, in pixels. */
  readonly body: number;
  readonly smallest: number;
  /** Letters in a full line, on average, of each paragraph of three lines or more. */
  readonly lines: readonly number[];
}

/** How text is set on the pages for the patient. */
export async function readSizes(page: Page): Promise<Sizes> {
  const found: unknown = await page.evaluate(`(() => {
    const sizeOf = (element) => parseFloat(getComputedStyle(element).fontSize);
    const words = [...document.querySelectorAll('article.patient *:not(svg, svg *, .unseen)')].filter((element) =>
      [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim() !== ''));
    const lines = [...document.querySelectorAll('article.patient p')].flatMap((paragraph) => {
      const walker = document.createTreeWalker(paragraph, NodeFilter.SHOW_TEXT);
      const range = document.createRange();
      const counts = new Map();
      while (walker.nextNode() !== null) for (let at = 0; at < walker.currentNode.length; at += 1) {
        range.setStart(walker.currentNode, at);
        range.setEnd(walker.currentNode, at + 1);
        const line = Math.round(range.getBoundingClientRect().bottom / 8);
        counts.set(line, (counts.get(line) ?? 0) + 1);
      }
      const full = [...counts.values()].slice(0, -1);
      return full.length < 2 ? [] : [Math.round(full.reduce((sum, one) => sum + one, 0) / full.length)];
    });
    return { body: sizeOf(document.body), smallest: Math.min(...words.map(sizeOf)), lines };
  })()`);
  return found as Sizes;
}

/** Phrases to be kept whole that stand on two lines all the same. */
export async function findParted(page: Page): Promise<readonly string[]> {
  const found: unknown = await page.evaluate(`[...document.querySelectorAll('.whole')]
    .filter((one) => new Set([...one.getClientRects()].map(({ top }) => Math.round(top))).size > 1)
    .map((one) => one.textContent)`);
  return found as readonly string[];
}

/** What a reader who marks each paragraph of the page and copies it has. */
export async function copyParagraphs(page: Page): Promise<readonly string[]> {
  const found: unknown = await page.evaluate(`[...document.querySelectorAll('article p')].map((paragraph) => {
    getSelection().selectAllChildren(paragraph);
    return getSelection().toString();
  })`);
  return found as readonly string[];
}
