import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';
import { joined } from './words.ts';

/** What is done, in the words of the list of choices: for a body as an earlier operation left it, where that differs. */
export function choiceInWords(scene: Scene, option: NamedOption): Markup {
  const { words } = scene;
  const { code } = option;
  const before = operationInPlace(scene);
  const own = `options.${code}.choice_after_${before ?? 'none'}`;
  const what = words.say(words.has(own) ? own : `options.${code}.choice`);
  if (!takesBandOut(scene, option)) return what;
  return joined(what, words.say(`common.band_out.${scene.case.plan.stages ?? 'open'}`));
}

/** Whether an operation takes out a band that is in place, beside what it does itself. */
export function takesBandOut(scene: Scene, { code, column }: NamedOption): boolean {
  return operationInPlace(scene) === 'band' && column.kind === 'operation' && !aboutBands.includes(code);
}

/**
 * These say themselves what becomes of a band; every other operation takes out the one in place. They leave the way of
 * the food as it is, and ask for no vitamins.
 */
export const aboutBands: readonly string[] = ['band', 'band-removal'];

/** The latest earlier operation that is still in place. */
export function operationInPlace({ case: file }: Pick<Scene, 'case'>): string | undefined {
  return file.health.earlier_operations.findLast(({ status }) => status === 'in-place')?.operation;
}
