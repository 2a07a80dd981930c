import { describe, expect, it } from 'vitest';

import type { Scene } from '../../../../src/compose/view/scene.ts';
import { doseInWords, doseName } from '../../../../src/compose/view/say-dose.ts';
import { viewChoices } from '../../../../src/compose/view/view-choices.ts';
import { viewConsent } from '../../../../src/compose/view/view-consent.ts';
import { viewLines } from '../../../../src/compose/view/view-lines.ts';
import { viewPeople } from '../../../../src/compose/view/view-people.ts';
import { viewSources } from '../../../../src/compose/view/view-sources.ts';
import { viewTables } from '../../../../src/compose/view/view-table.ts';
import { viewWeight } from '../../../../src/compose/view/view-weight.ts';
import type {
  Cell,
  ComparisonTable,
  Horizon,
  KnownCell,
  OutcomeRow,
} from '../../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import { makeCase } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveYears,
  makeComparison,
  rowOf,
  shareCell,
  weightCell,
  withRecords,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const options = ['semaglutide', 'sleeve'];
const weekly = (...mg: number[]): EvidenceRecord['dose'] => ({ mg, per: 'week' });

const tied = (text: string | null | undefined): string => (text ?? 'none').replaceAll('\u00a0', ' ');
const plain = ({ markup }: { readonly markup: string }): string => tied(markup.replace(/<[^>]*>/g, ''));

type Doses = Readonly<Record<string, EvidenceRecord['dose']>>;

/** The two options, of which figures stand on records with these doses. */
async function sceneWith(comparison: ComparisonTable, doses: Doses, tag = 'en'): Promise<Scene> {
  const whole = withRecords(comparison);
  const base = evidenceFor(whole);
  const records = base.records.map((record) => ({ ...record, dose: doses[record.id] }));
  return sceneFor(tag, {
    comparison: whole,
    evidence: { ...base, records },
    case: makeCase({ decision: { options, chosen: 'semaglutide' } }),
  });
}

const taken = (outcome: string, asked: Horizon): KnownCell =>
  shareCell({ option: 'semaglutide', outcome, asked }, [300, 1000], { record: `semaglutide.${outcome}` });

function shares(...outcomes: readonly string[]): readonly OutcomeRow[] {
  return outcomes.map((outcome) =>
    rowOf(options, [outcome, fiveYears], { semaglutide: (): Cell => taken(outcome, fiveYears) }),
  );
}

function withWeights(...months: readonly number[]): ComparisonTable {
  const comparison = makeComparison(options);
  const over = months.map((month) =>
    rowOf(options, ['weight-loss', { months: month }], {
      semaglutide: (place) => {
        const cell = weightCell(place, 90);
        return { ...cell, lead: { ...cell.lead, record: `semaglutide.${String(month)}` } };
      },
    }),
  );
  const main = over.at(-1) ?? rowOf(options, ['weight-loss', fiveYears], {});
  return { ...comparison, weight: { mainMonths: months.at(-1) ?? 60, main, over, courses: [] }, topics: [] };
}

