import { describe, expect, it } from 'vitest';

import { checkEvidence, loadEvidence } from '../../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import type { Workspace } from '../../../src/io/workspace.ts';
import { recordsFor } from '../../../src/model/evidence.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';
import { diagnose, folder, foundAt, plant, smallEvidence } from './small-evidence.ts';
import type { SmallFile } from './small-evidence.ts';

const digester = { sha256, canonicalJson };

async function load(workspace: Workspace, cache?: string) {
  const result = await loadEvidence(workspace, { folder, digester, ...(cache !== undefined && { cache }) });
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value;
}

describe('loading evidence', () => {
  it('gives the release, the lists and the look-ups', async () => {
    const evidence = await load(createMemoryWorkspace(smallEvidence()));
    expect(evidence).toMatchObject({
      version: '2026.11',
      date: '2026-11-25',
      nextReview: '2027-11-25',
      paidBy: { en: 'nobody' },
    });
    expect(evidence.records).toHaveLength(7);
    expect(evidence.recordsByOption.get('sleeve')).toHaveLength(6);
    expect(evidence.studies.get('beta-2021')?.citation.title).toBe('Second');
    expect(evidence.reversibility.get('sleeve')?.undo.possible).toBe('no');
    expect(recordsFor(evidence, 'no-operation')).toEqual([]);
  });

  it('refuses the whole release for one bad figure', async () => {
    const { files } = plant('records/sleeve.yaml', 'events: 3, n: 200', 'events: 3');
    const result = await loadEvidence(createMemoryWorkspace(files), { folder, digester });
    expect(result.ok).toBe(false);
  });

  it('says so when the folder is not there', async () => {
    const result = await loadEvidence(createMemoryWorkspace(), { folder, digester });
    expect(result).toMatchObject({ ok: false, diagnostics: [{ code: 'FILE_NOT_FOUND' }] });
  });
});

type Fault = Readonly<{ what: string; code: string; file: SmallFile; text: string; write: string }>;

const shapeFaults: readonly Fault[] = [
  {
    what: 'a key that is not part of the format',
    code: 'EVIDENCE_INVALID',
    file: 'definitions.yaml',
    text: 'term: BMI',
    write: 'term: BMI, terms: BMI',
  },
  {
    what: 'a text in place of a number',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    text: 'events: 3, n: 200',
    write: 'events: three, n: 200',
  },
  {
    what: 'a word outside its list',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    text: 'seen: memory',
    write: 'seen: hearsay',
  },
  {
    what: 'a kind of record that is not known',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    text: 'kind: duration',
    write: 'kind: length',
  },
  {
    what: 'one key twice',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    text: '  kind: duration',
    write: '  outcome: stay',
  },
  {
    what: 'a date that does not exist',
    code: 'EVIDENCE_INVALID',
    file: 'release.yaml',
    text: 'date: 2026-11-25',
    write: 'date: 2026-11-31',
  },
  {
    what: 'text that is no YAML',
    code: 'EVIDENCE_INVALID',
    file: 'metrics.yaml',
    text: '- { code: score, unit: points',
    write: '- { code: [score, unit: points',
  },
];

describe('errors of shape', () => {
  it.each(shapeFaults)('$what is found at its file and line', async ({ code, file, text, write }) => {
    const planted = plant(file, text, write);
    expect(await diagnose(planted.files)).toContainEqual(foundAt(planted, code));
  });

  const absent = [
    { key: 'people', code: 'EVIDENCE_NO_PEOPLE', text: '  people: { indication: none, diabetes: none }\n' },
    { key: 'time', code: 'EVIDENCE_NO_TIME', text: '  time: { months: 12, basis: at }\n' },
    { key: 'study', code: 'EVIDENCE_NO_CITATION', text: '  study: beta-2021\n' },
    { key: 'certainty', code: 'EVIDENCE_INVALID', text: '  certainty: high\n' },
    { key: 'seen', code: 'EVIDENCE_INVALID', text: '  seen: page-2nd\n' },
    { key: 'kind', code: 'EVIDENCE_INVALID', text: '  kind: benefit\n' },
  ] as const;

  it.each(absent)('a record without $key is found where the record stands', async ({ code, text }) => {
    const planted = plant('records/tablet.yaml', text, '');
    const start = plant('records/tablet.yaml', 'id: tablet', 'id: tablet');
    expect(await diagnose(planted.files)).toContainEqual(foundAt({ ...start, files: planted.files }, code));
  });

  it('points at the unknown key itself', async () => {
    const planted = plant('definitions.yaml', 'term: BMI', 'terms: BMI');
    const found = (await diagnose(planted.files)).find(({ message }) => message.includes('"terms"'));
    expect(found?.span).toMatchObject({ line: planted.line, column: '- { id: bmi, '.length + 1 });
  });

  it('finds all errors at once, in order of file and line', async () => {
    const files = {
      ...plant('studies/a.yaml', 'design: registry', 'design: guess').files,
      [`${folder}/definitions.yaml`]: '- { id: bmi }\n',
    };
    const places = (await diagnose(files)).map(({ span }) => `${span?.file ?? ''}:${String(span?.line)}`);
    expect(places.length).toBeGreaterThan(4);
    expect(places.at(-1)).toBe(
      `${folder}/studies/a.yaml:${String(plant('studies/a.yaml', 'design: registry', '').line)}`,
    );
    expect(places.slice(0, -1).every((place) => place === `${folder}/definitions.yaml:1`)).toBe(true);
  });

  it('refuses a file that is a mapping where a list belongs', async () => {
    const files = { ...smallEvidence(), [`${folder}/metrics.yaml`]: 'code: TWL\n' };
    expect(await diagnose(files)).toMatchObject([
      { code: 'EVIDENCE_INVALID', span: { file: `${folder}/metrics.yaml`, line: 1 } },
    ]);
  });

  it('refuses a file that nothing reads, and a release without one that is needed', async () => {
    const { [`${folder}/standing.yaml`]: standing = '', ...others } = smallEvidence();
    const files = { ...others, [`${folder}/standings.yaml`]: standing };
    const found = await checkEvidence(createMemoryWorkspace(files), folder);
    expect(found.map(({ span }) => span?.file)).toEqual([
      `${folder}/standing.yaml`,
      `${folder}/standings.yaml`,
    ]);
  });
});

