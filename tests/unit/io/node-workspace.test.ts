import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

describe.each([
  { name: 'the real disk', create: createNodeWorkspace },
  { name: 'the disk of the tests', create: () => createMemoryWorkspace() },
])('$name', ({ create }) => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'workspace-'));
  });
  afterEach(async () => {
    await rm(folder, { recursive: true });
  });

  it('gives back what was written, as text and as bytes', async () => {
    const workspace = create();
    await workspace.write(`${folder}/a/b.txt`, 'größer');
    await workspace.write(`${folder}/a/c.bin`, new Uint8Array([0, 255]));
    expect(await workspace.readText(`${folder}/a/b.txt`)).toBe('größer');
    expect([...(await workspace.readBytes(`${folder}/a/c.bin`))]).toEqual([0, 255]);
    expect((await workspace.readBytes(`${folder}/a/b.txt`)).byteLength).toBe(8);
  });

  it('replaces a file that is there', async () => {
    const workspace = create();
    await workspace.write(`${folder}/a.txt`, 'old and longer');
    await workspace.write(`${folder}/a.txt`, 'new');
    expect(await workspace.readText(`${folder}/a.txt`)).toBe('new');
  });

  it('lists names in order, folders with a slash', async () => {
    const workspace = create();
    for (const name of ['b.txt', 'a/x.txt', 'C.txt']) await workspace.write(`${folder}/${name}`, '');
    expect(await workspace.list(folder)).toEqual(['C.txt', 'a/', 'b.txt']);
  });

  it('knows what is there, and removes it', async () => {
    const workspace = create();
    await workspace.write(`${folder}/a/x.txt`, '');
    expect(await workspace.exists(`${folder}/a/x.txt`)).toBe(true);
    expect(await workspace.exists(`${folder}/a`)).toBe(true);
    await workspace.remove(`${folder}/a`);
    expect(await workspace.exists(`${folder}/a/x.txt`)).toBe(false);
    await expect(workspace.remove(`${folder}/a`)).resolves.toBeUndefined();
  });

  it('rejects for a file or a folder that is not there', async () => {
    const workspace = create();
    await expect(workspace.readText(`${folder}/none.txt`)).rejects.toThrow();
    await expect(workspace.readBytes(`${folder}/none.txt`)).rejects.toThrow();
    await expect(workspace.list(`${folder}/none`)).rejects.toThrow();
  });

  it('tells the time', () => {
    expect(create().now()).toBeInstanceOf(Date);
  });
});

describe('a file on the real disk', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'workspace-'));
  });
  afterEach(async () => {
    await rm(folder, { recursive: true });
  });

  it.skipIf(process.platform === 'win32')('is private, and so is its new folder', async () => {
    await createNodeWorkspace().write(join(folder, 'new/deep/a.txt'), 'x');
    const modeOf = async (path: string) => (await stat(join(folder, path))).mode & 0o777;
    expect(await modeOf('new/deep/a.txt')).toBe(0o600);
    expect(await modeOf('new')).toBe(0o700);
    expect(await modeOf('new/deep')).toBe(0o700);
  });

  it('leaves nothing half-written beside it, also when it cannot be put in place', async () => {
    const workspace = createNodeWorkspace();
    await workspace.write(join(folder, 'taken/a.txt'), 'x');
    await expect(workspace.write(join(folder, 'taken'), 'y')).rejects.toThrow();
    expect(await readdir(folder)).toEqual(['taken']);
  });

  it.skipIf(process.platform === 'win32')(
    'is refused, not tried for ever, where the current folder is gone',
    () => {
      const workspace = pathToFileURL(resolve('src/io/node-workspace.ts')).href;
      const script = `
      const { createNodeWorkspace } = await import('${workspace}');
      const { rmdirSync } = await import('node:fs');
      process.chdir('${join(folder, 'gone')}');
      rmdirSync('${join(folder, 'gone')}');
      await createNodeWorkspace().write('out/a/b.txt', 'x').catch(({ code }) => console.log(code));`;
      mkdirSync(join(folder, 'gone'));
      const options = { encoding: 'utf8', timeout: 30_000 } as const;
      const ran = spawnSync(
        process.execPath,
        ['--import', 'tsx', '--input-type=module', '-e', script],
        options,
      );
      expect(ran.stdout).toBe('ENOENT\n');
      expect(readdirSync(folder)).toEqual([]);
    },
  );

  it('is whole for a reader at any moment: many writers leave the text of one of them', async () => {
    const workspace = createNodeWorkspace();
    const texts = Array.from({ length: 20 }, (_, index) => String(index).repeat(50_000));
    await Promise.all(texts.map(async (text) => workspace.write(join(folder, 'a.txt'), text)));
    expect(texts).toContain(await workspace.readText(join(folder, 'a.txt')));
    expect(await readdir(folder)).toEqual(['a.txt']);
  });
});
