import { describe, expect, it } from 'vitest';

import { knownCells } from '../../../../src/compose/view/cells-shown.ts';
import { clinicianOthers } from '../../../../src/compose/view/clinician-others.ts';
import type {
  Cell,
  ComparisonTable,
  KnownCell,
  MissingReason,
  UnknownCell,
} from '../../../../src/model/comparison.ts';
import { fiveOptions, makeComparison, unknownCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain, withMainCells } from '../../../helpers/read-tables.ts';

const records = ['sleeve.other.12m.b', 'sleeve.other.24m.b', 'sleeve.other.24m.c', 'sleeve.other.d'];
const pooled = {
  value: 0.031,
  low: 0.022,
  high: 0.043,
  studies: 5,
  heterogeneity: 96.48,
  expected: { low: 0.005, high: 0.096 },
};

async function allLines(comparison: ComparisonTable, tag = 'en'): Promise<readonly string[]> {
  const shown = knownCells(comparison).flatMap(({ cell }) =>
    (cell.others?.records ?? []).map((record) => `${cell.id} ${record}`),
  );
  const printed = new Set(shown);
  return clinicianOthers(await sceneFor(tag, { comparison, printed })).map(({ markup }) => plain(markup));
}

/** Of cells without any record. */
const silence = /^(Where a patient page says not known|Donde una hoja del paciente dice)/;

/** The lines of the options. */
async function said(comparison: ComparisonTable, tag = 'en'): Promise<readonly string[]> {
  return (await allLines(comparison, tag)).filter((line) => !silence.test(line));
}

/** The comparison of one topic that has this cell alone; no weights are known. */
function withCells(cells: readonly Cell[]): ComparisonTable {
  const comparison = makeComparison(['sleeve']);
  const none = { ...comparison.weight.main, cells: [] };
  const rows = cells.map((cell) => ({ outcome: cell.outcome, asked: cell.asked, cells: [cell] }));
  const topics = [{ id: 'first-month' as const, denominator: 1000 as const, picture: null, rows }];
  return { ...comparison, weight: { mainMonths: 60, main: none, over: [], courses: [] }, topics };
}

const bleeding = (changes: Partial<KnownCell>): Cell => {
  const cells = makeComparison(['sleeve']).topics.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  const cell = cells.find(({ id }) => id === 'sleeve/bleeding/30d');
  if (cell?.state !== 'known') throw new Error('no cell');
  return { ...cell, ...changes };
};

describe('what other studies say', () => {
  it('is a range in the unit of the figure, with the ids, those of one study together', async () => {
    const others = { low: 0.018, high: 0.041, records };
    expect(await said(withCells([bleeding({ others })]))).toEqual([
      'Sleeve. bleeding ≤ 30 d 18.0 to 41.0/1,000 (12m/24m.b, 24m.c, d).',
    ]);
  });

  it('is named as printed nowhere where no patient page has it', async () => {
    const others = { low: 0.018, high: 0.041, records };
    const [line] = clinicianOthers(await sceneFor('en', { comparison: withCells([bleeding({ others })]) }));
    expect(plain(line?.markup ?? '')).toMatch(/^Sleeve\. On no patient page: bleeding ≤ 30 d .*d\)\.$/);
  });

  it('is one value where the records agree or there is one', async () => {
    const comparison = withMainCells((cell) =>
      cell.state === 'known' && cell.option === 'sleeve'
        ? { ...cell, others: { low: 86.2, high: 86.24, records: ['sleeve.weight-loss.60m.x'] } }
        : cell,
    );
    expect((await said(comparison))[0]).toContain('weight 5 y 86.2 kg (60m.x)');
  });

  it.each([
    [
      'en',
      'Sleeve. bleeding ≤ 30 d 18.0 to 41.0/1,000 (12m/24m.b, 24m.c, d), pooled 31.0 (22.0 to 43.0), a further study expected at 5.0 to 96.0, 5 studies, I² 96%.',
    ],
    [
      'es',
      'Manga gástrica. sangrado ≤ 30 d 18.0 a 41.0/1,000 (12m/24m.b, 24m.c, d), conjunto 31.0 (22.0 a 43.0), otro estudio se espera en 5.0 a 96.0, 5 estudios, I² 96%.',
    ],
  ])('is pooled where four agree to be, tied to all of the records: %s', async (tag, words) => {
    const comparison = withCells([bleeding({ others: { low: 0.018, high: 0.041, records }, pooled })]);
    expect(await said(comparison, tag)).toEqual([words]);
    const [line] = clinicianOthers(await sceneFor(tag, { comparison }));
    expect(line?.markup).toContain(
      `<fig cell="sleeve/bleeding/30d" records="sleeve.bleeding.study-a ${records.join(' ')}">31.0`,
    );
  });
});

