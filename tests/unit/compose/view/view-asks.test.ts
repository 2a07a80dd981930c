import { describe, expect, it } from 'vitest';

import { viewAsks } from '../../../../src/compose/view/view-asks.ts';
import { withoutRecords } from '../../../helpers/caution-pairs.ts';
import { allLanguages } from '../../../helpers/all-languages.ts';
import { compareWell, makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const evidence = withoutRecords(readShippedEvidence());
type Lines = readonly { readonly words: { readonly markup: string } }[];
const said = (lines: Lines | undefined): string =>
  (lines ?? []).map(({ words }) => plain(words.markup)).join(' ');

interface Asked {
  readonly stay: string;
  readonly forLife: string;
}

/** What two options ask of somebody with an earlier operation, by option. */
async function asksAfter(
  earlier: object,
  { tag = 'en', plan = {} } = {},
): Promise<ReadonlyMap<string, Asked>> {
  const changes = {
    health: { earlier_operations: [earlier] },
    plan: { surgeon: 'surgeon-1', ...plan },
    decision: { asked: 'second-operation', options: ['bypass', 'semaglutide', 'no-operation'] },
  };
  const comparison = compareWell(evidence, changes, makeClinic());
  const scene = await sceneFor(tag, { case: makeCase(changes), evidence, comparison });
  const { table, forLife } = viewAsks(scene);
  return new Map(
    scene.options.map(({ code }, at) => [
      code,
      { stay: said(table.rows[at]?.cells[1]?.lines), forLife: said(forLife[at]?.lines) },
    ]),
  );
}

const sleeve = { operation: 'sleeve', status: 'in-place' };
const band = { operation: 'band', status: 'in-place' };
const goOn = 'The vitamins and blood tests of your earlier operation go on.';
const onTop = 'Taking the band out comes on top.';

describe('what an option asks of somebody who had an operation', () => {
  it('lets vitamins and blood tests go on where no new operation asks for its own', async () => {
    const after = await asksAfter(sleeve);
    expect(after.get('semaglutide')?.forLife).toContain(goOn);
    expect(after.get('no-operation')?.forLife).toContain(goOn);
    expect(after.get('bypass')?.forLife).not.toContain(goOn);
    for (const other of [band, { ...sleeve, status: 'removed' }])
      expect((await asksAfter(other)).get('no-operation')?.forLife).not.toContain(goOn);
  });

  it('counts the nights of taking a band out apart, where that is an operation of its own', async () => {
    const apart = await asksAfter(band, { plan: { stages: 'two' } });
    expect(apart.get('bypass')?.stay).toContain(onTop);
    expect(apart.get('no-operation')?.stay).not.toContain(onTop);
    for (const plan of [{ stages: 'one' }, {}])
      expect((await asksAfter(band, { plan })).get('bypass')?.stay).not.toContain(onTop);
    expect((await asksAfter(sleeve, { plan: { stages: 'two' } })).get('bypass')?.stay).not.toContain(onTop);
  });

  it.each(allLanguages)('has its words in %s', async (tag) => {
    const [vitamins, without] = [await asksAfter(sleeve, { tag }), await asksAfter(band, { tag })];
    const of = (asks: ReadonlyMap<string, Asked>): string => asks.get('no-operation')?.forLife ?? '';
    expect(of(vitamins).length).toBeGreaterThan(of(without).length);
    const [apart, once] = await Promise.all(
      ['two', 'one'].map((stages) => asksAfter(band, { tag, plan: { stages } })),
    );
    const stay = (asks: ReadonlyMap<string, Asked> | undefined): string => asks?.get('bypass')?.stay ?? '';
    expect(stay(apart).length).toBeGreaterThan(stay(once).length);
  });
});
