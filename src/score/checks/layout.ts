import type { Block, DocumentTree, List } from '../../model/document.ts';
import { labelText } from '../../model/text-piece.ts';
import { expectedText } from '../../model/tree-text.ts';
import { countWords } from '../../model/word-forms.ts';
import { foundAt, inEach, missing, notApplicable, unless } from '../check.ts';
import type { Check, Finding } from '../check.ts';
import { blocksOf, comparisonOf, ofType } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { isWordsOf, textOf, textsOf, wordsOf } from '../words-of.ts';
import { countingTables, hasFigure } from './chances.ts';
import { boardsUnder, namingAll } from './options.ts';

/** Every document has headings of its own below its title, or one for each frame of signs. */
export const headings: Check = ({ reader }) =>
  inEach(
    reader,
    blocksOf(reader).filter(({ block }) => isHeaded(block)),
  );

function isHeaded(block: Block): boolean {
  if (block.type === 'warning-frames') return block.frames.every(({ heading }) => heading !== '');
  if (block.type === 'topic') return block.question !== '';
  return block.type === 'heading' && block.level > 1 && block.text !== '';
}

/**
 * The first third of the comparison says in a table, a line an option, what the rest goes into; in a packet for after the
 * choice, the first third of each document that goes into it says so in a list.
 */
export const summary: Check = (pages) => {
  if (comparisonOf(pages).length === 0)
    return inEachTelling(
      pages,
      listsUnder(pages, 'comparison.short.question').filter(
        (placed) => placed.block.items.length > 2 && isEarly(placed),
      ),
    );
  return foundAt(namingAll(pages, boardsUnder(pages, 'comparison.short.question')).filter(isEarly));
};

function isEarly({ tree, topic }: Placed): boolean {
  return topic !== undefined && tree.blocks.indexOf(topic) <= tree.blocks.length / 3;
}

/** Documents that tell of the time after the choice at length; others are a page, a list or a record. */
const telling: readonly DocumentTree['kind'][] = ['operation', 'homecare'];

function inEachTelling({ reader }: Pages, placed: readonly Placed[]): Finding {
  const trees = reader.filter(({ kind }) => telling.includes(kind));
  return trees.length === 0 ? missing : inEach(trees, placed);
}

function listsUnder(pages: Pages, key: string): readonly Placed<List>[] {
  return under(pages, key, ofType(pages.reader, 'list'));
}

function under<T extends Block>(
  { locale }: Pages,
  key: string,
  placed: readonly Placed<T>[],
): readonly Placed<T>[] {
  const words = wordsOf(locale, key);
  return placed.filter(({ topic }) => topic !== undefined && isWordsOf(topic.question, words));
}

/** At most so much of a document stands out, in words; what is marked everywhere marks nothing. */
const mostMarked = 0.25;

export const visualCues: Check = ({ reader }) => {
  const cues = blocksOf(reader).filter(({ block }) => isCue(block));
  const loud = reader.find((tree) => boldShare(tree) > mostMarked);
  return unless(loud === undefined ? [] : topOf(loud), cues.length === 0 ? [] : cuesOfEach(reader, cues));
};

function cuesOfEach(reader: Pages['reader'], cues: readonly Placed[]): readonly Placed[] {
  const each = reader.map((tree) => cues.find((cue) => cue.tree === tree));
  return each.flatMap((cue) => cue ?? []).length < reader.length ? [] : each.flatMap((cue) => cue ?? []);
}

function isCue(block: Block): boolean {
  if (['callout', 'panel', 'warning-frames', 'say', 'matters'].includes(block.type)) return true;
  if (block.type === 'topic') return false;
  const marked = /"(?:bold":true|role":"(?:lead|strong|number)")/u;
  return marked.test(JSON.stringify(block));
}

function boldShare(tree: DocumentTree): number {
  const all = expectedText(tree).filter(({ kind }) => kind === 'paragraph');
  const total = all.reduce((sum, { text }) => sum + countWords(text), 0);
  const bold = [...JSON.stringify(tree.blocks).matchAll(/"value":"((?:[^"\\]|\\.)*)","bold":true/gu)];
  return total === 0 ? 0 : bold.reduce((sum, [, text = '']) => sum + countWords(text), 0) / total;
}

function topOf(tree: DocumentTree): readonly Placed[] {
  return tree.blocks.slice(0, 1).map((block) => ({ tree, block }));
}

