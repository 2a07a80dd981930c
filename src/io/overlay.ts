import type { Workspace } from './workspace.ts';

/** A workspace in which some files have another content, which nothing writes down. */
export function withFiles(workspace: Workspace, files: ReadonlyMap<string, string>): Workspace {
  return {
    list: (folder) => workspace.list(folder),
    exists: async (path) => files.has(path) || (await workspace.exists(path)),
    readText: async (path) => files.get(path) ?? (await workspace.readText(path)),
    readBytes: (path) => workspace.readBytes(path),
    write: (path, content) => workspace.write(path, content),
    remove: (path) => workspace.remove(path),
    now: () => workspace.now(),
  };
}
