import { parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';
import type { Block, DocumentTree } from '../../src/model/document.ts';
import type { Locale } from '../../src/model/locale.ts';
import type { PacketTree, VerificationReport } from '../../src/model/packet.ts';
import { verifyHtml } from '../../src/verify/index.ts';
import { renderHtml } from '../../src/web/index.ts';
import { smallTree } from './small-tree.ts';

/** Made-up identity of a page, with nothing of the clock in it. */
const identity = {
  caseReference: 'PE-0417',
  date: '2026-11-25',
  program: { version: '1.2.3' },
  evidence: { version: '2026.11' },
};

export function packetOf(documents: readonly DocumentTree[]): PacketTree {
  const [first] = documents;
  return {
    caseReference: identity.caseReference,
    language: first?.language ?? 'en',
    title: first?.title ?? '',
    author: 'Port Sennet Clinic',
    documents,
  };
}

export function htmlOf(documents: readonly DocumentTree[], locale: Locale): string {
  return renderHtml(packetOf(documents), locale, identity);
}

/** What the read-back gate says of a page for these documents. */
export function readBackHtml(
  html: string,
  documents: readonly DocumentTree[],
  locale: Locale,
): VerificationReport {
  const packet = packetOf(documents);
  return verifyHtml({ html, packet, locale, otherLocales: [], required: [], page: identity });
}

export type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

/** Elements of a page in order, by its own parse; `within` names the class of an element that holds them. */
export function elementsOf(html: string): readonly Element[] {
  return within(parse(html));
}

export function within(node: Node): readonly Element[] {
  const children = 'childNodes' in node ? node.childNodes : [];
  return children.flatMap((child) => ('tagName' in child ? [child, ...within(child)] : []));
}

export function attributeOf(element: Element, name: string): string | undefined {
  return element.attrs.find((one) => one.name === name)?.value;
}

/** The text below an element, spaces made one. */
export function textOf(node: Node): string {
  if ('value' in node) return node.value;
  const children = 'childNodes' in node ? node.childNodes : [];
  return children.map(textOf).join('').replace(/\s+/g, ' ');
}

/** The body of a document of some blocks, as elements. */
export function bodyOf(
  blocks: readonly Block[],
  locale: Locale,
  changes: Partial<DocumentTree> = {},
): Element {
  const html = htmlOf([smallTree(blocks, changes)], locale);
  const body = elementsOf(html).find((element) => attributeOf(element, 'data-page') === 'body');
  if (body === undefined) throw new Error('the page has no body of a document');
  return body;
}

/** Tags of the elements below one, for example `table caption thead tr td th`. */
export function tagsOf(element: Element): readonly string[] {
  return within(element).map(({ tagName }) => tagName);
}
