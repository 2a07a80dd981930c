import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { viewLeanChecks } from '../../../../src/compose/view/view-lean-checks.ts';
import type { LeanChecksView } from '../../../../src/compose/view/view-lean-checks.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import { reasonCodes } from '../../../../src/model/codes.ts';
import type { WeightAt } from '../../../../src/model/comparison-value.ts';
import type { PairFinding, ReasonCheck, ReasonFinding } from '../../../../src/model/reason-check.ts';
import { makeCase } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, makeComparison, refluxHit } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const base: ReasonCheck = {
  id: 'for/bypass/reflux-better',
  stance: 'for',
  option: 'bypass',
  code: 'reflux-better',
  verdict: 'supported',
  findings: [{ find: 'in-case', means: 'supports' }],
  records: [],
};

async function viewOf(reasons: readonly ReasonCheck[], tag = 'en'): Promise<LeanChecksView> {
  const cautions = ['a', 'b', 'reflux-sleeve'].map((id) => ({ ...refluxHit, id }));
  return viewLeanChecks(
    await sceneFor(tag, { comparison: makeComparison(fiveOptions, { reasons, cautions }) }),
  );
}

function read(markup: string): string {
  return markup.replace(/<[^>]+>/g, '').replace(/\u00a0/g, ' ');
}

/** The cells of the rows, and the bands between them, as a person reads them. */
function rowsOf({ table }: LeanChecksView): readonly (readonly string[])[] {
  return table.rows.map(({ group, cells }) =>
    group === '' ? cells.map(({ lines }) => lines.map(({ words }) => read(words.markup)).join(' ')) : [group],
  );
}

/** What stands beside one finding. */
async function why(finding: ReasonFinding, tag = 'en'): Promise<string> {
  const [, row] = rowsOf(await viewOf([{ ...base, findings: [finding] }], tag));
  return row?.[2] ?? '';
}

const share = {
  kind: 'proportion',
  value: 0.0402,
  interval: { low: 0.03, high: 0.05, basis: 'score' },
} as const;
const none = { kind: 'proportion', value: 0, events: 0, n: 212, zero: { n: 212, upper: 0.017 } } as const;
const weight: WeightAt = {
  kind: 'weight',
  averageKg: 93.2,
  changeKg: -21,
  bmi: 35,
  twlPercent: 18,
  metric: 'TWL',
  computed: false,
};
const known = {
  other: 'sleeve',
  outcome: 'leak',
  asked: { days: 30 },
  records: ['bypass.leak.30d.a', 'sleeve.leak.30d.a'],
} as const;
const contrast = { of: 'sleeve', measure: 'hazard-ratio', estimate: 0.89, low: 0.83, high: 0.96 } as const;
const compare = (has: 'fewer' | 'more', ...pairs: PairFinding[]): ReasonFinding => ({
  find: 'compare',
  means: 'supports',
  has,
  pairs,
});

