import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { canonicalJson, sha256 } from '../io/digest.ts';
import type { Workspace } from '../io/workspace.ts';

/** One data file. `path` is below the data folder, with `/`; `text` has line ends of one kind. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
}

/** How to make a digest: a stage has no access to cryptography of its own. */
export interface Digester {
  readonly sha256: typeof sha256;
  readonly canonicalJson: typeof canonicalJson;
}

/** All YAML files of the data folder in path order. Rejects if the folder cannot be read. */
export async function readDataFiles(workspace: Workspace, folder: string): Promise<readonly DataFile[]> {
  const paths = await listYaml(workspace, folder, '');
  return Promise.all(
    paths.map(async (path) => {
      const text = await workspace.readText(`${folder}/${path}`);
      return { path, text: text.replace(/\r\n?/g, '\n') };
    }),
  );
}

/** The same, with FILE_NOT_FOUND in place of a rejection. */
export async function tryToReadFiles(
  workspace: Workspace,
  folder: string,
): Promise<Result<readonly DataFile[]>> {
  try {
    return success(await readDataFiles(workspace, folder));
  } catch {
    const message = `the evidence folder ${folder} cannot be read`;
    const hint = 'Check that plainleaf is installed whole, or the path.';
    return failure([{ code: 'FILE_NOT_FOUND', severity: 'error', message, hint }]);
  }
}

/** The digest of a release: over path and content of every data file, whatever the line ends on this disk. */
export function digestDataFiles(files: readonly DataFile[], digester: Digester): string {
  return digester.sha256(
    digester.canonicalJson(files.map((file) => [file.path, digester.sha256(file.text)])),
  );
}

async function listYaml(workspace: Workspace, folder: string, below: string): Promise<readonly string[]> {
  const names = await workspace.list(below === '' ? folder : `${folder}/${below.slice(0, -1)}`);
  const nested = await Promise.all(
    names.map(async (name) => {
      if (name.endsWith('/')) return listYaml(workspace, folder, `${below}${name}`);
      return name.endsWith('.yaml') ? [`${below}${name}`] : [];
    }),
  );
  return nested.flat().sort((a, b) => (a < b ? -1 : 1));
}
