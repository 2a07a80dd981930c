import { ribbonPieces, saidOfStage } from '../../src/model/calendar.ts';
import type { Calendar, CalendarStage } from '../../src/model/calendar.ts';
import type { Block, DocumentTree } from '../../src/model/document.ts';
import { labelText } from '../../src/model/text-piece.ts';
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

/** What is in another language than a document, as its structure has it: what is written on a ribbon is in a picture. */
export function foreignBesideRibbons(tree: DocumentTree): readonly string[] {
  return tree.blocks.flatMap((block) => foreignIn(block, tree));
}

function foreignIn(block: Block, tree: DocumentTree): readonly string[] {
  const alone = (one: Block): ReturnType<typeof expectedText> => expectedText({ ...tree, blocks: [one] });
  if (block.type === 'topic')
    return [
      ...alone({ ...block, blocks: [] }).flatMap(({ foreign }) => foreign),
      ...block.blocks.flatMap((inner) => foreignIn(inner, tree)),
    ];
  const labels = block.type === 'calendar' ? block.stages.map(({ label }) => labelText(label)) : [];
  return alone(block)
    .filter(({ text }) => !labels.includes(text))
    .flatMap(({ foreign }) => foreign);
}

/** Alternatives of pictures that are in another language than a document, in order. */
export function foreignAlternatives(tree: DocumentTree): readonly string[] {
  return calendarsIn(tree.blocks)
    .flatMap(stagesBegun)
    .flatMap(saidOfStage)
    .flatMap(({ text, language }) => (language === undefined ? [] : [text]));
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
  const labels = new Set(block.stages.map(({ label }) => labelText(label)));
  return [...alone(block).filter((text) => !labels.has(text)), ...ribbons(block)];
}

function stagesBegun(calendar: Calendar): readonly CalendarStage[] {
  return calendar.weeks.flatMap((_, week) =>
    ribbonPieces(calendar, week).flatMap(({ begins, stage }) => (begins ? [stage] : [])),
  );
}

function ribbonLabels(calendar: Calendar): readonly string[] {
  return calendar.weeks.flatMap((_, week) =>
    ribbonPieces(calendar, week).flatMap(({ begins, labelled, stage }) =>
      begins && labelled ? [labelText(stage.label)] : [],
    ),
  );
}

function calendarsIn(blocks: readonly Block[]): readonly Calendar[] {
  return blocks.flatMap((block) => {
    if (block.type === 'topic') return calendarsIn(block.blocks);
    return block.type === 'calendar' ? [block] : [];
  });
}
