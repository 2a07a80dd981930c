import { describe, expect, it } from 'vitest';
import { planAftercare } from '../../../src/aftercare/index.ts';
import type { AftercarePlan } from '../../../src/model/aftercare-plan.ts';
import { aftercareInput, makeAftercareSource, makeFact } from '../../helpers/aftercare-inputs.ts';
import type { AftercareChanges } from '../../helpers/aftercare-inputs.ts';

const what = { en: 'Words' };

function plan(changes: AftercareChanges = {}): AftercarePlan {
  return planAftercare(aftercareInput(changes));
}

/** A fact of a topic whose words do not matter here. */
function fact(topic: string, subject: string, changes: Readonly<Record<string, unknown>> = {}) {
  return makeFact({
    id: `${topic}.${subject}`,
    topic,
    subject,
    value: 'words',
    timing: { phase: 'after-operation' },
    ...changes,
  });
}

function reasonsOf(changes: AftercareChanges): readonly string[] {
  return plan(changes)
    .undecided.filter(({ reason }) => reason !== 'no-entry')
    .map(({ topic, subject, reason }) => `${topic} ${String(subject)}: ${reason}`);
}

describe('a plan of a clinic that says nothing, with no facts', () => {
  it('is empty, calls the phones of the clinic, and lists every topic as not decided', () => {
    const {
      diet,
      visits,
      activity,
      medicines,
      supplements,
      tests,
      advice,
      before,
      warnings,
      calls,
      undecided,
      stay,
    } = plan();
    expect([diet, visits, activity, medicines, supplements, tests, advice, before].flat()).toEqual([]);
    expect(warnings).toEqual({ now: [], today: [], visit: [] });
    expect(stay).toBeNull();
    expect(calls.map(({ urgency, phone }) => [urgency, phone])).toEqual([
      ['now', 'emergency'],
      ['today', 'day'],
      ['today', 'out_of_hours'],
      ['visit', 'day'],
    ]);
    expect(undecided.map(({ topic, reason }) => [topic, reason])).toEqual(
      ['stay', 'diet', 'follow_up', 'lifting', 'driving', 'work', 'walking', 'wound', 'medicines_after']
        .concat('supplements', 'blood_tests', 'warnings')
        .map((topic) => [topic, 'no-entry']),
    );
  });

  it('asks less of a medicine, of no treatment nothing, and of a scope no care of wounds', () => {
    const missing = (option: string): readonly string[] =>
      plan({ option }).undecided.map(({ topic }) => topic);
    expect(missing('semaglutide')).toEqual(['follow_up', 'medicines_after', 'blood_tests', 'warnings']);
    expect(missing('lifestyle')).toEqual(['follow_up']);
    expect(missing('no-operation')).toEqual([]);
    expect(missing('balloon')).not.toContain('wound');
  });
});

