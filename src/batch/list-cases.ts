import { join } from 'node:path';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';

/** What a file says it is, from its first keys; a file that says neither is taken for a case. */
export function isClinicProfile(text: string): boolean {
  return /^clinic\s*:/m.test(text) && !/^(case|patient)\s*:/m.test(text);
}

/** The case files of a folder in order of name; its folders and clinic profiles are passed over. */
export async function listCases(workspace: Workspace, folder: string): Promise<Result<readonly string[]>> {
  const names = await namesIn(workspace, folder);
  if (names === null) return failure([missing(`the folder ${folder} is not there or cannot be read`)]);
  const files = names.filter((name) => /\.ya?ml$/.test(name)).map((name) => join(folder, name));
  const cases: string[] = [];
  for (const file of files) if (!isClinicProfile(await workspace.readText(file))) cases.push(file);
  return cases.length > 0 ? success(cases) : failure([missing(`the folder ${folder} holds no case (.yaml)`)]);
}

async function namesIn(workspace: Workspace, folder: string): Promise<readonly string[] | null> {
  try {
    return await workspace.list(folder);
  } catch {
    return null;
  }
}

function missing(message: string) {
  return { code: 'FILE_NOT_FOUND', severity: 'error', message } as const;
}
