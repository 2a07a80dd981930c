import type { DocumentTree } from '../model/document.ts';
import { alignText } from './align-text.ts';
import type { Alignment } from './align-text.ts';
import { expectedTexts } from './expected-texts.ts';
import type { Expected, ExpectedText } from './expected-texts.ts';
import { comparisonFor, numberPattern } from './normalize-text.ts';
import { takeFurniture } from './page-furniture.ts';
import type { FurniturePart, PagePlace } from './page-furniture.ts';

/** A page of the finished file that belongs to a document. */
export interface DocumentPage extends PagePlace {
  /** Page of the file, from 1. */
  readonly number: number;
  /** As the reader gave it. */
  readonly text: string;
}

/** A text of the tree that is not in its place. */
export interface LostText {
  readonly text: ExpectedText;
  /** Page of the file where it should stand, from 1. */
  readonly page: number;
  /** It stands somewhere else in the document. */
  readonly elsewhere: boolean;
  /** Its figures that are not where the text should stand: the cell of each. */
  readonly missingFigures: readonly string[];
}

/** A document of the packet beside what was read back of it. */
export interface DocumentReading {
  readonly tree: DocumentTree;
  readonly texts: readonly ExpectedText[];
  readonly pages: readonly DocumentPage[];
  readonly lost: readonly LostText[];
  /** Letters that neither the tree nor the furniture accounts for. */
  readonly leftovers: readonly { readonly page: number; readonly letters: number }[];
  readonly absentFurniture: readonly { readonly page: number; readonly part: FurniturePart }[];
}

/** Compares the pages of one document with its tree. */
export function readDocument(tree: DocumentTree, pages: readonly DocumentPage[]): DocumentReading {
  const compact = comparisonFor(tree);
  const readings = pages.map((page) => takeFurniture(compact(page.text), tree, page));
  const bodies = readings.map(({ body }) => body);
  const absentFurniture = readings.flatMap(({ absent }, page) =>
    absent.map((part) => ({ page: pages[page]?.number ?? 0, part })),
  );
  return { ...compareBodies(expectedTexts(tree, compact), pages, bodies), tree, absentFurniture };
}

/** What the bodies of some pages, without furniture and compact, hold of the texts that are expected on them. */
export function compareBodies(
  { texts, repeated, compact }: Expected,
  pages: readonly DocumentPage[],
  bodies: readonly string[],
): Omit<DocumentReading, 'tree' | 'absentFurniture'> {
  const alignment = alignText(
    texts.map((text) => text.compact),
    bodies,
    stripper(repeated),
  );
  const numberOf = (page: number): number => pages[page]?.number ?? 0;
  const gaps = alignment.gaps.map((gap) => ({ ...gap }));
  const lost = texts.flatMap((text, index) => {
    if (typeof alignment.pages[index] === 'number') return [];
    const place = placeOf(alignment, index);
    return [{ text, page: numberOf(place.page), ...whatIsLeft(text, place.print, gaps) }];
  });
  // A mark that is compared only between digits is left over where one text ends and the next begins with one.
  const leftovers = gaps.filter(({ text }) => compact(text) !== '');
  return {
    texts,
    pages,
    lost,
    leftovers: leftovers.map(({ page, text }) => ({ page: numberOf(page), letters: text.length })),
  };
}

/** Where a lost text should stand, and what stands there: the gap that opened in the same run of lost texts. */
function placeOf(
  { pages, gaps }: Alignment,
  index: number,
): { readonly page: number; readonly print: string } {
  const gap = gaps.findLast(
    ({ before }) => before <= index && pages.slice(before, index).every((page) => page === null),
  );
  const page = gap?.page ?? pages.slice(0, index).findLast((found) => found !== null) ?? 0;
  return { page, print: gap?.text ?? '' };
}

/** Looks for a lost text in what was printed elsewhere, and takes it out there; else for its figures in its place. */
function whatIsLeft(
  text: ExpectedText,
  print: string,
  gaps: readonly { text: string }[],
): Pick<LostText, 'elsewhere' | 'missingFigures'> {
  const holder = gaps.find((gap) => gap.text.includes(text.compact));
  if (holder !== undefined) {
    holder.text = holder.text.replace(text.compact, '');
    return { elsewhere: true, missingFigures: [] };
  }
  const missing = text.figures.filter(({ value }) => !numberPattern(value).test(print));
  return { elsewhere: false, missingFigures: missing.map(({ cell }) => cell) };
}

/** Takes repeated heads off the end of a text, longest first, as often as they stand there. */
function stripper(repeated: readonly string[]): (text: string) => string {
  const longestFirst = [...repeated].sort((a, b) => b.length - a.length);
  return (text) => {
    let left = text;
    for (;;) {
      const piece = longestFirst.find((candidate) => left.endsWith(candidate));
      if (piece === undefined) return left;
      left = left.slice(0, left.length - piece.length);
    }
  };
}
