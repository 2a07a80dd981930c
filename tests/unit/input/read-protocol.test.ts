import { describe, expect, it } from 'vitest';
import { readClinic } from '../../../src/input/index.ts';
import type { ClinicProfile } from '../../../src/model/clinic.ts';
import { likeOptions, protocolOf } from '../../../src/model/protocol-of.ts';
import { context, replaceIn, sampleClinic } from '../../helpers/sample-case.ts';

const words = '{en: Words, es: Palabras}';

function withProtocol(lines: string, clinicLines = ''): string {
  const text = replaceIn(sampleClinic, 'second_opinion:', `${lines}second_opinion:`);
  return replaceIn(text, '  units: both\n', `  units: both\n${clinicLines}`);
}

function accepted(lines: string, clinicLines = ''): ClinicProfile {
  const result = readClinic(withProtocol(lines, clinicLines), 'clinic.yaml', context);
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value;
}

function said(lines: string): string[] {
  const result = readClinic(withProtocol(lines), 'clinic.yaml', context);
  const found = result.ok ? result.warnings : result.diagnostics;
  return found.map(({ code, path, message }) => `${code} ${path ?? ''}: ${message}`);
}

describe('a protocol for the time after a treatment', () => {
  it('may be left out: then nothing is said, and people are seen from Monday to Friday', () => {
    const { protocol, clinic } = accepted('');
    expect(protocol).toMatchObject({ diet: {}, follow_up: {}, supplements: {}, warnings: {}, same_as: {} });
    expect(clinic.visiting).toEqual({
      weekdays: ['monday', 'tuesday', 'wednesday', 'thursday', 'friday'],
      closed: [],
    });
  });

  it('gives lengths of time, doses and temperatures as numbers with units', () => {
    const { protocol, clinic } = accepted(
      [
        '  follow_up: {sleeve: [{after: 2 weeks, with: [surgeon]}]}',
        '  supplements: {sleeve: [{supplement: calcium, dose: 500 mg, times_a_day: 3, from: 1 week}]}',
        '  warnings: {sleeve: {fever: 100.4 F, pulse: 120, now: [{code: vomiting}]}}',
        '',
      ].join('\n'),
      '  visiting: {weekdays: [tuesday], closed: [2026-12-25]}\n',
    );
    expect(protocol.follow_up['sleeve']).toEqual([
      { after: { count: 2, unit: 'week' }, with: ['surgeon'], way: 'in-person' },
    ]);
    expect(protocol.supplements['sleeve']?.[0]).toEqual({
      supplement: 'calcium',
      dose: { amount: 500, unit: 'mg' },
      times_a_day: 3,
      from: { count: 1, unit: 'week' },
    });
    expect(protocol.warnings['sleeve']?.fever?.celsius).toBeCloseTo(38, 10);
    expect(protocol.warnings['sleeve']).toMatchObject({ pulse: 120, today: [], at_visit: [] });
    expect(clinic.visiting).toEqual({ weekdays: ['tuesday'], closed: ['2026-12-25'] });
  });

  it('may begin eating on day 0 or 1, and a stage may last a day', () => {
    for (const first of [0, 1]) {
      const stages = `[{name: ${words}, from_day: ${String(first)}, to_day: ${String(first)}, what: ${words}}, {name: ${words}, from_day: ${String(first + 1)}, what: ${words}}]`;
      expect(said(`  diet: {sleeve: ${stages}}\n`)).toEqual([]);
    }
  });

  it('refuses a stage that follows one without an end, and says where to write it', () => {
    const stages = `[{name: ${words}, from_day: 0, what: ${words}}, {name: ${words}, from_day: 3, what: ${words}}]`;
    const result = readClinic(withProtocol(`  diet: {sleeve: ${stages}}\n`), 'clinic.yaml', context);
    expect(result.ok ? [] : result.diagnostics.map(({ hint }) => hint)).toEqual([
      'Add to_day: 2 to the stage above.',
    ]);
  });

  it('compares ends and beginnings by days, whatever their units', () => {
    const rule = (from: string, until: string): string =>
      `  lifting: {sleeve: [{from: ${from}, until: ${until}, what: ${words}}]}\n`;
    expect(said(rule('4 weeks', '1 month'))).toEqual([]);
    expect(said(rule('5 weeks', '1 month'))).toEqual([
      'CASE_CONFLICT protocol.lifting.sleeve[0].until: this ends before it begins',
    ]);
    expect(said(rule('12 months', '1 year'))).toEqual([]);
  });

  it('lets a visit be repeated until a day, and refuses an end without a repetition', () => {
    expect(
      said('  follow_up: {sleeve: [{after: 1 month, every: 1 month, until: 6 months, with: [nurse]}]}\n'),
    ).toEqual([]);
    expect(said('  follow_up: {sleeve: [{after: 1 month, until: 6 months, with: [nurse]}]}\n')).toEqual([
      'CASE_CONFLICT protocol.follow_up.sleeve[0].until: until ends a repetition, and nothing is repeated',
    ]);
    expect(
      said('  follow_up: {sleeve: [{after: 1 month, every: 1 month, until: 2 weeks, with: [nurse]}]}\n'),
    ).toEqual(['CASE_CONFLICT protocol.follow_up.sleeve[0].until: this ends before it begins']);
  });

  it('lets one salt of iron stand for two groups of people, and needs a name where there is no code', () => {
    const salt = 'supplement: iron-as-ferrous-fumarate, dose: 210 mg';
    expect(
      said(`  supplements: {sleeve: [{${salt}, for: menstruates}, {${salt}, for: does-not-menstruate}]}\n`),
    ).toEqual([]);
    expect(said(`  supplements: {sleeve: [{${salt}}, {${salt}}]}\n`)).toEqual([
      'CASE_CONFLICT protocol.supplements.sleeve[1]: this supplement stands twice for the same people',
    ]);
    expect(said('  supplements: {sleeve: [{supplement: other, dose: 1 tablet}]}\n')).toEqual([
      'CASE_CONFLICT protocol.supplements.sleeve[0]: a supplement without a code needs its name',
    ]);
  });

  it('lets a sign be more urgent for some people, and never name it twice for the same', () => {
    const rest = 'at_visit: [{code: low-sugar}]';
    expect(said(`  warnings: {sleeve: {today: [{code: low-sugar, for: diabetes}], ${rest}}}\n`)).toEqual([]);
    expect(said(`  warnings: {sleeve: {today: [{code: low-sugar}], ${rest}}}\n`)).toEqual([
      'CASE_CONFLICT protocol.warnings.sleeve.at_visit[0].code: this sign stands twice',
    ]);
  });

  it('checks options wherever they stand: as a key, and as the one that another is the same as', () => {
    expect(said('  diet: {sleve: []}\n')[0]).toContain('CASE_UNKNOWN_OPTION protocol.diet.sleve');
    expect(said('  same_as: {bypass: sleve}\n')[0]).toContain('CASE_UNKNOWN_OPTION protocol.same_as.bypass');
  });
});

