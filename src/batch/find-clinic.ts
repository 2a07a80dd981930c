import { dirname, join } from 'node:path';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';

const clinicFile = 'clinic.yaml';

/** The case's own folder and two above it: a clinic keeps one profile above its folders of cases. */
const foldersToLookIn = 3;

/** The clinic profile that stands nearest to a case, or FILE_NOT_FOUND. */
export async function findClinic(workspace: Workspace, caseFile: string): Promise<Result<string>> {
  let folder = dirname(caseFile);
  for (let depth = 0; depth < foldersToLookIn; depth += 1) {
    const candidate = join(folder, clinicFile);
    if (await workspace.exists(candidate)) return success(candidate);
    folder = join(folder, '..');
  }
  return failure([
    {
      code: 'FILE_NOT_FOUND',
      severity: 'error',
      message: `no ${clinicFile} beside ${caseFile} or in the two folders above`,
      hint: 'Name the clinic profile with --clinic FILE.',
    },
  ]);
}
