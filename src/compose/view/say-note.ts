import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import type { Note } from './notes.ts';
import type { Scene } from './scene.ts';
import { afterColon, asMarkup, bold, plainSeries } from './words.ts';

/** Beyond this many figures a note names their options alone: a longer list would hide what the note says. */
const mostNamed = 4;

/**
 * A note under a table after the figures it is about: "Sleeve (A leak, Bleeding): The study does not state …". The
 * rows it belongs to may stand on another page.
 */
export function noteInWords(scene: Scene, note: Note): Markup {
  const { words, cells } = note;
  if (cells.length === 0) return words;
  return labelled(scene, figuresNamed(scene, cells), isOfSeveral(note) ? note.ofSeveral.words : words);
}

/** Figures of one study leave it "the study". */
function isOfSeveral(note: Note): note is Note & Required<Pick<Note, 'ofSeveral'>> {
  const { cells, ofSeveral } = note;
  if (ofSeveral === undefined) return false;
  if (ofSeveral.what === 'figures') return cells.length > 1;
  return new Set(cells.flatMap((cell) => (cell.state === 'known' ? [cell.lead.study] : []))).size > 1;
}

/** "Sleeve, Gastric bypass: …", a sentence about figures of these options; no name where each choice has one. */
export function aboutOptions(scene: Scene, cells: readonly Cell[], said: Markup): Markup {
  const options = optionsOf(scene, cells);
  if (options.length === scene.options.length) return said;
  return labelled(
    scene,
    options.map(({ name }) => name),
    said,
  );
}

function optionsOf(scene: Scene, cells: readonly Cell[]): Scene['options'] {
  return scene.options.filter(({ code }) => cells.some(({ option }) => option === code));
}

function figuresNamed(scene: Scene, cells: readonly Cell[]): readonly string[] {
  const { words } = scene;
  return optionsOf(scene, cells).map(({ code, name }) => {
    if (cells.length > mostNamed) return name;
    const outcomes = cells
      .filter(({ option }) => option === code)
      .map(({ outcome }) => words.plain(`outcomes.${outcome}.name`));
    return words.plain('common.aside', { words: name, aside: plainSeries(words, 'items', outcomes) });
  });
}

function labelled({ words }: Scene, names: readonly string[], text: Markup): Markup {
  const label = bold(asMarkup(plainSeries(words, 'items', names)));
  return words.say('common.labelled', { label, text: afterColon(words, text) });
}
