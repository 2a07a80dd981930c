import { describe, expect, it } from 'vitest';

import { listRecords, showRecord } from '../../../src/evidence/index.ts';
import type { RecordFilter } from '../../../src/evidence/index.ts';
import { smallBase } from './small-evidence.ts';

async function idsOf(filter: RecordFilter): Promise<readonly string[]> {
  return listRecords(await smallBase(), filter).map(({ record }) => record.id);
}

describe('listing records', () => {
  it('lists all of them in file order when nothing is asked', async () => {
    expect(await idsOf({})).toHaveLength(7);
  });

  it.each<[string, RecordFilter, readonly string[]]>([
    ['option', { option: 'tablet' }, ['tablet.responder-5-TWL.12m.beta-2021']],
    ['outcome and kind', { outcome: 'leak', kind: 'contrast' }, ['sleeve.leak.30d.beta-2021.vs-usual-care']],
    ['study', { study: 'gamma-2022' }, ['sleeve.stay.peri.gamma-2022']],
    ['how it was seen', { seen: 'memory' }, ['sleeve.stay.peri.gamma-2022']],
    [
      'what may not print',
      { printable: false },
      ['sleeve.stay.peri.gamma-2022', 'tablet.responder-5-TWL.12m.beta-2021'],
    ],
    ['indication', { indication: 'none' }, ['tablet.responder-5-TWL.12m.beta-2021']],
    ['nothing that is there', { option: 'sleeve', kind: 'report' }, []],
  ])('lists by %s', async (_what, filter, ids) => {
    expect(await idsOf(filter)).toEqual(ids);
  });
});

describe('showing a record', () => {
  it('gives its study, its siblings and the studies of the same people', async () => {
    const shown = showRecord(await smallBase(), 'sleeve.leak.30d.alpha-2020');
    expect(shown).toMatchObject({
      printable: true,
      study: { id: 'alpha-2020' },
      siblings: ['sleeve.leak.12m.alpha-2020'],
    });
    expect(shown?.samePeopleAs.map(({ id }) => id)).toEqual(['beta-2021']);
  });

  it('says by when to read it again, unless nobody has read it at all', async () => {
    const evidence = await smallBase();
    const review = { by: '2028-11-25', setBy: 'interval', readOn: '2026-11-25' };
    expect(showRecord(evidence, 'sleeve.leak.30d.alpha-2020')?.review).toEqual(review);
    expect(showRecord(evidence, 'sleeve.stay.peri.gamma-2022')?.review).toBeUndefined();
  });

  it('gives nothing for an id that is not there', async () => {
    expect(showRecord(await smallBase(), 'sleeve.leak')).toBeUndefined();
  });
});
