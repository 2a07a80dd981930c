import type { Block, DocumentTree } from '../model/document.ts';
import type { ScorePlace } from '../model/document-score.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { Locale } from '../model/locale.ts';
import type { DocumentReading } from '../model/reading-level.ts';

/** What checks look at. */
export interface Pages {
  /** Every document for the patient. */
  readonly documents: readonly DocumentTree[];
  /** Those to understand and act on: without what only leads to them, stands behind them or must be there by law. */
  readonly reader: readonly DocumentTree[];
  readonly readings: readonly DocumentReading[];
  readonly locale: Locale;
  readonly evidence: Pick<EvidenceBase, 'date' | 'nextReview' | 'madeBy' | 'paidBy'>;
}

/** A block of a document, with the question or heading it stands under. */
export interface Placed<T extends Block = Block> {
  readonly tree: DocumentTree;
  readonly block: T;
  readonly heading?: string;
  /** The topic it is part of. */
  readonly topic?: Extract<Block, { readonly type: 'topic' }>;
}

/** Every block of these documents in order, those of a topic after the topic itself. */
export function blocksOf(documents: readonly DocumentTree[]): readonly Placed[] {
  return documents.flatMap(blocksOfTree);
}

function blocksOfTree(tree: DocumentTree): readonly Placed[] {
  let heading: string | undefined;
  return tree.blocks.flatMap((block): readonly Placed[] => {
    if (block.type === 'topic') {
      heading = block.question;
      const under = { tree, heading, topic: block };
      return [{ tree, block, heading }, ...block.blocks.map((inner) => ({ ...under, block: inner }))];
    }
    if (block.type === 'heading') heading = block.level === 1 ? undefined : block.text;
    return [{ tree, block, ...(heading !== undefined && { heading }) }];
  });
}

type OfType<T extends Block['type']> = Extract<Block, { readonly type: T }>;

export function ofType<T extends Block['type']>(
  documents: readonly DocumentTree[],
  ...types: readonly T[]
): readonly Placed<OfType<T>>[] {
  return blocksOf(documents).filter((placed): placed is Placed<OfType<T>> =>
    types.some((type) => type === placed.block.type),
  );
}

export function placeOf({ tree, block, heading }: Placed): ScorePlace {
  return {
    document: tree.kind,
    title: tree.title,
    origin: block.origin,
    ...(heading !== undefined && { heading }),
  };
}

/** The comparison of a packet; absent in one that goes with a decision already taken. */
export function comparisonOf({ documents }: Pages): readonly DocumentTree[] {
  return documents.filter(({ kind }) => kind === 'comparison');
}

export function sourcesOf({ documents }: Pages): readonly DocumentTree[] {
  return documents.filter(({ kind }) => kind === 'sources');
}
