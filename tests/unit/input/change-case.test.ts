import { describe, expect, it } from 'vitest';

import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { formatDiagnostics } from '../../../src/diagnostics/format.ts';
import { changeCase, readCase } from '../../../src/input/index.ts';
import type { ChangedCase } from '../../../src/input/index.ts';
import { whatIfFields, isListField } from '../../../src/input/what-if-fields.ts';
import type { Case } from '../../../src/model/case.ts';
import { context as known, replaceIn, sampleCase } from '../../helpers/sample-case.ts';

const today = '2026-11-25';
const context = { ...known, today };

function change(whatIfs: readonly string[], text = sampleCase): ChangedCase {
  const result = changeCase({ file: 'case.yaml', text }, whatIfs, context);
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

function refusals(whatIfs: readonly string[], text = sampleCase): readonly Diagnostic[] {
  const result = changeCase({ file: 'case.yaml', text }, whatIfs, context);
  return result.ok ? [] : result.diagnostics;
}

function places(whatIfs: readonly string[], text = sampleCase): string[] {
  return refusals(whatIfs, text).map(
    ({ code, path, span }) =>
      `${span?.file ?? ''}:${String(span?.line)}:${String(span?.column)}-${String(span?.endColumn)} ${code} ${path ?? ''}`,
  );
}

function present(text = sampleCase): Case {
  const read = readCase(text, 'case.yaml', context);
  if (!read.ok) throw new Error('the sample is refused');
  return read.value;
}

/** A band in place that slipped. */
const banded = replaceIn(
  replaceIn(
    replaceIn(sampleCase, 'asked: first-operation', 'asked: second-operation'),
    'smoking: never',
    'smoking: never\n  earlier_operations: [{operation: band, date: 2014, trouble: slippage, status: in-place}]',
  ),
  '{surgeon: tamsin}',
  '{surgeon: tamsin, stages: one}',
);

describe('a what-if', () => {
  it.each<[string, (changed: Case) => unknown, unknown]>([
    ['weight=140 kg', ({ patient }) => patient.weight, { kg: 140, written: 'kg' }],
    ['weight = 308.6 lb', ({ patient }) => patient.weight.written, 'lb'],
    ['patient.weight=140 kg', ({ patient }) => patient.weight.kg, 140],
    ['height=5 ft 4 in', ({ patient }) => patient.height.m, 1.6256],
    ['born=1950-01-31', ({ patient }) => patient.born, '1950-01-31'],
    ['age=60', ({ patient }) => patient.born, '1966-11-25'],
    ['sex=male', ({ patient }) => patient.sex, 'male'],
    ['ancestry_threshold=asian', ({ patient }) => patient.ancestry_threshold, 'asian'],
    ['smoking=current', ({ health }) => health.smoking, 'current'],
    ['conditions=+type-2-diabetes', ({ health }) => health.conditions, ['reflux', 'type-2-diabetes']],
    ['conditions=-reflux,+prediabetes', ({ health }) => health.conditions, ['prediabetes']],
    [
      'conditions=[sleep-apnoea, prediabetes]',
      ({ health }) => health.conditions,
      ['sleep-apnoea', 'prediabetes'],
    ],
    ['conditions=[]', ({ health }) => health.conditions, []],
    ['medicines=+steroid -metformin', ({ health }) => health.medicines, ['steroid']],
    ['pregnancy=now', ({ health }) => health.pregnancy, { now: true, planned_within_months: null }],
    ['pregnancy=12', ({ health }) => health.pregnancy, { now: false, planned_within_months: 12 }],
    ['pregnancy=18 months', ({ health }) => health.pregnancy, { now: false, planned_within_months: 18 }],
    ['history=+pancreatitis', ({ health }) => health.history, ['pancreatitis']],
    ['options=-sleeve', ({ decision }) => decision.options, ['bypass', 'no-operation']],
    ['options=+band', ({ decision }) => decision.options, ['sleeve', 'bypass', 'no-operation', 'band']],
  ])('%s changes that and nothing else', (whatIf, read, value) => {
    const changed = change([whatIf]);
    expect(read(changed.case)).toEqual(value);
    expect(changed.changes).toHaveLength(1);
    const { patient, health, decision, ...rest } = present();
    expect(changed.case).toMatchObject(rest);
    const same = [patient, health, decision].flatMap((group) => Object.entries(group));
    const now = [changed.case.patient, changed.case.health, changed.case.decision].flatMap((group) =>
      Object.entries(group),
    );
    const different = now.filter(([key, after], index) => {
      expect(same[index]?.[0]).toBe(key);
      return JSON.stringify(after) !== JSON.stringify(same[index]?.[1]);
    });
    expect(different).toHaveLength(1);
  });

  it('may be codes alone, each in the list that knows it', () => {
    const { case: changed, changes } = change([
      '+type-2-diabetes -metformin',
      '+anti-inflammatory',
      '-sleeve',
    ]);
    expect(changed.health.conditions).toEqual(['reflux', 'type-2-diabetes']);
    expect(changed.health.medicines).toEqual(['anti-inflammatory']);
    expect(changed.decision.options).toEqual(['bypass', 'no-operation']);
    expect(changes.map(({ field }) => field)).toEqual(['conditions', 'medicines', 'options']);
  });

  it('never leaves in doubt which list a code alone is of', () => {
    const all = whatIfFields.filter(isListField).flatMap(({ codes }) => codes(context));
    expect(all.length).toBeGreaterThan(60);
    expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([]);
  });

  it('is listed with what was written before, and a birth date only as an age', () => {
    expect(change(['weight=140 kg', 'born=1950-01-31', '+steroid']).changes).toEqual([
      { field: 'weight', before: '114.5 kg', after: '140 kg' },
      { field: 'age', before: 42, after: 76 },
      { field: 'medicines', before: ['metformin'], after: ['metformin', 'steroid'] },
    ]);
  });

  it.each([
    ['the same weight', ['weight=114.5 kg']],
    ['the same height in metres', ['height=1.63 m']],
    ['the same age', ['age=42']],
    ['a condition that is there', ['+reflux']],
    ['a condition that is not there', ['-prediabetes']],
    ['the same options in another order', ['options=[no-operation, bypass, sleeve]']],
    ['there and back', ['weight=140 kg', '-sleeve', '+steroid', 'weight=114.5 kg', '+sleeve', '-steroid']],
  ])('that asks for %s changes nothing', (_, whatIfs) => {
    expect(change(whatIfs).changes).toEqual([]);
  });

  it('of an age is that age on the day that is meant, on every day', () => {
    const born = replaceIn(sampleCase, '1984-07-21', '1984-02-29');
    for (const day of ['2028-02-29', '2027-02-28', '2027-03-01', '2026-11-25']) {
      for (const age of [18, 41, 42, 43, 70]) {
        const result = changeCase({ file: 'a', text: born }, [`age=${String(age)}`], {
          ...known,
          today: day,
        });
        const written = result.ok ? result.value.case.patient.born : '';
        const [year, rest] = [Number(written.slice(0, 4)), written.slice(5)];
        expect(Number(day.slice(0, 4)) - year - (day.slice(5) < rest ? 1 : 0), `${day} ${String(age)}`).toBe(
          age,
        );
      }
    }
  });

  const plans = replaceIn(
    sampleCase,
    'smoking: never',
    'smoking: never\n  pregnancy: {planned_within_months: 6}',
  );

  it('of a pregnancy says all of it anew', () => {
    expect(change(['pregnancy=none'], plans).case.health.pregnancy).toEqual({
      now: false,
      planned_within_months: null,
    });
    expect(change(['pregnancy=now'], plans).changes).toEqual([
      { field: 'pregnancy', before: 'within 6 months', after: 'now' },
    ]);
    expect(change(['pregnancy=6 months'], plans).changes).toEqual([]);
  });

  it.each([
    { whatIf: 'none', text: sampleCase, operations: [], asked: 'first-operation' },
    { whatIf: 'sleeve', text: sampleCase, operations: ['sleeve in-place'], asked: 'second-operation' },
    { whatIf: '+sleeve', text: sampleCase, operations: ['sleeve in-place'], asked: 'second-operation' },
    { whatIf: 'band:removed', text: sampleCase, operations: ['band removed'], asked: 'after-removal' },
    {
      whatIf: '[band:converted, sleeve]',
      text: sampleCase,
      operations: ['band converted', 'sleeve in-place'],
      asked: 'second-operation',
    },
    { whatIf: 'none', text: banded, operations: [], asked: 'first-operation' },
    { whatIf: '-band', text: banded, operations: [], asked: 'first-operation' },
    { whatIf: '+band:removed', text: banded, operations: ['band removed'], asked: 'second-operation' },
    {
      whatIf: '+band:converted,+sleeve',
      text: banded,
      operations: ['band converted', 'sleeve in-place'],
      asked: 'second-operation',
    },
    { whatIf: 'sleeve', text: banded, operations: ['sleeve in-place'], asked: 'second-operation' },
  ])(
    'of earlier operations is $whatIf, and what is asked goes with it',
    ({ whatIf, text, operations, asked }) => {
      const { case: changed } = change([`earlier_operations=${whatIf}`], text);
      const had = changed.health.earlier_operations.map(({ operation, status }) => `${operation} ${status}`);
      expect(had).toEqual(operations);
      expect(changed.decision.asked).toBe(asked);
    },
  );

  it('of earlier operations keeps what else is written of one that stays, and lets go what went with one that does not', () => {
    const removed = change(['earlier_operations=[band:removed]', 'asked=after-removal'], banded);
    expect(removed.case.health.earlier_operations).toEqual([
      { operation: 'band', date: '2014', trouble: 'slippage', status: 'removed' },
    ]);
    expect(removed.changes).toEqual([
      { field: 'earlier_operations', before: ['band'], after: ['band:removed'] },
      { field: 'asked', before: 'second-operation', after: 'after-removal' },
      { field: 'stages', before: 'one', after: null },
    ]);
    expect(change(['earlier_operations=band'], banded).changes).toEqual([]);
    expect(change(['earlier_operations=+band'], banded).changes).toEqual([]);
    expect(change(['earlier_operations=none', 'earlier_operations=+band'], banded).case.plan.stages).toBe(
      'one',
    );
  });

  it('takes out with an option what the surgeon said of it, and says so', () => {
    const said = `
  leaning: {option: sleeve, reasons: [{code: more-weight-loss}]}
  advised_against:
    - {option: bypass, reasons: [{code: more-vitamins}]}
    - {option: no-operation, reasons: [{code: diabetes-better}]}
  chosen: sleeve
plan:`;
    const text = replaceIn(sampleCase, '\nplan:', said);
    const { case: changed, changes } = change(['options=-sleeve,-bypass,-no-operation,+band'], text);
    expect(changed.decision).toMatchObject({ leaning: null, chosen: null });
    expect(changed.decision.advised_against.map(({ option }) => option)).toEqual(['no-operation']);
    expect(changes.slice(1)).toEqual([
      { field: 'leaning', before: 'sleeve', after: null },
      { field: 'advised_against', before: ['bypass', 'no-operation'], after: ['no-operation'] },
      { field: 'chosen', before: 'sleeve', after: null },
    ]);
    expect(change(['-sleeve', '+sleeve'], text).case.decision.leaning?.option).toBe('sleeve');
  });
});

describe('a wrong what-if', () => {
  it.each([
    ['weight=140', '--what-if 1:1:8-11 CASE_BAD_UNIT patient.weight'],
    ['weight=140 st', '--what-if 1:1:8-14 CASE_BAD_UNIT patient.weight'],
    ['weight=14,5 kg', '--what-if 1:1:8-15 CASE_DECIMAL_COMMA patient.weight'],
    ['weight=1400 kg', '--what-if 1:1:8-15 CASE_OUT_OF_RANGE patient.weight'],
    ['weight=', '--what-if 1:1:1-7 CASE_MISSING_FIELD patient.weight'],
    ['height=163', '--what-if 1:1:8-11 CASE_BAD_UNIT patient.height'],
    ['born=31.1.1950', '--what-if 1:1:6-15 CASE_BAD_DATE patient.born'],
    ['born=2031-01-01', '--what-if 1:1:6-16 CASE_CONFLICT patient.born'],
    ['age=old', '--what-if 1:1:5-8 CASE_TYPE_MISMATCH patient.born'],
    ['age=44.5', '--what-if 1:1:5-9 CASE_TYPE_MISMATCH patient.born'],
    ['age=4', '--what-if 1:1:5-6 CASE_OUT_OF_RANGE patient.born'],
    ['age=', '--what-if 1:1:1-4 CASE_MISSING_FIELD patient.born'],
    ['sex=woman', '--what-if 1:1:5-10 CASE_UNKNOWN_CODE patient.sex'],
    ['smoking=20', '--what-if 1:1:9-11 CASE_TYPE_MISMATCH health.smoking'],
    ['conditions=+refluxx', '--what-if 1:1:12-20 CASE_UNKNOWN_CODE health.conditions[1]'],
    ['conditions=-refluxx', '--what-if 1:1:12-20 CASE_UNKNOWN_CODE health.conditions'],
    ['conditions=reflux, +prediabetes', '--what-if 1:1:12-32 CASE_TYPE_MISMATCH health.conditions'],
    ['conditions=', '--what-if 1:1:1-11 CASE_MISSING_FIELD health.conditions'],
    ['conditions=reflux,reflux', '--what-if 1:1:19-25 CASE_CONFLICT health.conditions[1]'],
    ['pregnancy=soon', '--what-if 1:1:11-15 CASE_TYPE_MISMATCH health.pregnancy'],
    ['pregnancy=', '--what-if 1:1:11-11 CASE_TYPE_MISMATCH health.pregnancy'],
    ['pregnancy=121 months', '--what-if 1:1:11-21 CASE_OUT_OF_RANGE health.pregnancy.planned_within_months'],
    ['earlier_operations=', '--what-if 1:1:1-19 CASE_TYPE_MISMATCH health.earlier_operations'],
    [
      'earlier_operations=slieve',
      '--what-if 1:1:20-26 CASE_UNKNOWN_OPTION health.earlier_operations[0].operation',
    ],
    ['earlier_operations=-slieve', '--what-if 1:1:20-27 CASE_UNKNOWN_OPTION health.earlier_operations'],
    [
      'earlier_operations=band, sleeve:gone',
      '--what-if 1:1:33-37 CASE_UNKNOWN_CODE health.earlier_operations[1].status',
    ],
    ['earlier_operations=-band:removed', '--what-if 1:1:26-33 CASE_TYPE_MISMATCH health.earlier_operations'],
    ['earlier_operations=band,+sleeve', '--what-if 1:1:20-32 CASE_TYPE_MISMATCH health.earlier_operations'],
    ['asked=second-operation', '--what-if 1:1:7-23 CASE_CONFLICT decision.asked'],
    ['trouble=reflux', '--what-if 1:1:1-8 CASE_UNKNOWN_FIELD '],
    ['options=[]', '--what-if 1:1:9-11 CASE_OUT_OF_RANGE decision.options'],
    ['options=+slieve', '--what-if 1:1:9-16 CASE_UNKNOWN_OPTION decision.options[3]'],
    ['options=-slieve', '--what-if 1:1:9-16 CASE_UNKNOWN_OPTION decision.options'],
    ['options=+band-removal', '--what-if 1:1:9-22 CASE_CONFLICT decision.options[3]'],
    ['options=+usual-care', '--what-if 1:1:9-20 CASE_UNKNOWN_OPTION decision.options[3]'],
    ['+refluxx', '--what-if 1:1:1-9 CASE_UNKNOWN_CODE '],
    ['+reflux bypass', '--what-if 1:1:1-15 CASE_TYPE_MISMATCH '],
    ['wieght=140 kg', '--what-if 1:1:1-7 CASE_UNKNOWN_FIELD '],
    ['name=Somebody Else', '--what-if 1:1:1-5 CASE_UNKNOWN_FIELD '],
    ['140 kg', '--what-if 1:1:1-7 CASE_TYPE_MISMATCH '],
    ['', '--what-if 1:1:1-1 CASE_TYPE_MISMATCH '],
  ])('%s gives %s', (whatIf, place) => {
    expect(places([whatIf])).toEqual([place]);
  });

  it('is told with all others, each by the number of its argument', () => {
    expect(places(['weight=140', 'age=40', 'hieght=160 cm', '+refluxx'])).toEqual([
      '--what-if 1:1:8-11 CASE_BAD_UNIT patient.weight',
      '--what-if 3:1:1-7 CASE_UNKNOWN_FIELD ',
      '--what-if 4:1:1-9 CASE_UNKNOWN_CODE ',
    ]);
  });

  it('says what to write instead', () => {
    const hints = ['weight=140', 'wieght=140 kg', 'conditions=-refluxx', '+sleve'].map(
      (whatIf) => refusals([whatIf])[0]?.hint,
    );
    expect(hints[0]).toBe('Write 140 kg or 140 lb, whichever it is.');
    expect(hints[1]).toMatch(/^Did you mean weight\?/);
    expect(hints.slice(2)).toEqual(['Did you mean reflux?', 'Did you mean sleeve?']);
  });

  it('says what can be changed, and what to do for the rest', () => {
    const hint = refusals(['trouble=reflux'])[0]?.hint ?? '';
    for (const { name } of whatIfFields) expect(hint).toContain(name);
    expect(hint).toMatch(/For anything else compare a changed copy of the case\.$/);
    expect(refusals(['pregnancy=soon'])[0]?.hint).toContain(
      'pregnancy=none, pregnancy=now or for example pregnancy=12',
    );
    expect(refusals(['earlier_operations='])[0]?.hint).toContain('earlier_operations=band:removed');
  });

  it('is refused where an option needs the operation that it takes out, or a man would be pregnant', () => {
    const out = replaceIn(banded, 'options: [sleeve', 'options: [band-removal, sleeve');
    expect(places(['earlier_operations=none'], out)).toEqual([
      expect.stringMatching(/^case.yaml:.* CASE_CONFLICT decision.options\[0\]$/),
    ]);
    expect(places(['earlier_operations=none', '-band-removal'], out)).toEqual([]);
    expect(places(['pregnancy=12', 'sex=male'])).toEqual([
      '--what-if 1:1:11-13 CASE_CONFLICT health.pregnancy.planned_within_months',
    ]);
  });

  it('points at the case where the case and the what-if cannot both be true', () => {
    const pregnant = replaceIn(sampleCase, 'smoking: never', 'smoking: never\n  pregnancy: {now: true}');
    const [finding] = refusals(['sex=male'], pregnant);
    expect(finding).toMatchObject({
      code: 'CASE_CONFLICT',
      span: { file: 'case.yaml', line: 16 },
      related: [{ span: { file: '--what-if 1', line: 1, column: 5 } }],
    });
  });

  it('never says again what was written', () => {
    const secrets = [
      'name=Quillon Vance',
      'born=1950-13-41',
      'Quillon=1',
      '+quillon',
      'Quillon Vance',
      'age=Quillon',
    ];
    const found = refusals(secrets);
    expect(found).toHaveLength(secrets.length);
    expect(formatDiagnostics(found)).not.toMatch(/Quillon|quillon|Vance|1950/);
  });

  it('is not looked at before the case itself is in order', () => {
    const text = replaceIn(sampleCase, '114.5 kg', '114.5');
    expect(places(['height=1'], text)).toEqual(['case.yaml:11:11-16 CASE_BAD_UNIT patient.weight']);
  });
});

describe('a place in a case with a byte-order mark', () => {
  it('is right in the case and in the arguments', () => {
    const text = `\ufeff${sampleCase}`;
    expect(places(['weight=140', '+reflux', 'options=+sleve'], text)).toEqual([
      '--what-if 1:1:8-11 CASE_BAD_UNIT patient.weight',
      '--what-if 3:1:9-15 CASE_UNKNOWN_OPTION decision.options[3]',
    ]);
  });
});
