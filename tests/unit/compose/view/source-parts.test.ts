import { describe, expect, it } from 'vitest';

import { clinicianCautions } from '../../../../src/compose/view/clinician-cautions.ts';
import { citationOf, numberStudies } from '../../../../src/compose/view/number-studies.ts';
import { otherSources } from '../../../../src/compose/view/view-other-sources.ts';
import { viewSources } from '../../../../src/compose/view/view-sources.ts';
import type { ClinicProfile } from '../../../../src/model/clinic.ts';
import type { Cell, KnownCell } from '../../../../src/model/comparison.ts';
import type { Reversibility } from '../../../../src/model/evidence-rules.ts';
import type { Study } from '../../../../src/model/study.ts';
import { makeClinic, makeRecord, makeStudy } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveOptions,
  makeComparison,
  refluxHit,
  shareCell,
  unknownCell,
  withRecords,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain, rowsOf, without, withStay } from '../../../helpers/read-tables.ts';

const stayPlace = { option: 'sleeve', outcome: 'hospital-stay', asked: {} };

describe('citations', () => {
  it('give what is known of a study, and the address under which it is found', async () => {
    const cite = async (study: Study): Promise<string> =>
      plain(citationOf(await sceneFor('en'), study).markup);
    const unseen = { citation: { title: 'Is it safe?' }, citation_unseen: ['authors', 'year', 'journal'] };
    expect(await cite(makeStudy('a', unseen))).toBe(
      'Is it safe? example.org. Not yet confirmed: authors, year, and journal.',
    );
    expect(await cite(without(makeStudy('a', unseen), 'seen_at'))).toBe(
      'Is it safe? Not yet confirmed: authors, year, and journal.',
    );
    // What nobody has seen as a title is told from a title, once and in brackets.
    for (const title of ['a cohort of 40', '[A cohort of 40]'])
      expect(await cite(makeStudy('a', { citation: { title }, citation_unseen: ['title', 'year'] }))).toBe(
        '[A cohort of 40]. example.org. Not yet confirmed: title in brackets and year.',
      );
    const untitled = { citation: { journal: 'J Ex' }, citation_unseen: ['title'] };
    expect(await cite(makeStudy('a', untitled))).toBe('J Ex. example.org. Not yet confirmed: title.');
    const nobody = { citation: { year: 2020, title: 'Is it safe?', journal: 'J Ex' } };
    expect(await cite(makeStudy('a', nobody))).toBe('Is it safe? (2020). J Ex. example.org.');
    const whole = { authors: 'Example A', year: 2020, title: 'An example', journal: 'J Ex' };
    expect(await cite(makeStudy('a', { citation: { ...whole, doi: '10.1000/x', pmid: '123' } }))).toBe(
      'Example A. (2020). An example. J Ex. doi.org/10.1000/x; PubMed 123.',
    );
    expect(await cite(makeStudy('a', { citation: { ...whole, pmid: '123' } }))).toBe(
      'Example A. (2020). An example. J Ex. PubMed 123.',
    );
  });
});

describe('a text that was read in a copy', () => {
  const copied = { seen_at: ['https://dev.copies.example/a', 'https://copies.example/b'] };
  const cite = async (changes: Readonly<Record<string, unknown>>): Promise<string> =>
    plain(citationOf(await sceneFor('en'), makeStudy('a', changes)).markup);

  it('is said to be one, and its address is printed for nobody', async () => {
    expect(await cite(copied)).toBe('Example A. (2020). An example. J Ex 2020. Read in a copy.');
  });

  it('begins each part with a capital, and says a host that it is found at once', async () => {
    const citation = { title: 'master equations', journal: 'meeting abstract' };
    const unseen = { citation_unseen: ['authors', 'year'] };
    expect(await cite({ citation, ...unseen })).toMatch(/^Master equations\. Meeting abstract\. /);
    const own = { citation: { ...citation, title: '[a table]' }, ...unseen };
    expect(await cite(own)).toMatch(/^\[A table\]\. /);
    const host = { citation: { title: 'A rule', journal: 'example.org' }, ...unseen };
    expect(await cite({ ...host, seen_at: ['https://www.example.org/rule%20'] })).toMatch(
      /^A rule\. example\.org\/rule\. Not yet/,
    );
    const elsewhere = { ...host, seen_at: ['https://journal.example/rule'] };
    expect(await cite(elsewhere)).toMatch(/^A rule\. example\.org\. journal\.example\/rule\. /);
  });

  it('is cited by its own number where that is known', async () => {
    const citation = { title: 'An example', journal: 'J Ex', pmid: '123' };
    expect(await cite({ ...copied, citation, citation_unseen: ['authors', 'year'] })).toBe(
      'An example. J Ex. PubMed 123. Read in a copy. Not yet confirmed: authors and year.',
    );
  });

  it('is no copy where the original was opened too, or where a name only ends alike', async () => {
    const both = { seen_at: [...copied.seen_at, 'https://journal.example/c'] };
    expect(await cite(both)).toBe('Example A. (2020). An example. J Ex 2020. journal.example/c.');
    const alike = { seen_at: ['https://othercopies.example/a'] };
    expect(await cite(alike)).toBe('Example A. (2020). An example. J Ex 2020. othercopies.example/a.');
  });

  it('has an address in signs, not in codes, and one that cannot be read so as it is', async () => {
    const coded = { seen_at: ['https://www.example.org/bmi-%e2%89%a560/'] };
    expect(await cite(coded)).toMatch(/ example\.org\/bmi-≥60\.$/);
    expect(await cite({ seen_at: ['https://example.org/100%'] })).toMatch(/ example\.org\/100%\.$/);
  });
});

