import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../../src/compare/index.ts';
import { findGone, judgeReversibility } from '../../../src/compare/judge-reversibility.ts';
import { judgeStanding } from '../../../src/compare/judge-standing.ts';
import {
  makeCase,
  makeClinic,
  makeStanding,
  readShippedEvidence,
  today,
} from '../../helpers/compare-inputs.ts';

const endorsed = makeStanding();
const study = makeStanding({
  id: 'sleeve.us.2019',
  standing: 'under-study',
  maturity: undefined,
  date: '2019-03',
});
const licence = makeStanding({
  id: 'sleeve.us.2022',
  standing: 'licensed-by-regulator',
  maturity: 'newer',
  date: '2022',
});

describe('judgeStanding', () => {
  it('takes the newest entry of a kind, so that an endorsement ends an earlier study', () => {
    expect(judgeStanding([study, endorsed], 'sleeve', 'US')).toEqual({
      maturity: 'established',
      entries: ['sleeve.us.2025'],
    });
    const older = makeStanding({ id: 'old', maturity: 'newer', date: '2015' });
    expect(judgeStanding([older, endorsed], 'sleeve', 'US').maturity).toBe('established');
  });

  it('never takes a licence for an endorsement, but shows both', () => {
    expect(judgeStanding([study, licence], 'sleeve', 'US')).toEqual({
      maturity: 'under-study',
      entries: ['sleeve.us.2019', 'sleeve.us.2022'],
    });
    expect(judgeStanding([licence], 'sleeve', 'US').maturity).toBe('newer');
  });

  it('shows an option as under study when the study is as new as the endorsement', () => {
    const now = makeStanding({ id: 'now', standing: 'under-study', maturity: undefined });
    expect(judgeStanding([endorsed, now], 'sleeve', 'US').maturity).toBe('under-study');
  });

  it('falls back on international entries only', () => {
    const abroad = makeStanding({ id: 'abroad', jurisdiction: 'international', maturity: 'newer' });
    expect(judgeStanding([endorsed, abroad], 'sleeve', 'Europe')).toEqual({
      maturity: 'newer',
      entries: ['abroad'],
    });
    expect(judgeStanding([endorsed], 'sleeve', 'Europe')).toEqual({ maturity: 'not-recorded', entries: [] });
  });

  it('reads an entry of two jurisdictions for each', () => {
    const both = makeStanding({ id: 'both', jurisdiction: 'Europe and UK' });
    expect(judgeStanding([both], 'sleeve', 'UK').entries).toEqual(['both']);
  });

  it.each(['memory', 'page-2nd'])('ignores what was seen as %s', (seen) => {
    expect(judgeStanding([makeStanding({ seen })], 'sleeve', 'US').maturity).toBe('not-recorded');
  });

  it('puts an entry without a date last', () => {
    const undated = makeStanding({ id: 'undated', maturity: 'newer', date: null });
    expect(judgeStanding([undated, endorsed], 'sleeve', 'US').entries).toEqual(['sleeve.us.2025']);
  });
});

describe('the standing that is shipped', () => {
  const standing = (option: string, jurisdiction: string): string =>
    judgeStanding(readShippedEvidence().standing, option, jurisdiction).maturity;

  it('has plication and the endoscopic sleeve under study in the US, and plication in the UK', () => {
    expect(standing('plication', 'US')).toBe('under-study');
    expect(standing('endoscopic-sleeve', 'US')).toBe('under-study');
    expect(standing('plication', 'UK')).toBe('under-study');
  });

  it('does not call plication anything in Europe, where only an opening was read', () => {
    expect(standing('plication', 'Europe')).toBe('not-recorded');
  });

  it('has the sleeve established, the one-anastomosis bypass and medicines newer', () => {
    expect(standing('sleeve', 'US')).toBe('established');
    expect(standing('one-anastomosis-bypass', 'US')).toBe('newer');
    expect(standing('one-anastomosis-bypass', 'Europe')).toBe('newer');
    expect(standing('semaglutide', 'UK')).toBe('newer');
  });
});

