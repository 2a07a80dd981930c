import { describe, expect, it } from 'vitest';

import { reviewState } from '../../../src/evidence/index.ts';
import { smallBase } from './small-evidence.ts';

describe('what is due for review', () => {
  it('is the whole from its next review on', async () => {
    const evidence = await smallBase();
    expect(reviewState(evidence, '2027-11-24').due).toBe(false);
    expect(reviewState(evidence, '2027-11-25').due).toBe(true);
  });

  it('names the figures nobody has read and the citations nobody has confirmed', async () => {
    const state = reviewState(await smallBase(), '2026-11-25');
    expect(state.unread.map(({ record }) => record.seen)).toEqual(['memory', 'page-2nd']);
    expect(state.unconfirmed.map(({ id }) => id)).toEqual(['beta-2021', 'gamma-2022']);
  });
});

describe('the sources to read again', () => {
  it('are none before the first review, which is named with its figures', async () => {
    expect(reviewState(await smallBase(), '2028-11-24')).toMatchObject({
      sources: [],
      next: { by: '2028-11-25', figures: 5 },
    });
  });

  it('are given one a study, with the figures that stand on it and where it was read', async () => {
    const state = reviewState(await smallBase(), '2028-11-25');
    expect(state.next).toBeUndefined();
    expect(state.sources).toEqual([
      {
        study: 'alpha-2020',
        by: '2028-11-25',
        records: ['sleeve.leak.12m.alpha-2020', 'sleeve.leak.30d.alpha-2020'],
        places: ['https://example.org/alpha'],
      },
      {
        study: 'beta-2021',
        by: '2028-11-25',
        records: [
          'sleeve.leak.30d.beta-2021.vs-usual-care',
          'sleeve.weight-loss.12m.beta-2021',
          'sleeve.wellbeing.12m.beta-2021',
        ],
        places: ['https://example.org/beta'],
      },
    ]);
  });

  it('come in the order of their days, each with only the figures that are due', async () => {
    const evidence = await smallBase();
    const sooner = { review_by: '2027-02-01', seen_at: ['https://example.org/table'] };
    const records = evidence.records.map((record) =>
      record.id === 'sleeve.wellbeing.12m.beta-2021' ? { ...record, ...sooner } : record,
    );
    const state = reviewState({ ...evidence, records }, '2027-02-01');
    expect(state.sources).toEqual([
      {
        study: 'beta-2021',
        by: '2027-02-01',
        records: ['sleeve.wellbeing.12m.beta-2021'],
        places: ['https://example.org/table'],
      },
    ]);
    expect(reviewState({ ...evidence, records }, '2028-11-25').sources.map(({ study }) => study)).toEqual([
      'beta-2021',
      'alpha-2020',
    ]);
  });
});

describe('the sources of aftercare to read again', () => {
  it('count from the first release by the least settled option they speak of, or from their own day', async () => {
    const evidence = await smallBase();
    expect(reviewState(evidence, '2027-11-24').aftercare).toEqual([]);
    // The tablet is newer and comes round after 12 months, the sleeve after 24.
    expect(reviewState(evidence, '2027-11-25').aftercare).toEqual([
      {
        study: 'rho-2019',
        by: '2027-11-25',
        records: ['fluid.rho'],
        places: ['https://example.org/rho-1', 'https://example.org/rho-2'],
      },
      {
        study: 'upsilon-2021',
        by: '2027-11-25',
        records: ['supplement.iron.upsilon'],
        places: ['https://example.org/upsilon'],
      },
    ]);
    const [source] = [...evidence.aftercareSources.values()].filter(({ id }) => id === 'rho-2019');
    if (source === undefined) throw new Error('no such source');
    const sooner = new Map([
      ...evidence.aftercareSources,
      [source.id, { ...source, review_by: '2027-02-01' }],
    ]);
    const state = reviewState({ ...evidence, aftercareSources: sooner }, '2027-02-01');
    expect(state.aftercare.map(({ study, by }) => [study, by])).toEqual([['rho-2019', '2027-02-01']]);
  });

  it('leave out what nobody has read, which is counted apart', async () => {
    const state = reviewState(await smallBase(), '2030-01-01');
    expect(state.unreadFacts).toEqual(['fluid.sigma', 'supplement.iron.ferrous-sulfate.rho']);
    expect(state.aftercare.flatMap(({ records }) => records)).not.toContain('fluid.sigma');
  });
});
