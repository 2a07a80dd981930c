import { describe, expect, it } from 'vitest';

import { compareOptions } from '../../../../src/compare/index.ts';
import type { CautionCoverage } from '../../../../src/model/evidence-rules.ts';
import { ReversibilitySchema } from '../../../../src/model/evidence-rules.ts';
import type { EvidenceBase } from '../../../../src/model/evidence.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import type { ReasonCode } from '../../../../src/model/reason-check.ts';
import { check } from '../../../helpers/check-reason.ts';
import type { AskedReason } from '../../../helpers/check-reason.ts';
import {
  makeCase,
  makeCaution,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeStanding,
  makeWeightRecord,
  today,
} from '../../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../../helpers/compare-inputs.ts';

function share(option: string, outcome: string, events: number): EvidenceRecord {
  const months = ['leak', 'major-complication'].includes(outcome) ? undefined : 60;
  return makeRecord({
    id: `${option}.${outcome}.${months === undefined ? '30d' : '60m'}.a`,
    option,
    outcome,
    study: 'a',
    kind: /remission/.test(outcome) ? 'benefit' : 'risk',
    time: months === undefined ? { days: 30, basis: 'by' } : { months, basis: 'by' },
    value: { events, n: 1000 },
  });
}

function lost(option: string, estimate: number): EvidenceRecord {
  const value = { metric: 'TWL', unit: '%', reference: 'before-this-operation', estimate };
  const sure = { low: estimate - 0.5, high: estimate + 0.5, interval: 'ci95', n: 1000 };
  return makeWeightRecord({
    id: `${option}.weight-loss.60m.a`,
    option,
    study: 'a',
    value: { ...value, ...sure },
    ...(option === 'usual-care'
      ? { people: { indication: 'none', bmi: { low: 35, high: 60 }, diabetes: 'mixed' } }
      : {}),
  });
}

function undoable(possible: 'yes' | 'partly' | 'no'): Partial<EvidenceBase> {
  const entry = ReversibilitySchema.parse({
    option: 'sleeve',
    undo: {
      possible,
      how: 'Somehow.',
      what_remains: 'Scars.',
      weight_after: { statement: 'Not known.', basis: 'not-known' },
      data: [],
    },
    change_to: [],
    sources: [],
  });
  return { reversibility: new Map([['sleeve', entry]]) };
}

function covered(code: string, why: string): readonly CautionCoverage[] {
  return [{ code, by_row: ['bypass'], others: [{ options: ['sleeve'], why }] }];
}

const reflux: CaseChanges = { health: { conditions: ['reflux'] } };
const diabetes: CaseChanges = { health: { conditions: ['type-2-diabetes'] } };
const ibuprofen: CaseChanges = { health: { medicines: ['anti-inflammatory'] } };
const ulcers = makeCaution({ id: 'ulcers', when: { medicine: 'anti-inflammatory' }, options: ['bypass'] });
const iron = makeCaution({
  id: 'iron',
  when: { condition: 'iron-or-calcium-lack' },
  options: ['bypass'],
  favours: ['sleeve'],
});
const lungs = makeCaution({ id: 'lungs', when: { condition: 'sleep-apnoea' }, options: ['bypass'] });
const wish = (code: string): CaseChanges => ({ decision: { matters_most: [{ code }] } });

/** For each code what bears it out, and what speaks against it. */
const judged: Readonly<
  Record<ReasonCode, { readonly supported: AskedReason; readonly contradicted: AskedReason }>
