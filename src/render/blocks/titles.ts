import type { Block } from '../../model/document.ts';
import type { OfType, Place } from './unit-parts.ts';

type Title = Pick<Place, 'title' | 'smallTitle' | 'question'>;

/**
 * The titles that each block of a sequence stands under: that of the last heading before it, else that of its topic. A
 * small heading within a topic, or under a larger heading, says too which question it is about.
 */
export function titlesOf(blocks: readonly Block[], place: Place): readonly Title[] {
  let question = place.title;
  let title: Title = question === undefined ? {} : { title: question };
  return blocks.map((block) => {
    const above = title;
    if (block.type === 'heading') {
      title = titleOf(block, question);
      if (block.level < 3) question = title.title;
    }
    return block.type === 'topic' ? {} : above;
  });
}

/** Heading that what stands under it repeats where it goes on; the title of a page is not repeated. */
function titleOf({ level, text }: OfType<'heading'>, question: string | undefined): Title {
  if (level === 1) return {};
  if (level === 2) return { title: text };
  return { title: text, smallTitle: true, ...(question === undefined ? {} : { question }) };
}

/**
 * What stands under one small heading with it, as a topic: its key for each block. What stands under a larger one may be
 * a long table, which is read row by row.
 */
export function sectionsOf(blocks: readonly Block[], { key }: Place): readonly (string | undefined)[] {
  let section: string | undefined;
  return blocks.map((block, index) => {
    if (block.type === 'heading') section = block.level === 3 ? `${key}${index}` : undefined;
    if (block.type === 'topic') section = undefined;
    return section;
  });
}
