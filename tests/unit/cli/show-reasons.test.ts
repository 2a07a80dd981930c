import { describe, expect, it } from 'vitest';

import { showDifference } from '../../../src/cli/show-difference.ts';
import { showReasons } from '../../../src/cli/show-reasons.ts';
import type { WeightAt } from '../../../src/model/comparison-value.ts';
import type { PairFinding, ReasonCheck, ReasonFinding } from '../../../src/model/reason-check.ts';
import { noDifference } from '../../helpers/no-difference.ts';

const base: Omit<ReasonCheck, 'findings'> = {
  id: 'for/bypass/reflux-better',
  stance: 'for',
  option: 'bypass',
  code: 'reflux-better',
  verdict: 'supported',
  records: [],
};

/** The line that explains one finding. */
function explain(finding: ReasonFinding): string {
  const [line = ''] = showReasons([{ ...base, findings: [finding] }]);
  return line.replace('  for bypass  reflux-better  supported  ', '');
}

const share = {
  kind: 'proportion',
  value: 0.04,
  interval: { low: 0.03, high: 0.05, basis: 'score' },
} as const;
const weight: WeightAt = {
  kind: 'weight',
  averageKg: 91,
  changeKg: -23,
  bmi: 34,
  twlPercent: 20,
  uncertainty: { low: 90, high: 92 },
  metric: 'TWL',
  computed: false,
};
const known = { other: 'sleeve', outcome: 'leak', asked: { days: 30 }, records: ['r.1'] } as const;
const compare = (...pairs: PairFinding[]): ReasonFinding => ({
  find: 'compare',
  means: 'supports',
  has: 'fewer',
  pairs,
});

describe('the line that explains a reason', () => {
  it.each<[ReasonFinding, string]>([
    [{ find: 'not-in-case', means: 'contradicts', needs: 'condition' }, 'the case has no such condition'],
    [{ find: 'in-case', means: 'supports' }, 'the case says so'],
    [compare(), 'nothing to compare with'],
    [
      compare({
        ...known,
        result: 'yes',
        basis: 'one-study',
        mine: share,
        theirs: { kind: 'proportion', value: 0.052 },
      }),
      'fewer than sleeve (leak, 30 days: 4.0 % against 5.2 %, one study)',
    ],
    [
      compare({
        ...known,
        result: 'no',
        basis: 'two-studies',
        mine: weight,
        theirs: { ...weight, averageKg: 95, changeKg: -19 },
      }),
      'more than sleeve (leak, 30 days: 91 kg against 95 kg, two studies)',
    ],
    [
      compare(
        {
          ...known,
          result: 'unclear',
          basis: 'contrast',
          contrast: { of: 'sleeve', measure: 'odds-ratio', estimate: 0.9, low: 0.7, high: 1.2 },
        },
        { other: 'band', result: 'unknown' },
        { ...known, other: 'plication', result: 'yes', basis: 'impossible', records: [] },
      ),
      'not clearly other than sleeve (leak, 30 days: odds-ratio of sleeve 0.9, 0.7 to 1.2), not known against band, fewer than plication (leak, 30 days: cannot happen)',
    ],
    [
      {
        find: 'recover',
        means: 'nothing',
        outcome: 'reflux-remission',
        asked: {},
        own: null,
        untreated: null,
      },
      'no figure of reflux-remission',
    ],
    [
      {
        find: 'recover',
        means: 'supports',
        outcome: 'reflux-remission',
        asked: { months: 60 },
        own: { record: 'r.1', value: share },
        untreated: null,
      },
      'reflux-remission, 5 years: 4.0 % (3.0–5.0 %), nothing known without treatment',
    ],
    [
      {
        find: 'recover',
        means: 'supports',
        outcome: 'reflux-remission',
        asked: { months: 60 },
        own: { record: 'r.1', value: share },
        untreated: {
          ...known,
          other: 'no-operation',
          result: 'yes',
          basis: 'one-study',
          mine: share,
          theirs: share,
        },
      },
      'more than no-operation (leak, 30 days: 4.0 % against 4.0 %, one study)',
    ],
    [{ find: 'undo', means: 'nothing', possible: 'partly' }, 'undone: partly'],
    [
      { find: 'under-study', means: 'supports', maturity: 'under-study', entries: ['plication.us'] },
      'under-study plication.us',
    ],
    [{ find: 'cautions', means: 'contradicts', said: 'warned', cautions: ['a', 'b'] }, 'warned of by a b'],
    [{ find: 'cautions', means: 'nothing', said: 'silent', cautions: [] }, 'no caution speaks of it'],
    [
      {
        find: 'fewer-cautions',
        means: 'supports',
        mine: [],
        others: [
          { option: 'sleeve', cautions: ['a'] },
          { option: 'band', cautions: [] },
        ],
      },
      'here: none; sleeve: a; band: none',
    ],
    [
      {
        find: 'wishes',
        means: 'nothing',
        met: ['diabetes-better'],
        unmet: [],
        open: ['eat-with-family'],
        ownWords: 2,
      },
      'met: diabetes-better; open: eat-with-family; 2 in own words',
    ],
  ])('says %j in words', (finding, line) => {
    expect(explain(finding)).toBe(line);
  });

  it('holds what decided, or where nothing did everything that was looked at, and under it the records', () => {
    const silent: ReasonFinding = { find: 'cautions', means: 'nothing', said: 'silent', cautions: [] };
    const undone: ReasonFinding = { find: 'undo', means: 'supports', possible: 'yes' };
    const lines = showReasons([
      { ...base, findings: [silent, undone], records: ['r.1', 'r.2'] },
      {
        ...base,
        stance: 'against',
        option: 'sleeve',
        verdict: 'cannot-tell',
        findings: [silent, { ...undone, means: 'nothing' }],
      },
    ]);
    expect(lines).toEqual([
      '  for bypass      reflux-better  supported    undone: yes',
      '                                              r.1, r.2',
      '  against sleeve  reflux-better  cannot-tell  no caution speaks of it; undone: yes',
    ]);
  });
});

describe('a reason that a what-if changes', () => {
  it('is shown with its verdict before and after', () => {
    const check: ReasonCheck = { ...base, findings: [{ find: 'in-case', means: 'supports' }] };
    const difference = {
      ...noDifference,
      isSame: false,
      cellCount: 1,
      reasons: [
        { id: check.id, before: { ...check, verdict: 'contradicted' as const }, after: check },
        { id: 'x', before: check, after: null },
      ],
    };
    const out = showDifference('T-1', [{ field: 'age', before: 40, after: 41 }], difference);
    expect(out).toContain('\n  for bypass  reflux-better  contradicted → supported  the case says so\n');
    expect(out).toContain('\n  for bypass  reflux-better  vanishes: supported       the case says so\n');
  });
});
