import { describe, expect, it } from 'vitest';

import * as plainleaf from '../../src/index.ts';

describe('what a program may use of plainleaf', () => {
  it('is exactly this', () => {
    expect(Object.keys(plainleaf).sort((a, b) => (a < b ? -1 : 1))).toEqual([
      'createNodeWorkspace',
      'diagnosticCatalogue',
      'exitCodes',
      'formatDiagnostics',
      'listCases',
      'makePacket',
      'openCase',
      'prepare',
      'runBatch',
    ]);
  });
});