> = {
  'reflux-better': {
    supported: {
      changes: reflux,
      option: 'bypass',
      evidence: { cautions: [makeCaution({ favours: ['bypass'] })] },
    },
    contradicted: { changes: reflux, evidence: { cautions: [makeCaution()] } },
  },
  'reflux-worse': {
    supported: { changes: reflux, evidence: { cautions: [makeCaution()] } },
    contradicted: {
      changes: reflux,
      option: 'bypass',
      evidence: { cautions: [makeCaution({ favours: ['bypass'] })] },
    },
  },
  'diabetes-better': {
    supported: { changes: diabetes, records: [share('sleeve', 'diabetes-remission', 500)] },
    contradicted: {},
  },
  'more-weight-loss': {
    supported: { records: [lost('sleeve', 25), lost('bypass', 20), lost('usual-care', 1)] },
    contradicted: { records: [lost('sleeve', 20), lost('bypass', 25)] },
  },
  'fewer-early-problems': {
    supported: {
      records: [share('sleeve', 'major-complication', 20), share('bypass', 'major-complication', 50)],
    },
    contradicted: {
      records: [share('sleeve', 'major-complication', 50), share('bypass', 'major-complication', 20)],
    },
  },
  'fewer-late-problems': {
    supported: { records: [share('sleeve', 'reoperation', 90), share('bypass', 'reoperation', 190)] },
    contradicted: { records: [share('sleeve', 'reoperation', 190), share('bypass', 'reoperation', 90)] },
  },
  'can-be-undone': { supported: { evidence: undoable('yes') }, contradicted: { evidence: undoable('no') } },
  'cannot-be-undone': {
    supported: { evidence: undoable('no') },
    contradicted: { evidence: undoable('yes') },
  },
  'keeps-pain-medicine': {
    supported: {
      changes: ibuprofen,
      evidence: { cautionCoverage: covered('anti-inflammatory', 'nothing to hurt') },
    },
    contradicted: { changes: ibuprofen, option: 'bypass', evidence: { cautions: [ulcers] } },
  },
  'no-pain-medicine': {
    supported: { changes: ibuprofen, option: 'bypass', evidence: { cautions: [ulcers] } },
    contradicted: {
      changes: ibuprofen,
      evidence: { cautionCoverage: covered('anti-inflammatory', 'nothing to hurt') },
    },
  },
  'fits-what-matters': {
    supported: { changes: wish('keep-options-open'), evidence: undoable('yes') },
    contradicted: { changes: wish('no-operation-if-possible') },
  },
  'fewer-vitamins': {
    supported: { records: [share('sleeve', 'anaemia', 90), share('bypass', 'anaemia', 190)] },
    contradicted: {
      changes: { health: { conditions: ['iron-or-calcium-lack'] } },
      option: 'bypass',
      evidence: { cautions: [iron] },
    },
  },
  'more-vitamins': {
    supported: {
      option: 'bypass',
      records: [share('sleeve', 'anaemia', 90), share('bypass', 'anaemia', 190)],
    },
    contradicted: {
      changes: { health: { conditions: ['iron-or-calcium-lack'] } },
      evidence: { cautions: [iron] },
    },
  },
  'safer-with-other-illness': {
    supported: { changes: { health: { conditions: ['sleep-apnoea'] } }, evidence: { cautions: [lungs] } },
    contradicted: {
      changes: { health: { conditions: ['sleep-apnoea'] } },
      option: 'bypass',
      evidence: { cautions: [lungs] },
    },
  },
  'not-studied-enough': {
    supported: { evidence: { standing: [makeStanding({ standing: 'under-study', maturity: undefined })] } },
    contradicted: { evidence: { standing: [makeStanding()] } },
  },
  'earlier-operation': {
    supported: {
      changes: {
        health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
        decision: { asked: 'second-operation' },
      },
    },
    contradicted: {},
  },
};

describe.each(Object.entries(judged))('the reason %s', (code, { supported, contradicted }) => {
  it('is supported where the case and the evidence bear it out', () => {
    const found = check(code as ReasonCode, supported);
    expect(found.verdict).toBe('supported');
    expect(found.findings.some(({ means }) => means === 'supports')).toBe(true);
  });

  it('is contradicted where they say the opposite', () => {
    expect(check(code as ReasonCode, contradicted).verdict).toBe('contradicted');
  });
});