describe('judgeReversibility', () => {
  it('says what can be undone and whether the weight afterwards is known', () => {
    const { reversibility } = readShippedEvidence();
    expect(judgeReversibility(reversibility.get('sleeve'))).toMatchObject({
      possible: 'no',
      weightAfterKnown: false,
    });
    expect(judgeReversibility(reversibility.get('bypass'))).toMatchObject({
      possible: 'partly',
      weightAfterKnown: true,
    });
    expect(judgeReversibility(reversibility.get('band'))).toMatchObject({ possible: 'yes' });
  });

  it('says not known where nothing is recorded', () => {
    expect(judgeReversibility(undefined)).toEqual({
      possible: 'not-known',
      changeTo: [],
      weightAfterKnown: false,
      goneBefore: [],
    });
  });

  it('finds what earlier operations took out for good, even where they were changed or undone since', () => {
    const { reversibility } = readShippedEvidence();
    const gone = (...operations: readonly string[]): readonly string[] =>
      findGone(
        operations.map((operation) => ({ operation })),
        reversibility,
      );
    expect(gone('sleeve')).toEqual(['sleeve']);
    expect(gone('duodenal-switch')).toEqual(['duodenal-switch']);
    expect(gone('single-anastomosis-switch')).toEqual(['single-anastomosis-switch']);
    expect(gone('band', 'sleeve', 'sleeve', 'bypass')).toEqual(['sleeve']);
    expect(gone('bypass', 'one-anastomosis-bypass', 'band', 'plication', 'endoscopic-sleeve')).toEqual([]);
    expect(gone()).toEqual([]);
  });
});

describe('undoing a second operation', () => {
  const goneOf = (operation: string, options: readonly string[]): readonly (readonly string[])[] => {
    const health = { earlier_operations: [{ operation, status: 'converted' }] };
    const decision = { asked: 'second-operation', options };
    const evidence = readShippedEvidence();
    const table = compareOptions({
      case: makeCase({ health, decision }),
      clinic: makeClinic(),
      evidence,
      date: today,
    });
    if (!table.ok) throw new Error('the comparison failed');
    return table.value.options.map(({ reversibility }) => reversibility.goneBefore);
  };

  it('does not bring back what the first one took out, of whatever procedure comes after it', () => {
    const options = ['bypass', 'duodenal-switch', 'endoscopic-sleeve', 'semaglutide', 'no-operation'];
    expect(goneOf('sleeve', options)).toEqual([['sleeve'], ['sleeve'], ['sleeve'], [], []]);
    expect(goneOf('single-anastomosis-switch', ['bypass'])).toEqual([['single-anastomosis-switch']]);
  });

  it('has nothing of that after an operation that took nothing out', () => {
    expect(goneOf('band', ['bypass', 'sleeve'])).toEqual([[], []]);
  });
});

describe('weight once a medicine is stopped', () => {
  const differs = (changes: Parameters<typeof makeCase>[0]): readonly unknown[] => {
    const table = compareOptions({
      case: makeCase(changes),
      clinic: makeClinic(),
      evidence: readShippedEvidence(),
      date: today,
    });
    if (!table.ok) throw new Error('the comparison failed');
    return table.value.options.map(({ reversibility }) => reversibility.weightAfterDiffers);
  };
  const options = ['semaglutide', 'tirzepatide', 'balloon', 'no-operation'];

  it('was followed in people without diabetes, as far as the record says so', () => {
    const conditions = ['type-2-diabetes'];
    const none = { code: 'no-diabetes-only' };
    expect(differs({ health: { conditions }, decision: { options } })).toEqual([
      none,
      none,
      undefined,
      undefined,
    ]);
  });

  it('was followed in people with no operation before', () => {
    const health = { earlier_operations: [{ operation: 'sleeve', status: 'in-place' }] };
    const decision = { asked: 'second-operation', options };
    const reason = { code: 'indication', theirs: 'none', yours: 'after-sleeve' };
    expect(differs({ health, decision })).toEqual([reason, reason, undefined, undefined]);
  });

  it('needs no word where they are like this person, and what a study leaves unsaid is no difference', () => {
    const patient = { born: '1956-06-02' };
    expect(differs({ patient, decision: { options } })).toEqual([undefined, undefined, undefined, undefined]);
  });
});
