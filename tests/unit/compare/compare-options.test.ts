import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../../src/compare/index.ts';
import { listCells, listRecordsUsed, refuseUnverified } from '../../../src/compare/list-records-used.ts';
import { isPrintable } from '../../../src/model/evidence.ts';
import {
  compareWell,
  makeCase,
  makeClinic,
  makeEvidence,
  makeRecord,
  readShippedEvidence,
  today,
} from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

describe('compareOptions', () => {
  it('has a column for each option, in the order of the case', () => {
    const table = compareWell([], { decision: { options: ['no-operation', 'bypass', 'semaglutide'] } });
    expect(
      table.options.map(({ code, figuresFrom, kind, indication }) => [code, figuresFrom, kind, indication]),
    ).toEqual([
      ['no-operation', 'usual-care', 'none', 'none'],
      ['bypass', 'bypass', 'operation', 'first-operation'],
      ['semaglutide', 'semaglutide', 'medicine', 'none'],
    ]);
  });

  it('reads the figures of no operation from usual care', () => {
    const people = { indication: 'none', diabetes: 'unknown' };
    const time = { months: 60, basis: 'by' };
    const records = [makeRecord({ id: 'u', option: 'usual-care', outcome: 'gallstones', people, time })];
    expect(compareWell(records, { decision: { options: ['no-operation'] } }).recordsUsed).toEqual(['u']);
  });

  it.each(['usual-care', 'any-surgery', 'toString'])(
    'refuses the option %s, which nobody can choose',
    (option) => {
      const input = { clinic: makeClinic(), evidence: makeEvidence([]), date: today };
      const result = compareOptions({
        ...input,
        case: makeCase({ decision: { options: ['sleeve', option] } }),
      });
      expect(result).toMatchObject({
        ok: false,
        diagnostics: [{ code: 'CASE_UNKNOWN_OPTION', path: 'decision.options[1]' }],
      });
    },
  );

  it('tells the clinic of an option of which nothing at all is known', () => {
    const input = { clinic: makeClinic(), evidence: makeEvidence([makeRecord()]), date: today };
    const result = compareOptions({
      ...input,
      case: makeCase({ decision: { options: ['sleeve', 'bypass'] } }),
    });
    expect(result).toMatchObject({
      ok: true,
      warnings: [
        {
          code: 'COMPARE_EVIDENCE_MISSING',
          severity: 'warning',
          message: expect.stringContaining('bypass') as string,
        },
      ],
    });
  });

  it('gives each cell an id of its own', () => {
    const table = compareWell(readShippedEvidence());
    const { main, over } = table.weight;
    const ids = listCells({
      ...table,
      weight: { ...table.weight, over: over.filter((row) => row !== main) },
    }).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(
      expect.arrayContaining(['sleeve/leak/30d', 'bypass/weight-loss/60m', 'sleeve/hospital-stay/stay']),
    );
  });

  it('names the release of the evidence', () => {
    expect(compareWell([]).evidence).toEqual({
      version: '2026.11',
      date: '2026-11-25',
      nextReview: '2027-11-25',
      digest: '0'.repeat(64),
    });
  });
});

describe('the last gate', () => {
  const unread = makeRecord({ id: 'a' });
  const table = compareWell([unread]);

  it('lets a table of read figures through', () => {
    expect(refuseUnverified(table, makeEvidence([unread]))).toMatchObject({ ok: true });
    expect(listRecordsUsed(table)).toEqual(['a']);
  });

  it.each(['memory', 'page-2nd'])('refuses a figure that turns out to be seen as %s', (seen) => {
    expect(refuseUnverified(table, makeEvidence([makeRecord({ id: 'a', seen })]))).toMatchObject({
      ok: false,
      diagnostics: [
        { code: 'EVIDENCE_UNVERIFIED', severity: 'error', message: expect.stringContaining('a') as string },
      ],
    });
  });

  it('refuses a figure whose record is not in the evidence', () => {
    expect(refuseUnverified(table, makeEvidence([]))).toMatchObject({ ok: false });
  });

  it('refuses two records of one id when either is unread', () => {
    const twin = makeRecord({ id: 'a', study: 'study-b', seen: 'memory', outcome: 'bleeding' });
    const evidence = makeEvidence([unread, twin]);
    const result = compareOptions({ case: makeCase(), clinic: makeClinic(), evidence, date: today });
    expect(result).toMatchObject({ ok: false, diagnostics: [{ code: 'EVIDENCE_UNVERIFIED' }] });
  });
});

describe('the evidence that is shipped', () => {
  const evidence = readShippedEvidence();
  const everything = evidence.options.filter(({ choosable }) => choosable).map(({ code }) => code);
  const half = [everything.slice(0, 7), everything.slice(7)];
  const people: readonly CaseChanges[] = [
    {},
    {
      patient: { weight: '86 kg', born: '1954-01-01' },
      health: { conditions: ['type-2-diabetes', 'sleep-apnoea'] },
    },
    {
      patient: { weight: '150 kg', sex: 'male' },
      health: { conditions: ['heart-disease', 'high-blood-pressure'] },
    },
    { patient: { born: '2010-01-01' } },
    {
      patient: { weight: '100 kg' },
      health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
      decision: { asked: 'second-operation' },
    },
  ];
  const tables = people.flatMap((person) =>
    half.map((options) => compareWell(evidence, { ...person, decision: { ...person.decision, options } })),
  );
  const used = new Set(tables.flatMap(({ recordsUsed }) => recordsUsed));

  it('gives many figures, all of them read on a page of their source', () => {
    expect(used.size).toBeGreaterThan(150);
    for (const record of evidence.records.filter(({ id }) => used.has(id)))
      expect(isPrintable(record)).toBe(true);
  });

  it('never shows a variant, a narrower or wider count, or what people weighed after they stopped a medicine', () => {
    for (const record of evidence.records.filter(({ id }) => used.has(id))) {
      expect(record.variant).toBeUndefined();
      expect(record.scope).toBeUndefined();
      expect(record.id).not.toContain('stopped');
    }
  });

  it('shows no weight under a BMI of 13 and no share outside 0 to 1', () => {
    const values = tables.flatMap(listCells).flatMap((cell) => (cell.state === 'known' ? [cell.value] : []));
    const lightest = values.flatMap((value) => (value.kind === 'weight' ? [value.bmi] : []));
    const shares = values.flatMap((value) => (value.kind === 'proportion' ? [value.value] : []));
    expect(Math.min(...lightest)).toBeGreaterThan(13);
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });
});