describe('a reason about something that the case lacks', () => {
  it.each<[ReasonCode, string]>([
    ['reflux-better', 'condition'],
    ['safer-with-other-illness', 'condition'],
    ['keeps-pain-medicine', 'medicine'],
    ['fits-what-matters', 'wish'],
    ['earlier-operation', 'earlier-operation'],
  ])('%s is contradicted, whatever the evidence', (code, needs) => {
    expect(check(code, { evidence: { cautions: [makeCaution({ favours: ['bypass'] })] } })).toMatchObject({
      verdict: 'contradicted',
      findings: [{ find: 'not-in-case', needs }],
      records: [],
    });
  });

  it('takes a severe form for the plain one', () => {
    const changes = { health: { conditions: ['severe-reflux'] } };
    expect(check('reflux-worse', { changes, evidence: { cautions: [makeCaution()] } }).verdict).toBe(
      'supported',
    );
  });
});

describe('a reason of which nobody can tell', () => {
  it('is one without any figure', () => {
    expect(check('more-weight-loss')).toMatchObject({
      verdict: 'cannot-tell',
      records: [],
      findings: [
        {
          pairs: [
            { other: 'bypass', result: 'unknown' },
            { other: 'no-operation', result: 'unknown' },
          ],
        },
      ],
    });
    expect(check('diabetes-better', { changes: diabetes })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [
        { find: 'recover', means: 'nothing', outcome: 'diabetes-remission', own: null, untreated: null },
      ],
      records: [],
    });
  });

  it('is one that holds against some of the others only', () => {
    const records = [lost('sleeve', 25), lost('bypass', 20)];
    expect(check('more-weight-loss', { records }).verdict).toBe('cannot-tell');
  });

  it('is one that something supports and something else contradicts', () => {
    const records = [share('sleeve', 'anaemia', 90), share('bypass', 'anaemia', 190)];
    const against = makeCaution({ id: 'iron-too', when: { condition: 'iron-or-calcium-lack' } });
    const changes = { health: { conditions: ['iron-or-calcium-lack'] } };
    const found = check('fewer-vitamins', { records, changes, evidence: { cautions: [against] } });
    expect(found.findings.map(({ means }) => means)).toEqual(['supports', 'contradicts']);
    expect(found.verdict).toBe('cannot-tell');
  });

  it('is that an option can be undone which can only partly', () => {
    for (const code of ['can-be-undone', 'cannot-be-undone'] as const)
      expect(check(code, { evidence: undoable('partly') })).toMatchObject({
        verdict: 'cannot-tell',
        findings: [{ find: 'undo', means: 'nothing', possible: 'partly' }],
      });
  });

  it('is that an option is not studied enough which is newer than others, and no longer under study', () => {
    const evidence = { standing: [makeStanding({ maturity: 'newer' })] };
    expect(check('not-studied-enough', { evidence })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ means: 'nothing', maturity: 'newer' }],
    });
  });

  it.each<[string, Readonly<Record<string, unknown>>, string]>([
    ['stands on usual practice', { basis: 'practice' }, 'practice'],
    ['nobody read', { seen: 'memory' }, 'practice'],
    ['only asks for a check', { effect: 'needs-check' }, 'silent'],
    ['is about another condition', { when: { condition: 'sleep-apnoea' } }, 'silent'],
    ['is about a condition that the person does not have', { when: { condition: 'oesophagitis' } }, 'silent'],
  ])('is one that a caution speaks of which %s', (_, more, said) => {
    const changes = { health: { conditions: ['reflux', 'sleep-apnoea'] } };
    expect(check('reflux-worse', { changes, evidence: { cautions: [makeCaution(more)] } })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{}, { find: 'cautions', said, means: 'nothing' }],
    });
  });

  it('is one that only a caution which the clinic struck speaks of', () => {
    const asked = { changes: reflux, evidence: { cautions: [makeCaution()] } };
    expect(
      check('reflux-worse', { ...asked, clinic: { cautions: { 'reflux-sleeve': 'struck' } } }).verdict,
    ).toBe('cannot-tell');
    expect(
      check('reflux-worse', { ...asked, clinic: { cautions: { 'reflux-sleeve': 'confirmed' } } }).verdict,
    ).toBe('supported');
  });

  it('is one that no rule of the evidence speaks of', () => {
    expect(check('can-be-undone', { evidence: { ...undoable('yes'), reasons: [] } })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [],
    });
  });

  it('is one about a harm that none of the others can do', () => {
    const changes = { decision: { options: ['sleeve', 'semaglutide', 'no-operation'] } };
    const records = [share('sleeve', 'major-complication', 20)];
    expect(check('fewer-early-problems', { changes, records })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ find: 'compare', pairs: [] }],
    });
  });

  it('is that serious problems are fewer, where the figure is below that of leaks alone and no page shows it', () => {
    const serious = [share('sleeve', 'major-complication', 8), share('bypass', 'major-complication', 90)];
    expect(check('fewer-early-problems', { records: serious }).verdict).toBe('supported');
    const leaks = share('sleeve', 'leak', 32);
    expect(check('fewer-early-problems', { records: [...serious, leaks] }).verdict).toBe('cannot-tell');
  });

  it('is that pain medicine may stay, where the coverage does not know why not', () => {
    const evidence = { cautionCoverage: covered('anti-inflammatory', 'not known') };
    expect(check('keeps-pain-medicine', { changes: ibuprofen, evidence }).verdict).toBe('cannot-tell');
  });
});

