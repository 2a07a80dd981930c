import type { Block, Paragraph } from '../model/document.ts';

/** Lines of signs on a page of large print that has room for what to say under its frame, and letters of such a line. */
const MOST_LINES = 5;
const LETTERS = 38;

/**
 * What to say on the phone stands under the frames of urgent signs, as on other pages, where the last of them leaves room
 * for it. Frames take most of a page each: else it follows them all, so that none is parted for it.
 */
export function placeSay(blocks: readonly Block[]): readonly Block[] {
  const last = blocks.findLastIndex(({ type }) => type === 'warning-frames');
  const isMoved = ({ type }: Block, index: number): boolean =>
    type === 'say' && index < last && !leavesRoom(blocks[index - 1]);
  const stays = (block: Block, index: number): boolean => !isMoved(block, index);
  return [...blocks.slice(0, last + 1).filter(stays), ...blocks.filter(isMoved), ...blocks.slice(last + 1)];
}

function leavesRoom(before: Block | undefined): boolean {
  const signs = before?.type === 'warning-frames' ? before.frames.at(-1)?.items : undefined;
  return signs !== undefined && signs.reduce((lines, sign) => lines + linesOf(sign), 0) <= MOST_LINES;
}

/** About how many lines a sign takes. Letters of Chinese and Korean are twice as wide as others. */
function linesOf({ inlines }: Paragraph): number {
  const words = inlines.map(({ value }) => value).join('');
  const wide = words.match(/[\u1100-\u115F\u2E80-\uFFEF]/gu)?.length ?? 0;
  return Math.ceil((words.length + wide) / LETTERS);
}