const findings: readonly (readonly [ReasonFinding, string])[] = [
  [{ find: 'not-in-case', means: 'contradicts', needs: 'condition' }, 'The case has no such condition.'],
  [{ find: 'not-in-case', means: 'contradicts', needs: 'medicine' }, 'The case has no such medicine.'],
  [
    { find: 'not-in-case', means: 'contradicts', needs: 'earlier-operation' },
    'The case has no earlier operation.',
  ],
  [
    { find: 'not-in-case', means: 'contradicts', needs: 'wish' },
    'Nothing is written down that matters most.',
  ],
  [{ find: 'in-case', means: 'supports' }, 'The case says so.'],
  [compare('fewer'), 'There is nothing to compare with.'],
  [
    compare('fewer', { ...known, result: 'yes', basis: 'one-study', mine: share, theirs: none }),
    'Fewer than with a sleeve: leak, 30 days, 4.0% against none of 212 in one study.',
  ],
  [
    compare('more', {
      ...known,
      result: 'no',
      basis: 'two-studies',
      mine: weight,
      theirs: { ...weight, averageKg: 90 },
    }),
    'Fewer than with a sleeve: leak, 30 days, 93.2 kg against 90.0 kg in two studies.',
  ],
  [
    compare('more', { ...known, result: 'yes', basis: 'contrast', contrast }),
    'More than with a sleeve: leak, 30 days, hazard ratio 0.89 (0.83 to 0.96) of a sleeve.',
  ],
  [
    compare(
      'fewer',
      {
        ...known,
        result: 'unclear',
        basis: 'one-study',
        mine: { kind: 'proportion', value: 0.0012 },
        theirs: { kind: 'proportion', value: 0.6 },
      },
      { other: 'plication', result: 'unknown' },
      { other: 'semaglutide', result: 'unknown' },
    ),
    'Not clearly other than with a sleeve: leak, 30 days, 0.12% against 60% in one study. Not known against stomach folding or semaglutide.',
  ],
  [
    compare('fewer', { ...known, result: 'yes', basis: 'impossible', records: [] }),
    'Fewer than with a sleeve: leak, which cannot happen here.',
  ],
  [
    { find: 'recover', means: 'nothing', outcome: 'reflux-remission', asked: {}, own: null, untreated: null },
    'No figure for people like this person: reflux remission.',
  ],
  [
    {
      find: 'recover',
      means: 'supports',
      outcome: 'reflux-remission',
      asked: { months: 60 },
      own: { record: 'r', value: share },
      untreated: null,
    },
    'reflux remission, 5 years: 4.0%. Nothing is known without treatment.',
  ],
  [
    {
      find: 'recover',
      means: 'supports',
      outcome: 'reflux-remission',
      asked: { months: 60 },
      own: { record: 'r', value: share },
      untreated: {
        ...known,
        other: 'no-operation',
        result: 'yes',
        basis: 'two-studies',
        mine: share,
        theirs: none,
      },
    },
    'More than with no new treatment: leak, 30 days, 4.0% against none of 212 in two studies.',
  ],
  ...(['yes', 'partly', 'no', 'not-known'] as const).map((possible) => {
    const said = {
      yes: 'It can be undone.',
      partly: 'It can be undone only in part.',
      no: 'It cannot be undone.',
      'not-known': 'Whether it can be undone is not recorded.',
    };
    return [{ find: 'undo', means: 'nothing', possible }, said[possible]] as const;
  }),
  ...(['established', 'newer', 'under-study', 'not-recorded'] as const).map((maturity) => {
    const said = {
      established: 'It is established.',
      newer: 'It is newer, and not under study.',
      'under-study': 'It is under study.',
      'not-recorded': 'How it stands is not recorded.',
    };
    return [
      { find: 'under-study', means: 'nothing', maturity, entries: ['x.us'] },
      `${said[maturity]} [x.us]`,
    ] as const;
  }),
  ...(['warned', 'favoured', 'practice', 'spared', 'silent'] as const).map((state) => {
    const said = {
      warned: 'Warned of by: a, b.',
      favoured: 'Held up as better by: a, b.',
      practice: 'Warned of by usual practice only: a, b.',
      spared: 'No caution, for a reason that is known.',
      silent: 'No caution speaks of it. What the patient pages say each choice asks for is not checked here.',
    };
    return [{ find: 'cautions', means: 'nothing', said: state, cautions: ['a', 'b'] }, said[state]] as const;
  }),
  [
    {
      find: 'fewer-cautions',
      means: 'nothing',
      mine: ['a'],
      others: [
        { option: 'sleeve', cautions: ['b'] },
        { option: 'plication', cautions: [] },
      ],
    },
    'Cautions here, and not with all others of its sort: a. Only with a sleeve: b.',
  ],
  [
    { find: 'fewer-cautions', means: 'nothing', mine: [], others: [] },
    'No caution here that not all others of its sort have.',
  ],
  [
    {
      find: 'wishes',
      means: 'nothing',
      met: ['diabetes-better'],
      unmet: ['reflux-better'],
      open: ['eat-with-family'],
      ownWords: 2,
    },
    'Met: I want my diabetes to get better. Not met: I want my reflux to get better. Cannot be checked: I want to eat meals with my family. Own words (2) are not checked.',
  ],
];