describe('getting better', () => {
  it('is held against doing nothing more, where that is known', () => {
    const untreated = makeRecord({
      ...share('usual-care', 'diabetes-remission', 450),
      people: { indication: 'none', bmi: { low: 35, high: 60 }, diabetes: 'mixed' },
    });
    const treated = share('sleeve', 'diabetes-remission', 460);
    const found = check('diabetes-better', { changes: diabetes, records: [treated, untreated] });
    expect(found).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ own: { record: 'sleeve.diabetes-remission.60m.a' }, untreated: { result: 'unclear' } }],
      records: ['sleeve.diabetes-remission.60m.a', 'usual-care.diabetes-remission.60m.a'],
    });
    const worse = share('sleeve', 'diabetes-remission', 300);
    expect(check('diabetes-better', { changes: diabetes, records: [worse, untreated] }).verdict).toBe(
      'contradicted',
    );
  });

  it('is held against doing nothing more even if that is no option of the case', () => {
    const untreated = makeRecord({
      ...share('usual-care', 'diabetes-remission', 100),
      people: { indication: 'none', bmi: { low: 35, high: 60 }, diabetes: 'mixed' },
    });
    const changes = { ...diabetes, decision: { options: ['sleeve', 'bypass'] } };
    const records = [untreated, share('sleeve', 'diabetes-remission', 460)];
    expect(check('diabetes-better', { changes, records }).findings).toMatchObject([
      { untreated: { other: 'no-operation', result: 'yes' } },
    ]);
  });

  it('is held against it by the figures of the pages, where it is an option of the case', () => {
    const treated = share('sleeve', 'diabetes-remission', 500);
    // The pages take sleeve and bypass from the study that counted both, however large another of one is.
    const larger = { id: 'larger', study: 'larger', value: { events: 3500, n: 5000 } };
    const untreated = {
      id: 'untreated',
      study: 'untreated',
      people: { indication: 'none', bmi: { low: 35, high: 60 }, diabetes: 'mixed' },
    };
    const records = [
      treated,
      makeRecord({ ...treated, ...larger }),
      share('bypass', 'diabetes-remission', 600),
      makeRecord({ ...share('usual-care', 'diabetes-remission', 100), ...untreated }),
    ];
    expect(check('diabetes-better', { changes: diabetes, records })).toMatchObject({
      verdict: 'supported',
      records: [treated.id, 'untreated'],
    });
  });

  it('is never told by the figure of another option', () => {
    const records = [share('bypass', 'diabetes-remission', 500)];
    const options = { decision: { options: ['bypass', 'sleeve', 'no-operation'] } };
    expect(check('diabetes-better', { changes: { ...diabetes, ...options }, records })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ own: null }],
      records: [],
    });
  });

  const remission = (value: object): EvidenceRecord =>
    makeRecord({ ...share('sleeve', 'diabetes-remission', 0), value });

  it('in a few proves nothing where it is not known', () => {
    const few = [share('sleeve', 'diabetes-remission', 90)];
    expect(check('diabetes-better', { changes: diabetes, records: few }).verdict).toBe('cannot-tell');
  });

  it('in more than a few is told by the figure of the option itself', () => {
    const record = share('sleeve', 'diabetes-remission', 500);
    expect(check('diabetes-better', { changes: diabetes, records: [record] })).toMatchObject({
      verdict: 'supported',
      findings: [{ find: 'recover', own: { record: record.id, value: { value: 0.5 } }, untreated: null }],
      records: [record.id],
    });
  });

  it('counts from ten in a hundred on, as the lower limit has it', () => {
    const from = (low: number): EvidenceRecord =>
      remission({ percent: 30, low, high: 60, interval: 'ci95', n: 1000 });
    expect(check('diabetes-better', { changes: diabetes, records: [from(10)] }).verdict).toBe('supported');
    expect(check('diabetes-better', { changes: diabetes, records: [from(9.9)] }).verdict).toBe('cannot-tell');
  });

  it('proves nothing where nobody knows how sure the figure is', () => {
    const unsure = [remission({ percent: 80 })];
    expect(check('diabetes-better', { changes: diabetes, records: unsure })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ own: { value: { value: 0.8 } } }],
    });
  });

  it('by doing nothing more is held against nothing, least of all itself', () => {
    const found = check('diabetes-better', { changes: diabetes, option: 'no-operation' });
    expect(found.findings).toMatchObject([{ untreated: null, own: null }]);
    const untreated = makeRecord({
      ...share('usual-care', 'diabetes-remission', 100),
      people: { indication: 'none', bmi: { low: 35, high: 60 }, diabetes: 'mixed' },
    });
    expect(
      check('diabetes-better', { changes: diabetes, option: 'no-operation', records: [untreated] }).findings,
    ).toMatchObject([{ untreated: null, own: { record: untreated.id } }]);
  });
});

