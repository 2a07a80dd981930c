import { describe, expect, it } from 'vitest';

import { clinicianKey } from '../../../../src/compose/view/clinician-key.ts';
import { clinicianSetAside } from '../../../../src/compose/view/clinician-set-aside.ts';
import type { Cell, ComparisonTable, SetAsideReason } from '../../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import { makeRecord } from '../../../helpers/compare-inputs.ts';
import { evidenceFor, makeComparison, shareCell, unknownCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

type Aside = Cell['setAside'][number];

const aside = (record: string, reason: SetAsideReason = { code: 'indication-mixed' }): Aside => ({
  record,
  reason,
});
const unknown = (
  place: Pick<Cell, 'option' | 'outcome'>,
  setAside: readonly Aside[],
  asked: object = { days: 30 },
): Cell => ({
  ...unknownCell({ ...place, asked }),
  setAside,
});
const known = (
  place: Pick<Cell, 'option' | 'outcome'>,
  setAside: readonly Aside[],
  asked: object = { days: 30 },
): Cell => ({
  ...shareCell({ ...place, asked }, [5, 1000]),
  setAside,
});
const leak = { option: 'sleeve', outcome: 'leak' };

function comparisonOf(cells: readonly Cell[]): ComparisonTable {
  const comparison = makeComparison(['sleeve', 'bypass']);
  const none = { ...comparison.weight.main, cells: [] };
  const rows = cells.map((cell) => ({ outcome: cell.outcome, asked: cell.asked, cells: [cell] }));
  const topics = [{ id: 'first-month' as const, denominator: 1000 as const, picture: null, rows }];
  return { ...comparison, weight: { mainMonths: 60, main: none, over: [], courses: [] }, topics };
}

async function markups(cells: readonly Cell[], records: readonly EvidenceRecord[] = [], tag = 'en') {
  const comparison = comparisonOf(cells);
  const evidence = evidenceFor(comparison);
  const scene = await sceneFor(tag, {
    comparison,
    evidence: { ...evidence, records: [...evidence.records, ...records] },
  });
  const { columns, rows } = clinicianSetAside(scene);
  if (rows.length > 0) expect(columns).toHaveLength(2);
  return rows.map(({ group, cells }) =>
    [group, ...cells.map(({ lines }) => lines.map(({ words }) => words.markup).join(' '))]
      .filter((text) => text !== '')
      .join(' | '),
  );
}

async function said(
  cells: readonly Cell[],
  records: readonly EvidenceRecord[] = [],
): Promise<readonly string[]> {
  return (await markups(cells, records)).map(plain);
}

describe('records set aside', () => {
  it('are all named: what sets them apart, the reason once, then option, outcome and the ends of the ids', async () => {
    const setAside = ['30d.a', '30d.b', '30d.c', '30d.d'].map((id) => aside(`sleeve.leak.${id}`));
    expect(await said([known(leak, setAside)])).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak 30d.a, 30d.b, 30d.c, 30d.d.',
    ]);
  });

  it('are said with what they found where the patient pages show nothing of the outcome', async () => {
    const records = [
      makeRecord({ id: 'sleeve.leak.30d.a', value: { events: 7, n: 121 } }),
      makeRecord({ id: 'sleeve.leak.30d.b', kind: 'report', value: { events: 12 } }),
    ];
    const setAside = [aside('sleeve.leak.30d.a'), aside('sleeve.leak.30d.b')];
    expect(await said([unknown(leak, setAside)], records)).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak 30d.a = 7/121, 30d.b.',
    ]);
    const later = known(leak, [], { months: 60 });
    expect(await said([unknown(leak, setAside), later], records)).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak 30d.a, 30d.b.',
    ]);
  });

  it('of one study at several times are said together, each time with what was found then', async () => {
    const ends = ['12m.a', '60m.a', '12m.b', '60m.b'];
    const records = ends.map((end, index) =>
      makeRecord({ id: `sleeve.leak.${end}`, value: { percent: index < 2 ? 3 : index } }),
    );
    const setAside = ends.map((end) => aside(`sleeve.leak.${end}`));
    expect(await said([unknown(leak, setAside)], records)).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak 12m/60m.a = 3%, b (12m = 2%, 60m = 3%).',
    ]);
  });

  it('of one study are said together: its times, then several outcomes behind its name', async () => {
    const one = ['12m.a.x', '24m.a.x'].map((id) => aside(`sleeve.leak.${id}`));
    const ulcer = { option: 'sleeve', outcome: 'ulcer' };
    expect(
      await said([
        known(leak, [...one, aside('sleeve.leak.30d.b')]),
        known(ulcer, [aside('sleeve.ulcer.30d.b'), aside('sleeve.ulcer.60m.b')]),
      ]),
    ).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak 12m/24m.a.x; b (leak 30d; ulcer 30d/60m).',
    ]);
  });

  it('that two options share are said once for both', async () => {
    const cells = ['sleeve', 'bypass'].map((option) =>
      known({ option, outcome: 'leak' }, [
        aside(`${option}.leak.30d.a`),
        aside(`${option}.leak.30d.only-${option}`),
      ]),
    );
    expect(await said(cells)).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve, Gastric bypass: leak 30d.a. Sleeve: leak 30d.only-sleeve. Gastric bypass: leak 30d.only-bypass.',
    ]);
  });

  it('come by what sets them apart, the commonest reason first', async () => {
    const setAside = [
      aside('sleeve.leak.30d.a', { code: 'not-verified', seen: 'memory' }),
      aside('sleeve.leak.30d.b', { code: 'time-unclear' }),
      aside('sleeve.leak.30d.c', { code: 'pregnancy' }),
      aside('sleeve.leak.30d.d', { code: 'diabetes-only' }),
      aside('sleeve.leak.30d.e', { code: 'diabetes-only' }),
      aside('sleeve.leak.30d.f', { code: 'other-measure', kind: 'contrast' }),
    ];
    expect(await said([known(leak, setAside)])).toEqual([
      'Other people',
      'people with diabetes only | Sleeve: leak 30d.d, 30d.e.',
      'not valid in pregnancy | Sleeve: leak 30d.c.',
      'Other time',
      'time not clear | Sleeve: leak 30d.b.',
      'Other measure',
      'comparison only | Sleeve: leak 30d.f.',
      'Not read in the study itself',
      'from memory | Sleeve: leak 30d.a.',
    ]);
  });

  it('behind an id say what is true of that record alone', async () => {
    const setAside = [
      aside('sleeve.leak.30d.a', { code: 'too-few-people', n: 20 }),
      aside('sleeve.leak.30d.b', { code: 'bmi-mean-only', mean: 47.2, yours: 43.1 }),
      aside('sleeve.leak.30d.c', { code: 'same-people', as: 'sleeve.leak.30d.other' }),
      aside('sleeve.leak.30d.d', { code: 'same-people', as: 'sleeve.leak.study-a' }),
    ];
    expect(await said([known(leak, setAside)])).toEqual([
      'Other people',
      'too few to tell | Sleeve: leak 30d.a (n 20).',
      'only a mean BMI, too far from 43.1 | Sleeve: leak 30d.b (mean 47.2).',
      // The record that leads need not be named.
      'Same people',
      'as in the record shown, or as named | Sleeve: leak 30d.c (as 30d.other), 30d.d.',
    ]);
  });

  it('for their time alone are left out where they are shown, or set aside otherwise, at another time', async () => {
    const late: SetAsideReason = { code: 'other-time', months: 60 };
    const shown = shareCell({ ...leak, asked: { months: 60 } }, [5, 100]);
    const beside = 'sleeve.leak.60m.beside';
    const cells = [
      known(leak, [
        aside(shown.lead.record.replace('study-a', '60m.lead'), late),
        aside(beside, late),
        aside('sleeve.leak.60m.other', late),
        aside('sleeve.leak.60m.only', late),
      ]),
      {
        ...shown,
        lead: { ...shown.lead, record: 'sleeve.leak.60m.lead' },
        others: { low: 0.01, high: 0.02, records: [beside] },
        setAside: [aside('sleeve.leak.60m.other', { code: 'weaker-match' })],
      },
    ];
    expect(await said(cells)).toEqual([
      'Other people',
      'fit less well than the record shown | Sleeve: leak 60m.other.',
      'Other time',
      'not near a time asked for | Sleeve: leak 60m.only.',
    ]);
  });

  it('take several rows where one would be very long, the reason said again as one that goes on', async () => {
    const many = (outcome: string): readonly Aside[] =>
      Array.from({ length: 25 }, (_, index) =>
        aside(`sleeve.${outcome}.30d.a-study-with-quite-a-long-name-${outcome}-${String(index)}`),
      );
    const outcomes = ['leak', 'ulcer', 'clot'];
    const cells = outcomes.map((outcome) => known({ option: 'sleeve', outcome }, many(outcome)));
    const items = await said(cells);
    expect(items.map((item) => item.split(' 30d')[0])).toEqual([
      'Other people',
      'first and second operations mixed | Sleeve: leak',
      'first and second operations mixed (continued) | Sleeve: ulcer',
      'first and second operations mixed (continued) | Sleeve: clot',
    ]);
    expect(items.join(' ').match(/30d\.a-study/g)).toHaveLength(75);
  });

  it('are not listed where there are none', async () => {
    expect(await said([unknown(leak, [])])).toEqual([]);
  });

  it('keep what only the evidence says in its own language, marked as such', async () => {
    const setAside = [aside('sleeve.leak.30d.a', { code: 'variant', variant: 'by open surgery' })];
    const cells = [known(leak, setAside)];
    expect(await markups(cells, [], 'es')).toEqual([
      'Otra técnica',
      'según el registro, en inglés: <lang code="en">by open surgery</lang> | <b>Manga gástrica:</b> fuga 30d.a.',
    ]);
    expect((await markups(cells))[1]).toBe('by open surgery | <b>Sleeve:</b> leak 30d.a.');
  });

  it('say codes of the evidence in the words of the language', async () => {
    const setAside = [
      aside('sleeve.leak.30d.a', { code: 'not-verified', seen: 'page-2nd' }),
      aside('sleeve.leak.30d.b', { code: 'indication', theirs: 'after-band', yours: 'first-operation' }),
      aside('sleeve.leak.30d.c', { code: 'reference-weight', reference: 'unstated' }),
      aside('sleeve.leak.30d.d', { code: 'not-convertible', metric: 'BMI' }),
    ];
    const items = (await markups([known(leak, setAside)], [], 'es')).map(plain);
    expect(items).toEqual([
      'Otras personas',
      'tras una banda | Manga gástrica: fuga 30d.b.',
      'Otra medida',
      'porcentaje de otro peso: no se indica cuál | Manga gástrica: fuga 30d.c.',
      'sin kilogramos a partir de bajada del IMC | Manga gástrica: fuga 30d.d.',
      'Sin leer en el propio estudio',
      'segunda fuente | Manga gástrica: fuga 30d.a.',
    ]);
  });
});

describe('the key to ids', () => {
  it('gives the codes that a name does not say already', async () => {
    const cells = [known(leak, []), known({ option: 'sleeve', outcome: 'gallbladder-removal' }, [])];
    const english = plain(clinicianKey(await sceneFor('en', { comparison: comparisonOf(cells) })).markup);
    expect(english).toMatch(/Codes: cholecystectomy = gallbladder-removal\.$/);
    const spanish = plain(clinicianKey(await sceneFor('es', { comparison: comparisonOf(cells) })).markup);
    expect(spanish).toMatch(
      /Códigos: Manga gástrica = sleeve, Bypass gástrico = bypass, fuga = leak, colecistectomía = gallbladder-removal\.$/,
    );
  });
});
