import type { Markup } from '../../model/locale.ts';
import { undoStatement, weightAfterStatement } from '../../model/statement.ts';
import { onTroubleLeft } from './say-call-now.ts';
import { sayOtherPeople } from './say-reason.ts';
import type { NamedOption, Scene } from './scene.ts';
import { list } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, plainRow, rowShape } from './shared-shapes.ts';
import type { Row } from './shared-shapes.ts';
import { isProcedure } from './view-people.ts';
import { bold, joined, standingOn } from './words.ts';

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
    ...plainRow(
      option,
      [
        joined(answer, undoing(scene, option), ...staysGone(scene, option)),
        weightAfter(scene, option),
        joined(...changes(scene, option)),
      ]
        .filter(({ markup }) => markup !== '')
        .map(body),
    ),
    wayBack: { possible, alt },
  };
}

/** Undoing was measured in adults who were not pregnant; to anyone else only the sentences without a figure are said. */
function forThisPerson(scene: Scene, words: Markup): Markup {
  if (isLikeMeasured(scene)) return words;
  const sentences = words.markup.split(/(?<=[.!?]) /).filter((sentence) => !/\d/.test(sentence));
  return { markup: sentences.join(' ') };
}

function isLikeMeasured({ comparison }: Scene): boolean {
  const { age, pregnantNow } = comparison.person;
  return age >= adultAge && !pregnantNow;
}

/** Years from which a person is adult: figures of adults hold, and nobody else signs. */
export const adultAge = 18;

/** What undoing takes. */
function undoing(scene: Scene, option: NamedOption): Markup {
  const words = forThisPerson(scene, scene.words.say(`options.${option.code}.undo`));
  return standingOn(rowOf(scene, option, undoStatement), words);
}

/** That undoing does not bring back what an earlier operation took out: it stands on the rows of that operation. */
export function staysGone(scene: Scene, { column }: NamedOption): readonly Markup[] {
  const { goneBefore } = column.reversibility;
  if (goneBefore.length === 0) return [];
  return [standingOn(goneBefore.map(undoStatement), scene.words.say('comparison.undo.stays_gone'))];
}

/**
 * What weight does once it is undone; nothing to say where it cannot be undone and nothing was measured. Of what leaves
 * a trouble as it is, that the trouble can get worse.
 */
function weightAfter(scene: Scene, option: NamedOption): Markup {
  const [getsWorse] = onTroubleLeft(scene, option, 'undo.trouble_left');
  if (getsWorse !== undefined) return getsWorse;
  const { possible, weightAfterKnown, weightAfterDiffers: differs } = option.column.reversibility;
  if (possible === 'no' && !weightAfterKnown) return { markup: '' };
  const words = forThisPerson(scene, scene.words.say(`options.${option.code}.weight_after`));
  // Whoever is told no figure needs no word on the people in whom it was measured.
  const inWhom = differs === undefined || !isLikeMeasured(scene) ? [] : [sayOtherPeople(scene, differs)];
  return standingOn(rowOf(scene, option, weightAfterStatement), joined(words, ...inWhom));
}

/** The row on undoing that stands for an option; none where the evidence has none, and then no figure may be said. */
function rowOf(scene: Scene, option: NamedOption, id: (code: string) => string): readonly string[] {
  const { figuresFrom } = option.column;
  return scene.evidence.reversibility.has(figuresFrom) ? [id(figuresFrom)] : [];
}

/**
 * What an operation can be turned into; whoever has no operation can choose any, as its own words say. By name only
 * what is among this person's choices: the pages explain no other names.
 */
function changes(scene: Scene, option: NamedOption): readonly Markup[] {
  const { possible, changeTo } = option.column.reversibility;
  // Redoing the same operation is not a change into something else.
  const others = changeTo.filter((code) => code !== option.code);
  if (others.length === 0 || !isProcedure(option)) return [];
  const isChoice = (code: string): boolean => scene.comparison.options.some((choice) => choice.code === code);
  const named = others.filter(isChoice).map((code) => scene.words.plain(`options.${code}.in_text`));
  const unnamed = others.filter((code) => !isChoice(code));
  const names = scene.format.list([...named, ...summedUp(scene, unnamed)], 'or');
  if (possible === 'no') return changeOnly(scene, option, names);
  return [scene.words.say('comparison.undo.change_to', { options: names })];
}

/** All that can be done with what cannot be undone; an option without such words says itself what comes after it. */
function changeOnly(scene: Scene, option: NamedOption, options: string): readonly Markup[] {
  const key = `options.${option.code}.change_only`;
  if (!scene.words.has(key)) return [];
  return [standingOn(rowOf(scene, option, undoStatement), scene.words.say(key, { options }))];
}

/** "another operation", where each of these is one; else "another treatment". */
function summedUp({ evidence, words }: Scene, codes: readonly string[]): readonly string[] {
  if (codes.length === 0) return [];
  const kinds = codes.map((code) => evidence.options.find((option) => option.code === code)?.kind);
  const treatment = kinds.every((kind) => kind === 'operation') ? 'operation' : 'treatment';
  return [words.plain(`comparison.undo.another_${treatment}`)];
}