describe('the options that a reason is weighed against', () => {
  const many = ['sleeve', 'bypass', 'balloon', 'semaglutide', 'lifestyle', 'no-operation'];
  const others = (code: ReasonCode, option: string): unknown => {
    const [finding] = check(code, { option, changes: { decision: { options: many } } }).findings;
    return finding?.find === 'compare' ? finding.pairs.map(({ other }) => other) : undefined;
  };

  it('are those of the same sort for harm, and all for weight', () => {
    expect(others('fewer-late-problems', 'sleeve')).toEqual(['bypass', 'balloon']);
    expect(others('more-weight-loss', 'sleeve')).toEqual(many.slice(1));
  });

  it('are weighed at the times of later harms, not at those of weight', () => {
    const at100Months = (option: string, events: number): EvidenceRecord =>
      makeRecord({ ...share(option, 'reoperation', events), time: { months: 100, basis: 'by' } });
    const records = [at100Months('sleeve', 90), at100Months('bypass', 190)];
    expect(check('fewer-late-problems', { records }).verdict).toBe('supported');
  });

  it('are the operations, for a treatment that cannot do the harm', () => {
    expect(others('fewer-early-problems', 'semaglutide')).toEqual(['sleeve', 'bypass', 'balloon']);
    // Whoever never had an operation cannot need another.
    expect(others('fewer-late-problems', 'semaglutide')).toEqual(['sleeve', 'bypass', 'balloon']);
    expect(
      check('fewer-early-problems', { option: 'semaglutide', changes: { decision: { options: many } } }),
    ).toMatchObject({ verdict: 'supported', records: [] });
  });
});

