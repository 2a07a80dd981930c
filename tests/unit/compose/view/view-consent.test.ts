import { describe, expect, it } from 'vitest';

import { viewConsent } from '../../../../src/compose/view/view-consent.ts';
import type { ConsentView } from '../../../../src/compose/view/view-consent.ts';
import type { Case } from '../../../../src/model/case.ts';
import { topicCells } from '../../../../src/compose/view/cells-shown.ts';
import { viewChoices } from '../../../../src/compose/view/view-choices.ts';
import type { Cell } from '../../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import { makeCase, makeRecord } from '../../../helpers/compare-inputs.ts';
import { fiveOptions, makeComparison, shareCell, unknownCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function consentOf(
  chosen: string,
  changes: Partial<Pick<Case, 'interpreter' | 'plan'>> = {},
): Promise<ConsentView> {
  const input = makeCase({ decision: { options: fiveOptions, chosen } });
  return viewConsent(await sceneFor('en', { case: { ...input, ...changes } }));
}

const plain = (markup: string | undefined): string =>
  (markup ?? '').replace(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');
const pointsOf = (view: ConsentView): readonly string[] =>
  view.talk.map(({ lines }) => lines.map(({ words }) => words.markup).join('\n'));
const pointOf = (view: ConsentView, start: string): string =>
  pointsOf(view)
    .map(plain)
    .find((words) => words.startsWith(start)) ?? '';
const factOf = (view: ConsentView, label: string): string | undefined =>
  view.facts.find((fact) => fact.label === label)?.value.replaceAll('\u00a0', ' ');

describe('the record of the talk', () => {
  it('goes on with the first reason of the surgeon after the colon as the language writes it', async () => {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const reasons = [{ code: 'fewer-early-problems' as const }, { code: 'fewer-vitamins' as const }];
    const decision = { ...input.decision, leaning: { option: 'sleeve', reasons } };
    const advice = async (tag: string): Promise<string> =>
      pointsOf(viewConsent(await sceneFor(tag, { case: { ...input, decision } })))
        .map(plain)
        .join('\n');
    expect(await advice('fr')).toMatch(/penche aussi pour une sleeve : il peut y avoir .*\. [\p{Lu}]/u);
    expect(await advice('ru')).toContain('к варианту «рукавная резекция»: в первый месяц');
    expect(await advice('en')).toMatch(/leans to a sleeve too: [\p{Lu}]/u);
  });

  it('names the other choices and what happens without treatment', async () => {
    const view = await consentOf('sleeve');
    expect(pointOf(view, 'My other choices.')).toBe(
      'My other choices. We also spoke of a gastric bypass, stomach folding, semaglutide, and no new treatment: what each can do, and what can go wrong.',
    );
    expect(pointOf(view, 'What happens if I do nothing new.')).toContain('256 lb (116 kg)');
  });

  it('says the weight with its time, each harm out of 1,000 with its time, and ties both to their records', async () => {
    const view = await consentOf('sleeve');
    expect(pointOf(view, 'What it can do for me.')).toContain(
      'Weight after 5 years, on average: 206 lb (93 kg).',
    );
    const early = pointsOf(view).find((markup) => markup.includes('What can go wrong at first.'));
    expect(plain(early)).toMatch(/^What can go wrong at first\. Counted in the first month\.\n/);
    expect(plain(early)).toMatch(/\nA leak: in \d+ out of 1,000 people\./);
    expect(early).toMatch(/<fig cell="sleeve\/leak\/30d" records="sleeve\.leak\.study-a">/);
    expect(plain(early)).not.toMatch(/out of 100\b/);
    expect(pointOf(view, 'What can go wrong later.')).toContain('Reflux, after 5 years: 310 out of 1,000.');
    const meanings = view.meanings.map(({ markup }) => plain(markup));
    expect(meanings.some((text) => text.startsWith('A leak: What is in the stomach'))).toBe(true);
    expect(meanings.some((text) => text.startsWith('Reflux: '))).toBe(true);
  });

  it('says that nothing is known where nothing is', async () => {
    const view = await consentOf('plication');
    expect(pointOf(view, 'What it can do for me.')).toBe(
      'What it can do for me. No study tells how weight changes for people like you.',
    );
  });

  it('says what undoing takes in the words of the comparison', async () => {
    expect(pointOf(await consentOf('sleeve'), 'Can it be undone?')).toMatch(
      /^Can it be undone\? Partly\. The part /,
    );
  });

  it('asks for an interpreter’s signature only where one is needed, and names the language', async () => {
    expect((await consentOf('sleeve')).interpreter).toBeNull();
    const spanish = await consentOf('sleeve', { interpreter: { needed: true, language: 'es' } });
    expect(spanish.interpreter).toContain('Spanish');
    expect(factOf(spanish, 'Language of the talk')).toBe('Spanish, with an interpreter');
    expect((await consentOf('sleeve', { interpreter: { needed: true } })).interpreter).not.toContain(
      'undefined',
    );
  });

  it('has the panel of an option under study, and of no other', async () => {
    expect((await consentOf('plication')).study).toHaveLength(1);
    expect((await consentOf('sleeve')).study).toEqual([]);
  });

  it('names the date of the operation, or that there is none yet', async () => {
    expect(factOf(await consentOf('sleeve'), 'Planned for')).toBe('not set yet');
    const plan = { surgeon: 'surgeon-1', operation_date: '2027-01-14' };
    expect(factOf(await consentOf('sleeve', { plan }), 'Planned for')).toBe('January 14, 2027');
  });

  it('names the problems of which nobody knows how often, and says where there is no list of any', async () => {
    const view = await consentOf('sleeve');
    expect(pointOf(view, 'What can go wrong later.')).toContain(
      'No study tells how often this happens to people like you: “An ulcer”.',
    );
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'no-operation' } }),
    });
    const never = (cell: Cell): Cell => {
      if (cell.option !== 'no-operation') return cell;
      const { id, option, outcome, asked, setAside } = cell;
      return { id, option, outcome, asked, setAside, state: 'not-possible' };
    };
    const inRow = <T extends { readonly cells: readonly Cell[] }>(row: T): T => ({
      ...row,
      cells: row.cells.map(never),
    });
    const topics = scene.comparison.topics.map((topic) => ({
      ...topic,
      picture: topic.picture === null ? null : inRow(topic.picture),
      rows: topic.rows.map(inRow),
    }));
    const nothing = { ...scene, comparison: { ...scene.comparison, topics } };
    expect(pointOf(viewConsent(nothing), 'What can go wrong at first.')).toBe(
      'What can go wrong at first. We have no list of these for this choice. Ask your surgeon.',
    );
    const other = { ...nothing, case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }) };
    expect(plain(viewConsent(other).declined.at(-1)?.markup)).toMatch(
      /^No new treatment\. Weight after 5 years, on average: [^:]* It is not known how your own weight and health will change\.$/,
    );
  });

  it('names each choice that was not taken, with its weight and its serious problems', async () => {
    const declined = (await consentOf('sleeve')).declined.map(({ markup }) => plain(markup));
    expect(declined.map((line) => line.split('.')[0])).toEqual([
      'Gastric bypass',
      'Stomach folding',
      'Semaglutide',
      'No new treatment',
    ]);
    expect(declined[0]).toMatch(/^Gastric bypass\. Weight after 5 years, on average: \d+ lb/);
    expect(declined[0]).toMatch(/A serious problem, in the first month: \d+ out of 1,000/);
    expect(declined[1]).toContain('No study tells how weight changes for people like you.');
  });

  it('ties the answer that a choice is not wanted: its last words alone would say that it is', async () => {
    expect((await consentOf('sleeve')).refusal).toBe('I\u00a0do\u00a0not\u00a0want\u00a0it');
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    expect(viewConsent(await sceneFor('es', { case: input })).refusal).toBe('No\u00a0lo\u00a0quiero');
  });

  it('says the dose of a choice that was not taken once where all its figures are of one, else beside each', async () => {
    const place = { option: 'semaglutide', outcome: 'pancreatitis', asked: { months: 12 } };
    const comparison = makeComparison(fiveOptions);
    const [topic, ...topics] = comparison.topics;
    if (topic === undefined) throw new Error('no topic');
    const cells = [shareCell(place, [2, 1000]), shareCell({ ...place, outcome: 'nausea' }, [400, 1000])];
    const rows = cells.map((cell) => ({ outcome: cell.outcome, asked: cell.asked, cells: [cell] }));
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
      comparison: { ...comparison, topics: [{ ...topic, rows: [...topic.rows, ...rows] }, ...topics] },
    });
    const sayWith = (last: number): string => {
      const doseFor = (id: string): number => (id === cells[1]?.lead.record ? last : 2.4);
      const records = new Map(
        [...scene.records.keys(), ...cells.map(({ lead }) => lead.record)].map(
          (id): [string, EvidenceRecord] => [
            id,
            makeRecord({ id, dose: { mg: [doseFor(id)], per: 'week' } }),
          ],
        ),
      );
      return plain(viewConsent({ ...scene, records }).declined[2]?.markup);
    };
    expect(sayWith(2.4)).toMatch(/^Semaglutide\. Dose: 2\.4 mg once a week\. .*400 out of 1,000 people\./);
    expect(sayWith(2.4).match(/once a week/g)).toHaveLength(1);
    expect(sayWith(1)).toMatch(/^Semaglutide\. (?!Dose).*2\.4 mg once a week.*1 mg once a week/);
  });

  it('says of each choice that was not taken what came later and that it stays, and what came without treatment', async () => {
    const place = { option: 'no-operation', outcome: 'new-diabetes', asked: { months: 120 } };
    const comparison = makeComparison(fiveOptions, { furtherHarms: [shareCell(place, [60, 300])] });
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const view = viewConsent(await sceneFor('en', { case: input, comparison }));
    const [bypass, folding, , nothing] = view.declined.map(({ markup }) => plain(markup));
    expect(bypass).toContain('Another operation, after 5 years: ');
    expect(bypass).toMatch(/It can(not be undone| only be undone in part)\./);
    expect(folding).toContain('It is still under study.');
    const counted = 'New diabetes, after 10 years: 200 out of 1,000.';
    expect(nothing).toContain(`${counted} It is not known how your own weight and health will change.`);
    expect(pointOf(view, 'What happens if I do nothing new.')).toContain(counted);
    expect(view.meanings.some(({ markup }) => plain(markup).startsWith('New diabetes: '))).toBe(true);
  });

  it('names in the words of the page the option that the surgeon leans to where another was chosen', async () => {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const leaning = { option: 'semaglutide', reasons: [] };
    const decision = { ...input.decision, leaning };
    const view = viewConsent(await sceneFor('es', { case: { ...input, decision } }));
    expect(pointOf(view, 'Qué piensa mi equipo')).toContain('se inclina por la semaglutida. Usted eligió');
  });

  it('asks who may take part only where something is done to the body', async () => {
    const asked = (await consentOf('sleeve')).yes;
    expect(asked[0]).toBe('My wish for the hospital form: a sleeve.');
    expect(asked).toHaveLength(6);
    expect(asked.join(' ')).toMatch(
      /blood .*Doctors in training.*People in training.*private parts.*Another surgeon/i,
    );
    expect((await consentOf('semaglutide')).yes).toEqual(['My wish for the hospital form: semaglutide.']);
  });

  it('says that nothing was written down where a case says nothing of what matters and the surgeon nothing of a choice', async () => {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const decision = { ...input.decision, matters_most: [], leaning: null, advised_against: [] };
    const view = viewConsent(await sceneFor('en', { case: { ...input, decision } }));
    expect(pointOf(view, 'What matters to me.')).toContain('Nobody has written down yet');
    expect(pointOf(view, 'What my surgeon thinks.')).toContain('has not written down which choice is best');
  });

  it('names what else can go wrong, with what the names mean, and nothing that has a figure', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const dumping = makeRecord({ outcome: 'dumping', value: { percent: 9 } });
    const evidence = { ...scene.evidence, recordsByOption: new Map([['sleeve', [dumping]]]) };
    const view = viewConsent({ ...scene, evidence });
    expect(pointOf(view, 'What else can go wrong.').split('\n').slice(1)).toEqual([
      'In the first month: “Back in hospital”, “Any infection”, and “A deep infection”. We found no study that counted this.',
      'Later: “Dumping”. We found no study that counted this.',
    ]);
    expect(pointOf(view, 'What can come slowly.').split('\n')).toEqual([
      'What can come slowly. Weight can come back. Each study counts in its own way how many people this happens to, so we give no number.',
      'Too few vitamins can harm your nerves. We have no number for that.',
    ]);
    expect(view.meanings.some(({ markup }) => plain(markup).startsWith('Dumping: '))).toBe(true);
    expect(pointOf(await consentOf('no-operation'), 'What else can go wrong.')).toBe('');
  });

  it('says the figure of a harm that no topic has room for, in place of a cell that knows none', async () => {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const place = { option: 'sleeve', outcome: 'readmission', asked: { days: 30 } };
    const late = { option: 'sleeve', outcome: 'gallstones', asked: { months: 24 } };
    const furtherHarms = [shareCell(place, [60, 2000]), shareCell(late, [9, 100])];
    const comparison = makeComparison(fiveOptions, { furtherHarms });
    const scene = await sceneFor('en', { case: input, comparison });
    const gap = unknownCell({ ...late, asked: { months: 60 } });
    const topics = scene.comparison.topics.map((topic) =>
      topic.id === 'later-years'
        ? { ...topic, rows: [...topic.rows, { outcome: 'gallstones', asked: gap.asked, cells: [gap] }] }
        : topic,
    );
    const view = viewConsent({ ...scene, comparison: { ...scene.comparison, topics } });
    expect(pointOf(view, 'What can go wrong at first.')).toContain(
      'Back in hospital: in 30 out of 1,000 people.',
    );
    const later = pointOf(view, 'What can go wrong later.');
    expect(later).toContain('Gallstones, after 2 years: 90 out of 1,000.');
    expect(later).not.toContain('“Gallstones”');
    expect(pointOf(view, 'What else can go wrong.')).not.toContain('“Back in hospital”');
  });

  it('says of which time nobody knows how often, where another time has its figure', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const early = shareCell({ option: 'sleeve', outcome: 'ulcer', asked: { days: 30 } }, [9, 1000]);
    const topics = scene.comparison.topics.map((topic) =>
      topic.id === 'first-month'
        ? { ...topic, rows: [...topic.rows, { outcome: 'ulcer', asked: early.asked, cells: [early] }] }
        : topic,
    );
    const view = viewConsent({ ...scene, comparison: { ...scene.comparison, topics } });
    expect(pointOf(view, 'What can go wrong at first.')).toContain('An ulcer: in 9 out of 1,000 people.');
    expect(pointOf(view, 'What can go wrong later.')).toContain(
      'No study tells how often this happens to people like you: “An ulcer, within 5 years”.',
    );
  });

  it('says a figure once that a picture draws and a table shows', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const topics = scene.comparison.topics.map((topic) => {
      const [row] = topic.rows;
      return topic.id !== 'first-month' || row === undefined
        ? topic
        : { ...topic, picture: { ...row, denominator: 1000 as const } };
    });
    const drawn = { ...scene, comparison: { ...scene.comparison, topics } };
    const lines = pointOf(viewConsent(drawn), 'What can go wrong at first.').split('\n');
    expect(lines.length).toBeGreaterThan(1);
    expect(new Set(lines).size).toBe(lines.length);
  });

  it('has room for whoever led the talk and for a witness, and for a parent of a person under age', async () => {
    expect((await consentOf('sleeve')).signers).toHaveLength(5);
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const signersAt = (age: number): readonly string[] => {
      const person = { ...scene.comparison.person, age };
      return viewConsent({ ...scene, comparison: { ...scene.comparison, person } }).signers;
    };
    expect(signersAt(18)).toHaveLength(5);
    expect(signersAt(17)[1]).toMatch(/^Parent or guardian/);
  });

  it('begins the language of the talk with a capital as a value of its own, and small within a Spanish sentence', async () => {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const interpreter = { needed: true, language: 'en' };
    const view = viewConsent(await sceneFor('es', { case: { ...input, interpreter } }));
    expect(factOf(view, 'Idioma de la conversación')).toBe('Inglés, con intérprete');
    expect(view.interpreter).toContain('y el inglés');
  });
});

