import { findPassives } from '../../model/passive-voice.ts';
import type { Block, DocumentTree } from '../../model/document.ts';
import { foundAt, forPerson, inEach, missing, unless } from '../check.ts';
import type { Check } from '../check.ts';
import { blocksOf } from '../pages.ts';
import type { Placed } from '../pages.ts';
import { textOf, textsOf } from '../words-of.ts';
import { stepLists } from './action.ts';
import { pictures } from './layout.ts';

function isTitle(block: Block): boolean {
  if (block.type === 'cover') return block.question !== '';
  return block.type === 'heading' && block.level === 1 && block.text !== '';
}

/** Each document begins with what it is. */
export const titleFirst: Check = ({ reader }) =>
  inEach(
    reader,
    reader.flatMap((tree) => tops(tree, 1).filter(({ block }) => isTitle(block))),
  );

/** Each document begins with one title, and has no other. */
export const oneMessage: Check = (pages) => {
  const titles = blocksOf(pages.reader).filter(({ block }) => isTitle(block));
  const second = titles.filter(({ tree }, index) => titles.findIndex((one) => one.tree === tree) < index);
  const first = titleFirst(pages);
  return first.found === 'met' ? unless(second, titles) : first;
};

/** What it comes to stands among the first three blocks, in the opening words or as frames to act on. */
export const messageFirst: Check = ({ reader }) =>
  inEach(
    reader,
    reader.flatMap((tree) => tops(tree, 3).filter(({ block }) => isOpening(block))),
  );

function isOpening(block: Block): boolean {
  if (block.type === 'cover') return textOf({ inlines: block.lead }) !== '';
  if (block.type === 'warning-frames') return true;
  return block.type === 'paragraph' && block.role === 'lead';
}

/** The title is of the size of titles, and the opening in the larger type of a lead or in frames. */
export const messageMarked: Check = (pages) => {
  const titles = titleFirst(pages);
  return titles.found === 'met' ? messageFirst(pages) : titles;
};

export const messagePictured: Check = (pages) => foundAt(pictures(pages));

/** Titles, openings and steps without a passive verb. */
export const activeMessage: Check = (pages) => {
  const { passive } = pages.locale;
  if (passive === null) return forPerson;
  const said = [
    ...pages.reader.flatMap((tree) =>
      tops(tree, 3).map((placed) => ({ placed, text: openingText(placed.block) })),
    ),
    ...stepLists(pages).map((placed) => ({
      placed,
      text: placed.block.items.map((item) => textsOf(item)).join('\n'),
    })),
  ].filter(({ text }) => text !== '');
  if (said.length === 0) return missing;
  return unless(
    said.filter(({ text }) => findPassives([text], passive).passive.length > 0).map(({ placed }) => placed),
    said.map(({ placed }) => placed),
  );
};

function openingText(block: Block): string {
  if (block.type === 'cover') return `${block.question} ${textOf({ inlines: block.lead })}`;
  if (block.type === 'heading') return block.text;
  return block.type === 'paragraph' && block.role === 'lead' ? textOf(block) : '';
}

function tops(tree: DocumentTree, count: number): readonly Placed[] {
  return blocksOf([tree]).slice(0, count);
}