describe('sources of an option', () => {
  it('leave out a stay that the clinic states itself, and figures that no page prints', async () => {
    const stay = { ...shareCell(stayPlace, [1, 2]), id: 'sleeve/stay' };
    const value = { kind: 'amount' as const, value: 2, unit: 'days' };
    const comparison = withRecords(withStay(makeComparison(fiveOptions), { ...stay, value }));
    const base = evidenceFor(comparison);
    const record = makeRecord({
      id: stay.lead.record,
      kind: 'duration',
      outcome: 'hospital-stay',
      value: { estimate: 2, unit: 'days' },
    });
    const evidence = { ...base, records: [...base.records, record] };
    const names = async (clinic: ClinicProfile): Promise<readonly string[]> =>
      (viewSources(await sceneFor('en', { comparison, evidence, clinic })).topics[0]?.rows ?? []).map(
        ({ name }) => name.markup.replaceAll('\u00a0', ' '),
      );
    const clinic = makeClinic();
    const own = { ...clinic, protocol: { ...clinic.protocol, stay: { sleeve: { en: '1 night' } } } };
    const shown = await names(clinic);
    expect(shown).toContain('Days in hospital');
    // The weight at one year stands in the line over time alone.
    expect(shown.filter((name) => name.startsWith('Weight'))).toEqual([
      'Weight, 5 years',
      'Weight over time',
    ]);
    expect(await names(own)).toEqual(shown.filter((name) => name !== 'Days in hospital'));
  });

  it('say of a weight that was worked out from another measure that it was, as the page does', async () => {
    const view = viewSources(await sceneFor('en', { comparison: makeComparison(fiveOptions) }));
    const said = view.topics.flatMap(({ rows }) =>
      rows.flatMap(({ lines }) => lines.map(({ words }) => plain(words.markup))),
    );
    const computed = 'Worked out for you from another measure: percent of extra weight lost.';
    expect(said.filter((text) => text.includes(computed))).toHaveLength(1);
  });

  it('explain each kind of study and each degree of certainty that occurs, once, and no other', async () => {
    const comparison = makeComparison(fiveOptions);
    const base = evidenceFor(comparison);
    const records = base.records.map((record, index) =>
      index === 0 ? { ...record, design: 'registry' as const } : record,
    );
    const view = viewSources(await sceneFor('en', { comparison, evidence: { ...base, records } }));
    const { words } = await sceneFor('en');
    const explained = (group: string, meanings: string, code: string): string => {
      const name = words.plain(`sources.${group}.${code}`);
      return plain(
        words.say(`sources.explained.${group}`, { name, meaning: words.plain(`${meanings}.${code}`) }).markup,
      );
    };
    expect(view.designs.map(({ markup }) => plain(markup))).toEqual([
      explained('designs', 'codes.designs', 'cohort'),
      explained('designs', 'codes.designs', 'registry'),
    ]);
    expect(view.certainties.map(({ markup }) => plain(markup))).toEqual([
      explained('certainties', 'codes.certainty', 'moderate'),
    ]);
  });

  it('explain them after a colon with a small letter in a language that writes so', async () => {
    const view = viewSources(await sceneFor('es', { comparison: makeComparison(fiveOptions) }));
    expect(view.designs.map(({ markup }) => plain(markup))).toEqual([
      '“Grupo en el tiempo”: un estudio que sigue a un grupo de personas en el tiempo.',
    ]);
  });

  it('say of people with another BMI what it was, to one place, and not once more as a difference', async () => {
    const { main } = makeComparison(fiveOptions).weight;
    const rowFor = async (reason: KnownCell['lead']['reasons'][number]): Promise<string> => {
      const cells = main.cells.map((cell): Cell =>
        cell.state === 'known' ? { ...cell, lead: { ...cell.lead, match: 'near', reasons: [reason] } } : cell,
      );
      const comparison = makeComparison(fiveOptions);
      const weight = { ...comparison.weight, main: { ...main, cells }, over: [], courses: [] };
      const base = evidenceFor(comparison);
      const own = { bmi: { mean: 43.86 }, age: { mean: 40 } };
      const records = base.records.map((record) => ({ ...record, people: { ...record.people, ...own } }));
      const scene = await sceneFor('en', {
        comparison: { ...comparison, weight, topics: [] },
        evidence: { ...base, records },
      });
      const [row] = viewSources(scene).topics[0]?.rows ?? [];
      return plain(row?.lines[0]?.words.markup ?? '');
    };
    const bmi = await rowFor({ code: 'bmi-mean-only', mean: 43.86, yours: 40 });
    expect(bmi).toContain('BMI: 43.9 on average. Age: 40 on average.');
    expect(bmi).not.toContain('Yours is');
    expect(await rowFor({ code: 'age-unknown', yours: 68 })).toContain('You are 68.');
  });

  it('explain how sure figures are from the surest on', async () => {
    const comparison = makeComparison(fiveOptions);
    const { main } = comparison.weight;
    const degrees = ['very-low', 'high', 'low', 'moderate'];
    const cells = main.cells.map((cell, index): Cell =>
      cell.state === 'known'
        ? { ...cell, lead: { ...cell.lead, certainty: degrees[index] ?? 'moderate' } }
        : cell,
    );
    const weight = { ...comparison.weight, main: { ...main, cells }, over: [], courses: [] };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight, topics: [] } });
    expect(viewSources(scene).certainties.map(({ markup }) => /“(.*)”/.exec(plain(markup))?.[1])).toEqual([
      'very sure',
      'quite sure',
      'very unsure',
    ]);
  });

  it('say of people who grew heavier what they gained, never a loss below nothing', async () => {
    const scene = await sceneFor('en');
    const row = viewSources(scene).topics.at(-1)?.rows[0];
    // 116.1 kg from 114.5.
    expect(row?.lines.map(({ words }) => plain(words.markup)).join(' ')).toMatch(
      /^256 lb \(116 kg\) on average\. Weight gained: 1\.4%\./,
    );
  });

  it('name what the short table shows, even where a line over time stands beside it', async () => {
    const comparison = makeComparison(fiveOptions);
    const { main, over } = comparison.weight;
    const cells = main.cells.map((cell) => (cell.option === 'sleeve' ? unknownCell(cell) : cell));
    const unknown = { ...main, cells };
    const rows = over.map((row) => (row.asked.months === main.asked.months ? unknown : row));
    const weight = { ...comparison.weight, main: unknown, over: rows };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight } });
    const names = viewSources(scene).topics[0]?.rows.map(({ name }) => name.markup.replaceAll('\u00a0', ' '));
    expect(names?.filter((name) => name.startsWith('Weight'))).toEqual([
      'Weight, 1 year',
      'Weight over time',
    ]);
  });

  it('say of people whatever was stated, and that nothing was', async () => {
    const comparison = makeComparison(fiveOptions);
    const base = evidenceFor(comparison);
    const people = { indication: 'first-operation' as const, diabetes: 'unknown' as const };
    const evidence = { ...base, records: base.records.map((record) => ({ ...record, people })) };
    const { topics } = viewSources(await sceneFor('en', { comparison, evidence }));
    for (const { lines } of topics.flatMap(({ rows }) =>
      rows.filter(({ name }) => !name.markup.includes('over time')),
    ))
      expect(lines.map(({ words }) => plain(words.markup)).join(' ')).toContain('BMI and age not stated.');
  });
});

