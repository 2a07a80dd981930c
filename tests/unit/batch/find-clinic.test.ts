import { describe, expect, it } from 'vitest';

import { findClinic } from '../../../src/batch/find-clinic.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

describe('the clinic profile of a case', () => {
  it.each([
    ['beside it', 'clinic/a/b/clinic.yaml'],
    ['one folder above', 'clinic/a/clinic.yaml'],
    ['two folders above', 'clinic/clinic.yaml'],
  ])('is found %s', async (_, place) => {
    const workspace = createMemoryWorkspace({ [place]: 'plainleaf: 1' });
    expect(await findClinic(workspace, 'clinic/a/b/case.yaml')).toMatchObject({ ok: true, value: place });
  });

  it('is the nearest one', async () => {
    const workspace = createMemoryWorkspace({ 'clinic/clinic.yaml': '', 'clinic/a/clinic.yaml': '' });
    expect(await findClinic(workspace, 'clinic/a/b/case.yaml')).toMatchObject({
      value: 'clinic/a/clinic.yaml',
    });
  });

  it('is not looked for further up', async () => {
    const workspace = createMemoryWorkspace({ 'clinic.yaml': '' });
    expect(await findClinic(workspace, 'clinic/a/b/case.yaml')).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'FILE_NOT_FOUND', hint: 'Name the clinic profile with --clinic FILE.' }],
    });
  });

  it('is found above the folder where the command runs', async () => {
    const workspace = createMemoryWorkspace({ '../clinic.yaml': '' });
    expect(await findClinic(workspace, 'case.yaml')).toMatchObject({ value: '../clinic.yaml' });
  });
});
