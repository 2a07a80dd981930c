import { describe, expect, it } from 'vitest';

import type { Outcome } from '../../../src/batch/index.ts';
import {
  exitCodeOf,
  exitCodeOfOutcomes,
  outcomeLine,
  outcomesAsJson,
} from '../../../src/cli/report-outcomes.ts';
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';

const error = (code: Diagnostic['code']): Diagnostic => ({ code, severity: 'error', message: 'm' });
const warning: Diagnostic = { code: 'COMPARE_EVIDENCE_MISSING', severity: 'warning', message: 'm' };
const made = {
  file: 'a.yaml',
  caseReference: 'PE-0417',
  language: 'en',
  made: true,
  pages: 19,
  state: 'draft',
  written: { pdf: 'out/PE-0417/en/packet.pdf', record: 'out/PE-0417/en/packet.json', sha256: 'abc' },
  open: [{ code: 'words', documents: 'all' }],
  clinic: 'clinic.yaml',
  warnings: [warning],
} as const satisfies Outcome;
const withheld: Outcome = {
  file: 'a.yaml',
  caseReference: 'PE-0417',
  language: 'es',
  made: false,
  diagnostics: [warning, error('VERIFY_NUMBER_ABSENT'), error('VERIFY_NUMBER_ABSENT'), error('VERIFY_ORDER')],
};
const refused: Outcome = { file: 'b.yaml', made: false, diagnostics: [error('CASE_BAD_UNIT')] };

describe('what became of a packet', () => {
  it('is one line', () => {
    expect([made, withheld, refused].map(outcomeLine)).toEqual([
      'PE-0417     en     19 pages   draft    out/PE-0417/en/packet.pdf',
      'PE-0417     es     not made   VERIFY_NUMBER_ABSENT and 1 more kind',
      'b.yaml             not made   CASE_BAD_UNIT',
    ]);
  });

  it('is told to machines in full', () => {
    expect(JSON.parse(outcomesAsJson([made, refused]))).toEqual({
      packets: [
        {
          file: 'a.yaml',
          case: 'PE-0417',
          language: 'en',
          made: true,
          pages: 19,
          state: 'draft',
          open: ['words'],
          ...made.written,
          warnings: [warning],
        },
        { file: 'b.yaml', made: false, diagnostics: [error('CASE_BAD_UNIT')] },
      ],
      made: 1,
      notMade: 1,
      summary: {
        languages: [{ language: 'en', final: 0, draft: 1, example: 0, notMade: 0 }],
        open: [
          {
            code: 'words',
            languages: ['en'],
            cases: ['PE-0417'],
            packets: 1,
            clinic: 'clinic.yaml',
            documents: 'all',
            what: 'nobody qualified has read the words',
            next: ['have them read on the pages', 'then plainleaf languages sign en --clinic clinic.yaml'],
          },
        ],
        notMade: [{ file: 'b.yaml', codes: ['CASE_BAD_UNIT'] }],
      },
    });
  });

  it('decides the exit code: that of the first error', () => {
    expect(exitCodeOfOutcomes([made])).toBe(0);
    expect(exitCodeOfOutcomes([made, withheld, refused])).toBe(7);
    expect(exitCodeOfOutcomes([refused, withheld])).toBe(3);
    expect(exitCodeOf([warning])).toBe(0);
    expect(exitCodeOf([warning, error('LOCALE_KEY_MISSING')])).toBe(5);
  });
});