describe('why a reason is borne out or not', () => {
  it.each(findings)('%j is said in words', async (finding, words) => {
    // Outcomes have a name for patients, and some a term of the trade.
    const said = (await why(finding))
      .toLowerCase()
      .replace('a leak', 'leak')
      .replace('reflux gone', 'reflux remission');
    expect(said).toBe(words.toLowerCase());
  });

  it.each(findings)('%j is said in Spanish too, in other words', async (finding, words) => {
    const said = await why(finding, 'es');
    expect(said).toMatch(/\S/);
    expect(said.toLowerCase()).not.toBe(words.toLowerCase());
    expect(said).not.toMatch(/\{\{|reason-checks|undefined/);
  });

  it('is what decided, and the records after it', async () => {
    const quiet: ReasonFinding = { find: 'cautions', means: 'nothing', said: 'silent', cautions: [] };
    const rows = rowsOf(
      await viewOf([
        {
          ...base,
          findings: [quiet, { find: 'undo', means: 'supports', possible: 'yes' }],
          records: ['r.1', 'r.2'],
        },
      ]),
    );
    expect(rows[1]?.[2]).toBe('It can be undone. [r.1, r.2]');
  });

  it('says of a caution that stands nowhere on the sheet that it is about another choice', async () => {
    const cautions = ['a', 'band-reflux'];
    expect(await why({ find: 'cautions', means: 'supports', said: 'favoured', cautions })).toBe(
      'Held up as better by: a, band-reflux (a caution about a choice that is not compared here).',
    );
  });

  it('ties each figure to its record, and each caution to its row', async () => {
    const pair: PairFinding = { ...known, result: 'yes', basis: 'one-study', mine: share, theirs: none };
    const { table } = await viewOf([
      {
        ...base,
        findings: [
          compare('fewer', pair),
          { find: 'cautions', means: 'supports', said: 'warned', cautions: ['reflux-sleeve'] },
        ],
      },
    ]);
    const { markup = '' } = table.rows[1]?.cells[2]?.lines[0]?.words ?? {};
    expect(markup).toContain('records="bypass.leak.30d.a">4.0%</fig>');
    expect(markup).toContain('records="sleeve.leak.30d.a">none of 212</fig>');
    expect(markup).toContain('<stands on="caution:reflux-sleeve">');
  });
});

describe('the part of the clinician sheet about reasons', () => {
  it('is not there without a coded reason', async () => {
    expect(await viewOf([])).toMatchObject({ any: false, flagged: [], table: { rows: [] } });
  });

  it('has a band for each option and stance, and a row a reason', async () => {
    const view = await viewOf([
      base,
      { ...base, id: 'x', code: 'more-weight-loss' },
      { ...base, id: 'y', stance: 'against', option: 'sleeve', code: 'reflux-worse' },
    ]);
    expect(rowsOf(view)).toEqual([
      ['Leans to: a gastric bypass'],
      ['Your reflux may get better.', 'supported', 'The case says so.'],
      ['You may lose more weight.', 'supported', 'The case says so.'],
      ['Advises against: a sleeve'],
      ['Your reflux may get worse.', 'supported', 'The case says so.'],
    ]);
    expect(view.flagged).toEqual([]);
  });

  it('flags what is contradicted and what nobody can tell', async () => {
    const view = await viewOf([
      base,
      { ...base, id: 'x', verdict: 'contradicted' },
      { ...base, id: 'y', verdict: 'cannot-tell' },
    ]);
    expect(view.flagged.map(({ markup }) => markup)).toEqual([
      '<b>2 reasons are not borne out, or cannot be told.</b>',
    ]);
    expect(view.table.rows.slice(1).map(({ cells }) => cells[1]?.lines[0]?.words.markup)).toEqual([
      'supported',
      '<b>contradicted</b>',
      '<b>cannot tell</b>',
    ]);
    const one = await viewOf([{ ...base, verdict: 'contradicted' }], 'es');
    expect(one.flagged.map(({ markup }) => markup)).toEqual([
      '<b>1 motivo no se sostiene o no se puede comprobar.</b>',
    ]);
  });

  it('has words for every reason in every language', async () => {
    for (const tag of ['en', 'es']) {
      const view = await viewOf(
        reasonCodes.map((code) => ({ ...base, id: code, code })),
        tag,
      );
      expect(rowsOf(view).filter((row) => row.some((cell) => cell === ''))).toEqual([]);
      expect(view.table.rows).toHaveLength(reasonCodes.length + 1);
    }
  });
});

describe('the patient pages', () => {
  it('print a contradicted reason whole, and beside it that it is', async () => {
    const given = makeCase({
      decision: { options: fiveOptions, leaning: { option: 'bypass', reasons: [{ code: 'reflux-better' }] } },
    });
    const opinions = await Promise.all(
      [[], [{ ...base, verdict: 'contradicted' as const }]].map(async (reasons) =>
        viewOpinion(
          await sceneFor('en', { case: given, comparison: makeComparison(fiveOptions, { reasons }) }),
        ),
      ),
    );
    expect(opinions.map((opinion) => opinion.leaning?.reasons.map(({ markup }) => markup))).toEqual([
      ['Your reflux may get better.'],
      ['Your reflux may get better. What we found says something else.'],
    ]);
    expect(opinions[1]?.leaning?.against).toEqual(opinions[0]?.leaning?.against);
  });

  it('come from templates that do not know the checks', () => {
    const folder = join(import.meta.dirname, '../../../../templates');
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.hbs'),
    );
    const naming = files.filter((name) =>
      /leanChecks|reason-checks/.test(readFileSync(join(folder, name), 'utf8')),
    );
    expect(files.length).toBeGreaterThan(4);
    expect(naming).toEqual(['clinician-sheet/main.hbs']);
  });
});
