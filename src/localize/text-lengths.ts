import { parse } from 'yaml';
import { z } from 'zod';

import type { Workspace } from '../io/workspace.ts';

const LengthsSchema = z.record(z.string().min(1), z.int().min(1));

/** Most characters of a text, by its key; null: any number. */
export type LongestOf = (key: string) => number | null;

/** Reads lengths.yaml of a folder of languages; without it no text has a limit. */
export async function readLengths(workspace: Workspace, folder: string): Promise<LongestOf> {
  const path = `${folder}/lengths.yaml`;
  const read: unknown = (await workspace.exists(path)) ? parse(await workspace.readText(path)) : {};
  const limits = Object.entries(LengthsSchema.parse(read)).map(([pattern, longest]) => {
    const parts = pattern.split('*').map((part) => part.replaceAll('.', String.raw`\.`));
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
