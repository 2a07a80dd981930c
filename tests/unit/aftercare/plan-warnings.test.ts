import { describe, expect, it } from 'vitest';
import { planAftercare } from '../../../src/aftercare/index.ts';
import type { AftercarePlan } from '../../../src/model/aftercare-plan.ts';
import { aftercareInput, makeFact } from '../../helpers/aftercare-inputs.ts';
import type { AftercareChanges } from '../../helpers/aftercare-inputs.ts';

function sign(subject: string, urgency: string, changes: Readonly<Record<string, unknown>> = {}) {
  const topic = urgency === 'now' ? 'warning-emergency' : 'warning-clinic';
  return makeFact({
    id: `${topic}.${subject}`,
    topic,
    subject,
    urgency,
    value: 'words',
    timing: { phase: 'after-operation', from_day: 0, to_day: 30 },
    ...changes,
  });
}

const facts = [
  sign('belly-pain', 'now'),
  sign('fever', 'now'),
  sign('wound', 'today', { timing: { phase: 'after-operation', from_week: 0, to_week: 12 } }),
  sign('fainting', 'now', { seen: 'memory' }),
  sign('late-problems', 'visit', { timing: { phase: 'after-operation', from_day: 30 } }),
  sign('fever-number', 'now', { use: 'confirm', value: { low: 38, high: null, unit: 'celsius' } }),
];

function plan(changes: AftercareChanges = {}): AftercarePlan {
  return planAftercare(aftercareInput({ facts, ...changes }));
}

function signs({ warnings }: AftercarePlan): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(warnings).map(([urgency, list]) => [
      urgency,
      list.map(({ from, sign: code }) => `${from} ${String(code)}`),
    ]),
  );
}

