import { PDFParse } from 'pdf-parse';

// The structure tree of a finished file with its text, as pdf.js has it (through pdf-parse, whose opened document it is).

/** A text of the structure tree, with the language that it is in by the tags around it. */
export interface TaggedText {
  readonly language: string | undefined;
  readonly text: string;
  /** It stands in a picture that has an alternative. */
  readonly pictured: boolean;
  readonly alternative?: string;
}

export interface ReadStructure {
  /** Of the whole file. */
  readonly language: string | undefined;
  /** In the order of the tree, page by page; artifacts are not in it. */
  readonly texts: readonly TaggedText[];
  /** What pictures say in place of themselves, in the same order. */
  readonly alternatives: readonly string[];
}

interface StructureNode {
  readonly role?: string;
  readonly lang?: string;
  readonly alt?: string;
  readonly children?: readonly StructureNode[];
  /** Of a leaf: `content`, and the name of its marked content on the page. */
  readonly type?: string;
  readonly id?: string;
}

interface TextItem {
  readonly type?: string;
  readonly id?: string | null;
  readonly str?: string;
}

interface OpenPage {
  getStructTree(): Promise<StructureNode | null>;
  getTextContent(options: object): Promise<{ readonly items: readonly TextItem[] }>;
}

interface OpenDocument {
  readonly numPages: number;
  getPage(number: number): Promise<OpenPage>;
}

export async function structureByPdfJs(pdf: Uint8Array): Promise<ReadStructure> {
  const parser = new PDFParse({ data: pdf.slice(), verbosity: 0 });
  try {
    const { info } = (await parser.getInfo()) as { readonly info?: Readonly<Record<string, unknown>> };
    const opened = Reflect.get(parser, 'doc') as OpenDocument;
    const pages: Omit<ReadStructure, 'language'>[] = [];
    for (let number = 1; number <= opened.numPages; number += 1)
      pages.push(await readPage(await opened.getPage(number)));
    const language = info?.['Language'];
    return {
      language: typeof language === 'string' ? language : undefined,
      texts: pages.flatMap(({ texts }) => texts),
      alternatives: pages.flatMap(({ alternatives }) => alternatives),
    };
  } finally {
    await parser.destroy();
  }
}

async function readPage(page: OpenPage): Promise<Omit<ReadStructure, 'language'>> {
  const tree = await page.getStructTree();
  const { items } = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true });
  const content = textsById(items);
  const textOf = ({ id, children = [] }: StructureNode): string =>
    (id === undefined ? '' : (content.get(id) ?? '')) + children.map(textOf).join('');
  const texts: TaggedText[] = [];
  const alternatives: string[] = [];
  const walk = (node: StructureNode, around: string | undefined): void => {
    const language = node.lang ?? around;
    const pictured = node.alt !== undefined;
    if (pictured) alternatives.push(node.alt);
    if (pictured) texts.push({ language, text: textOf(node), pictured, alternative: node.alt });
    else if (node.type === 'content') texts.push({ language, text: textOf(node), pictured });
    else for (const child of node.children ?? []) walk(child, language);
  };
  if (tree !== null) walk(tree, undefined);
  return { texts, alternatives };
}

/** Text of each marked content of a page; content within content belongs to the innermost. */
function textsById(items: readonly TextItem[]): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  const open: string[] = [];
  for (const { type, id, str } of items) {
    if (type?.startsWith('beginMarkedContent') === true) open.push(id ?? '');
    else if (type === 'endMarkedContent') open.pop();
    else if (str !== undefined) texts.set(open.at(-1) ?? '', (texts.get(open.at(-1) ?? '') ?? '') + str);
  }
  return texts;
}
