import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { Locale } from '../model/locale.ts';
import type { PacketTree } from '../model/packet.ts';
import { webPageWords } from '../model/web-page.ts';
import type { WebPageIdentity } from '../model/web-page.ts';
import { Page } from './page.tsx';

/**
 * Document trees → one HTML page that stands alone: no script, nothing to fetch, the same bytes for the same input.
 * Every text goes through the escaping of react-dom; only the style sheet, which is ours, does not.
 */
export function renderHtml(packet: PacketTree, locale: Locale, page: WebPageIdentity): string {
  const words = webPageWords(locale, page);
  return `<!doctype html>\n${renderToStaticMarkup(createElement(Page, { packet, words }))}\n`;
}