describe('what a clinic writes', () => {
  it('is dated from the day, with where its words stand', () => {
    const protocol = {
      stay: { sleeve: { en: '1 night' } },
      diet: {
        sleeve: [
          { name: what, from_day: 0, to_day: 2, what },
          { name: what, from_day: 3, what },
        ],
      },
      lifting: {
        sleeve: [
          { until: '2 weeks', what },
          { from: '2 weeks', what },
        ],
      },
      advice: {
        sleeve: [
          { about: 'smoking-before', before: '6 weeks', for: 'smokes', what },
          { about: 'fluid', what },
        ],
      },
    };
    const made = plan({ protocol, asked: { health: { smoking: 'current' } } });
    expect(made.stay).toEqual({ topic: 'stay', option: 'sleeve', index: null });
    expect(
      made.diet.map(({ stage, starts, lastDay, entry }) => [stage, starts, lastDay, entry.index]),
    ).toEqual([
      [1, '2026-12-14', '2026-12-16', 0],
      [2, '2026-12-17', null, 1],
    ]);
    expect(made.activity.map(({ topic, starts, lastDay }) => [topic, starts, lastDay])).toEqual([
      ['lifting', '2026-12-14', '2026-12-27'],
      ['lifting', '2026-12-28', null],
    ]);
    expect(made.before).toMatchObject([
      { about: 'smoking-before', who: 'adults', starts: '2026-11-02', lastDay: '2026-12-13', from: 'clinic' },
    ]);
    expect(made.advice).toMatchObject([{ about: 'fluid', starts: '2026-12-14', lastDay: null }]);
  });

  it('is left out for people it is not for, and keeps its condition where the case cannot tell', () => {
    const line = (about: string, group: string) => ({ about, for: group, what });
    const protocol = {
      medicines_after: {
        sleeve: [
          line('diabetes-medicine', 'diabetes'),
          line('gallstone-medicine', 'gallbladder'),
          line('blood-pressure-medicine', 'blood-pressure-medicine'),
        ],
      },
    };
    const asked = { health: { smoking: 'never', medicines: ['blood-pressure-medicine'] } };
    expect(
      plan({ protocol, asked }).medicines.map(({ topic, who, entry }) => [topic, who, entry?.index]),
    ).toEqual([
      ['gallstone-medicine', 'gallbladder', 1],
      ['blood-pressure-medicine', 'adults', 2],
    ]);
  });

  it('stands under the option it was written for, where two options are the same', () => {
    const protocol = { same_as: { bypass: 'sleeve' }, walking: { sleeve: [{ what }] } };
    expect(plan({ protocol, option: 'bypass' }).activity[0]?.entry).toEqual({
      topic: 'walking',
      option: 'sleeve',
      index: 0,
    });
  });

  it('moves visits to a day on which the clinic sees people, and never what is before the operation', () => {
    const protocol = {
      follow_up: {
        sleeve: [
          { after: '6 months', with: ['nurse'] },
          { after: '5 days', with: ['surgeon'] },
          { after: '1 day', with: ['dietitian'], way: 'phone', weekdays: ['friday'] },
        ],
      },
      advice: { sleeve: [{ about: 'low-calorie-diet', before: '1 day', what }] },
    };
    const visiting = { weekdays: ['tuesday'], closed: ['2026-12-22'] };
    const made = plan({ protocol, visiting });
    expect(made.visits.map(({ counted, date, way }) => [counted, date, way])).toEqual([
      ['2026-12-15', '2026-12-18', 'phone'],
      ['2026-12-19', '2026-12-29', 'in-person'],
      ['2027-06-14', '2027-06-15', 'in-person'],
    ]);
    expect(made.before[0]?.starts).toBe('2026-12-13');
  });

  it('dates supplements, and lists the days of those that are taken a month or more apart', () => {
    const protocol = {
      supplements: {
        sleeve: [
          { supplement: 'calcium', dose: '500 mg', times_a_day: 3, from: '1 week', until: '2 years' },
          { supplement: 'vitamin-b12', dose: '1000 microgram', every: '3 months' },
          { supplement: 'vitamin-d3', dose: '50000 IU', every: '1 week' },
        ],
      },
    };
    const [calcium, b12, d3] = plan({ protocol }).supplements;
    expect(calcium).toMatchObject({
      timesADay: 3,
      starts: '2026-12-21',
      lastDay: '2028-12-13',
      due: [],
      then: null,
    });
    expect(b12?.due.map(({ date }) => date)).toEqual(
      [
        '2027-03-14',
        '2027-06-14',
        '2027-09-14',
        '2027-12-14',
        '2028-03-14',
        '2028-06-14',
        '2028-09-14',
      ].concat('2028-12-14'),
    );
    expect(b12?.then?.next.date).toBe('2029-03-14');
    expect(d3).toMatchObject({ every: { count: 1, unit: 'week' }, due: [], then: null });
  });

  it('dates tests at their times and then again and again', () => {
    const protocol = {
      blood_tests: {
        sleeve: [
          { tests: ['ferritin'], at: ['3 months', '12 months'], every: '12 months' },
          { tests: ['hba1c'], at: ['3 months'], for: 'diabetes' },
        ],
      },
    };
    const made = plan({ protocol }).tests;
    expect(made).toHaveLength(1);
    expect(made[0]?.due.map(({ counted }) => counted)).toEqual(['2027-03-14', '2027-12-14', '2028-12-14']);
    // The 14th of March 2027 is a Sunday.
    expect(made[0]?.due[0]?.date).toBe('2027-03-15');
    expect(made[0]?.then?.next.counted).toBe('2029-12-14');
  });

  it('names beside it what was read on the same matter, and nothing that was only recalled', () => {
    const facts = [
      makeFact({
        id: 'supplement.calcium.a',
        subject: 'calcium',
        value: { low: 1200, high: 1500, unit: 'mg/day' },
        conflict_with: ['x'],
      }),
      makeFact({ id: 'supplement.calcium.b', subject: 'calcium', seen: 'memory' }),
      makeFact({
        id: 'supplement.calcium.c',
        subject: 'calcium',
        options: ['bypass'],
        extrapolated_to: ['sleeve'],
      }),
    ];
    const protocol = { supplements: { sleeve: [{ supplement: 'calcium', dose: '500 mg' }] } };
    expect(plan({ facts, protocol }).supplements[0]).toMatchObject({
      from: 'clinic',
      facts: ['supplement.calcium.a'],
      sources: ['guideline-a'],
    });
  });
});

