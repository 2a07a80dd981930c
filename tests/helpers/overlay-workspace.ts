import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import type { Workspace } from '../../src/io/workspace.ts';
import { createMemoryWorkspace } from './memory-workspace.ts';
import type { MemoryWorkspace } from './memory-workspace.ts';

/**
 * This checkout as it is on the disk, with some files put over it and some folders (`locales/fr/`) taken away; what is
 * written stays in memory.
 */
export function createOverlay(
  files: Readonly<Record<string, string>>,
  without: readonly string[] = [],
): {
  readonly workspace: Workspace;
  readonly memory: MemoryWorkspace;
} {
  const disk = createNodeWorkspace();
  const memory = createMemoryWorkspace(files, '2026-11-25T12:00:00Z');
  const over = async (path: string): Promise<boolean> => memory.exists(path);
  return {
    memory,
    workspace: {
      ...memory,
      list: async (folder) => {
        const shipped = (await disk.exists(folder)) ? await disk.list(folder) : [];
        const added = (await over(folder)) ? await memory.list(folder) : [];
        const kept = shipped.filter((name) => !without.includes(`${folder}/${name}`));
        return [...new Set([...kept, ...added])].sort((a, b) => (a < b ? -1 : 1));
      },
      exists: async (path) => (await over(path)) || disk.exists(path),
      readText: async (path) => ((await over(path)) ? memory.readText(path) : disk.readText(path)),
      readBytes: async (path) => ((await over(path)) ? memory.readBytes(path) : disk.readBytes(path)),
    },
  };
}
