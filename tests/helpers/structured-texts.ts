import { ribbonPieces } from '../../src/model/calendar.ts';
import type { Calendar } from '../../src/model/calendar.ts';
import type { Block, DocumentTree } from '../../src/model/document.ts';
import { expectedText } from '../../src/model/tree-text.ts';

/**
 * Every text of a document in the order in which the structure tree has it. That is the order in which it is painted, but
 * for the ribbons of a calendar: they are pictures in a list after its weeks, each stage once, where it begins.
 */
export function structuredTexts(tree: DocumentTree): readonly string[] {
  return tree.blocks.flatMap((block) => textsIn(block, tree, ribbonLabels));
}

/** The same without the ribbons of calendars: page by page the list stands after the weeks of each page. */
export function textsBesideRibbons(tree: DocumentTree): readonly string[] {
  return tree.blocks.flatMap((block) => textsIn(block, tree, () => []));
}

/** What is written on the ribbons of the calendars of a document, each stage once, where it begins. */
export function ribbonTexts(tree: DocumentTree): readonly string[] {
  return calendarsIn(tree.blocks).flatMap(ribbonLabels);
}

type Ribbons = (calendar: Calendar) => readonly string[];

function textsIn(block: Block, tree: DocumentTree, ribbons: Ribbons): readonly string[] {
  const alone = (one: Block): readonly string[] =>
    expectedText({ ...tree, blocks: [one] }).map(({ text }) => text);
  if (block.type === 'topic')
    return [
      ...alone({ ...block, blocks: [] }),
      ...block.blocks.flatMap((inner) => textsIn(inner, tree, ribbons)),
    ];
  if (block.type !== 'calendar') return alone(block);
  const labels = new Set(block.stages.map(({ label }) => label));
  return [...alone(block).filter((text) => !labels.has(text)), ...ribbons(block)];
}

function ribbonLabels(calendar: Calendar): readonly string[] {
  return calendar.weeks.flatMap((_, week) =>
    ribbonPieces(calendar, week).flatMap(({ begins, labelled, stage }) =>
      begins && labelled ? [stage.label] : [],
    ),
  );
}

function calendarsIn(blocks: readonly Block[]): readonly Calendar[] {
  return blocks.flatMap((block) => {
    if (block.type === 'topic') return calendarsIn(block.blocks);
    return block.type === 'calendar' ? [block] : [];
  });
}
