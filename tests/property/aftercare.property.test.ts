import { readFileSync } from 'node:fs';

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { planAftercare } from '../../src/aftercare/index.ts';
import { horizonMonths } from '../../src/aftercare/due-days.ts';
import type { AftercarePlan } from '../../src/model/aftercare-plan.ts';
import { whyWithheld } from '../../src/model/aftercare-rules.ts';
import { addDays, addMonths, daysBetween, weekdayOf, weekdays } from '../../src/model/calendar-day.ts';
import type { Weekday } from '../../src/model/calendar-day.ts';
import { conditionCodes, medicineCodes } from '../../src/model/codes.ts';
import { isRealDate } from '../../src/model/scalars.ts';
import { aftercareInput, readShippedFacts, readShippedSources } from '../helpers/aftercare-inputs.ts';
import type { AftercareChanges } from '../helpers/aftercare-inputs.ts';

const facts = readShippedFacts();
const sources = readShippedSources();
const { protocol: exampleProtocol } = parse(
  readFileSync(new URL('../../examples/clinic.yaml', import.meta.url), 'utf8'),
) as { readonly protocol: Readonly<Record<string, unknown>> };

/** Any day from 1950 to 2150, leap days and ends of months among them. */
const day = fc.oneof(
  fc.integer({ min: -7305, max: 65_744 }).map((number) => addDays('1970-01-01', number)),
  fc.constantFrom(
    '2024-02-29',
    '2027-01-31',
    '2028-02-29',
    '2100-02-28',
    '2027-12-31',
    '2026-10-31',
    '2026-03-29',
  ),
);
const openDays = fc.subarray([...weekdays], { minLength: 1 });
const option = fc.constantFrom(
  'sleeve',
  'bypass',
  'one-anastomosis-bypass',
  'duodenal-switch',
  'single-anastomosis-switch',
  'band',
  'plication',
  'band-removal',
  'semaglutide',
);
const person = fc.record({
  patient: fc.record({
    sex: fc.constantFrom('female', 'male', 'not-stated'),
    born: fc.constantFrom('1926-05-05', '1950-05-05', '1985-05-05', '2008-05-05'),
    weight: fc.constantFrom('70 kg', '114.5 kg', '190 kg'),
  }),
  health: fc.record({
    smoking: fc.constantFrom('never', 'former', 'current', 'not-asked'),
    conditions: fc.subarray([...conditionCodes], { maxLength: 5 }),
    medicines: fc.subarray([...medicineCodes], { maxLength: 5 }),
    history: fc.subarray(['gallbladder-removed']),
    pregnancy: fc.record({ now: fc.boolean(), planned_within_months: fc.constantFrom(null, 6) }),
  }),
});
const span = fc
  .tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom('day', 'week', 'month'))
  .map(([count, unit]) => `${String(count)} ${unit}${count === 1 ? '' : 's'}`);

function shipped(changes: AftercareChanges): AftercarePlan {
  return planAftercare(aftercareInput({ facts, sources, ...changes }));
}

/** Items of a plan that say who says so. */
function itemsOf(plan: AftercarePlan) {
  const { before, diet, visits, laterVisits, activity, medicines, supplements, tests, advice, warnings } =
    plan;
  const lists = [before, diet, visits, laterVisits, activity, medicines, supplements, tests, advice];
  return [...lists.flat(), ...Object.values(warnings).flat()];
}

function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

const clinicDays = fc.record({
  date: day,
  spans: fc.uniqueArray(span, { minLength: 1, maxLength: 6 }),
  open: openDays,
  /** Days after the operation on which the clinic is closed. */
  gaps: fc.array(fc.integer({ min: 0, max: 120 }), { maxLength: 30 }),
});
interface ClinicDays {
  readonly date: string;
  readonly spans: readonly string[];
  readonly open: readonly Weekday[];
  readonly gaps: readonly number[];
}

