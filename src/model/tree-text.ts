import { spaceBetween } from './wide-marks.ts';
import { repeatedCareTexts, textsByCareType } from './care-text.ts';
import type { Block, DocumentTree, Furniture, List, Paragraph, Table, TableRow } from './document.ts';
import { textsOfStrip, textsOfUpperAxis, textsOfWeightLine } from './picture-text.ts';
import { inlinePiece, labelIn, optional, piece, textOfParagraph, textsOfParagraphs } from './text-piece.ts';
import type { TextPiece, Texts } from './text-piece.ts';

export type { TextPiece } from './text-piece.ts';

/**
 * Every text of the body in the order a renderer paints it; empty texts are left out. Furniture is not in it
 * (see furnitureTexts). Blocks come in tree order; within a block the order is:
 * - strip: label of today, ticks, unit of the upper axis; each row's name, tag, words; ticks, unit of the lower axis
 * - weight line: name, values of the axis, label of today, times, measured values, "not known after"
 * - drawing: for each view its heading, then its labels
 * - strip or table without rows, also one to fill in: nothing
 * - table: column heads; for each row its group, then its cells, the tag at the end of the first
 * - panel: lead, body, each column's heading and items, closing
 * - list: each item's counter (ordered lists), then its paragraphs
 * - warning frames: each frame's heading, note, phones (label, hours, number), which comes first, items
 * - calendar: stages whose label has room nowhere; heads; for each week its days (date, notes), then the labels of its
 *   ribbon that have room
 * - checklist: head, columns; each row's name and detail
 * - tick items: for each its words, its boxes, what belongs on its line
 * - signatures: for each field what is said where nobody may sign, then its label
 * - everything else: in the order of the fields of its type
 */
export function expectedText(tree: DocumentTree): readonly TextPiece[] {
  return tree.blocks.flatMap(textsOfBlock).filter((piece) => piece.text.trim() !== '');
}

function textsOfTableHead(table: Table): Texts {
  return table.columns.map((column) => piece('label', column.label, table));
}

function textsOfTableRow(row: TableRow): Texts {
  const [first = [], ...others] = row.cells;
  const name = [...textsOfParagraphs(first), ...optional('label', row.tag, row)];
  return [...optional('heading', row.group, row), ...name, ...others.flatMap(textsOfParagraphs)];
}

function textsOfTable(table: Table): Texts {
  return table.rows.length === 0 ? [] : [...textsOfTableHead(table), ...table.rows.flatMap(textsOfTableRow)];
}

function textsOfMatters(block: OfType<'matters'>): Texts {
  if (block.statements.length + block.blanks === 0) return [];
  return [
    ...block.columns.map((label) => piece('label', label, block)),
    ...textsOfParagraphs(block.statements),
  ];
}

function textsOfPanel(panel: OfType<'panel'>): Texts {
  const columns = panel.columns.flatMap((column) => [
    piece('heading', column.heading, panel),
    ...textsOfParagraphs(column.items),
  ]);
  const lead = inlinePiece('heading', panel.lead, panel);
  return [lead, ...textsOfParagraphs(panel.body), ...columns, ...textsOfParagraphs(panel.closing)];
}

function textsOfList(list: OfType<'list'>): Texts {
  return list.items.flatMap((item, index) => {
    const counter = list.ordered ? [piece('counter', listCounter(list, index), list)] : [];
    return [...counter, ...textsOfParagraphs(item)];
  });
}

function textsOfCover(cover: OfType<'cover'>): Texts {
  return [
    piece('label', cover.clinic, cover),
    piece('label', cover.date, cover),
    piece('heading', cover.question, cover),
    inlinePiece('paragraph', cover.lead, cover),
    piece('name', cover.addressee, cover),
  ];
}

/** Counter of an ordered list as it is printed, for the item at `index` from 0. */
export function listCounter({ first = 1 }: List, index: number): string {
  return String(first + index);
}

type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

