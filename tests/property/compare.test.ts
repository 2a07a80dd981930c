import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { buildCell } from '../../src/compare/build-cell.ts';
import { describeOption } from '../../src/compare/describe-option.ts';
import type { OptionDesk } from '../../src/compare/describe-option.ts';
import { describeSubject } from '../../src/compare/describe-person.ts';
import { compareOptions } from '../../src/compare/index.ts';
import { listCells } from '../../src/compare/list-records-used.ts';
import { matchPeople } from '../../src/compare/match-people.ts';
import { firstMonth, laterWindows, weightWindows } from '../../src/compare/weigh-time.ts';
import type { Case } from '../../src/model/case.ts';
import type { Cell, ComparisonTable, MatchLevel } from '../../src/model/comparison.ts';
import { isPrintable, samePeople } from '../../src/model/evidence.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import type { EvidenceRecord } from '../../src/model/evidence-record.ts';
import {
  makeCase,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeStudy,
  readShippedEvidence,
  today,
} from '../helpers/compare-inputs.ts';

const shipped = readShippedEvidence();
const clinic = makeClinic();
const options = [
  'sleeve',
  'bypass',
  'plication',
  'endoscopic-sleeve',
  'band',
  'tirzepatide',
  'semaglutide',
  'lifestyle',
  'no-operation',
];

/** Invented people of many weights, ages and histories. */
const anyCase: fc.Arbitrary<Case> = fc
  .record({
    kg: fc.integer({ min: 60, max: 180 }),
    born: fc.integer({ min: 1948, max: 2010 }),
    sex: fc.constantFrom('female', 'male', 'not-stated'),
    conditions: fc.subarray([
      'type-2-diabetes',
      'reflux',
      'severe-reflux',
      'sleep-apnoea',
      'high-blood-pressure',
      'heart-disease',
    ]),
    earlier: fc.constantFrom(null, 'band', 'sleeve', 'bypass', 'plication'),
    chosen: fc.subarray(options, { minLength: 1, maxLength: 4 }),
  })
  .map(({ kg, born, sex, conditions, earlier, chosen }) =>
    makeCase({
      patient: { weight: `${kg} kg`, born: `${born}-03-01`, sex },
      health: {
        conditions,
        earlier_operations: earlier === null ? [] : [{ operation: earlier, status: 'in-place' }],
      },
      decision: { asked: earlier === null ? 'first-operation' : 'second-operation', options: chosen },
    }),
  );

function compare(given: Case, evidence: EvidenceBase = shipped): ComparisonTable {
  const result = compareOptions({ case: given, clinic, evidence, date: today });
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

/** The shipped evidence with other records. */
function withRecords(records: readonly EvidenceRecord[]): EvidenceBase {
  return { ...shipped, records, recordsByOption: makeEvidence(records).recordsByOption };
}

describe('the table', () => {
  it('is the same whatever the order of records, cautions and standing', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 1e6 }), (given, seed) => {
        const shuffle = <T>(list: readonly T[]): T[] =>
          list
            .map((value, index) => ({ value, key: (index * 7919 + seed * 104_729) % 1_000_003 }))
            .sort((a, b) => a.key - b.key)
            .map(({ value }) => value);
        const mixed: EvidenceBase = {
          ...withRecords(shuffle(shipped.records)),
          cautions: shuffle(shipped.cautions),
          standing: shuffle(shipped.standing),
        };
        expect(compare(given, mixed)).toEqual(compare(given));
      }),
      { numRuns: 15 },
    );
  });

  it('is the same whichever unit the clinic wrote', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const { patient } = given;
        const other: Case = {
          ...given,
          patient: {
            ...patient,
            weight: { ...patient.weight, written: 'lb' },
            height: { ...patient.height, written: 'ft' },
          },
        };
        expect(compare(other)).toEqual(compare(given));
      }),
      { numRuns: 10 },
    );
  });

  it('never mixes times in a row, and keeps the order of the options', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const table = compare(given);
        const rows = [
          ...table.weight.over,
          ...table.topics.flatMap(({ rows: own, picture }) => (picture === null ? own : [...own, picture])),
        ];
        for (const { asked, cells, outcome } of rows) {
          expect(cells.map(({ option }) => option)).toEqual(given.decision.options);
          for (const cell of cells) expect([cell.asked, cell.outcome]).toEqual([asked, outcome]);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('shows other studies only of other people, and sets every record to one side or the other', () => {
    const byId = new Map(shipped.records.map((record) => [record.id, record]));
    fc.assert(
      fc.property(anyCase, (given) => {
        for (const cell of listCells(compare(given))) {
          const shown = cell.state === 'known' ? [cell.lead.record, ...(cell.others?.records ?? [])] : [];
          const all = [...shown, ...cell.setAside.map(({ record }) => record)];
          expect(new Set(all).size).toBe(all.length);
          const pairs = shown.flatMap((a, index) => shown.slice(index + 1).map((b) => [a, b] as const));
          expect(pairs.filter(([a, b]) => sharePeople(byId.get(a), byId.get(b)))).toEqual([]);
        }
      }),
      { numRuns: 15 },
    );
  });
});