describe('being the same as another option', () => {
  const { protocol } = accepted(
    [
      '  same_as: {bypass: sleeve, one-anastomosis-bypass: bypass}',
      `  walking: {sleeve: [{what: ${words}}]}`,
      '  follow_up: {sleeve: [{after: 2 weeks, with: [surgeon]}], bypass: [{after: 3 weeks, with: [nurse]}]}',
      '',
    ].join('\n'),
  );

  it('fills each topic of which the option says nothing, over more than one step', () => {
    expect(likeOptions(protocol, 'one-anastomosis-bypass')).toEqual([
      'one-anastomosis-bypass',
      'bypass',
      'sleeve',
    ]);
    expect(protocolOf(protocol, 'walking', 'one-anastomosis-bypass')?.option).toBe('sleeve');
    expect(protocolOf(protocol, 'follow_up', 'one-anastomosis-bypass')?.practice[0]?.with).toEqual(['nurse']);
    expect(protocolOf(protocol, 'follow_up', 'sleeve')?.option).toBe('sleeve');
    expect(protocolOf(protocol, 'walking', 'band')).toBeUndefined();
    expect(protocolOf(protocol, 'diet', 'bypass')).toBeUndefined();
  });

  it('ends where a circle would close', () => {
    expect(likeOptions({ same_as: { a: 'b', b: 'c', c: 'b' } }, 'a')).toEqual(['a', 'b', 'c']);
    expect(likeOptions({ same_as: { a: 'a' } }, 'a')).toEqual(['a']);
  });
});
