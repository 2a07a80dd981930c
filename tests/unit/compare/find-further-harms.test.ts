import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../../src/compare/index.ts';
import type { DocumentKind } from '../../../src/model/codes.ts';
import type { ComparisonTable } from '../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../src/model/evidence-record.ts';
import { makeCase, makeClinic, makeEvidence, makeRecord, today } from '../../helpers/compare-inputs.ts';

function record(outcome: string, changes: object = {}): EvidenceRecord {
  const time = { days: 30, basis: 'by' };
  return makeRecord({
    id: outcome,
    study: outcome,
    outcome,
    time,
    value: { events: 50, n: 1000 },
    ...changes,
  });
}

const early = ['death', 'leak', 'bleeding', 'clot', 'reoperation', 'readmission', 'infection'];
const all = early.map((outcome) => record(outcome));

function compared(
  records: readonly EvidenceRecord[],
  documents: readonly DocumentKind[],
  chosen: string | null = 'sleeve',
): ComparisonTable {
  const asked = { ...makeCase({ decision: { chosen } }), documents: [...documents] };
  const result = compareOptions({
    case: asked,
    clinic: makeClinic(),
    evidence: makeEvidence(records),
    date: today,
  });
  if (!result.ok) throw new Error('the comparison failed');
  return result.value;
}

const outcomesOf = ({ furtherHarms }: ComparisonTable): readonly string[] =>
  furtherHarms.filter(({ state }) => state === 'known').map(({ outcome }) => outcome);

describe('harms that no topic has room for', () => {
  it('are there for a record of the talk, with their figures, and count as used', () => {
    const table = compared(all, ['consent']);
    expect(outcomesOf(table)).toEqual(['reoperation', 'readmission', 'infection']);
    expect(table.furtherHarms[0]).toMatchObject({ option: 'sleeve', state: 'known', value: { value: 0.05 } });
    expect(table.recordsUsed).toContain('infection');
  });

  it('are there of doing nothing too, for the later years alone', () => {
    const options = ['sleeve', 'no-operation'] as const;
    const later = { time: { months: 60, basis: 'by' } };
    const people = { indication: 'none', bmi: { low: 35 }, diabetes: 'mixed' };
    const untreated = { option: 'usual-care', people };
    // More later harms of the sleeve than the table of the later years has rows for.
    const known = ['conversion', 'ulcer', 'obstruction', 'internal-hernia', 'stricture', 'gallstones'];
    const crowd = [...known, 'gallbladder-removal', 'anaemia', 'malnutrition'].map((outcome) =>
      record(outcome, later),
    );
    const records = [
      record('pancreatitis', { ...untreated, ...later }),
      record('clot', untreated),
      ...crowd,
      ...all.filter(({ outcome }) => outcome !== 'clot'),
    ];
    const asked = { ...makeCase({ decision: { options: [...options], chosen: 'sleeve' } }) };
    const result = compareOptions({
      case: { ...asked, documents: ['consent'] },
      clinic: makeClinic(),
      evidence: makeEvidence(records),
      date: today,
    });
    const cells = result.ok ? result.value.furtherHarms : [];
    const untouched = cells.filter(({ option }) => option === 'no-operation');
    expect(untouched.map(({ outcome, state }) => [outcome, state])).toEqual([['pancreatitis', 'known']]);
  });

  it('are none for other documents, nor before anything is chosen, nor of another option', () => {
    const tables = [
      compared(all, ['comparison', 'sources']),
      compared(all, ['consent'], null),
      compared(all, ['consent'], 'bypass'),
    ];
    expect(tables.map(outcomesOf)).toEqual([[], [], []]);
    expect(tables[0]?.recordsUsed).not.toContain('infection');
  });

  it('are those known at a time other than that of the topic too', () => {
    const at = (option: string, months: number): EvidenceRecord =>
      record('gallstones', {
        id: `${option}.gallstones`,
        study: option,
        option,
        time: { months, basis: 'by' },
      });
    const table = compared([at('sleeve', 24), at('bypass', 120)], ['consent']);
    const shown = table.topics.flatMap(({ rows }) => rows).find(({ outcome }) => outcome === 'gallstones');
    expect(shown?.cells[0]?.state).toBe('not-known');
    expect(outcomesOf(table)).toEqual(['gallstones']);
    expect(outcomesOf(compared([at('sleeve', 24)], ['consent']))).toEqual([]);
  });

  it('hold no figure of other people, nor one that nobody has read', () => {
    const others = record('infection', { people: { indication: 'after-sleeve', diabetes: 'mixed' } });
    const unread = record('infection', { seen: 'memory' });
    const rest = all.filter(({ outcome }) => outcome !== 'infection');
    expect(outcomesOf(compared([...rest, others], ['consent']))).toEqual(['reoperation', 'readmission']);
    expect(outcomesOf(compared([...rest, unread], ['consent']))).toEqual(['reoperation', 'readmission']);
  });

  it('are those of operations counted together too, where nothing is known of this one alone, and it is said', () => {
    const group = { option: 'any-surgery', together: ['bypass', 'sleeve'], definition: 'bypass or sleeve' };
    const rest = all.filter(({ outcome }) => outcome !== 'infection');
    const table = compared([...rest, record('infection', group)], ['consent']);
    expect(table.furtherHarms.find(({ outcome }) => outcome === 'infection')).toMatchObject({
      state: 'known',
      lead: { match: 'near', reasons: [{ code: 'operations-mixed', theirs: ['bypass', 'sleeve'] }] },
    });
    expect(table.recordsUsed).toContain('infection');
    const ofOthers = record('infection', { ...group, together: ['bypass', 'band'] });
    expect(outcomesOf(compared([...rest, ofOthers], ['consent']))).not.toContain('infection');
    const alone = record('infection', { id: 'alone', study: 'alone' });
    const both = compared([...rest, alone, record('infection', group)], ['consent']);
    expect(both.recordsUsed).toContain('alone');
    expect(both.recordsUsed).not.toContain('infection');
  });

  it('name one without a figure, and why there is none', () => {
    const rest = all.filter(({ outcome }) => outcome !== 'infection');
    const part = record('infection', { scope: 'narrower', definition: 'deep in the belly' });
    const table = compared([...rest, part], ['consent']);
    expect(table.furtherHarms.find(({ outcome }) => outcome === 'infection')).toMatchObject({
      state: 'not-known',
      reason: { code: 'counted-in-part' },
      setAside: [{ record: 'infection', reason: { code: 'other-measure', kind: 'narrower' } }],
    });
  });
});
