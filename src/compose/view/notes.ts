import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { withoutTags } from '../markup/escape-text.ts';

/** What a reader must know of a figure, with the words for several: "The studies do not state …". */
export interface Remark {
  readonly words: Markup;
  /** The words where they are others for several figures, or for figures of several studies. */
  readonly ofSeveral?: { readonly words: Markup; readonly what: 'figures' | 'studies' };
}

/** A note with the cells that cite it, where it must say which they are. */
export interface Note extends Remark {
  readonly cells: readonly Cell[];
}

/** Notes under a table, each said once; cells cite them by number. */
export interface Notes {
  /** Number of the note. The cell is left out where the words themselves say which figure they are about. */
  readonly cite: (words: Markup | Remark, cell?: Cell) => number;
  readonly all: () => readonly Note[];
}

/**
 * Two notes are the same when they read the same, whichever records they name. Under a further table of a topic the numbers
 * go on from so many before: its notes may stand on one page with those of another.
 */
export function createNotes(before = 0): Notes {
  const notes: { readonly remark: Remark; readonly cells: Cell[] }[] = [];
  const texts: string[] = [];
  return {
    cite: (said, cell) => {
      const remark = 'markup' in said ? { words: said } : said;
      const cells = cell === undefined ? [] : [cell];
      const text = withoutTags(remark.words.markup);
      const known = texts.indexOf(text);
      if (known !== -1) {
        notes[known]?.cells.push(...cells);
        return before + known + 1;
      }
      notes.push({ remark, cells });
      return before + texts.push(text);
    },
    all: () => notes.map(({ remark, cells }) => ({ ...remark, cells })),
  };
}
