import type { Markup } from '../../model/locale.ts';

/** Notes under a table, each said once; cells cite them by number. */
export interface Notes {
  /** Number of the note, from 1. */
  readonly cite: (words: Markup) => number;
  readonly all: () => readonly Markup[];
}

/** Two notes are the same when they read the same, whichever records they name. */
export function createNotes(): Notes {
  const notes: Markup[] = [];
  const texts: string[] = [];
  return {
    cite: (words) => {
      const text = words.markup.replace(/<[^>]*>/g, '');
      const known = texts.indexOf(text);
      if (known !== -1) return known + 1;
      notes.push(words);
      return texts.push(text);
    },
    all: () => [...notes],
  };
}
