import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';

/** What is done, in the words of the list of choices: for a body as an earlier operation left it, where that differs. */
export function choiceInWords({ words, ...scene }: Scene, { code }: NamedOption): Markup {
  const before = operationInPlace(scene);
  const own = `options.${code}.choice_after_${before ?? 'none'}`;
  return words.say(words.has(own) ? own : `options.${code}.choice`);
}

/** The latest earlier operation that is still in place. */
export function operationInPlace({ case: file }: Pick<Scene, 'case'>): string | undefined {
  return file.health.earlier_operations.findLast(({ status }) => status === 'in-place')?.operation;
}