describe('where points were read', () => {
  const entry: Reversibility = {
    option: 'sleeve',
    undo: {
      possible: 'no',
      how: 'x',
      what_remains: 'x',
      weight_after: { statement: 'x', basis: 'page', study: 'study-c' },
      data: [
        { what: 'x', study: 'study-b', seen: 'page' },
        { what: 'x', study: 'study-d', seen: 'memory' },
      ],
    },
    change_to: [],
    sources: [
      { point: 'x', url: 'https://www.example.org/a/', seen: 'page' },
      { url: 'https://example.org/b', seen: 'memory' },
    ],
  };

  it('names the studies and addresses read on a page, and no others', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [refluxHit] });
    const base = evidenceFor(comparison);
    const cautions = base.cautions.map((caution) => ({
      ...caution,
      sources: [
        { url: 'https://www.example.org/c', seen: 'page' as const },
        { aftercare: 'fact-1', seen: 'page' as const },
        // A source without a name is none.
        { seen: 'page' as const },
      ],
    }));
    const evidence = {
      ...base,
      cautions,
      reversibility: new Map([['sleeve', entry]]),
      studies: new Map([['study-b', makeStudy('study-b')]]),
    };
    const scene = await sceneFor('en', { comparison, evidence });
    const numbers = numberStudies(scene, []);
    const points = otherSources(scene, numbers).points.map(({ markup }) => plain(markup));
    expect(points).toEqual([
      'You have acid that rises into your food pipe (reflux). For a sleeve: example.org/c.',
      'On whether a sleeve can be undone: Studies 1 and 2. example.org/a.',
    ]);
    // Where a language writes so the studies go on with a small letter; an address stays as it is.
    const spanish = otherSources(await sceneFor('es', { comparison, evidence }), numbers);
    expect(spanish.points.map(({ markup }) => plain(markup))).toEqual([
      expect.stringMatching(/: example\.org\/c\.$/),
      'Sobre si hay vuelta atrás después de una manga gástrica: estudios 1 y 2. example.org/a.',
    ]);
    // A study that the evidence does not hold is cited by its id, so that it cannot go unseen.
    expect(numbers.citations().map(({ markup }) => plain(markup))).toEqual([
      'Example A. (2020). An example. J Ex 2020. example.org.',
      'study-c',
    ]);
    expect(rowsOf(clinicianCautions(scene))[1]?.[2]).toContain('[example.org, fact-1]');
  });

  it('says nothing of an option or a caution whose sources nobody has read', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [refluxHit] });
    const unread = { point: 'x', url: 'https://example.org/a', seen: 'memory' as const };
    const base = evidenceFor(comparison);
    const undo: Reversibility['undo'] = {
      ...entry.undo,
      weight_after: { statement: 'x', basis: 'not-known' },
      data: [],
    };
    const evidence = {
      ...base,
      cautions: base.cautions.map((caution) => ({ ...caution, sources: [unread] })),
      reversibility: new Map([['sleeve', { ...entry, undo, sources: [unread] }]]),
    };
    const scene = await sceneFor('en', { comparison, evidence });
    expect(otherSources(scene, numberStudies(scene, [])).points).toEqual([]);
  });
});

