import { randomUUID } from 'node:crypto';
import { access, mkdir, readFile, readdir, realpath, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, isAbsolute, join } from 'node:path';

import type { Workspace } from './workspace.ts';

const privateFile = 0o600;
const privateFolder = 0o700;

/** The real disk and the real clock. Paths are as the system takes them, relative ones from the current folder. */
export function createNodeWorkspace(): Workspace {
  return {
    list: listFolder,
    exists: async (path) =>
      access(path).then(
        () => true,
        () => false,
      ),
    readText: async (path) => readFile(path, 'utf8'),
    readBytes: async (path) => new Uint8Array(await readFile(path)),
    write: writeWhole,
    remove: async (path) => rm(path, { recursive: true, force: true }),
    now: () => new Date(),
  };
}

async function listFolder(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  return entries
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name))
    .sort((a, b) => (a < b ? -1 : 1));
}

/** Fails where the current folder is gone: Node would try for ever to make a relative one in it. */
async function folderOf(path: string): Promise<string> {
  const folder = dirname(path);
  return isAbsolute(folder) ? folder : join(await realpath('.'), folder);
}

/** A reader sees the old file or the new one, never half of one: rename is atomic within a folder. */
async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(await folderOf(path), { recursive: true, mode: privateFolder });
  const unfinished = `${path}.${randomUUID()}.tmp`;
  try {
    await writeFile(unfinished, content, { mode: privateFile, flag: 'wx' });
    await rename(unfinished, path);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
}