describe('the digest of a release', () => {
  it('stays the same with the line ends of another system', async () => {
    const crlf = Object.fromEntries(
      Object.entries(smallEvidence()).map(([path, text]) => [path, text.replaceAll('\n', '\r\n')]),
    );
    const here = await load(createMemoryWorkspace(smallEvidence()));
    const there = await load(createMemoryWorkspace(crlf));
    expect(there.digest).toBe(here.digest);
    expect(here.digest).toMatch(/^[0-9a-f]{64}$/);
  });

  it('changes with one letter, and with the name of a file', async () => {
    const here = await load(createMemoryWorkspace(smallEvidence()));
    const changed = await load(
      createMemoryWorkspace(plant('standing.yaml', 'On its list.', 'On the list.').files),
    );
    const { [`${folder}/studies/a.yaml`]: studies = '', ...others } = smallEvidence();
    const renamed = await load(createMemoryWorkspace({ ...others, [`${folder}/studies/b.yaml`]: studies }));
    expect(new Set([here.digest, changed.digest, renamed.digest]).size).toBe(3);
  });
});

describe('the prepared copy', () => {
  const cacheFile = (workspace: { files: ReadonlyMap<string, unknown> }): string =>
    [...workspace.files.keys()].find((path) => path.startsWith('cache/')) ?? '';

  it('gives the same evidence as the files', async () => {
    const first = createMemoryWorkspace(smallEvidence());
    const fresh = await load(first, 'cache');
    const copy = String(first.files.get(cacheFile(first)));
    const second = createMemoryWorkspace({ ...smallEvidence(), [cacheFile(first)]: copy });
    const recalled = await load(second, 'cache');
    expect(recalled).toEqual(fresh);
    expect(second.reads).toContain(cacheFile(first));
  });

  it('is what is used: a copy of the same digest with another release wins over the files', async () => {
    const first = createMemoryWorkspace(smallEvidence());
    await load(first, 'cache');
    const copy = String(first.files.get(cacheFile(first))).replace('invented for tests', 'from the copy');
    const second = createMemoryWorkspace({ ...smallEvidence(), [cacheFile(first)]: copy });
    expect((await load(second, 'cache')).madeBy).toEqual({ en: 'from the copy' });
  });

  it.each([
    ['broken', () => '{'],
    ['of another shape', (copy: string) => copy.replace('"paid_by"', '"payed_by"')],
    ['of an older version', (copy: string) => copy.replace('"version":', '"version":0,"was":')],
    ['of other data under a wrong name', (copy: string) => copy.replace(/"digest":"./, '"digest":"_')],
  ])('is made anew when it is %s', async (_what, spoil) => {
    const first = createMemoryWorkspace(smallEvidence());
    await load(first, 'cache');
    const copy = String(first.files.get(cacheFile(first))).replace('invented for tests', 'from the copy');
    const second = createMemoryWorkspace({ ...smallEvidence(), [cacheFile(first)]: spoil(copy) });
    expect((await load(second, 'cache')).madeBy).toEqual({ en: 'invented for tests' });
    expect(String(second.files.get(cacheFile(first)))).toContain('invented for tests');
  });

  it('is not needed: a disk that refuses it changes nothing', async () => {
    const workspace: Workspace = {
      ...createMemoryWorkspace(smallEvidence()),
      write: async () => Promise.reject(new Error('read-only')),
    };
    expect((await load(workspace, 'cache')).version).toBe('2026.11');
  });

  it('is not made of data that are wrong', async () => {
    const workspace = createMemoryWorkspace(
      plant('records/sleeve.yaml', 'events: 3, n: 200', 'events: 3').files,
    );
    await loadEvidence(workspace, { folder, digester, cache: 'cache' });
    expect(cacheFile(workspace)).toBe('');
  });
});

describe('a second load in the same process', () => {
  it('gives the same evidence, and new evidence once a file has changed', async () => {
    const workspace = createMemoryWorkspace(smallEvidence());
    const first = await load(workspace);
    expect(await load(workspace)).toBe(first);
    await workspace.write(
      `${folder}/release.yaml`,
      String(workspace.files.get(`${folder}/release.yaml`)).replace('nobody', 'a fund'),
    );
    expect((await load(workspace)).paidBy).toEqual({ en: 'a fund' });
  });
});
