import { describe, expect, it } from 'vitest';

import { planAftercare } from '../../../../src/aftercare/index.ts';
import { viewOperation } from '../../../../src/compose/view/view-operation.ts';
import type { OperationView } from '../../../../src/compose/view/view-operation.ts';
import { ProtocolSchema } from '../../../../src/model/clinic-protocol.ts';
import { makeAftercareSource, makeFact } from '../../../helpers/aftercare-inputs.ts';
import { makeCase, makeClinic } from '../../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../../helpers/compare-inputs.ts';
import {
  fiveOptions,
  evidenceFor,
  makeComparison,
  realTemplates,
  refluxHit,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

type Protocol = Readonly<Record<string, unknown>>;

/** The pages of a person with a day for the operation, unless the plan says otherwise. */
async function operationOf(
  chosen: string,
  changes: CaseChanges = {},
  protocol: Protocol = {},
): Promise<OperationView> {
  const asked = makeCase({
    ...changes,
    decision: { options: fiveOptions, chosen, ...changes.decision },
    plan: { operation_date: '2027-01-14', ...changes.plan },
  });
  const clinic = { ...makeClinic(), protocol: ProtocolSchema.parse(protocol) };
  const comparison = { ...makeComparison(fiveOptions), cautions: [reflux] };
  const evidence = { ...evidenceFor(comparison), ...aftercare };
  const { operation_date: date } = asked.plan;
  return viewOperation(
    await sceneFor('en', {
      case: asked,
      clinic,
      evidence,
      comparison,
      drawings: (await realTemplates()).drawings,
      aftercare:
        date === undefined ? null : planAftercare({ case: asked, clinic, evidence, option: chosen, date }),
    }),
  );
}

/** A warning of two of the options. */
const reflux = { ...refluxHit, options: ['sleeve', 'plication'] };

/** A guideline that says to eat little before a sleeve. */
const aftercare = {
  aftercare: [
    makeFact({
      id: 'liver-diet.low.guideline-a',
      topic: 'liver-diet',
      subject: 'low-calorie-diet',
      value: 'to eat little',
      timing: { phase: 'before-operation' },
    }),
  ],
  aftercareSources: new Map([['guideline-a', makeAftercareSource('guideline-a')]]),
};

const said = (all: readonly { readonly markup: string }[]): readonly string[] =>
  all.map(({ markup }) => plain(markup));

const advice = (...entries: readonly Readonly<Record<string, unknown>>[]): Protocol => ({
  advice: { sleeve: entries.map((entry) => ({ what: { en: 'Do it.' }, ...entry })) },
});

describe('why an operation was chosen', () => {
  const leaning = (option: string, ...reasons: readonly string[]): CaseChanges => ({
    decision: { leaning: { option, reasons: reasons.map((code) => ({ code })) } },
  });

  it('says what the person said, in quotation marks, and the surgeon’s reasons', async () => {
    const { why } = await operationOf('sleeve', {
      decision: {
        matters_most: [{ text: { en: 'I want to walk.' } }],
        leaning: { option: 'sleeve', reasons: [{ code: 'fewer-early-problems' }] },
      },
    });
    expect(said(why.said)).toEqual(['“I want to walk.”']);
    expect(plain(why.surgeon?.lead.markup ?? '')).toBe('Dr. A. Example leans to a sleeve too:');
    expect(why.surgeon?.reasons).toHaveLength(1);
    expect(why.against).toBeNull();
  });

  it('does not hide that the surgeon leans to another choice, or advises against this one', async () => {
    const { why } = await operationOf('sleeve', leaning('bypass', 'reflux-better'));
    expect(plain(why.surgeon?.lead.markup ?? '')).toBe(
      'Dr. A. Example leans to a gastric bypass. You chose a sleeve. The choice is yours.',
    );
    expect(why.surgeon?.reasons).toEqual([]);
    const advised = await operationOf('sleeve', {
      decision: { advised_against: [{ option: 'sleeve', reasons: [{ code: 'reflux-worse' }] }] },
    });
    expect(plain(advised.why.against?.lead.markup ?? '')).toBe('Dr. A. Example advises against a sleeve.');
    expect(advised.why.against?.reasons).toHaveLength(1);
  });

  it('says nothing of a surgeon who has written nothing', async () => {
    expect((await operationOf('sleeve')).why).toEqual({ said: [], surgeon: null, against: null });
  });
});

describe('what to do before the day', () => {
  it('gives what the clinic asks with its day, the first day first, and after it what holds for everybody', async () => {
    const { before } = await operationOf(
      'sleeve',
      {},
      advice(
        { about: 'low-calorie-diet', before: '2 weeks', what: { en: 'Our diet.' } },
        { about: 'tests-before-operation', before: '4 weeks', what: { en: 'Blood tests.' } },
        { about: 'fluid', what: { en: 'Drink.' } },
      ),
    );
    expect(said(before).slice(0, 3)).toEqual([
      'From December 17, 2026 until January 13, 2027: Blood tests.',
      'From December 31, 2026 until January 13, 2027: Our diet.',
      'Show us a list of all your medicines. Ask which to stop, and when. Do not stop any on your own.',
    ]);
    expect(said(before).join(' ')).not.toContain('Drink.');
  });

  it('leaves out what is for others, and says for whom a line is where the case does not tell', async () => {
    const smoking = advice({ about: 'smoking-before', before: '6 weeks', for: 'smokes' });
    const of = async (state: string): Promise<string> =>
      said((await operationOf('sleeve', { health: { smoking: state } }, smoking)).before).join(' ');
    expect(await of('never')).not.toContain('Do it.');
    expect(await of('current')).toContain('From December 3, 2026 until January 13, 2027: Do it.');
    expect(await of('not-asked')).toContain('until January 13, 2027: If you smoke or vape: Do it.');
  });

  it('lets a guideline stand in where the clinic says nothing, on its fact, and says where that stands', async () => {
    const view = await operationOf('sleeve');
    expect(view.before[0]?.markup).toContain(
      '<stands on="aftercare:liver-diet.low.guideline-a">A guideline says',
    );
    expect(view.origins).toHaveLength(1);
    const clinic = await operationOf('sleeve', {}, advice({ about: 'low-calorie-diet', before: '2 weeks' }));
    expect(said(clinic.before).join(' ')).not.toContain('A guideline says');
    expect(clinic.origins).toEqual([]);
  });

  it('asks about a pregnancy unless the person is a man', async () => {
    const last = async (sex: string): Promise<string> =>
      said((await operationOf('sleeve', { patient: { sex } })).before).at(-1) ?? '';
    expect(await last('male')).toBe('Call us if you are ill or have a fever.');
    expect(await last('female')).toContain('may be pregnant');
    expect(await last('not-stated')).toContain('may be pregnant');
  });

  it('dates nothing as long as there is no day', async () => {
    const plan = { operation_date: undefined };
    const { before, day, facts } = await operationOf(
      'sleeve',
      { plan },
      advice({ about: 'fluid', before: '1 week' }),
    );
    expect(said(before)[0]).toBe('Once the day is set, we tell you what else to do and from when.');
    expect(said(before).join(' ')).not.toContain('Do it.');
    expect(said(day)[0]).toMatch(/^Come at the time we give you\./);
    expect(facts[0]?.value).toBe('not set yet');
  });
});

describe('what is done', () => {
  const step = (view: OperationView, words: string): boolean =>
    said(view.steps).some((one) => one.includes(words));
  const band = (status: string): Readonly<Record<string, unknown>> => ({
    earlier_operations: [{ operation: 'band', status }],
  });
  const headings = ({ drawing }: OperationView): readonly string[] =>
    (drawing?.views ?? []).flatMap(({ labels }) => labels.map(({ words }) => words));

  it('draws a first sleeve from a whole stomach, and says each step', async () => {
    const view = await operationOf('sleeve');
    expect(view.drawing?.views.map(({ heading }) => heading)).toEqual(['Before', 'After']);
    expect(headings(view)).toContain('part that is taken out');
    expect(step(view, 'The larger, outer part is taken out for good.')).toBe(true);
    expect(step(view, 'Your band')).toBe(false);
    expect(view.drawing?.caption).not.toContain('no food goes');
  });

  it('draws what is in place before it, and takes a band out first, on a day of its own where the plan says so', async () => {
    const second = { decision: { asked: 'second-operation' }, health: band('in-place') };
    const view = await operationOf('sleeve', second);
    expect(headings(view)).toContain('band');
    expect(step(view, 'Your band and its port come out.')).toBe(true);
    const two = await operationOf('sleeve', { ...second, plan: { stages: 'two' } });
    expect(step(two, 'come out first, in an operation of their own')).toBe(true);
  });

  it('takes a band that is out for a whole stomach', async () => {
    const view = await operationOf('sleeve', {
      decision: { asked: 'after-removal' },
      health: band('removed'),
    });
    expect(headings(view)).toContain('stomach');
    expect(headings(view)).not.toContain('band');
  });

  it('shows a bypass after a sleeve without the part that was taken out, and says what a thin line is', async () => {
    const view = await operationOf('bypass', {
      decision: { asked: 'second-operation' },
      health: { earlier_operations: [{ operation: 'sleeve', status: 'in-place' }] },
    });
    expect(headings(view)).toContain('slim stomach');
    expect(headings(view)).not.toContain('part that is taken out');
    expect(view.drawing?.caption).toContain('Where the line is thin, no food goes.');
  });

  it('has no drawing, and no steps that might be wrong, for a body that nobody has drawn', async () => {
    const of = async (operation: string, status: string): Promise<OperationView> =>
      operationOf('sleeve', {
        decision: { asked: 'second-operation' },
        health: { earlier_operations: [{ operation, status }] },
      });
    for (const view of [await of('bypass', 'reversed'), await of('one-anastomosis-bypass', 'in-place')]) {
      expect(view.drawing).toBeNull();
      expect(view.steps).toEqual([]);
    }
  });
});

describe('what comes after the operation', () => {
  it('is about the chosen one alone: its stay, what it asks, its undoing, its line', async () => {
    const view = await operationOf('sleeve', {}, { stay: { sleeve: { en: '1 night' } } });
    expect(view.asks.table.rows).toHaveLength(1);
    const cells = (view.asks.table.rows[0]?.cells ?? []).map(({ lines }) =>
      said(lines.map(({ words }) => words)),
    );
    expect(cells).toEqual([['Sleeve'], ['1 night'], ['Ask your surgeon.'], ['Ask your surgeon.']]);
    expect(said(view.undo.map(({ name }) => name))).toEqual(['Sleeve']);
    expect(said(view.asks.forLife.map(({ name }) => name))).toEqual(['Sleeve']);
    expect(plain(view.stays?.markup ?? '')).toBe('Your stomach stays narrow for life.');
    expect(view.lines?.lines.map(({ name }) => name)).toEqual(['Sleeve']);
    expect(plain(view.lineIntro?.markup ?? '')).toMatch(/^The line shows pounds by years from now,/);
    expect(view.weight.markup).toMatch(/<fig cell="sleeve\/[^"]*" records="[^"]+">/);
  });

  it('says so where no single study gives a line', async () => {
    const view = await operationOf('plication');
    expect(view.lines).toBeNull();
    // Nothing is known of its weight, and that is said once.
    expect(plain(view.weight.markup)).toMatch(/^No study tells/);
    expect(view.lineIntro).toBeNull();
    expect(view.study).toHaveLength(1);
  });

  it.each([{}, { plan: { operation_date: undefined } }])(
    'gives the numbers of the clinic, with a day or without',
    async (changes) => {
      const numbers = (await operationOf('sleeve', changes)).calls.map(({ value }) => value);
      expect(numbers.toSorted()).toEqual(['555 0100', '555 0101', '911']);
    },
  );

  it('gives whom the clinic itself names, and when they answer', async () => {
    const call = {
      sleeve: [{ who: { en: 'The nurse' }, phone: '555 0107', urgency: ['today'], hours: { en: '8 to 4' } }],
    };
    expect((await operationOf('sleeve', {}, { call })).calls).toContainEqual({
      label: { markup: 'The nurse (8 to 4)' },
      value: '555 0107',
    });
  });

  it('says for what a number for one sign alone is', async () => {
    const line = { who: { en: 'Crisis line' }, phone: '988', urgency: ['now'], about: 'self-harm' };
    const labels = async (hours: object): Promise<readonly unknown[]> =>
      (await operationOf('sleeve', {}, { call: { sleeve: [{ ...line, ...hours }] } })).calls.map(
        ({ label }) => label.markup,
      );
    expect(await labels({})).toContain('Crisis line (You think of hurting yourself)');
    expect(await labels({ hours: { en: 'Call or text' } })).toContain(
      'Crisis line (You think of hurting yourself: Call or text)',
    );
  });

  it('warns of what touches the chosen operation, naming no other, and of nothing that touches others alone', async () => {
    const warnings = async (chosen: string): Promise<readonly string[]> => {
      const view = await operationOf(chosen);
      return view.health.flatMap(({ lines }) => lines.map(({ words }) => plain(words.markup)));
    };
    const sleeve = await warnings('sleeve');
    expect(sleeve.join(' ')).toContain('(reflux). For a sleeve:');
    expect(sleeve.join(' ')).not.toContain('stomach folding');
    expect((await warnings('bypass')).join(' ')).not.toContain('(reflux)');
  });
});

describe('the pages in short after an operation that took something out', () => {
  it('say that this stays gone, beside whether the new one can be undone', async () => {
    const comparison = makeComparison(fiveOptions);
    const shortOf = async (goneBefore: readonly string[]): Promise<readonly string[]> => {
      const options = comparison.options.map((option) => ({
        ...option,
        reversibility: { ...option.reversibility, goneBefore },
      }));
      const file = makeCase({ decision: { options: fiveOptions, chosen: 'bypass' } });
      const { short } = viewOperation(
        await sceneFor('en', { case: file, comparison: { ...comparison, options } }),
      );
      return short.map(({ markup }) => plain(markup));
    };
    const partly = 'It can only be undone in part.';
    expect(await shortOf([])).toContain(partly);
    expect(await shortOf(['sleeve'])).toContain(
      `${partly} The part of your stomach that an earlier operation took out stays gone.`,
    );
  });
});
