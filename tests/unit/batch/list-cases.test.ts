import { describe, expect, it } from 'vitest';

import { isClinicProfile, listCases } from '../../../src/batch/list-cases.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

describe('the cases of a folder', () => {
  it('are its YAML files in order of name, without clinic profiles, folders and other files', async () => {
    const workspace = createMemoryWorkspace({
      'week/b.yaml': 'case: "B"',
      'week/a.yml': 'case: "A"',
      'week/clinic.yaml': 'plainleaf: 1\nclinic:\n  name: North',
      'week/notes.txt': '',
      'week/old/c.yaml': 'case: "C"',
      'week/broken.yaml': '{{',
    });
    expect(await listCases(workspace, 'week')).toMatchObject({
      value: ['week/a.yml', 'week/b.yaml', 'week/broken.yaml'],
    });
  });

  it.each([
    ['has none', 'week'],
    ['is not there', 'month'],
  ])('are refused when the folder %s', async (_, folder) => {
    const workspace = createMemoryWorkspace({ 'week/notes.txt': '' });
    expect(await listCases(workspace, folder)).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'FILE_NOT_FOUND' }],
    });
  });
});

describe('a file', () => {
  it('is a clinic profile when it says clinic and neither case nor patient', () => {
    expect(isClinicProfile('plainleaf: 1\nclinic:\n  name: x\n')).toBe(true);
    expect(isClinicProfile('plainleaf: 1\ncase: "1"\nclinic: x\n')).toBe(false);
    expect(isClinicProfile('plainleaf: 1\ncase: "1"\npatient:\n  clinic: x\n')).toBe(false);
  });
});
