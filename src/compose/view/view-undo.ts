import type { NamedOption, Scene } from './scene.ts';
import { list } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, plainRow, rowShape } from './shared-shapes.ts';
import type { Line, Row } from './shared-shapes.ts';
import { bold, joined } from './words.ts';

export const undoShape = list(rowShape);

/** Whether each option can be undone, what that takes, what weight does then, what it can be changed into. */
export function viewUndo(scene: Scene): Viewed<typeof undoShape> {
  return scene.options.map((option): Row => undoRow(scene, option));
}

function undoRow(scene: Scene, option: NamedOption): Row {
  const { words } = scene;
  const { possible } = option.column.reversibility;
  const answer = bold(words.say(`common.undo_answer.${possible}`));
  const alt = words.plain('common.alt.undo', {
    option: option.name,
    answer: words.plain(`common.undo.${possible}`),
  });
  return {
    ...plainRow(option, [
      body(joined(answer, words.say(`options.${option.code}.undo`))),
      body(words.say(`options.${option.code}.weight_after`)),
      ...changeLine(scene, option),
    ]),
    wayBack: { possible, alt },
  };
}

function changeLine(scene: Scene, option: NamedOption): readonly Line[] {
  // Redoing the same operation is not a change into something else.
  const others = option.column.reversibility.changeTo.filter((code) => code !== option.code);
  // Whoever has no treatment can choose any; its own words say so.
  if (others.length === 0 || option.column.kind === 'none') return [];
  const names = others.map((code) => scene.words.plain(`options.${code}.in_text`));
  return [body(scene.words.say('comparison.undo.change_to', { options: scene.format.list(names, 'or') }))];
}