describe('a share without a count', () => {
  it('says in the sources that the size is not stated', async () => {
    const comparison = makeComparison(fiveOptions);
    const known = shareCell({ option: 'sleeve', outcome: 'reflux', asked: { months: 60 } }, [31, 100]);
    const lead = without(known.lead, 'n');
    const cell: Cell = { ...known, lead, value: { kind: 'proportion', value: 0.31 } };
    const topics = comparison.topics.map((topic) =>
      topic.id === 'living-with-it'
        ? {
            ...topic,
            rows: [
              {
                outcome: 'reflux',
                asked: { months: 60 },
                cells: [cell, unknownCell({ ...known, option: 'bypass' })],
              },
            ],
          }
        : topic,
    );
    const base = evidenceFor(comparison);
    const record = makeRecord({
      id: lead.record,
      value: { percent: 31 },
      people: { indication: 'first-operation', age: { low: 18 }, bmi: { high: 60 }, diabetes: 'none' },
    });
    const evidence = { ...base, records: [...base.records.filter(({ id }) => id !== record.id), record] };
    const scene = await sceneFor('en', { comparison: { ...comparison, topics }, evidence });
    const row = viewSources(scene).topics[0]?.rows.find(({ name }) => name.markup === 'Reflux, 5\u00a0years');
    const said = row?.lines.map(({ words }) => plain(words.markup)).join(' ');
    expect(said).toContain('31 out of 100. Number of people not stated.');
    expect(said).toContain('BMI: 60 or less. Age: 18 or more. None had diabetes.');
  });
});