describe('what matters to the person', () => {
  const wishes = (...matters: object[]): CaseChanges => ({ decision: { matters_most: matters } });

  it('is met only when every coded wish is, and own words are counted', () => {
    const words = { text: { en: 'I want to see my children grow up.' } };
    const both = wishes({ code: 'keep-options-open' }, { code: 'eat-with-family' }, words);
    expect(check('fits-what-matters', { changes: both, evidence: undoable('yes') })).toMatchObject({
      verdict: 'cannot-tell',
      findings: [{ met: ['keep-options-open'], unmet: [], open: ['eat-with-family'], ownWords: 1 }],
    });
    expect(check('fits-what-matters', { changes: wishes(words) }).verdict).toBe('cannot-tell');
  });

  it('is met by a kind of option that does without an operation', () => {
    const changes = {
      decision: { options: ['sleeve', 'semaglutide'], ...wish('no-operation-if-possible').decision },
    };
    expect(check('fits-what-matters', { changes, option: 'semaglutide' })).toMatchObject({
      verdict: 'supported',
      findings: [{ find: 'wishes', met: ['no-operation-if-possible'], unmet: [], open: [] }],
    });
  });

  it('is judged by the reason that it amounts to, and by the kind of option', () => {
    const conflicting = wishes({ code: 'keep-options-open' }, { code: 'no-operation-if-possible' });
    expect(check('fits-what-matters', { changes: conflicting, evidence: undoable('yes') })).toMatchObject({
      verdict: 'contradicted',
      findings: [{ met: ['keep-options-open'], unmet: ['no-operation-if-possible'] }],
    });
  });
});

describe('what a check tells', () => {
  it('is where it looked: at the case, or at how long an option is known', () => {
    expect(check('earlier-operation', judged['earlier-operation'].supported).findings).toEqual([
      { find: 'in-case', means: 'supports' },
    ]);
    expect(check('not-studied-enough', judged['not-studied-enough'].supported).findings).toEqual([
      { find: 'under-study', means: 'supports', maturity: 'under-study', entries: ['sleeve.us.2025'] },
    ]);
  });

  it('is all figures that it rests on, each once and in one order', () => {
    const options = ['sleeve', 'plication', 'bypass', 'band'];
    const records = options.map((option, at) => share(option, 'major-complication', 10 + 40 * at));
    expect(check('fewer-early-problems', { records, changes: { decision: { options } } })).toMatchObject({
      verdict: 'supported',
      records: ['band', 'bypass', 'plication', 'sleeve'].map((one) => `${one}.major-complication.30d.a`),
    });
  });
});

describe('the checks of a case', () => {
  it('judge a reason against an option as one for it', () => {
    const asked = { stance: 'against', evidence: undoable('no') } as const;
    expect(check('cannot-be-undone', asked)).toMatchObject({
      id: 'against/sleeve/cannot-be-undone',
      stance: 'against',
      verdict: 'supported',
    });
    expect(check('can-be-undone', asked).verdict).toBe('contradicted');
  });

  it('leave out an option that the case does not have', () => {
    const given = makeCase({
      decision: { leaning: { option: 'band', reasons: [{ code: 'can-be-undone' }] } },
    });
    const result = compareOptions({
      case: given,
      clinic: makeClinic(),
      evidence: makeEvidence([]),
      date: today,
    });
    expect(result.ok ? result.value.reasons : undefined).toEqual([]);
  });

  it('name stance, option and code, and leave free words and repeated codes out', () => {
    const text = { text: { en: 'Because.' } };
    const given = makeCase({
      decision: {
        leaning: { option: 'bypass', reasons: [{ code: 'can-be-undone' }, text, { code: 'can-be-undone' }] },
        advised_against: [{ option: 'sleeve', reasons: [text, { code: 'not-studied-enough' }] }],
      },
    });
    const result = compareOptions({
      case: given,
      clinic: makeClinic(),
      evidence: makeEvidence([]),
      date: today,
    });
    expect(result.ok ? result.value.reasons.map(({ id }) => id) : []).toEqual([
      'for/bypass/can-be-undone',
      'against/sleeve/not-studied-enough',
    ]);
  });
});
