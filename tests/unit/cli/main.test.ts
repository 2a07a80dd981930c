import { describe, expect, it } from 'vitest';

import { commands } from '../../../src/cli/commands.ts';
import { main } from '../../../src/cli/main.ts';
import { createTerminal } from '../../../src/cli/terminal.ts';
import { exitCodes } from '../../../src/diagnostics/codes.ts';
import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import type { Workspace } from '../../../src/io/workspace.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

/** Runs a command on this checkout's own evidence, with what it printed. */
async function call(args: readonly string[], workspace: Workspace = createNodeWorkspace()) {
  const printed = { out: '', err: '' };
  const terminal = createTerminal({
    out: { write: (text) => (printed.out += String(text)) !== '' },
    err: { write: (text) => (printed.err += String(text)) !== '' },
  });
  const code = await main(args, { workspace, terminal, root: '.' });
  return { code, ...printed };
}

describe('plainleaf', () => {
  it('explains itself, with every command and every exit code', async () => {
    const { code, out } = await call(['--help']);
    expect(code).toBe(0);
    for (const { name, summary } of commands)
      expect(out).toMatch(new RegExp(`^  ${name} .*${summary}$`, 'm'));
    for (const exitCode of Object.values(exitCodes))
      expect(out).toMatch(new RegExp(`^  ${String(exitCode)} `, 'm'));
  });

  it.each(commands.map((command) => [command.name, command] as const))(
    'explains %s with all its options',
    async (name, command) => {
      const { code, out } = await call([name, '--help']);
      expect(code).toBe(0);
      for (const option of command.options) expect(out).toContain(`--${option.name}`);
      expect(out.split('\n').every((line) => line.length <= 110)).toBe(true);
    },
  );

  it('says its version', async () => {
    expect(await call(['--version'])).toMatchObject({ code: 0, out: '0.1.0\n' });
  });

  it('says what it does not understand, on the side of errors', async () => {
    expect(await call(['mak'])).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('mak is not a command') as string,
    });
  });

  it('reports a fault of its own without details of what it was about', async () => {
    const { code, err } = await call(
      ['--version'],
      createMemoryWorkspace({ 'package.json': 'Ilsa Marchetti-Boone' }),
    );
    expect(code).toBe(exitCodes.internal);
    expect(err).toContain('INTERNAL');
    expect(err).not.toContain('Ilsa');
  });
});

