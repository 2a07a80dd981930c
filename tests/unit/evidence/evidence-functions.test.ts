import { describe, expect, it } from 'vitest';

import { figuresFrom, isPossible, isPrintable, recordsFor, samePeople } from '../../../src/model/evidence.ts';
import { coverageCodes } from '../../../src/model/evidence-rules.ts';
import type { Study } from '../../../src/model/study.ts';
import { smallBase } from './small-evidence.ts';

function study(id: string, cohort: string, overlaps?: string[]): Study {
  return { id, cohort, design: 'cohort', citation: { title: id }, ...(overlaps && { overlaps }) };
}

describe('the gate to a patient page', () => {
  it('opens for a figure read at its source, and for nothing else', () => {
    expect((['page', 'page-2nd', 'memory'] as const).map((seen) => isPrintable({ seen }))).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('the same people', () => {
  it('are in two studies of one cohort', () => {
    expect(samePeople(study('a', 'registry'), study('b', 'registry'))).toBe(true);
    expect(samePeople(study('a', 'registry'), study('b', 'other'))).toBe(false);
  });

  it('are in two studies of which either names the other', () => {
    expect(samePeople(study('a', 'x', ['b']), study('b', 'y'))).toBe(true);
    expect(samePeople(study('a', 'x'), study('b', 'y', ['a']))).toBe(true);
    expect(samePeople(study('a', 'x', ['c']), study('b', 'y', ['c']))).toBe(false);
  });

  it('follow the cohort of a record before that of its study', () => {
    const review = study('review', 'review');
    const series = study('series', 'series');
    expect(samePeople(review, series, { a: 'series' })).toBe(true);
    expect(samePeople(study('a', 'x'), study('b', 'x'), { b: 'own' })).toBe(false);
    expect(samePeople(review, series, { a: 'own', b: 'own' })).toBe(true);
  });
});

describe('an option that has no figures of its own', () => {
  it('takes those of the option it names', async () => {
    const evidence = await smallBase();
    expect(figuresFrom(evidence, 'no-operation')).toBe('usual-care');
    expect(figuresFrom(evidence, 'sleeve')).toBe('sleeve');
    expect(recordsFor(evidence, 'tablet').map(({ id }) => id)).toEqual([
      'tablet.responder-5-TWL.12m.beta-2021',
    ]);
  });
});

describe('what is not possible', () => {
  const leak = { applies_to: ['operation' as const] };

  it('is an outcome that the kind of option cannot lead to', () => {
    expect(isPossible(leak, 'operation', false)).toBe(true);
    expect(isPossible(leak, 'medicine', false)).toBe(false);
  });

  it('becomes possible after an earlier operation, which may still cause it', () => {
    expect(isPossible(leak, 'none', true)).toBe(true);
  });
});

describe('the codes a caution is about', () => {
  it.each([
    [{ condition: 'reflux' }, ['reflux']],
    [{ condition: ['reflux', 'oesophagitis'], medicine: 'aspirin' }, ['reflux', 'oesophagitis', 'aspirin']],
    [{ smoking: 'current' as const }, ['smoking']],
    [{ pregnancy: 'planned' as const }, ['pregnancy-planned']],
    [{ bmi: { below: 30 }, asked: 'first-operation' as const }, ['bmi-low']],
    [{ bmi: { low: 50 } }, ['bmi-high']],
    [{ bmi: { low: 27, below: 30 } }, ['bmi-low']],
    [{ age: { below: 18 } }, ['age-under-18']],
    [{ age: { low: 65 } }, ['age-over-65']],
  ])('of %j are %j', (when, codes) => {
    expect(coverageCodes(when)).toEqual(codes);
  });
});
