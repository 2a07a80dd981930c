import type { Block, DocumentTree } from '../model/document.ts';

export type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

export type HeadingLevel = 1 | 2 | 3;

/** A heading as it came out: its level never skips one, and its id is that of its element. */
export interface PlacedHeading {
  readonly id: string;
  readonly level: HeadingLevel;
  readonly text: string;
}

/** What a block knows of the document it stands in. Headings and ids are counted as blocks are made, in reading order. */
export interface Place {
  readonly tree: DocumentTree;
  /** Question or heading that the block stands under, which names its tables. */
  readonly title?: string;
  readonly inTopic?: true;
  readonly nextId: () => string;
  readonly heading: (level: HeadingLevel, text: string) => PlacedHeading;
}

export interface Counted {
  readonly place: Place;
  readonly headings: readonly PlacedHeading[];
}

/**
 * A place at the head of a document. A document has one heading of the first level, and no level is skipped: a heading
 * is one below the nearest before it that is of a higher level.
 */
export function openPlace(tree: DocumentTree, prefix: string): Counted {
  const headings: PlacedHeading[] = [];
  /** Levels asked for by the headings that the next one may stand under. */
  const above: HeadingLevel[] = [];
  let ids = 0;
  const nextId = (): string => {
    ids += 1;
    return `${prefix}-${String(ids)}`;
  };
  const heading = (wanted: HeadingLevel, text: string): PlacedHeading => {
    while (above.length > 1 && (above.at(-1) ?? 0) >= wanted) above.pop();
    above.push(wanted);
    const level = above.length === 1 ? 1 : above.length === 2 ? 2 : 3;
    const placed: PlacedHeading = { id: nextId(), level, text };
    headings.push(placed);
    return placed;
  };
  return { place: { tree, nextId, heading }, headings };
}