describe('what the patient pages call not known', () => {
  const aside = [{ record: 'sleeve.x.30d.a', reason: { code: 'pregnancy' as const } }];
  const unknown = (
    outcome: string,
    asked: object,
    {
      setAside = aside,
      reason = { code: 'pregnancy' },
    }: Partial<Pick<UnknownCell, 'setAside' | 'reason'>> = {},
  ): Cell => ({ ...unknownCell({ option: 'sleeve', outcome, asked }, reason), setAside });

  it('names the outcomes that were studied, with the time only where another time of them is known', async () => {
    const cells = [
      unknown('leak', { days: 30 }),
      unknown('ulcer', { months: 12 }),
      unknown('ulcer', { months: 60 }),
      bleeding({}),
      unknown('bleeding', { months: 60 }),
      unknown('clot', { days: 30 }, { setAside: [] }),
    ];
    expect(await said(withCells(cells))).toEqual([
      'Sleeve. Not known: leak, ulcer, bleeding 5 y (not valid in pregnancy).',
    ]);
  });

  it('says why of each, once for those that share a reason', async () => {
    const why = (reason: UnknownCell['reason']): Partial<UnknownCell> => ({ reason });
    const cells = [
      unknown('leak', { days: 30 }, why({ code: 'bmi-outside', low: 35, yours: 27 })),
      unknown('ulcer', { months: 12 }, why({ code: 'other-time', longestMonths: 60 })),
      unknown('ulcer', { months: 60 }, why({ code: 'not-verified' })),
      unknown('gallstones', { months: 60 }, why({ code: 'other-time' })),
      unknown('death', { days: 30 }, why({ code: 'too-few-people', n: 12 })),
    ];
    expect(await said(withCells(cells))).toEqual([
      'Sleeve. Not known: leak (BMI 27.0 outside the range measured); ulcer 1 y, gallstones (at other times only); ulcer 5 y (not read in the study itself); death (only 12 people).',
    ]);
  });

  const missing: { readonly [K in MissingReason['code']]?: MissingReason } = {
    'no-record': { code: 'no-record' },
    'not-convertible': { code: 'not-convertible' },
    contradicted: { code: 'contradicted' },
    'diabetes-only': { code: 'diabetes-only' },
    'already-has': { code: 'already-has', condition: 'reflux' },
    'age-outside': { code: 'age-outside', low: 18, high: 60, yours: 70 },
  };

  it.each(['en', 'es'])('has words for each reason: %s', async (tag) => {
    for (const reason of Object.values(missing)) {
      const [line] = await said(withCells([unknown('leak', { days: 30 }, { reason })]), tag);
      expect(line).toMatch(/\(\S.*\S\)\.$/);
    }
  });

  it('is left out for an option of which all is known or nothing was studied', async () => {
    expect(await said(withCells([bleeding({})]))).toEqual([]);
    const nothing = unknown('clot', { days: 30 }, { setAside: [] });
    expect(await said(withCells([bleeding({}), nothing]))).toEqual([]);
  });

  it('is told in one line for all of which nothing was studied, where there is such', async () => {
    const whole = withCells([bleeding({})]);
    const options = whole.options.map((option) => ({
      ...option,
      stay: { ...bleeding({}), outcome: 'hospital-stay', id: 'stay' },
    }));
    const nothing = unknown('clot', { days: 30 }, { setAside: [] });
    for (const tag of ['en', 'es']) {
      expect(await allLines({ ...whole, options }, tag)).toEqual([]);
      const lines = await allLines({ ...withCells([bleeding({}), nothing]), options }, tag);
      expect(lines).toEqual([expect.stringMatching(silence)]);
    }
  });

  it('comes option by option in the order of the case', async () => {
    const comparison = withMainCells((cell) =>
      cell.state === 'not-known' ? { ...cell, setAside: aside } : cell,
    );
    const lines = await said({ ...comparison, topics: [] });
    expect(lines.map((line) => line.split('.')[0])).toEqual(
      fiveOptions.flatMap((code) =>
        code === 'plication' ? ['Stomach folding'] : code === 'semaglutide' ? ['Semaglutide'] : [],
      ),
    );
  });
});
