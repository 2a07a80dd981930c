import type { DocumentTree } from '../model/document.ts';
import type { PrintEdition } from '../model/edition.ts';
import type { PacketTree } from '../model/packet.ts';
import { reflowBlocks } from './reflow-blocks.ts';

/**
 * The trees of a packet as an edition prints them. In large print nothing stands side by side: tables become rows of
 * words, tables of boxes become lists, a calendar becomes a list of its days. The sheet for clinicians stays as it is.
 */
export function reflowPacket(packet: PacketTree, edition: PrintEdition): PacketTree {
  if (edition === 'standard') return packet;
  return { ...packet, documents: packet.documents.map(reflowDocument) };
}

function reflowDocument(tree: DocumentTree): DocumentTree {
  if (tree.audience !== 'patient') return tree;
  return { ...tree, edition: 'large-print', blocks: reflowBlocks(tree.blocks, tree.colon) };
}
