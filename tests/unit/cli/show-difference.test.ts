import { describe, expect, it } from 'vitest';

import { showCellChanges } from '../../../src/cli/show-cell-change.ts';
import { showDifference } from '../../../src/cli/show-difference.ts';
import type { Cell, KnownCell, WeightAt } from '../../../src/model/comparison.ts';
import type { CellChange, TableDifference } from '../../../src/model/difference.ts';
import { noDifference } from '../../helpers/no-difference.ts';

const base = { id: 'sleeve/leak/30d', option: 'sleeve', outcome: 'leak', asked: { days: 30 }, setAside: [] };
const known: KnownCell = {
  ...base,
  state: 'known',
  value: { kind: 'proportion', value: 0.012 },
  lead: {
    record: 'sleeve.leak.30d.a',
    study: 'a',
    match: 'like-you',
    reasons: [],
    bmiBasis: 'mean-sd',
    covered: {},
    ledBy: 'size',
    certainty: 'moderate',
    horizon: { days: 30 },
    timeBasis: 'by',
  },
};
const unknown: Cell = { ...base, state: 'not-known', reason: { code: 'bmi-outside', low: 35, yours: 27.04 } };

function change(before: Cell | null, after: Cell | null, more: Partial<CellChange> = {}): CellChange {
  return { id: base.id, before, after, what: ['value'], ...more };
}

const none: TableDifference = { ...noDifference, isSame: false, cellCount: 9 };
const changes = [{ field: 'weight', before: '114.5 kg', after: '140 kg' }] as const;

describe('a cell that changes', () => {
  it.each<[string, CellChange, readonly string[]]>([
    [
      'a figure that goes, with its record and the reason',
      change(known, unknown),
      ['sleeve  1.2 % → not known: bmi-outside low 35 yours 27.04', 'sleeve.leak.30d.a → none'],
    ],
    [
      'a figure that comes',
      change({ ...base, state: 'not-possible' }, known),
      ['sleeve  not possible → 1.2 %', 'none → sleeve.leak.30d.a'],
    ],
    [
      'a cell of an option that goes',
      change(unknown, null),
      ['sleeve  not known: bmi-outside low 35 yours 27.04 → not in the table'],
    ],
    [
      'another leading record, and why',
      change(known, {
        ...known,
        value: { kind: 'proportion', value: 0.02 },
        lead: {
          ...known.lead,
          record: 'sleeve.leak.30d.b',
          ledBy: 'match',
          match: 'near',
          reasons: [{ code: 'bmi-unknown' }],
        },
        others: { low: 0.01, high: 0.03, records: ['c', 'd'] },
        own: {
          events: 1,
          n: 40,
          days: 30,
          from: '2021',
          to: '2025',
          surgeon: 's',
          tooFew: false,
          score: { low: 0, high: 1 },
        },
      }),
      [
        'sleeve  1.2 % → 2.0 %',
        'sleeve.leak.30d.a → sleeve.leak.30d.b; like this person → near: bmi-unknown; leads by size → match; others none → 1.0–3.0 % (2); own none → 1 of 40',
      ],
    ],
    [
      'a difference too small for its digits',
      change(known, { ...known, value: { kind: 'proportion', value: 0.01201 } }),
      ['sleeve  1.2 % (differs in digits not shown)', 'sleeve.leak.30d.a'],
    ],
    [
      'the same figure for other people',
      change(
        known,
        { ...known, lead: { ...known.lead, match: 'near', reasons: [{ code: 'bmi-unknown' }] } },
        { what: ['lead.match'] },
      ),
      ['sleeve  1.2 %', 'sleeve.leak.30d.a; like this person → near: bmi-unknown'],
    ],
  ])('%s', (_, cell, lines) => {
    const [head, ...rest] = showCellChanges([cell]);
    expect(head).toBe('  leak, 30 days');
    expect(rest.map((line) => line.trim())).toEqual(lines);
  });

  it('says a weight more exactly where the usual digits are alike', () => {
    const weigh = (averageKg: number): Cell => {
      const value: WeightAt = {
        kind: 'weight',
        averageKg,
        changeKg: -20,
        bmi: 35,
        twlPercent: 18,
        metric: 'TWL',
        computed: false,
      };
      return { ...known, value };
    };
    expect(showCellChanges([change(weigh(91.41), weigh(91.44))])[1]).toContain('91.41 kg → 91.44 kg');
  });

  it('says which rows come and go, and leaves out of those that go what was never known', () => {
    const gone = [change(known, unknown, { hidden: 'after' }), change(unknown, unknown, { hidden: 'after' })];
    expect(showCellChanges(gone)).toHaveLength(3);
    expect(showCellChanges(gone)[0]).toBe('  leak, 30 days (no longer shown)');
    const come = [change(unknown, unknown, { hidden: 'before' })];
    expect(showCellChanges(come)).toEqual([
      '  leak, 30 days (now shown)',
      '    sleeve  not known: bmi-outside low 35 yours 27.04',
    ]);
  });

  it('stands with its outcome, and times go from early to late', () => {
    const at = (outcome: string, months: number): CellChange => {
      const id = `sleeve/${outcome}/${String(months)}m`;
      return change({ ...known, id, outcome, asked: { months } }, unknown);
    };
    const heads = showCellChanges(
      [at('weight-loss', 60), at('ulcer', 24), at('weight-loss', 12)].map(({ before }) =>
        change(before, null),
      ),
    ).filter((line) => /^ {2}\S/.test(line));
    expect(heads).toEqual(['  weight-loss, 1 year', '  weight-loss, 5 years', '  ulcer, 2 years']);
  });
});