describe('doses of a medicine', () => {
  const dose = fc.constantFrom<EvidenceRecord['dose'][]>(
    { mg: [5], per: 'week' },
    { mg: [10], per: 'week' },
    { mg: [15], per: 'week' },
    { mg: [10, 15], per: 'week' },
    { mg: [15], per: 'day' },
    'unstated',
  );

  it('never stand beside each other, in one pool, or on one line over time', () => {
    const medicines = shipped.records.filter(({ option }) => option === 'tirzepatide');
    fc.assert(
      fc.property(
        anyCase,
        fc.array(dose, { minLength: medicines.length, maxLength: medicines.length }),
        (given, doses) => {
          const records = medicines.map((record, index) => ({
            ...record,
            dose: doses[index],
            seen: 'page' as const,
          }));
          const asked = { ...given, decision: { ...given.decision, options: ['tirzepatide'] } };
          const table = compare(asked, withRecords(records));
          const doseOf = (id: string): string => JSON.stringify(records.find((one) => one.id === id)?.dose);
          const groups = [
            ...listCells(table).map((cell) =>
              cell.state === 'known' ? [cell.lead.record, ...(cell.others?.records ?? [])] : [],
            ),
            ...table.weight.courses.map(({ points }) => points.map(({ record }) => record)),
          ];
          for (const together of groups) expect(new Set(together.map(doseOf)).size).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 40 },
    );
  });
});

function sharePeople(a: EvidenceRecord | undefined, b: EvidenceRecord | undefined): boolean {
  const [studyA, studyB] = [shipped.studies.get(a?.study ?? ''), shipped.studies.get(b?.study ?? '')];
  if (studyA === undefined || studyB === undefined) return true;
  return samePeople(studyA, studyB, { a: a?.cohort, b: b?.cohort });
}

describe('matching', () => {
  const levels: readonly MatchLevel[] = ['other-people', 'near', 'like-you'];
  const rank = (level: MatchLevel): number => levels.indexOf(level);
  const option = { kind: 'operation', indication: 'first-operation' } as const;

  const wide = fc.record({
    bmiLow: fc.integer({ min: 25, max: 45 }),
    bmiSpan: fc.integer({ min: 9, max: 40 }),
    ageLow: fc.integer({ min: 18, max: 40 }),
    ageSpan: fc.integer({ min: 10, max: 45 }),
  });
  const cuts = fc.record({
    bmiUp: fc.integer({ min: 0, max: 4 }),
    bmiDown: fc.integer({ min: 0, max: 4 }),
    ageUp: fc.integer({ min: 0, max: 9 }),
    ageDown: fc.integer({ min: 0, max: 9 }),
    women: fc.integer({ min: 0, max: 4 }),
    men: fc.integer({ min: 0, max: 4 }),
    female: fc.constantFrom(undefined, 0, 60, 100),
    diabetes: fc.constantFrom('mixed', 'all', 'none'),
    group: fc.constantFrom(
      undefined,
      'heart-disease',
      'veterans',
      'high-risk',
      'bmi-50-plus',
      'bmi-under-35',
      'over-65',
      'pregnancy',
    ),
  });

  it('never gets better when a study narrows its people', () => {
    fc.assert(
      fc.property(anyCase, wide, cuts, (given, people, cut) => {
        const subject = describeSubject(given, shipped, today);
        const level = (changes: object): number =>
          rank(
            matchPeople(
              makeRecord({ people: { indication: 'first-operation', diabetes: 'mixed', ...changes } }),
              subject,
              option,
            ).level,
          );
        const { bmiLow, bmiSpan, ageLow, ageSpan } = people;
        const before = level({
          bmi: { low: bmiLow, high: bmiLow + bmiSpan },
          age: { low: ageLow, high: ageLow + ageSpan },
        });
        const [women, men] = [bmiLow + cut.bmiUp + cut.women, bmiLow + cut.bmiUp + cut.men];
        const low = Math.max(women, men);
        const after = level({
          bmi: { low, high: Math.max(low, bmiLow + bmiSpan - cut.bmiDown) },
          bmi_by_sex: { female: { low: women }, male: { low: men } },
          ...(cut.female === undefined ? {} : { female_percent: cut.female }),
          age: {
            low: ageLow + cut.ageUp,
            high: Math.max(ageLow + cut.ageUp, ageLow + ageSpan - cut.ageDown),
          },
          diabetes: cut.diabetes,
          ...(cut.group === undefined ? {} : { group: cut.group }),
        });
        expect(after).toBeLessThanOrEqual(before);
      }),
      { numRuns: 400 },
    );
  });
});

describe('an unread figure', () => {
  /** As good as a record can be: everyone fits, exact time, millions of people, newest trial. */
  const perfect = (seen: string, extra: object = {}): EvidenceRecord =>
    makeRecord({
      id: 'sleeve.leak.30d.perfect',
      study: 'perfect',
      people: {
        indication: 'first-operation',
        diabetes: 'mixed',
        bmi: { low: 18, high: 90 },
        age: { low: 18, high: 99 },
      },
      value: { events: 1000, n: 1_000_000 },
      certainty: 'high',
      seen,
      ...extra,
    });
  const study = makeStudy('perfect', {
    design: 'randomised-trial',
    citation: { authors: 'P', year: 2026, title: 'P', journal: 'P' },
  });

  it.each(['memory', 'page-2nd'])(
    'never leads and never stands beside, even if the clinic prefers it (%s)',
    (seen) => {
      fc.assert(
        fc.property(
          fc.boolean(),
          fc.boolean(),
          fc.constantFrom({}, { cohort: 'study-a' }, { design: 'registry' }),
          (rival, prefer, extra) => {
            const record = perfect(seen, extra);
            const evidence = makeEvidence(rival ? [record, makeRecord()] : [record], { studies: [study] });
            const ours = makeClinic(
              prefer ? { prefer: [{ record: record.id, reason: { en: 'ours' } }] } : {},
            );
            const given = makeCase({ decision: { options: ['sleeve', 'bypass'] } });
            const result = compareOptions({ case: given, clinic: ours, evidence, date: today });
            expect(result).toMatchObject({
              ok: true,
              value: { recordsUsed: rival ? ['sleeve.leak.30d.study-a'] : [] },
            });
          },
        ),
      );
      expect(
        compare(makeCase(), makeEvidence([perfect('page')], { studies: [study] })).recordsUsed,
      ).toHaveLength(1);
    },
  );

  it('stays away wherever in the shipped evidence it hides', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.integer({ min: 2, max: 9 }),
        fc.constantFrom('memory', 'page-2nd'),
        (given, every, seen) => {
          const first = compare(given).recordsUsed;
          // Just those that would be used are made unread, then whatever takes their place is looked at.
          const hidden = new Set(first.filter((_, index) => index % every === 0));
          const records = shipped.records.map((record) =>
            hidden.has(record.id) ? { ...record, seen: seen } : record,
          );
          const evidence = withRecords(records);
          const used = new Set(compare(given, evidence).recordsUsed);
          expect(evidence.records.filter((record) => used.has(record.id) && !isPrintable(record))).toEqual(
            [],
          );
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe('taking a record away', () => {
  function deskFor(given: Case, evidence: EvidenceBase): OptionDesk {
    const subject = describeSubject(given, evidence, today);
    const desk = describeOption('sleeve', { subject, evidence, clinic, surgeon: 'surgeon-1' });
    if (desk === undefined) throw new Error('no desk');
    return desk;
  }

  const sleeves = shipped.records.filter(({ option }) => option === 'sleeve');
  const outcomes = [
    'death',
    'leak',
    'major-complication',
    'reoperation',
    'conversion',
    'reflux',
    'anaemia',
    'weight-loss',
  ];
  const windows = [firstMonth, ...weightWindows, ...laterWindows];

  it('makes a cell at most unknown or led by another, and never known', () => {
    fc.assert(
      fc.property(anyCase, fc.nat({ max: sleeves.length - 1 }), (given, index) => {
        const gone = sleeves[index];
        const before = deskFor(given, makeEvidence(sleeves, { studies: [...shipped.studies.values()] }));
        const after = deskFor(
          given,
          makeEvidence(
            sleeves.filter((record) => record !== gone),
            { studies: [...shipped.studies.values()] },
          ),
        );
        for (const outcome of outcomes) {
          for (const window of windows) {
            const [old, now] = [buildCell(before, outcome, window), buildCell(after, outcome, window)];
            const kept =
              old.state === now.state ||
              (old.state === 'known' && now.state === 'not-known') ||
              wasContradicted(old, gone);
            expect(kept, `${old.id} without ${gone?.id ?? ''}: ${old.state} became ${now.state}`).toBe(true);
            expect(JSON.stringify(now)).not.toContain(`"${gone?.id ?? ''}"`);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  /** The one exception: the record that showed another to be impossible is gone. */
  function wasContradicted(cell: Cell, gone: EvidenceRecord | undefined): boolean {
    return cell.setAside.some(({ reason }) => reason.code === 'contradicted' && reason.by === gone?.id);
  }

  it('leaves a whole table, whichever records are gone', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 2, max: 6 }), fc.nat({ max: 5 }), (given, every, offset) => {
        const table = compare(
          given,
          withRecords(shipped.records.filter((_, index) => (index + offset) % every !== 0)),
        );
        expect(table.options).toHaveLength(given.decision.options.length);
        expect([4, 5]).toContain(table.weight.over.length);
        expect(table.topics.map(({ id }) => id)).toEqual([
          'first-month',
          'later-years',
          'living-with-it',
          'benefits',
        ]);
        for (const cell of listCells(table))
          expect(['known', 'not-known', 'not-possible']).toContain(cell.state);
      }),
      { numRuns: 15 },
    );
  });
});
