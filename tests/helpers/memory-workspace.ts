import type { Workspace } from '../../src/io/workspace.ts';

export interface MemoryWorkspace extends Workspace {
  /** What was written or given, by path. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  /** Paths read so far, in order; for tests of caches. */
  readonly reads: readonly string[];
}

/** A disk that exists only in a test. Paths use `/`; folders exist when a file is in them. The clock stands still. */
export function createMemoryWorkspace(
  given: Readonly<Record<string, string | Uint8Array>> = {},
  now = '2026-11-25T09:00:00Z',
): MemoryWorkspace {
  const files = new Map(Object.entries(given).map(([path, content]) => [normalize(path), content]));
  const reads: string[] = [];
  const read = (path: string): string | Uint8Array => {
    const content = files.get(normalize(path));
    if (content === undefined) throw new Error(`no such file: ${path}`);
    reads.push(normalize(path));
    return content;
  };
  const below = (folder: string): string[] => {
    const prefix = normalize(folder) === '' ? '' : `${normalize(folder)}/`;
    return [...files.keys()]
      .filter((path) => path.startsWith(prefix))
      .map((path) => path.slice(prefix.length));
  };
  return {
    files,
    reads,
    list: async (folder) => {
      const names = new Set(below(folder).map((path) => path.replace(/\/.*$/s, '/')));
      if (names.size === 0) throw new Error(`no such folder: ${folder}`);
      return Promise.resolve([...names].sort((a, b) => (a < b ? -1 : 1)));
    },
    exists: async (path) => Promise.resolve(files.has(normalize(path)) || below(path).length > 0),
    readText: async (path) => {
      const content = read(path);
      return Promise.resolve(typeof content === 'string' ? content : new TextDecoder().decode(content));
    },
    readBytes: async (path) => {
      const content = read(path);
      return Promise.resolve(typeof content === 'string' ? new TextEncoder().encode(content) : content);
    },
    write: async (path, content) => {
      files.set(normalize(path), content);
      return Promise.resolve();
    },
    remove: async (path) => {
      for (const name of [normalize(path), ...below(path).map((rest) => `${normalize(path)}/${rest}`)])
        files.delete(name);
      return Promise.resolve();
    },
    now: () => new Date(now),
  };
}

function normalize(path: string): string {
  return path.replace(/^(\.\/)+/, '').replace(/\/+$/, '');
}
