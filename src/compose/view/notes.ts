import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';

/** A note with the cells that cite it, where it must say which they are. */
export interface Note {
  readonly words: Markup;
  readonly cells: readonly Cell[];
}

/** Notes under a table, each said once; cells cite them by number. */
export interface Notes {
  /** Number of the note, from 1. The cell is left out where the words themselves say which figure they are about. */
  readonly cite: (words: Markup, cell?: Cell) => number;
  readonly all: () => readonly Note[];
}

/** Two notes are the same when they read the same, whichever records they name. */
export function createNotes(): Notes {
  const notes: { readonly words: Markup; readonly cells: Cell[] }[] = [];
  const texts: string[] = [];
  return {
    cite: (words, cell) => {
      const cells = cell === undefined ? [] : [cell];
      const text = words.markup.replace(/<[^>]*>/g, '');
      const known = texts.indexOf(text);
      if (known !== -1) {
        notes[known]?.cells.push(...cells);
        return known + 1;
      }
      notes.push({ words, cells });
      return texts.push(text);
    },
    all: () => [...notes],
  };
}