describe('a dose of a medicine', () => {
  it('is said in words of the language, and not at all where nobody states it', async () => {
    const [en, es] = [await sceneFor('en'), await sceneFor('es')];
    expect(tied(doseName(en, weekly(2.4)))).toBe('2.4 mg once a week');
    expect(tied(doseName(en, weekly(5, 10, 15)))).toBe('5, 10, or 15 mg once a week');
    expect(tied(doseName(en, { mg: [3], per: 'day' }))).toBe('3 mg once a day');
    expect(tied(doseName(es, weekly(10, 15)))).toBe('10 o 15 mg una vez por semana');
    expect([doseName(en, 'unstated'), doseName(en, undefined)]).toEqual([null, null]);
  });

  it('stands beside the figure that leads, tied to its record', async () => {
    const [row] = shares('nausea');
    const comparison = { ...makeComparison(options), topics: [] };
    const topic = {
      id: 'living-with-it',
      denominator: 100,
      rows: [],
      picture: row && { ...row, denominator: 100 },
    };
    const scene = await sceneWith(
      { ...comparison, topics: [topic as never] },
      { 'semaglutide.nausea': weekly(2.4) },
    );
    const strip = viewPeople(scene, scene.comparison.topics[0]);
    const lines = strip?.rows.map((one) => one.lines.map(({ words }) => plain(words)));
    expect(lines?.[0]).toContain('Dose: 2.4 mg once a week.');
    expect(lines?.[1]?.join(' ')).not.toContain('Dose');
    expect(doseInWords(scene, taken('nausea', fiveYears))?.markup).toContain('records="semaglutide.nausea"');
  });

  it('stands beside every weight: the main one, those of other times, the short one and the record of the talk', async () => {
    const doses = { 'semaglutide.12': weekly(5), 'semaglutide.60': weekly(15) };
    const scene = await sceneWith(withWeights(12, 60), doses);
    const lines = viewWeight(scene).rows[0]?.lines.map(({ words }) => plain(words)) ?? [];
    expect(lines).toContain('Dose: 15 mg once a week.');
    expect(lines).toContain('1 year: 198 lb on 5 mg once a week.');
    expect(plain(viewChoices(scene).short.rows[0]?.cells[1]?.lines[0]?.words ?? { markup: '' })).toBe(
      '198 lb (90 kg) on 15 mg once a week',
    );
    expect(
      viewConsent(scene)
        .talk.flatMap(({ lines }) => lines.map(({ words }) => plain(words)))
        .join(' '),
    ).toContain('198 lb (90 kg) on 15 mg once a week');
    const sources = viewSources(scene).topics[0]?.rows.map(({ lines: own }) =>
      plain(own[0]?.words ?? { markup: '' }),
    );
    expect(sources?.filter((line) => line.includes('Dose: 15 mg once a week.'))).toHaveLength(1);
  });

  it('stands once beside weights of several times where all are of one dose', async () => {
    const lines = async (comparison: ComparisonTable): Promise<readonly string[]> => {
      const doses = {
        'semaglutide.12': weekly(15),
        'semaglutide.24': weekly(15),
        'semaglutide.60': weekly(15),
      };
      const scene = await sceneWith(comparison, doses);
      return viewWeight(scene).rows[0]?.lines.map(({ words }) => plain(words)) ?? [];
    };
    const known = await lines(withWeights(12, 24, 60));
    expect(known).toContain('1 year: 198 lb; 2 years: 198 lb.');
    expect(known.join(' ').match(/15 mg/g)).toHaveLength(1);
    const comparison = withWeights(12, 24, 60);
    const main = rowOf(options, ['weight-loss', fiveYears], {});
    const over = [...comparison.weight.over.slice(0, 2), main];
    const unknown = await lines({ ...comparison, weight: { ...comparison.weight, main, over } });
    // "Known" first: it stands right below "Not known".
    expect(unknown).toContain(
      'Known for another time: 198 lb after 1 year; 198 lb after 2 years. Dose: 15 mg once a week.',
    );
  });

  it('stands once under the name where a table is of one dose, else in a note of each figure', async () => {
    const tableOf = async (
      doses: Doses,
    ): Promise<{ readonly cells: readonly string[]; readonly notes: readonly string[] }> => {
      const rows = shares('nausea', 'vomiting');
      const topic = { id: 'living-with-it', denominator: 100, rows, picture: null } as const;
      const scene = await sceneWith({ ...makeComparison(options), topics: [topic] }, doses);
      const [table] = viewTables(scene, rows, 100);
      return {
        cells: (table?.rows[0]?.cells ?? []).map(({ lines }) =>
          lines.map(({ words }) => plain(words)).join(' | '),
        ),
        notes: (table?.notes ?? []).map(({ words }) => plain(words)),
      };
    };
    const one = { 'semaglutide.nausea': weekly(15), 'semaglutide.vomiting': weekly(15) };
    expect(await tableOf(one)).toEqual({ cells: ['Semaglutide | 15 mg once a week', '30', '30'], notes: [] });
    const two = { ...one, 'semaglutide.vomiting': weekly(5) };
    expect(await tableOf(two)).toEqual({
      cells: ['Semaglutide', '30 | note 1', '30 | note 2'],
      notes: [
        'Semaglutide (Feeling sick): Dose: 15 mg once a week.',
        'Semaglutide (Throwing up): Dose: 5 mg once a week.',
      ],
    });
    const half = { ...one, 'semaglutide.vomiting': 'unstated' } as const;
    expect((await tableOf(half)).cells).toEqual(['Semaglutide', '30 | note 1', '30']);
  });

  it('names a line over time', async () => {
    const comparison = withWeights(12, 60);
    const points = comparison.weight.over.flatMap(({ cells: [cell], asked }) =>
      cell?.state === 'known' && cell.value.kind === 'weight'
        ? [{ months: asked.months ?? 0, value: cell.value, record: cell.lead.record, cell: cell.id }]
        : [],
    );
    const weight = { ...comparison.weight, courses: [{ option: 'semaglutide', study: 'study-a', points }] };
    const scene = await sceneWith(
      { ...comparison, weight },
      { 'semaglutide.12': weekly(15), 'semaglutide.60': weekly(15) },
    );
    expect(tied(viewLines(scene)?.lines[0]?.name)).toBe('Semaglutide, 15 mg once a week');
  });
});