/** A visit for each of these times, in a clinic with these days. */
function visitsOf({ date, spans, open, gaps }: ClinicDays) {
  const follow_up = { sleeve: spans.map((after) => ({ after, with: ['surgeon'] })) };
  const closed = gaps.map((gap) => addDays(date, gap));
  const visiting = { weekdays: open, closed };
  const { visits } = planAftercare(aftercareInput({ protocol: { follow_up }, visiting, date }));
  return { visits, isOpen: (one: string) => open.includes(weekdayOf(one)) && !closed.includes(one) };
}

const scene = fc.record({ date: day, option, asked: person, isSilent: fc.boolean() });

function planOf({ isSilent, ...changes }: AftercareChanges & { readonly isSilent: boolean }): AftercarePlan {
  return shipped({ ...changes, ...(isSilent ? {} : { protocol: exampleProtocol }) });
}

describe('a plan for any day', () => {
  it('has each visit on the first day from the counted one on which the clinic sees people', () => {
    fc.assert(
      fc.property(clinicDays, (given) => {
        const { visits, isOpen } = visitsOf(given);
        expect(visits).toHaveLength(given.spans.length);
        for (const visit of visits) {
          const waited = daysBetween(visit.counted, visit.date);
          const passed = Array.from({ length: waited }, (_, index) => addDays(visit.counted, index));
          expect(waited).toBeGreaterThanOrEqual(0);
          expect(isOpen(visit.date)).toBe(true);
          expect(passed.filter(isOpen)).toEqual([]);
          expect(daysBetween(given.date, visit.counted)).toBeGreaterThan(0);
        }
        const byCount = [...visits].sort((a, b) => (a.counted < b.counted ? -1 : 1));
        expect(visits.map(({ date }) => date)).toEqual(byCount.map(({ date }) => date));
      }),
      { numRuns: 300 },
    );
  });

  it('holds codes, numbers and real days, and no word', () => {
    fc.assert(
      fc.property(day, option, person, (date, chosen, asked) => {
        const plan = shipped({ date, option: chosen, asked, protocol: exampleProtocol });
        const texts = textsIn(plan);
        expect(texts.filter((text) => !/^[a-zA-Z0-9_./-]+$/.test(text))).toEqual([]);
        const days = texts.filter((text) => /^\d{4}-\d{2}-\d{2}$/.test(text));
        expect(days.filter((text) => !isRealDate(text))).toEqual([]);
      }),
    );
  });

  it('gives as a guideline’s only what was read about this option and nothing contradicts, replaces or leaves to others', () => {
    const byId = new Map(facts.map((fact) => [fact.id, fact]));
    fc.assert(
      fc.property(scene, (given) => {
        for (const { from, entry, facts: ids, sources: named } of itemsOf(planOf(given))) {
          const stands = ids.flatMap((id) => byId.get(id) ?? []);
          const withheld = stands.flatMap((fact) =>
            whyWithheld(fact, sources.get(fact.source), given.option),
          );
          const isGuideline = from === 'guideline';
          expect(stands).toHaveLength(ids.length);
          expect([...new Set(stands.map(({ source }) => source))]).toEqual(named);
          expect(stands.filter(({ seen }) => seen !== 'page')).toEqual([]);
          expect(isGuideline).toBe(entry === null);
          expect(isGuideline && (ids.length === 0 || withheld.length > 0)).toBe(false);
        }
      }),
    );
  });

  it('never names two irons, so that nobody can add the weight of a salt to that of iron', () => {
    fc.assert(
      fc.property(scene, (given) => {
        const plan = planOf(given);
        const irons = plan.supplements.filter(({ supplement }) => supplement.startsWith('iron'));
        expect(new Set(irons.map(({ supplement }) => supplement)).size).toBeLessThanOrEqual(1);
        expect(irons.map(({ supplement }) => supplement)).not.toContain('iron-as-ferrous-sulfate');
      }),
    );
  });

  it('loses no warning sign: each that is about the option prints, or is listed for the clinician', () => {
    fc.assert(
      fc.property(scene, (given) => {
        const plan = planOf(given);
        const listed = new Set([
          ...Object.values(plan.warnings).flatMap((signs) => signs.map(({ sign }) => sign)),
          ...plan.undecided.map(({ subject }) => subject),
        ]);
        const numbers = ['fever-number', 'fast-heartbeat-number', 'late-problems-other', 'self-harm-line'];
        const lost = facts.filter(
          (fact) =>
            fact.urgency !== undefined &&
            fact.use !== 'context' &&
            [...fact.options, ...(fact.extrapolated_to ?? [])].includes(given.option) &&
            !listed.has(fact.subject) &&
            (given.isSilent || !numbers.includes(fact.subject)),
        );
        expect(lost.map(({ id }) => id)).toEqual([]);
      }),
    );
  });

  it('puts what is before the day before it, and the rest not', () => {
    fc.assert(
      fc.property(day, fc.constantFrom('sleeve', 'bypass', 'band-removal'), person, (date, chosen, asked) => {
        const plan = shipped({ date, option: chosen, asked, protocol: exampleProtocol });
        for (const { starts, lastDay } of plan.before) {
          expect(starts === null || starts < date).toBe(true);
          expect(lastDay === null || lastDay < date).toBe(true);
        }
        const later = [plan.diet, plan.activity, plan.medicines, plan.supplements, plan.advice].flat();
        expect(later.filter(({ starts }) => starts !== null && starts < date)).toEqual([]);
        expect(
          later.filter(({ starts, lastDay }) => lastDay !== null && starts !== null && lastDay < starts),
        ).toEqual([]);
      }),
    );
  });

  it('leaves no day without a stage of eating, and gives none two', () => {
    fc.assert(
      fc.property(day, (date) => {
        const { diet } = shipped({ date, protocol: exampleProtocol });
        expect(diet[0]?.starts).toBe(date);
        for (const [index, stage] of diet.entries()) {
          expect(daysBetween(date, stage.starts)).toBe(stage.fromDay);
          const next = diet[index + 1];
          expect(next === undefined ? null : addDays(next.starts, -1)).toBe(stage.lastDay);
        }
      }),
    );
  });

  it('lists what is repeated for two years and not a day longer, and goes on right after', () => {
    fc.assert(
      fc.property(day, span, span, (date, after, every) => {
        const protocol = {
          blood_tests: { sleeve: [{ tests: ['ferritin'], at: [after], every }] },
          follow_up: { sleeve: [{ after, every, with: ['surgeon'] }] },
        };
        const open = { weekdays: [...weekdays] };
        const { tests, visits, laterVisits } = planAftercare(
          aftercareInput({ protocol, date, visiting: open }),
        );
        const horizon = addMonths(date, horizonMonths);
        const listed = tests.flatMap(({ due }) => due.map(({ counted }) => counted));
        const next = tests.flatMap(({ then }) => (then === null ? [] : [then.next.counted]));
        const days = [...listed, ...next];
        expect(listed).toEqual(visits.map(({ counted }) => counted));
        expect(next).toEqual(laterVisits.map(({ then }) => then.next.counted));
        expect(listed.slice(1).filter((one) => one > horizon)).toEqual([]);
        expect(next.map((one) => one > horizon)).toEqual([true]);
        expect([...new Set(days)].sort((a, b) => (a < b ? -1 : 1))).toEqual(days);
      }),
    );
  });

  it('is the same each time, and changes nothing that it was given', () => {
    fc.assert(
      fc.property(day, option, person, (date, chosen, asked) => {
        const input = aftercareInput({
          facts,
          sources,
          date,
          option: chosen,
          asked,
          protocol: exampleProtocol,
        });
        const before = structuredClone(input);
        expect(planAftercare(input)).toEqual(planAftercare(input));
        expect(input).toEqual(before);
      }),
      { numRuns: 30 },
    );
  });
});