describe('how sure a figure is', () => {
  /** The scene with the record behind one figure changed. */
  async function sceneWith(
    record: string,
    change: { readonly certainty?: string; readonly new_only?: true },
  ) {
    const input = makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } });
    const scene = await sceneFor('en', { case: input });
    const old = scene.records.get(record);
    if (old === undefined) throw new Error(`no record ${record}`);
    const records = new Map([...scene.records, [record, { ...old, ...change } as typeof old]]);
    return { ...scene, records };
  }

  it('says beside a figure of new cases alone that it counts nobody who had it before', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const reflux = topicCells(scene.comparison).find(
      ({ cell }) => cell.option === 'sleeve' && cell.outcome === 'reflux' && cell.state === 'known',
    )?.cell;
    if (reflux?.state !== 'known') throw new Error('no reflux');
    const said = 'This counts only people who did not have it before.';
    expect(pointOf(viewConsent(scene), 'What can go wrong later.')).not.toContain(said);
    const flagged = await sceneWith(reflux.lead.record, { new_only: true });
    expect(pointOf(viewConsent(flagged), 'What can go wrong later.')).toContain(`310 out of 1,000. ${said}`);
  });

  it('says a remark that holds for all figures of a point once below them, and any other beside its figure', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const early = topicCells(scene.comparison).flatMap(({ cell }) =>
      cell.option === 'sleeve' && cell.state === 'known' && cell.asked.days === 30 ? [cell] : [],
    );
    expect(early.length).toBeGreaterThan(2);
    const flaggedFor = (cells: typeof early): string => {
      const flag = ({ lead }: (typeof early)[number]): [string, EvidenceRecord] => {
        const old = scene.records.get(lead.record);
        if (old === undefined) throw new Error(`no record ${lead.record}`);
        return [lead.record, { ...old, new_only: true }];
      };
      const records = new Map([...scene.records, ...cells.map(flag)]);
      return pointOf(viewConsent({ ...scene, records }), 'What can go wrong at first.');
    };
    const said = 'This counts only people who did not have it before.';
    expect(
      flaggedFor(early)
        .split('\n')
        .filter((line) => line.includes(said)),
    ).toEqual([`For each of these numbers: ${said}`]);
    const [first] = early;
    const some = flaggedFor(first === undefined ? [] : [first]);
    expect(some).not.toContain('For each of these numbers');
    expect(some).toMatch(new RegExp(`out of 1,000 people\\. ${said}`));
  });

  it('is a mark beside a harm, a short weight and a short count, and absent where the figure is sure', async () => {
    const scene = await sceneFor('en', {
      case: makeCase({ decision: { options: fiveOptions, chosen: 'sleeve' } }),
    });
    const weak = (cell: Cell): Cell =>
      cell.state === 'known' ? { ...cell, lead: { ...cell.lead, certainty: 'low' } } : cell;
    const inRow = <T extends { readonly cells: readonly Cell[] }>(row: T): T => ({
      ...row,
      cells: row.cells.map(weak),
    });
    const { topics, weight } = scene.comparison;
    const comparison = {
      ...scene.comparison,
      topics: topics.map((topic) => ({
        ...topic,
        picture: topic.picture === null ? null : inRow(topic.picture),
        rows: topic.rows.map(inRow),
      })),
      weight: { ...weight, main: inRow(weight.main), over: weight.over.map(inRow) },
    };
    const unsure = { ...scene, comparison };
    const shortOf = (one: typeof scene): string =>
      viewChoices(one)
        .short.rows.flatMap(({ cells }) =>
          cells.flatMap(({ lines }) => lines.map(({ words }) => plain(words.markup))),
        )
        .join('\n');
    const later = pointOf(viewConsent(unsure), 'What can go wrong later.');
    expect(later).toContain('310 out of 1,000 (not very sure).');
    expect(shortOf(unsure)).toMatch(/lb \(\d+ kg\) after 5 years \(not very sure\)/);
    expect(shortOf(unsure)).toMatch(/out of 1,000 \(not very sure\)/);
    expect(`${shortOf(scene)}${pointOf(viewConsent(scene), 'What can go wrong later.')}`).not.toContain(
      'sure',
    );
  });
});
