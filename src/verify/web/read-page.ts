import { parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

/** A text of the page and the part that it stands in, as the page itself marks its parts. */
export interface PageText {
  /** Index of the document it belongs to; null for what belongs to the page. */
  readonly document: number | null;
  /** `body`, `head`, `foot`, `parts`, …; null for a text that stands outside every part. */
  readonly part: string | null;
  /** Said elsewhere too: the caption of a table, the axis beside a bar. */
  readonly repeated: boolean;
  readonly text: string;
}

export interface WebPage {
  readonly language: string | undefined;
  /** Languages of the documents. */
  readonly languages: readonly string[];
  readonly texts: readonly PageText[];
  /** Names of images, for each document in reading order. */
  readonly alternatives: readonly { readonly document: number | null; readonly text: string }[];
  readonly headings: readonly {
    readonly document: number | null;
    readonly level: number;
    readonly text: string;
  }[];
  /** Every element, for rules on what a page may hold. */
  readonly elements: readonly Element[];
}

interface Place {
  readonly document: number | null;
  readonly part: string | null;
  readonly repeated: boolean;
}

interface Gathering {
  readonly texts: PageText[];
  readonly alternatives: { document: number | null; text: string }[];
  readonly headings: { document: number | null; level: number; text: string }[];
  readonly elements: Element[];
  readonly languages: string[];
}

/** Texts that no reader sees on the page. */
const unseen: ReadonlySet<string> = new Set(['title', 'desc', 'style']);

/** Reads a finished page as a browser would: by the HTML standard's own parsing, with parse5. */
export function readPage(html: string): WebPage {
  const gathering: Gathering = { texts: [], alternatives: [], headings: [], elements: [], languages: [] };
  const document = parse(html);
  for (const node of document.childNodes)
    visit(node, { document: null, part: null, repeated: false }, gathering);
  const root = gathering.elements.find(({ tagName }) => tagName === 'html');
  return { ...gathering, language: root === undefined ? undefined : attribute(root, 'lang') };
}

function visit(node: Node, place: Place, gathering: Gathering): void {
  if ('value' in node) gathering.texts.push({ ...place, text: node.value });
  if (!('tagName' in node)) return;
  gathering.elements.push(node);
  const here = placeIn(node, place, gathering);
  noteNames(node, here, gathering);
  if (unseen.has(node.tagName)) return;
  for (const child of node.childNodes) visit(child, here, gathering);
}

function placeIn(element: Element, place: Place, { languages }: Gathering): Place {
  const part = attribute(element, 'data-page') ?? place.part;
  const repeated = place.repeated || attribute(element, 'data-repeated') !== undefined;
  if (element.tagName !== 'article') return { ...place, part, repeated };
  languages.push(attribute(element, 'lang') ?? '');
  return { document: languages.length - 1, part, repeated };
}

function noteNames(element: Element, { document }: Place, gathering: Gathering): void {
  if (attribute(element, 'role') === 'img') gathering.alternatives.push({ document, text: nameOf(element) });
  const level = /^h([1-6])$/.exec(element.tagName)?.[1];
  if (level !== undefined)
    gathering.headings.push({ document, level: Number(level), text: textWithin(element) });
}

/** What is said of an image: the longer of its descriptions, where the image names it as its own. */
function nameOf(element: Element): string {
  const label = attribute(element, 'aria-label');
  if (label !== undefined) return label;
  const ids = (attribute(element, 'aria-labelledby') ?? '').split(' ');
  const named = element.childNodes.filter(
    (child): child is Element => 'tagName' in child && ids.includes(attribute(child, 'id') ?? ''),
  );
  return textWithin(named.at(-1) ?? element, named.length > 0);
}

function textWithin(element: Element, wanted = true): string {
  if (!wanted) return '';
  return element.childNodes
    .map((child) => ('value' in child ? child.value : 'tagName' in child ? textWithin(child) : ''))
    .join('');
}

export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((one) => one.name === name)?.value;
}