type PictureBlock = Extract<Block, { readonly type: 'strip' | 'line-board' | 'drawing' | 'calendar' }>;

/** Whatever is drawn on the pages a patient reads. */
export function pictures({ reader }: Pages): readonly Placed<PictureBlock>[] {
  return ofType(reader, 'strip', 'line-board', 'drawing', 'calendar').filter(
    ({ block }) => block.type !== 'strip' || block.rows.some(({ picture }) => picture !== undefined),
  );
}

/** Each picture stands under a question, has a name of its own, and is said to those who cannot see it. */
export const picturesTitled: Check = (pages) => {
  const all = pictures(pages);
  if (all.length === 0) return notApplicable;
  return unless(
    all.filter(({ block, heading }) => heading === undefined || !isNamed(block)),
    all,
  );
};

function isNamed(block: PictureBlock): boolean {
  switch (block.type) {
    case 'strip':
      return block.rows.every(({ name, picture }) => labelText(name) !== '' && picture?.alt !== '');
    case 'line-board':
      return block.lines.every(({ name, alt }) => name !== '' && alt !== '');
    case 'drawing':
      return block.views.every(({ heading, alt }) => heading !== '' && alt !== '');
    case 'calendar':
      return true;
  }
}

/** Ours: what fits a page beside the names, and what is read at a glance. */
const mostColumns = 5;
const longestHead = 8;

export const simpleTables: Check = ({ reader }) => {
  const tables = ofType(reader, 'table', 'checklist');
  if (tables.length === 0) return notApplicable;
  return unless(
    tables.filter(({ block }) => !isSimple(block)),
    tables,
  );
};

function isSimple(block: Extract<Block, { readonly type: 'table' | 'checklist' }>): boolean {
  if (block.type === 'checklist')
    return (
      block.columns.length <= mostColumns && block.columns.every((label) => countWords(label) <= longestHead)
    );
  const rows = block.rows.map(({ cells: [first = []] }) => textsOf(first.slice(0, 1)));
  const heads = [...block.columns.map(({ label }) => label), ...rows];
  return block.columns.length <= mostColumns && heads.every((head) => countWords(head) <= longestHead);
}

/** Each chart has a key in its document, or words over it or beside it that say how to read it. */
export const chartsExplained: Check = (pages) => {
  const charts = [...pictures(pages), ...countingTables(pages)];
  if (charts.length === 0) return notApplicable;
  return unless(
    charts.filter((chart) => !isExplained(chart)),
    charts,
  );
};

/** The same for whatever holds figures. */
export const numbersExplained: Check = (pages) => {
  const charts = [...pictures(pages), ...countingTables(pages)].filter(
    ({ block }) =>
      block.type === 'line-board' ||
      (block.type === 'strip' && block.rows.some(({ words }) => hasFigure(words))) ||
      (block.type === 'table' && block.rows.some(({ cells }) => cells.some(hasFigure))),
  );
  return charts.length === 0
    ? notApplicable
    : unless(
        charts.filter((chart) => !isExplained(chart)),
        charts,
      );
};

function isExplained({ tree, block, topic }: Placed): boolean {
  // Each row says in words what its sign means.
  if (block.type === 'strip' && block.layout === 'way-back') return true;
  if (block.type === 'strip') {
    // A key has the signs that are used: where nobody had it, only whoever may.
    const wanted = block.layout === 'range' ? ['average'] : ['had', 'may'];
    return ofType([tree], 'key').some((key) => key.block.items.some(({ mark }) => wanted.includes(mark)));
  }
  const over = topic?.blocks.slice(0, topic.blocks.indexOf(block)) ?? [];
  return [...(topic?.intro ?? []), ...over].some((one) => one.type === 'paragraph' && textOf(one) !== '');
}

/** Lists, ticks or frames in every document. */
export const lists: Check = ({ reader }) =>
  inEach(reader, ofType(reader, 'list', 'ticks', 'checklist', 'talk', 'warning-frames', 'asides', 'matters'));

/**
 * What nobody knows yet: in a row for each option, or, in a packet for after the choice, in each document that goes into
 * that time.
 */
export const unknownSaid: Check = (pages) => {
  const key = 'comparison.unknown.question';
  if (comparisonOf(pages).length > 0) return foundAt(namingAll(pages, boardsUnder(pages, key)));
  return inEachTelling(pages, under(pages, key, ofType(pages.reader, 'paragraph', 'list')));
};
