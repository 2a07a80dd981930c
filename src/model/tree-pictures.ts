import { ribbonPieces, saidOfStage } from './calendar.ts';
import type { Calendar } from './calendar.ts';
import type { DocumentTree } from './document.ts';

/**
 * Text alternatives of a document in reading order: of its pictures, of the blanks of its sentences, and of the stages
 * of a calendar, each where it begins. No block has pictures in two of its parts, so the order of the data is theirs.
 */
export function expectedAlternatives(tree: DocumentTree): readonly string[] {
  return alternativesIn(tree.blocks);
}

function alternativesIn(node: unknown): readonly string[] {
  if (typeof node !== 'object' || node === null) return [];
  if (isCalendar(node)) return stagesBegun(node);
  const own = 'alt' in node && typeof node.alt === 'string' ? [node.alt] : [];
  return [...own, ...Object.values(node).flatMap((part: unknown) => alternativesIn(part))];
}

function isCalendar(node: object): node is Calendar {
  return 'type' in node && node.type === 'calendar';
}

function stagesBegun(calendar: Calendar): readonly string[] {
  return calendar.weeks.flatMap((_, week) =>
    ribbonPieces(calendar, week).flatMap(({ begins, stage }) =>
      begins ? saidOfStage(stage).map(({ text }) => text) : [],
    ),
  );
}