describe('what a what-if changes', () => {
  it('says of each part that it does not change', () => {
    const out = showDifference('T-1', changes, { ...none, elsewhere: ['new-part'] });
    expect(out).toBe(
      [
        'T-1  what if',
        '  weight  114.5 kg → 140 kg',
        '',
        'PERSON',
        '  no change',
        '',
        'OPTIONS',
        '  no change',
        '',
        'CELLS: 0 of 9 change',
        '  no change',
        '',
        'TOPICS AND LINES',
        '  new-part  changes',
        '',
        'CAUTIONS',
        '  no change',
        '',
        "THE SURGEON'S REASONS",
        '  no change',
        '',
        'THRESHOLDS',
        '  no change',
        '',
        'RECORDS ON PATIENT PAGES',
        '  no change',
      ].join('\n'),
    );
  });

  it('counts the cells of which only what is set aside changes', () => {
    const cells = [change(known, known, { what: ['setAside'] })];
    const out = showDifference('T-1', changes, { ...none, cells });
    expect(out).toContain(
      'CELLS: 0 of 9 change\n  1 cell more: only what is set aside, or why (see --json)\n',
    );
  });

  it('names options, cautions, notes, frames, lines and records that come, go or change', () => {
    const hit = {
      id: 'reflux-sleeve',
      options: ['sleeve'],
      effect: 'extra-risk',
      strength: 'strong',
      basis: 'practice',
      triggers: ['condition:reflux'],
    } as const;
    const column = {
      code: 'band',
      figuresFrom: 'band',
      kind: 'operation',
      indication: 'first-operation',
      standing: { maturity: 'newer', entries: [] },
      reversibility: { possible: 'yes', changeTo: [], weightAfterKnown: false, goneBefore: [] },
    } as const;
    const unknown = {
      'bmi-50-or-more': 'no',
      male: 'no',
      hypertension: 'no',
      'clot-risk': 'not-told',
      'age-45-or-more': 'no',
    } as const;
    const score = {
      options: ['bypass'],
      factors: unknown,
      points: { low: 0, high: 1 },
      highestClass: { low: 1, high: 2 },
      studies: [],
    };
    const course = { option: 'sleeve', study: 'a', points: [] };
    const out = showDifference('T-1', [{ field: 'leaning', before: 'sleeve', after: null }], {
      ...none,
      person: [
        { id: 'age', before: 43, after: 66 },
        { id: 'heightM', before: 1.6, after: 1.625 },
      ],
      options: [
        { id: 'sleeve', before: column, after: null },
        { id: 'band', before: column, after: { ...column, indication: 'after-sleeve' } },
      ],
      cautions: [
        { id: hit.id, before: hit, after: { ...hit, options: ['band', 'sleeve'] } },
        { id: 'other', before: null, after: { ...hit, id: 'other', basis: 'page' } },
      ],
      conflicts: [
        {
          id: 'reflux-sleeve bypass',
          before: null,
          after: { caution: 'reflux-sleeve', to: 'bypass', from: ['sleeve'], against: ['smoking-bypass'] },
        },
      ],
      score: [
        {
          id: 'mortality',
          before: { ...score, classes: { low: 'A', high: 'B' } },
          after: { ...score, classes: { low: 'B', high: 'B' } },
        },
      ],
      notes: [{ id: 'under-35', before: 'under-35', after: null }],
      topics: [
        {
          id: 'first-month',
          before: { denominator: 100, picture: null },
          after: { denominator: 1000, picture: null },
        },
      ],
      horizon: [{ id: 'main', before: 60, after: 24 }],
      courses: [{ id: 'sleeve a', before: null, after: course }],
      records: [
        { id: 'r.1', before: 'r.1', after: null },
        { id: 'r.2', before: null, after: 'r.2' },
      ],
    });
    for (const line of [
      'leaning  sleeve → none',
      'age        43 → 66',
      'height, m  1.600 → 1.625',
      'vanishes  sleeve',
      'changes   band    first-operation → after-sleeve',
      'changes  extra-risk  sleeve → band, sleeve  because of condition:reflux  reflux-sleeve (needs confirming)',
      'appears  extra-risk  sleeve                 because of condition:reflux  other',
      'appears  pulling apart: reflux-sleeve points to bypass, against it smoking-bypass',
      'mortality score of 2007: class A or B → B',
      'vanishes  under-35',
      'main weight  60 → 24 months',
      'first-month  out of 100 → out of 1000, picture none',
      'weight line  sleeve a appears',
      '- r.1',
      '+ r.2',
    ])
      expect(out).toContain(`\n  ${line}`);
  });
});