describe('warning signs', () => {
  it('come from what was read, by how fast to call, with the days that the source speaks of', () => {
    const made = plan();
    expect(signs(made)).toEqual({
      now: ['guideline belly-pain', 'guideline fever'],
      today: ['guideline wound'],
      visit: ['guideline late-problems'],
    });
    expect([made.warnings.now[0]?.days, made.warnings.today[0]?.days, made.warnings.visit[0]?.days]).toEqual([
      { from: 0, to: 30 },
      { from: 0, to: 84 },
      { from: 30, to: null },
    ]);
  });

  it('have no number of a source: that is the clinic to say', () => {
    expect(plan().warnings.now.map(({ threshold }) => threshold)).toEqual([null, null]);
    expect(plan().undecided.map(({ subject, reason }) => [subject, reason])).toEqual(
      expect.arrayContaining([['fever-number', 'confirm']]),
    );
    const protocol = {
      warnings: { sleeve: { fever: '100.4 F', pulse: 120, now: [{ code: 'fast-heartbeat' }] } },
    };
    const made = plan({ protocol });
    expect(made.warnings.now.map(({ sign: code, threshold }) => [code, threshold?.unit])).toEqual([
      ['fast-heartbeat', 'beats/minute'],
      ['belly-pain', undefined],
      ['fever', 'celsius'],
    ]);
    expect(made.warnings.now[2]?.threshold?.value).toBeCloseTo(38, 10);
    expect(made.undecided.map(({ subject }) => subject)).not.toContain('fever-number');
  });

  it('of the clinic come first, and keep those of sources that the clinic does not name', () => {
    const protocol = {
      warnings: {
        sleeve: { now: [{ code: 'fainting' }, { text: { en: 'Words' } }], at_visit: [{ code: 'hair-loss' }] },
      },
    };
    const made = plan({ protocol });
    expect(signs(made)).toEqual({
      now: ['clinic fainting', 'clinic null', 'guideline belly-pain', 'guideline fever'],
      today: ['guideline wound'],
      visit: ['clinic hair-loss', 'guideline late-problems'],
    });
    expect(made.warnings.now[1]?.entry).toEqual({ topic: 'warnings', option: 'sleeve', index: 1 });
  });

  it('that are more urgent for some people stand there for them, and once', () => {
    const protocol = {
      warnings: {
        sleeve: {
          today: [
            { code: 'low-sugar', for: 'diabetes' },
            { text: { en: 'Words' }, for: 'diabetes' },
          ],
          at_visit: [{ code: 'low-sugar' }, { code: 'hair-loss', for: 'could-become-pregnant' }],
        },
      },
    };
    const asked = { health: { conditions: ['type-2-diabetes'] } };
    expect(signs(plan({ protocol, asked }))).toMatchObject({
      today: ['clinic low-sugar', 'clinic null', 'guideline wound'],
      visit: ['clinic hair-loss', 'guideline late-problems'],
    });
    const others = plan({ protocol });
    expect(signs(others)).toMatchObject({
      today: ['guideline wound'],
      visit: ['clinic low-sugar', 'clinic hair-loss', 'guideline late-problems'],
    });
    // The case cannot tell: the page says for whom the sign is.
    expect(others.warnings.visit.map(({ who }) => who)).toEqual([
      'adults',
      'could-become-pregnant',
      'adults',
    ]);
  });

  it('of a source stand where the clinic names them for other people only', () => {
    const protocol = { warnings: { sleeve: { today: [{ code: 'belly-pain', for: 'diabetes' }] } } };
    expect(signs(plan({ protocol }))).toMatchObject({
      now: ['guideline belly-pain', 'guideline fever'],
      today: ['guideline wound'],
    });
  });

  it('that the clinic lets wait for longer than a source does are told to the clinician', () => {
    const protocol = { warnings: { sleeve: { today: [{ code: 'belly-pain' }], now: [{ code: 'wound' }] } } };
    const made = plan({ protocol });
    expect(signs(made)).toMatchObject({
      now: ['clinic wound', 'guideline fever'],
      today: ['clinic belly-pain'],
    });
    expect(made.undecided.filter(({ reason }) => reason === 'slower').map(({ subject }) => subject)).toEqual([
      'belly-pain',
    ]);
  });

  it('of other operations never print as the source’s own, and are listed so that none vanishes', () => {
    const others = [sign('belly-pain', 'now', { options: ['bypass'], extrapolated_to: ['sleeve'] })];
    const made = plan({ facts: others });
    expect(made.warnings.now).toEqual([]);
    expect(made.undecided.at(-1)).toMatchObject({ subject: 'belly-pain', reason: 'extrapolated' });
    const protocol = { warnings: { sleeve: { now: [{ code: 'belly-pain' }] } } };
    const confirmed = plan({ facts: others, protocol });
    expect(signs(confirmed)).toMatchObject({ now: ['clinic belly-pain'] });
    expect(confirmed.warnings.now[0]?.facts).toEqual([]);
  });
});

describe('whom to call', () => {
  it('about self-harm stays a matter to decide until the clinic lists a number for that', () => {
    const line = sign('self-harm-line', 'now', { seen: 'page-2nd' });
    const listed = (about?: string) => {
      const entry = { who: { en: 'Line' }, phone: '555-0101', urgency: ['now'] };
      const call = { sleeve: [about === undefined ? entry : { ...entry, about }] };
      return plan({
        facts: [line],
        protocol: { call, warnings: { sleeve: { now: [{ code: 'self-harm' }] } } },
      });
    };
    const open = (made: AftercarePlan) => made.undecided.map(({ subject }) => subject);
    expect(open(listed())).toContain('self-harm-line');
    expect(open(listed('self-harm'))).not.toContain('self-harm-line');
  });

  it('is the clinic’s own list by urgency, in its order', () => {
    const call = {
      sleeve: [
        { who: { en: 'Ward' }, phone: '555-0100', urgency: ['today', 'now'] },
        { who: { en: 'Line' }, phone: '555-0101', urgency: ['today', 'visit'] },
      ],
    };
    expect(plan({ protocol: { call } }).calls.map(({ urgency, entry }) => [urgency, entry?.index])).toEqual([
      ['now', 0],
      ['today', 0],
      ['today', 1],
      ['visit', 1],
    ]);
  });
});
