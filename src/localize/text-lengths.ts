import { z } from 'zod';

import { success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { escapePattern } from '../model/word-forms.ts';
import { readSettings } from './read-settings.ts';

const LengthsSchema = z.record(z.string().min(1), z.int('expected a whole number of characters').min(1));

/** Most characters of a text, by its key; null: any number. */
export type LongestOf = (key: string) => number | null;

/** Reads lengths.yaml of a folder of languages; without it no text has a limit. Fails with LOCALE_INVALID. */
export async function readLengths(workspace: Workspace, folder: string): Promise<Result<LongestOf>> {
  const path = `${folder}/lengths.yaml`;
  const text = (await workspace.exists(path)) ? await workspace.readText(path) : '{}';
  const read = readSettings(text, path, LengthsSchema);
  return read.ok ? success(longestBy(read.value)) : read;
}

function longestBy(lengths: Readonly<Record<string, number>>): LongestOf {
  const limits = Object.entries(lengths).map(([pattern, longest]) => {
    const parts = pattern.split('*').map(escapePattern);
    return { form: new RegExp(`^${parts.join('[^.]+')}$`), longest };
  });
  return (key) => limits.find(({ form }) => form.test(key))?.longest ?? null;
}

/** Characters as they take room: one of Chinese or Korean counts as two, a mark above or below a letter as none. */
export function widthInCharacters(text: string): number {
  return Array.from(text.replace(/\p{Mn}/gu, '')).reduce(
    (sum, character) => sum + (/[\p{Script=Han}\p{Script=Hangul}]/u.test(character) ? 2 : 1),
    0,
  );
}