const textsByType: { readonly [T in Block['type']]: (block: OfType<T>) => Texts } = {
  paragraph: (block) => [textOfParagraph(block)],
  strip: textsOfStrip,
  'line-board': (block) => block.lines.flatMap(textsOfWeightLine),
  drawing: (block) =>
    block.views.flatMap((view) => [
      piece('heading', view.heading, view),
      ...view.labels.map(({ text }) => piece('label', text, view)),
    ]),
  table: textsOfTable,
  callout: (block) => [piece('heading', block.heading, block), ...textsOfParagraphs(block.body)],
  panel: textsOfPanel,
  key: (block) => [
    piece('heading', block.heading, block),
    ...block.items.map((item) => piece('label', item.words, block)),
  ],
  matters: textsOfMatters,
  ticks: (block) => [
    piece('heading', block.heading, block),
    ...block.items.map((item) => piece('label', item, block)),
  ],
  list: textsOfList,
  'write-in': (block) => (block.prompt === undefined ? [] : [textOfParagraph(block.prompt)]),
  facts: (block) =>
    block.items.flatMap(({ label, value }) => [
      piece('label', label, block),
      piece('paragraph', value, block),
    ]),
  heading: (block) => [piece('heading', labelIn(block.language, block.text), block)],
  cover: textsOfCover,
  topic: (block) => [
    piece('heading', block.question, block),
    ...textsOfParagraphs(block.intro),
    ...block.blocks.flatMap(textsOfBlock),
  ],
  ...textsByCareType,
};

function textsOfBlock<T extends Block['type']>(block: OfType<T>): Texts {
  const texts: (block: OfType<T>) => Texts = textsByType[block.type];
  return texts(block);
}

/**
 * Texts that may be printed again, as artifacts, at the top of a page that goes on with a block: the heading with the
 * word for "continued" (a small one without, where its question has it), that of a call-out and its points, that of a
 * frame of signs with its numbers to call, the upper axis, the heads of a table. In no particular order.
 */
export function repeatedTexts(tree: DocumentTree): Texts {
  return repeatedIn(tree.blocks, tree.furniture.continued).filter((text) => text.text.trim() !== '');
}

function repeatedIn(blocks: readonly Block[], continued: string): Texts {
  return blocks.flatMap((block): Texts => {
    switch (block.type) {
      case 'topic':
        return [
          piece('heading', continuedHeading(block.question, continued), block),
          ...repeatedIn(block.blocks, continued),
        ];
      case 'heading':
        return [continuedHeading(block.text, continued), block.level === 3 ? block.text : ''].map((text) =>
          piece('heading', text, block),
        );
      case 'callout':
        return [
          piece('heading', continuedHeading(block.heading, continued), block),
          ...block.body.map((paragraph) => piece('heading', pointOf(paragraph), paragraph)),
        ];
      case 'warning-frames':
        return block.frames.flatMap((frame) => [
          piece('heading', continuedHeading(frame.heading, continued), frame),
          ...frame.phones.map(({ number }) => piece('label', number, frame)),
        ]);
      case 'strip':
        return block.axis === undefined ? [] : textsOfUpperAxis(block.axis, block);
      case 'table':
        return [
          ...textsOfTableHead(block),
          ...block.rows.flatMap((row) => optional('heading', row.group, row)),
        ];
      case 'matters':
        return block.columns.map((label) => piece('label', label, block));
      default:
        return repeatedCareTexts(block);
    }
  });
}

/**
 * The bold words with which a paragraph of a call-out begins a point; empty where it goes on with the one before, as one
 * that says whom to call does.
 */
export function pointOf({ inlines, duty }: Paragraph): string {
  if (duty === 'phone') return '';
  const end = inlines.findIndex(({ bold }) => bold !== true);
  const bold = end === -1 ? inlines : inlines.slice(0, end);
  return bold
    .map(({ value }) => value)
    .join('')
    .trim();
}

/** Heading of a block that goes on from the page before, for example "What are my choices? continued". */
export function continuedHeading(heading: string, continued: string): string {
  return `${heading}${spaceBetween(heading, continued)}${continued}`;
}

/** The page number as it is printed; pages count from 1 within a document. */
export function pageNumberText(furniture: Furniture, page: number, pages: number): string {
  return furniture.footer.page.replaceAll('{page}', String(page)).replaceAll('{pages}', String(pages));
}

/** Texts around the body of a page, in the order they are painted: tab, header, footer, the word on a draft's edges. */
export function furnitureTexts(tree: DocumentTree, page: number, pages: number): readonly string[] {
  const { furniture } = tree;
  const { header, footer } = furniture;
  const heads = page > 1 || furniture.headerOnFirstPage ? [header.start, header.end] : [];
  const foot = [footer.call, pageNumberText(furniture, page, pages), footer.deferral, footer.id];
  return [furniture.tab ?? '', ...heads, ...foot].filter((text) => text.trim() !== '');
}