describe('plainleaf evidence', () => {
  it('lists records that fit what was asked', async () => {
    const { code, out } = await call([
      'evidence',
      'list',
      '--option',
      'sleeve',
      '--outcome',
      'leak',
      '--seen',
      'page',
    ]);
    const lines = out.trim().split('\n');
    expect(code).toBe(0);
    expect(lines.length).toBeGreaterThan(5);
    expect(
      lines.slice(0, -2).every((line) => line.startsWith('sleeve.leak.') && / page +\S/.test(line)),
    ).toBe(true);
    expect(lines.at(-1)).toBe(`${String(lines.length - 2)} records`);
  });

  it('gives the same as JSON', async () => {
    const { out } = await call(['evidence', 'list', '--option', 'sleeve', '--outcome', 'leak', '--json']);
    expect(JSON.parse(out)).toEqual(
      expect.arrayContaining([expect.objectContaining({ option: 'sleeve', outcome: 'leak' })]),
    );
  });

  it('shows a record with its study and where it was read', async () => {
    const { code, out } = await call(['evidence', 'show', 'sleeve.leak.30d.mbsaqip-2015-2020']);
    expect(code).toBe(0);
    expect(out).toMatch(/^figure +events 598, n 370369$/m);
    expect(out).toMatch(/^pubmed +37258316$/m);
    expect(out).toMatch(/^read at +https:/m);
  });

  it('lists facts on aftercare by topic, and both sorts of an option', async () => {
    const { out } = await call(['evidence', 'list', '--topic', 'supplement', '--option', 'band']);
    const lines = out.trim().split('\n');
    expect(lines.slice(0, -2).every((line) => line.startsWith('supplement.'))).toBe(true);
    expect(lines.at(-1)).toBe(`${String(lines.length - 2)} facts`);
    const both = JSON.parse((await call(['evidence', 'list', '--option', 'band', '--json'])).out) as object[];
    expect(both).toEqual(expect.arrayContaining([expect.objectContaining({ topic: 'supplement' })]));
    expect(both).toEqual(expect.arrayContaining([expect.objectContaining({ outcome: 'slippage' })]));
  });

  it('shows a fact on aftercare with its source, and that it does not print as a rule', async () => {
    const { code, out } = await call(['evidence', 'show', 'supplement.calcium.standard.asmbs-2016']);
    expect(code).toBe(0);
    expect(out).toMatch(/^says +1200 to 1500 mg\/day$/m);
    expect(out).toMatch(/^prints +never as a rule: conflict$/m);
    expect(out).toMatch(/^conflicts with +supplement\.calcium\.bomss-2020$/m);
    expect(out).toMatch(/^read at +https:\/\/guidelinecentral\.com\/guideline\/8057$/m);
    const sign = await call(['evidence', 'show', 'warning-emergency.belly-pain.bmj-2016']);
    expect(sign.out).toMatch(/^prints +as the rule of its source$/m);
  });

  it('says by when to read a record again', async () => {
    const { out } = await call(['evidence', 'show', 'plication.leak.4m.andraos-plication-449']);
    expect(out).toMatch(/^read again +by 2027-05-25 \(counted from 2026-11-25\)$/m);
    const unread = await call(['evidence', 'show', 'band.death.30d.labs1-2009']);
    expect(unread.out).not.toContain('read again');
  });

  it('says what is due for review on a day, and by a later day with the places to read again', async () => {
    const today = await call(['evidence', 'due', '--date', '2026-11-25']);
    expect(today.out).toContain('is to be looked over by 2027-11-25.');
    expect(today.out).toMatch(
      /^No source is to be read again by 2026-11-25\. The next is due on 2027-05-25 /m,
    );
    const later = await call(['evidence', 'due', '--by', '2027-11-25', '--date', '2026-11-25']);
    expect(later.out).toContain('that day has come');
    expect(later.out).toMatch(
      /^ {2}2027-05-25 {2}andraos-plication-449\n {4}read at {2}https:\S+\n( {13}https:\S+\n)* {4}figures {2}plication\./m,
    );
  });

  it('says which release it is, and what that holds and changed', async () => {
    const { code, out } = await call(['evidence', 'release']);
    expect(code).toBe(0);
    expect(out).toMatch(/^release +2026\.11, 2026-11-25$/m);
    expect(out).toMatch(/^digest +[0-9a-f]{64}$/m);
    expect(out).toMatch(/^changed +the first release$/m);
    expect(JSON.parse((await call(['evidence', 'release', '--json'])).out)).toMatchObject({ earlier: [] });
  });

  it('says what differs from another release, in the form in which the release file takes it', async () => {
    const disk = createNodeWorkspace();
    const [gone, changed] = [
      'sleeve.leak.30d.mbsaqip-2015-2020',
      'sleeve.acid-medicine.120m.sleevepass-2022',
    ];
    const old = async (path: string): Promise<string> => {
      const text = await disk.readText(path.replace('old/', 'src/evidence/data/'));
      return path.startsWith('old/')
        ? text
            .replace(`id: ${gone}`, 'id: sleeve.old')
            .replace(
              'percent: 64 }\n  followed: { seen: 193, of: 228 }',
              'percent: 63 }\n  followed: { seen: 193, of: 228 }',
            )
        : text;
    };
    const workspace = {
      ...disk,
      list: async (path: string) => disk.list(path.replace(/^old/, 'src/evidence/data')),
      readText: old,
    };
    const { code, out } = await call(['evidence', 'diff', 'old'], workspace);
    expect(code).toBe(0);
    expect(out).toMatch(/^records +1 added, 1 changed, 1 withdrawn$/m);
    expect(out).toContain(
      `changes:\n  added:\n    - ${gone}\n  changed:\n    - ${changed}\n  withdrawn:\n    - { record: sleeve.old, why: }\n`,
    );
    expect((await call(['evidence', 'diff', 'nowhere'], workspace)).code).toBe(2);
    expect((await call(['evidence', 'diff', 'src/evidence/data'])).out).toContain('no entry differs');
  });

  it.each([
    ['list', 'evidence'],
    ['lint', 'evidence'],
    ['compare a.yaml', 'evidence'],
    ['compare a.yaml', 'words'],
  ] as const)('%s says what is wrong when the %s are broken', async (args, stage) => {
    const file = { evidence: 'src/evidence/data/release.yaml', words: 'locales/es/options.yaml' }[stage];
    const disk = createNodeWorkspace();
    const readText = async (path: string) => (path === file ? 'version: [2026' : disk.readText(path));
    const words = args === 'list' || args === 'lint' ? ['evidence', args] : args.split(' ');
    const { code, err } = await call(words, { ...disk, readText });
    expect(code).toBe(exitCodes[stage]);
    expect(err).toContain(`${file}:`);
  });

  it('finds the shipped evidence in order', async () => {
    expect(await call(['evidence', 'lint'])).toEqual({
      code: 0,
      out: 'The evidence is in order.\n',
      err: '',
    });
  });

  it.each([
    ['an option that is not defined', ['list', '--option', 'slev'], 'there is no slev'],
    ['an outcome that is not defined', ['list', '--outcome', 'lek'], 'there is no lek'],
    ['another way of reading', ['list', '--seen', 'yes'], '--seen takes page, page-2nd or memory'],
    ['a record that is not there', ['show', 'sleeve.x'], 'there is no record sleeve.x'],
    [
      'a topic that is not there',
      ['list', '--topic', 'vitamins'],
      'there is no vitamins; there are liver-diet, ',
    ],
    [
      'an outcome and a topic at once',
      ['list', '--topic', 'supplement', '--outcome', 'leak'],
      'give one of the two',
    ],
    ['a word it does not know', ['lst'], 'evidence takes list, show ID, due, release, diff FOLDER or lint'],
    [
      'a difference from nothing',
      ['diff'],
      'evidence takes list, show ID, due, release, diff FOLDER or lint',
    ],
    ['a day that is none', ['due', '--by', '2027-02-30'], '--by 2027-02-30 is not a day'],
    [
      'a record too many',
      ['list', 'sleeve.x'],
      'evidence takes list, show ID, due, release, diff FOLDER or lint',
    ],
  ])('refuses %s', async (_, args, why) => {
    expect(await call(['evidence', ...args])).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining(why) as string,
    });
  });
});

describe('plainleaf schema', () => {
  it.each([
    ['case', 'patient'],
    ['clinic', 'surgeons'],
  ])('prints the format of a %s', async (kind, key) => {
    const { code, out } = await call(['schema', kind]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ properties: { [key]: expect.anything() as unknown } });
  });

  it('refuses another word', async () => {
    expect(await call(['schema', 'evidence'])).toMatchObject({ code: 2 });
  });
});
