import { describe, expect, it } from 'vitest';

import { checkChanges, diffEvidence } from '../../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import type { Changes } from '../../../src/model/release.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';
import { plant, smallEvidence } from './small-evidence.ts';

type Files = Readonly<Record<string, string>>;

/** The difference from the small evidence to a changed one. */
async function differenceTo(after: Files, before: Files = smallEvidence()) {
  const moved = Object.entries(after).map(([path, text]): [string, string] => [
    path.replace('evidence/', 'new/'),
    text,
  ]);
  const workspace = createMemoryWorkspace({ ...before, ...Object.fromEntries(moved) });
  return diffEvidence(workspace, { before: 'evidence', after: 'new' }, { sha256, canonicalJson });
}

async function demand(after: Files) {
  const found = await differenceTo(after);
  if (!found.ok) throw new Error(JSON.stringify(found.diagnostics));
  return found.value;
}

const { 'evidence/records/tablet.yaml': tablet = '', ...rest } = smallEvidence();
const changedLeak = plant('records/sleeve.yaml', 'events: 3, n: 200', 'events: 4, n: 200').files;

describe('the difference between two releases', () => {
  it('is nothing between a release and itself, however its files are written', async () => {
    const spaced = Object.fromEntries(
      Object.entries(smallEvidence()).map(([path, text]) => [path, `# a remark\n${text}`]),
    );
    expect((await demand(spaced)).lists).toEqual([]);
  });

  it('names what was added, changed and withdrawn, list by list', async () => {
    const renamed = tablet.replace('id: tablet.responder-5-TWL.12m.beta-2021', 'id: tablet.other');
    const options = plant('options.yaml', 'name: Tablet', 'name: Pill').files['evidence/options.yaml'];
    const after = {
      ...changedLeak,
      'evidence/records/tablet.yaml': renamed,
      'evidence/options.yaml': options ?? '',
    };
    expect((await demand(after)).lists).toEqual([
      { list: 'options', added: [], changed: ['tablet'], withdrawn: [] },
      {
        list: 'records',
        added: ['tablet.other'],
        changed: ['sleeve.leak.30d.alpha-2020'],
        withdrawn: ['tablet.responder-5-TWL.12m.beta-2021'],
      },
    ]);
  });

  it('does not count a record that moved to another file', async () => {
    expect((await demand({ ...rest, 'evidence/records/moved.yaml': tablet })).lists).toEqual([]);
  });

  it('tells a list that the older release did not have', async () => {
    const { 'evidence/topics.yaml': topics, ...older } = smallEvidence();
    const found = await differenceTo(smallEvidence(), older);
    expect(topics).toBeDefined();
    expect(found.ok && found.value.lists).toEqual([
      {
        list: 'topics',
        added: ['benefits', 'first-month', 'later-years', 'living-with-it'],
        changed: [],
        withdrawn: [],
      },
    ]);
  });

  it('says which releases it compared', async () => {
    const after = plant('release.yaml', "version: '2026.11'", "version: '2027.11'").files;
    const { before, after: later } = await demand(after);
    expect([before.version, later.version]).toEqual(['2026.11', '2027.11']);
    expect(before.digest).not.toBe(later.digest);
  });

  it('is refused for a folder that is not there, is no release, or holds a file that cannot be read', async () => {
    const { 'evidence/release.yaml': release, ...noRelease } = smallEvidence();
    expect(release).toBeDefined();
    expect(await differenceTo(smallEvidence(), {})).toMatchObject({
      diagnostics: [{ code: 'FILE_NOT_FOUND' }],
    });
    expect(await differenceTo(noRelease)).toMatchObject({ diagnostics: [{ code: 'FILE_NOT_FOUND' }] });
    expect(await differenceTo({ ...rest, 'evidence/metrics.yaml': '- {' })).toMatchObject({
      diagnostics: [{ code: 'EVIDENCE_INVALID' }],
    });
  });
});

describe('what a release says it changed', () => {
  const nothing: Changes = { added: [], changed: [], withdrawn: [] };

  async function complaints(changes: Changes | null, digest?: string): Promise<readonly string[]> {
    const found = await demand({ ...changedLeak, 'evidence/records/tablet.yaml': '[]' });
    const { version, date } = found.before;
    const last = { version, date, digest: digest ?? found.before.digest, changes: null };
    return checkChanges({ changes, earlier: [last] }, found).map(({ message }) => message);
  }

  it('is in order when it is what the files show', async () => {
    const why = 'the study was retracted';
    const withdrawn = [{ record: 'tablet.responder-5-TWL.12m.beta-2021', why }];
    expect(await complaints({ added: [], changed: ['sleeve.leak.30d.alpha-2020'], withdrawn })).toEqual([]);
  });

  it('is refused for what it leaves out', async () => {
    const missing = [
      'sleeve.leak.30d.alpha-2020 was changed, and the release does not say so',
      'tablet.responder-5-TWL.12m.beta-2021 was withdrawn, and the release does not say so',
    ];
    expect(await complaints(nothing)).toEqual(missing);
    expect(await complaints(null)).toEqual(missing);
  });

  it('is refused for what it makes up', async () => {
    expect(await complaints({ ...nothing, added: ['sleeve.wellbeing.12m.beta-2021'] })).toContain(
      'the release says that sleeve.wellbeing.12m.beta-2021 was added, and it was not',
    );
  });

  it('is held only against the release right before it, as that was published', async () => {
    expect(await complaints(nothing, '0'.repeat(64))).toEqual([
      'the folder is not release 2026.11 as it was published: its digest is another',
    ]);
    const found = await demand(changedLeak);
    const other = { version: '2025.11', date: '2025-11-25', digest: '0'.repeat(64), changes: null };
    expect(checkChanges({ changes: nothing, earlier: [other] }, found)).toEqual([]);
    expect(checkChanges({ changes: null, earlier: [] }, found)).toEqual([]);
  });
});