describe('what a guideline says', () => {
  it('stands in where the clinic says nothing, all statements on one matter together', () => {
    const facts = [
      makeFact({ id: 'supplement.thiamine.a' }),
      makeFact({
        id: 'supplement.thiamine.b',
        value: { low: 50, high: 100, unit: 'mg/day' },
        source: 'guideline-b',
      }),
    ];
    expect(plan({ facts }).supplements).toMatchObject([
      {
        from: 'guideline',
        entry: null,
        supplement: 'thiamine',
        dose: null,
        amounts: [
          { low: 12, high: null, unit: 'mg/day' },
          { low: 50, high: 100, unit: 'mg/day' },
        ],
        facts: ['supplement.thiamine.a', 'supplement.thiamine.b'],
        sources: ['guideline-a', 'guideline-b'],
      },
    ]);
  });

  it.each([
    ['nobody has read', { seen: 'memory' }, 'unread'],
    ['was read in a second account', { seen: 'page-2nd' }, 'unread'],
    ['another contradicts', { conflict_with: ['supplement.other'] }, 'conflict'],
    ['was found in another operation', { options: ['bypass'], extrapolated_to: ['sleeve'] }, 'extrapolated'],
    ['somebody has to prescribe', { use: 'prescriber' }, 'prescriber'],
    ['the clinic has to confirm', { use: 'confirm' }, 'confirm'],
    ['a newer edition replaces', { source: 'old' }, 'replaced'],
    ['excepts people like this one', { not_for: ['blood-thinner'] }, 'not-for-person'],
  ])('that %s prints no rule and is listed', (_, changes, reason) => {
    const sources = new Map([['old', makeAftercareSource('old', { replaced: true })]]);
    const asked = { health: { smoking: 'never', medicines: ['blood-thinner'] } };
    const made = plan({ facts: [makeFact(changes)], sources, asked });
    expect(made.supplements).toEqual([]);
    expect(made.undecided.find(({ subject }) => subject === 'thiamine')).toMatchObject({
      topic: 'supplement',
      reason,
      facts: [{ id: 'supplement.thiamine.guideline-a', reasons: [reason] }],
      sources: ['source' in changes ? changes.source : 'guideline-a'],
    });
  });

  it('about other options, other people or for clinicians only is nowhere', () => {
    const facts = [
      makeFact({ id: 'a', options: ['bypass'] }),
      makeFact({ id: 'b', who: 'diabetes' }),
      makeFact({ id: 'c', use: 'context' }),
    ];
    const { supplements, undecided } = plan({ facts });
    expect(supplements).toEqual([]);
    expect(undecided.filter(({ subject }) => subject !== null)).toEqual([]);
  });

  it('gives of several ways to count one, never both', () => {
    const facts = [
      fact('protein', 'protein', { value: { low: 60, high: null, unit: 'g/day' }, one_of: 'protein-count' }),
      fact('protein', 'protein-per-kg-ideal-weight', {
        value: { low: 1.1, high: null, unit: 'g/kg/day' },
        one_of: 'protein-count',
      }),
    ];
    expect(plan({ facts }).advice.map(({ about }) => about)).toEqual(['protein']);
  });

  it('is overruled by a list of the clinic as a whole; what that list lacks is told to the clinician', () => {
    const facts = [makeFact(), makeFact({ id: 'supplement.zinc.a', subject: 'zinc' })];
    const protocol = { supplements: { sleeve: [{ supplement: 'thiamine', dose: '50 mg' }] } };
    const made = plan({ facts, protocol });
    expect(made.supplements.map(({ supplement, from }) => [supplement, from])).toEqual([
      ['thiamine', 'clinic'],
    ]);
    expect(reasonsOf({ facts, protocol })).toEqual(['supplement zinc: not-listed']);
  });

  it('is overruled by advice on its subject, and so is all that it conflicts with', () => {
    const facts = [
      fact('fluid', 'fluid', { id: 'fluid.a', conflict_with: ['fluid.b'] }),
      fact('fluid', 'fluid', { id: 'fluid.b', conflict_with: ['fluid.a'] }),
      fact('protein', 'protein'),
      fact('contraception', 'oral-pill', { id: 'contraception.a', conflict_with: ['fluid.a'] }),
    ];
    expect(reasonsOf({ facts })).toEqual(['fluid fluid: conflict', 'contraception oral-pill: conflict']);
    const protocol = { advice: { sleeve: [{ about: 'fluid', what }] } };
    expect(reasonsOf({ facts, protocol })).toEqual([]);
    expect(plan({ facts, protocol }).advice.map(({ from, about }) => [from, about])).toEqual([
      ['clinic', 'fluid'],
      ['guideline', 'protein'],
    ]);
  });

  it('on one medicine stays where the clinic writes only of another', () => {
    const facts = [fact('medicine-form', 'release-type'), fact('diabetes-medicine', 'glucose-lowering')];
    const protocol = { medicines_after: { sleeve: [{ about: 'medicine-form', what }] } };
    expect(plan({ facts, protocol }).medicines.map(({ from, topic }) => [from, topic])).toEqual([
      ['clinic', 'medicine-form'],
      ['guideline', 'diabetes-medicine'],
    ]);
  });

  it('on a medicine whose dose must be exact stays, unless the clinic writes a line for the people who take one', () => {
    const exact = { id: 'medicine-form.exact', who: 'narrow-dose-range' };
    const facts = [fact('medicine-form', 'release-type'), fact('medicine-form', 'narrow-dose-range', exact)];
    const medicines = (lines: readonly object[]) =>
      plan({ facts, protocol: { medicines_after: { sleeve: lines } } }).medicines.map(
        ({ from, about, who }) => `${from} ${about ?? '-'} ${who}`,
      );
    const general = { about: 'medicine-form', what };
    expect(medicines([general])).toEqual([
      'clinic - adults',
      'guideline narrow-dose-range narrow-dose-range',
    ]);
    expect(medicines([general, { ...general, for: 'narrow-dose-range' }])).toEqual([
      'clinic - adults',
      'clinic - narrow-dose-range',
    ]);
  });

  it('on tests is due on its months, in a range from an earlier day on, or at each visit in person', () => {
    const tests = (subject: string, timing: Readonly<Record<string, unknown>>) =>
      fact('blood-test', subject, {
        value: { tests: ['ferritin'] },
        timing: { phase: 'after-operation', ...timing },
      });
    const facts = [
      tests('core-tests', { at_months: [3, 6], every_months: 12, to: 'lifelong' }),
      tests('blood-fats-test', { every_months: [6, 12] }),
      tests('chemistry-blood-count-test', { every: 'visit' }),
    ];
    const protocol = {
      follow_up: {
        sleeve: [
          { after: '1 week', with: ['nurse'], way: 'phone' },
          { after: '2 weeks', with: ['surgeon'] },
        ],
      },
    };
    const [core, fats, each] = plan({ facts, protocol }).tests;
    expect(core?.due.map(({ counted }) => counted)).toEqual(['2027-03-14', '2027-06-14', '2028-06-14']);
    expect(fats?.due.map(({ earliest, counted }) => [earliest, counted])).toEqual([
      ['2027-06-14', '2027-12-14'],
      ['2028-06-14', '2028-12-14'],
    ]);
    expect(fats?.then?.next).toMatchObject({ earliest: '2029-06-14', counted: '2029-12-14' });
    expect(each).toMatchObject({ atEachVisit: true, then: null });
    expect(each?.due.map(({ date }) => date)).toEqual(['2026-12-28']);
  });

  it('on a check each year is a visit, until the clinic has visits of its own', () => {
    const yearly = fact('follow-up', 'yearly-check', {
      timing: { phase: 'after-operation', from_month: 24, every_months: 12, to: 'lifelong' },
    });
    const made = plan({ facts: [yearly, fact('follow-up', 'specialist-care')] });
    expect(made.visits).toMatchObject([{ from: 'guideline', counted: '2028-12-14', with: [] }]);
    expect(made.laterVisits[0]?.then.next.counted).toBe('2029-12-14');
    expect(made.advice.map(({ about }) => about)).toEqual(['specialist-care']);
    const once = { follow_up: { sleeve: [{ after: '2 weeks', with: ['surgeon'] }] } };
    expect(reasonsOf({ facts: [yearly], protocol: once })).toEqual(['follow-up yearly-check: not-listed']);
    const forLife = { follow_up: { sleeve: [{ after: '1 year', every: '1 year', with: ['surgeon'] }] } };
    expect(reasonsOf({ facts: [yearly], protocol: forLife })).toEqual([]);
  });

  it('counts days before and after, and none in a pregnancy', () => {
    const facts = [
      fact('smoking', 'smoking-before', { timing: { phase: 'before-operation', from_week: -4, to_day: 0 } }),
      fact('follow-up', 'surgical-service', {
        timing: { phase: 'after-operation', from_month: 0, to_month: 24 },
      }),
      fact('pregnancy', 'pregnancy-tests', {
        value: { tests: ['iron'] },
        timing: { phase: 'pregnancy', from_week: 24, to_week: 28 },
      }),
    ];
    const { before, advice } = plan({ facts });
    expect(before).toMatchObject([{ starts: '2026-11-16', lastDay: '2026-12-14' }]);
    expect(advice).toMatchObject([
      { about: 'surgical-service', starts: '2026-12-14', lastDay: '2028-12-14' },
      { about: 'pregnancy-tests', starts: null, lastDay: null, tests: ['iron'] },
    ]);
  });

  it('keeps how to take iron apart from how much', () => {
    const facts = [fact('supplement', 'iron-helper'), fact('supplement', 'multivitamin-mineral')];
    const made = plan({ facts });
    expect(made.supplements.map(({ supplement }) => supplement)).toEqual(['multivitamin-mineral']);
    expect(made.advice.map(({ about }) => about)).toEqual(['iron-helper']);
  });
});
