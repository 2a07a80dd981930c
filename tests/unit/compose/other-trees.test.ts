import { beforeAll, describe, expect, it } from 'vitest';

import { composeDocument } from '../../../src/compose/index.ts';
import type { ComposeInput, Templates } from '../../../src/compose/index.ts';
import type { ComparisonTable } from '../../../src/model/comparison.ts';
import type { DocumentTree } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { labelText } from '../../../src/model/text-piece.ts';
import { makeCase, makeClinic, makeRecord, makeStudy } from '../../helpers/compare-inputs.ts';
import {
  blocksOfType,
  evidenceFor,
  fiveOptions,
  makeComparison,
  practiceHit,
  realLocale,
  realTemplates,
  refluxHit,
  tenOptions,
  textOf,
  topicNamed,
  wordsOf,
} from '../../helpers/compose-inputs.ts';

let templates: Templates;
let english: Locale;
let spanish: Locale;

beforeAll(async () => {
  templates = await realTemplates();
  english = await realLocale('en');
  spanish = await realLocale('es');
});

function compose(
  kind: ComposeInput['kind'],
  comparison: ComparisonTable,
  changes: Partial<ComposeInput> = {},
): DocumentTree {
  const input: ComposeInput = {
    kind,
    case: makeCase({ decision: { options: fiveOptions } }),
    clinic: makeClinic(),
    evidence: evidenceFor(comparison),
    comparison,
    aftercare: null,
    locale: english,
    state: 'example',
    date: '2026-11-25',
    documentId: 'T-1-S',
    templates,
    ...changes,
  };
  const result = composeDocument(input);
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

const loose = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('every document without a cover', () => {
  it.each([
    ['questions', 'Harbour Lane Clinic · For Ilsa Marchetti-Boone'],
    ['sources', 'Harbour Lane Clinic · For Ilsa Marchetti-Boone'],
    ['clinician-sheet', 'Harbour Lane Clinic'],
  ] as const)('says under its title whose it is: %s', (kind, words) => {
    const [title, whose] = compose(kind, makeComparison(fiveOptions)).blocks;
    expect(title).toMatchObject({ type: 'heading', level: 1 });
    expect(whose).toMatchObject({ type: 'paragraph', role: 'small', inlines: [{ value: words }] });
  });
});

describe('the questions', () => {
  const prompts = (tree: DocumentTree): readonly string[] =>
    blocksOfType(tree, 'write-in').map(({ prompt }) =>
      (prompt?.inlines ?? []).map(({ value }) => value).join(''),
    );

  /** Questions under each heading. */
  const grouped = (tree: DocumentTree): Readonly<Record<string, readonly string[]>> => {
    const groups: Record<string, string[]> = {};
    let heading = '';
    for (const block of tree.blocks) {
      if (block.type === 'heading') heading = block.text;
      if (block.type === 'write-in')
        groups[heading] = [...(groups[heading] ?? []), ...prompts({ ...tree, blocks: [block] })];
    }
    return groups;
  };

  it('fit the case: each kind of choice, own health, what is not known, with room to write', () => {
    const file = makeCase({
      health: {
        conditions: ['sleep-apnoea'],
        medicines: ['insulin', 'oral-contraceptive'],
        smoking: 'current',
        pregnancy: { planned_within_months: 12 },
      },
      decision: { options: fiveOptions },
    });
    const tree = compose('questions', makeComparison(fiveOptions, { cautions: [practiceHit] }), {
      case: file,
    });
    const found = grouped(tree);
    expect(found['About each choice']).toEqual([
      'About a sleeve, a gastric bypass, and stomach folding: how many have you done, and how did the people do?',
      'About semaglutide: how long would I take it, what does it cost me, and what if I stop?',
      'About no new treatment: what should I watch for, and when should I come back?',
      'About stomach folding: who checks the study, what is not known, and can I leave it?',
    ]);
    const health = [
      'I may want a baby.',
      'Who will change my diabetes medicines',
      'What do I need for my breathing at night',
      'Does the pill still protect me',
      'How can you help me to stop smoking',
    ];
    expect(found['About my health']).toEqual(health.map((start): unknown => expect.stringContaining(start)));
    expect(found['What my pages tell me to ask']).toEqual([
      'For stomach folding: Ask your surgeon how your BMI changes the risk of this operation.',
    ]);
    const outcome = (code: string): string => english.translator.text(`outcomes.${code}.name`);
    expect(found['About what is not known']).toEqual([
      `About stomach folding and semaglutide: there is no figure for people like me on “${outcome('weight-loss')}” after 5 years. What have you seen yourself?`,
      `About stomach folding, semaglutide, and no new treatment: there is no figure for people like me on “${outcome('reoperation')}” within 5 years. What have you seen yourself?`,
    ]);
    const [general, life, own] = ['About my choices', 'About daily life', 'My own questions'].map(
      (heading) => found[heading]?.length,
    );
    expect([general, life, own]).toEqual([3, 4, 1]);
    const rooms = blocksOfType(tree, 'write-in').map(({ lines }) => lines);
    expect(rooms).toEqual([...Array<number>(rooms.length - 1).fill(1), 4]);
  });

  it('are one for all options of a kind, however many the case has', () => {
    const asked = grouped(compose('questions', makeComparison(tenOptions)))['About each choice'] ?? [];
    const named = (...codes: readonly string[]): string =>
      english.formatter.list(
        codes.map((code) => english.translator.text(`options.${code}.in_text`)),
        'and',
      );
    const operations = ['sleeve', 'bypass', 'one-anastomosis-bypass', 'duodenal-switch', 'band', 'plication'];
    expect(asked.map((words) => words.split(':')[0])).toEqual(
      [
        named(...operations),
        ...['endoscopic-sleeve', 'semaglutide', 'lifestyle', 'no-operation', 'plication'].map((code) =>
          named(code),
        ),
      ].map((options) => `About ${options}`),
    );
  });

  it('stand under small headings, so that a few fill a page', () => {
    const tree = compose('questions', makeComparison(fiveOptions, { cautions: [practiceHit] }));
    const headings = blocksOfType(tree, 'heading').map(({ level, text }) => [level, text]);
    expect(headings).toEqual([
      [1, 'Questions I can ask'],
      [3, 'About my choices'],
      [3, 'About each choice'],
      [3, 'What my pages tell me to ask'],
      [3, 'About what is not known'],
      [3, 'About daily life'],
      [3, 'My own questions'],
    ]);
  });

  it('ask nothing about health, or about what is not known, where the case gives no cause', () => {
    const known = ['sleeve', 'bypass'];
    const tree = compose('questions', makeComparison(known));
    expect(Object.keys(grouped(tree))).toEqual([
      'About my choices',
      'About each choice',
      'About daily life',
      'My own questions',
    ]);
    expect(prompts(tree).join(' ')).not.toMatch(/diabetes|no figure/);
  });

  it('end with the steps of deciding, the last of which says that the mind may change', () => {
    const tree = compose('questions', makeComparison(fiveOptions));
    const last = tree.blocks.at(-1);
    expect(last).toMatchObject({ type: 'topic', question: 'How to decide, step by step' });
    const [steps] = last?.type === 'topic' ? last.blocks : [];
    const items = steps?.type === 'list' && steps.ordered ? steps.items.flat() : [];
    expect(wordsOf({ name: '', origin: '', words: items })).toEqual([
      'Look at every choice, also at changing nothing for now.',
      'Look at the numbers and at what is not known.',
      'Mark what matters most to you.',
      'Talk with people you trust and with your surgeon.',
      'You can say yes, no or not now. You can change your mind up to the last moment.',
    ]);
    expect(items.map(({ duty }) => duty)).toEqual([undefined, undefined, undefined, undefined, 'standard']);
  });
});

describe('the sources', () => {
  it('give each figure its people, design, certainty and study', () => {
    const comparison = makeComparison(fiveOptions);
    const [, bypass] = topicNamed(compose('sources', comparison), 'Gastric bypass').strips[0]?.rows ?? [];
    const row = topicNamed(compose('sources', comparison), 'Sleeve').strips[0]?.rows.find(
      ({ name }) => name === 'A serious problem, in the first month',
    );
    expect(bypass?.name).toBe('A serious problem, in the first month');
    // One small paragraph a figure.
    expect(row?.words.map(({ role }) => role)).toEqual(['small']);
    expect(wordsOf(row).map(loose)).toEqual([
      '24 out of 1,000. Counted: 24 of 1,000. We found no range for it. BMI: 35 to 60. Age: 18 to 65. Group over time; quite sure. Study 1. Other: 1.',
    ]);
  });

  it('give each figure one small paragraph, whatever is said of it', () => {
    const strips = blocksOfType(compose('sources', makeComparison(fiveOptions)), 'topic').flatMap(
      ({ blocks }) => blocks.filter((block) => block.type === 'strip'),
    );
    const roles = strips.flatMap(({ rows }) => rows.map(({ words }) => words.map(({ role }) => role)));
    expect(roles.length).toBeGreaterThan(10);
    for (const role of roles) expect(role).toEqual(['small']);
  });

  it('cite every study in full, in its own language, and say what was not seen of it', () => {
    const comparison = makeComparison(fiveOptions);
    const study = makeStudy('study-a', {
      citation_unseen: ['authors'],
      citation: { year: 2020, title: 'Is it safe?', journal: 'J Ex 1:2', doi: '10.1000/x' },
    });
    const evidence = { ...evidenceFor(comparison), studies: new Map([['study-a', study]]) };
    const tree = compose('sources', comparison, { evidence, locale: spanish });
    const [first] = blocksOfType(tree, 'list')
      .filter(({ ordered }) => ordered)
      .flatMap(({ items }) => items.flat());
    expect(first?.inlines).toEqual([
      { type: 'text', value: 'Is it safe? (2020). J Ex 1:2.', language: 'en' },
      { type: 'text', value: ' doi.org/10.1000/x. Todavía sin confirmar: autores.' },
    ]);
  });

  it('say who made and paid for the figures, in the language of the reader, and when they are read again', () => {
    const comparison = makeComparison(fiveOptions);
    const evidence = evidenceFor(comparison, {
      madeBy: { en: 'the makers', es: 'quienes lo hicieron' },
      paidBy: { en: 'nobody else' },
    });
    const said = (locale: Locale): readonly string[] => {
      const tree = compose('sources', comparison, { evidence, locale });
      const question = locale.translator.text('sources.release_question');
      return loose(topicNamed(tree, question).text).split('\n').slice(1);
    };
    expect(said(english)).toEqual([
      'Collection of figures 2026.11, of November 25, 2026.',
      'It will be checked again by November 25, 2027.',
      'Made by: the makers.',
      'Paid by: nobody else.',
      'This does not replace your surgeon.',
    ]);
    expect(said(spanish)).toEqual([
      expect.stringContaining('2026.11'),
      expect.stringContaining('2027'),
      expect.stringContaining('quienes lo hicieron'),
      // A text that this language lacks stands in the one it has, and is marked as such.
      expect.stringContaining('nobody else'),
      expect.any(String),
    ]);
    const lists = blocksOfType(compose('sources', comparison, { evidence, locale: spanish }), 'topic').at(-1);
    const runs = (lists?.blocks ?? []).flatMap((block) =>
      block.type === 'list' ? block.items.flat().flatMap(({ inlines }) => inlines) : [],
    );
    expect(runs).toContainEqual({ type: 'text', value: 'nobody else', language: 'en' });
    expect(runs.filter(({ value }) => value.includes('quienes'))).not.toContainEqual(
      expect.objectContaining({ language: expect.anything() as unknown }),
    );
  });

  it('print the reason of a clinic that prefers a record, and the sources of cautions', () => {
    const clinic = {
      ...makeClinic(),
      prefer: [{ record: 'sleeve.leak.study-a', reason: { en: 'It is our own register.' } }],
    };
    const comparison = makeComparison(fiveOptions, {
      cautions: [refluxHit, practiceHit],
      notes: ['asian-25', 'pregnant'],
    });
    const evidence = evidenceFor(comparison, { reversibility: new Map() });
    const tree = compose('sources', comparison, { clinic, evidence });
    expect(textOf(tree)).toContain(
      'Record sleeve.leak.study-a. The reason of the clinic: It is our own register.',
    );
    const { text } = topicNamed(tree, 'Where do the points about health and undoing come from?');
    expect(text).toBe(
      [
        'Where do the points about health and undoing come from?',
        'On the BMI from which an operation is advised: Study 2.',
        'You have acid that rises into your food pipe (reflux). For a sleeve: Study 1.',
      ].join('\n'),
    );
  });
});

describe('the clinician sheet', () => {
  const tables = (tree: DocumentTree): readonly (readonly (readonly string[])[])[] =>
    blocksOfType(tree, 'table').map(({ rows }) =>
      rows.map(({ group, cells }) => [
        ...(group === undefined ? [] : [group]),
        ...cells.map((cell) =>
          loose(cell.flatMap(({ inlines }) => inlines.map(({ value }) => value)).join('')),
        ),
      ]),
    );

  it('lists the facts of the case', () => {
    const [facts] = blocksOfType(compose('clinician-sheet', makeComparison(fiveOptions)), 'facts');
    expect(facts?.items.map(({ value }) => loose(labelText(value)))).toEqual([
      'Woman, 45',
      'June 2, 1981',
      '163 cm, 114.5 kg',
      '43.1, standard cut-offs',
      'never',
    ]);
  });

  it('shows each figure exactly, with its record, interval, size and why it leads', () => {
    const [figures] = tables(compose('clinician-sheet', makeComparison(fiveOptions)));
    expect(figures?.slice(0, 3)).toEqual([
      ['Sleeve'],
      ['study-a', 'weight (TWL)', '5 y', '93.4 kg', 'SD 82.0 to 105.0', '4,000', 'cohort 2020', 'size'],
      ['study-a', 'weight (TWL)', '1 y', '80.0 kg', 'SD 82.0 to 105.0', '4,000', 'cohort 2020', 'size'],
    ]);
    const serious = figures?.filter(([, outcome]) => outcome === 'serious problem');
    expect(serious?.map((cells) => cells.slice(2))).toEqual([
      ['≤ 30 d', '24.0/1,000', '–', '1,000', 'cohort 2020', 'size'],
      ['≤ 30 d', '37.0/1,000', '–', '1,000', 'cohort 2020', 'size, 1'],
      ['≤ 30 d', '0 of 212', 'up to 17.2', '212', 'cohort 2020', 'size'],
      ['≤ 30 d', '0.6/1,000', '–', '10,000', 'cohort 2020', 'size'],
    ]);
    const text = loose(textOf(compose('clinician-sheet', makeComparison(fiveOptions))));
    expect(text).toContain(
      'Sleeve. On no patient page: serious problem ≤ 30 d 18.0 to 31.0/1,000 (study-b).',
    );
  });

  it('names cautions with their basis, what needs confirming, and what the clinic has struck', () => {
    const clinic = { ...makeClinic(), cautions: { 'reflux-sleeve': 'struck' as const } };
    const [, cautions] = tables(
      compose('clinician-sheet', makeComparison(fiveOptions, { cautions: [refluxHit, practiceHit] }), {
        clinic,
      }),
    );
    expect(cautions?.map((cells) => cells.slice(0, 2))).toEqual([
      ['Extra risk'],
      ['reflux-sleeve: Sleeve', 'strong'],
      ['bmi-very-high-others: Stomach folding', 'weak'],
    ]);
    expect(cautions?.[1]?.[2]).toMatch(/^Struck by this clinic; not on the patient pages\. After 10 years/);
    expect(cautions?.[2]?.[2]).toBe('Needs confirming. A statement for clinicians. [usual practice]');
  });

  it('keeps what usual practice says in the language of the evidence', () => {
    const tree = compose('clinician-sheet', makeComparison(fiveOptions, { cautions: [practiceHit] }), {
      locale: spanish,
    });
    const runs = blocksOfType(tree, 'table').flatMap(({ rows }) =>
      rows.flatMap(({ cells }) => cells.flat().flatMap(({ inlines }) => inlines)),
    );
    expect(runs).toContainEqual({
      type: 'text',
      value: 'A statement for clinicians.',
      language: 'en',
      statements: ['caution:bmi-very-high-others'],
    });
  });

  it('says of every record set aside why, a reason once, and what the patient pages call not known', () => {
    const comparison = makeComparison(fiveOptions);
    const aside = (id: string): { record: string; reason: { code: 'indication-mixed' } } => ({
      record: id,
      reason: { code: 'indication-mixed' },
    });
    const topics = comparison.topics.map((topic) => ({
      ...topic,
      rows: topic.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell) =>
          cell.option === 'bypass'
            ? { ...cell, setAside: ['30d.a', '30d.b'].map((end) => aside(`bypass.${cell.outcome}.${end}`)) }
            : cell,
        ),
      })),
    }));
    const text = loose(textOf(compose('clinician-sheet', { ...comparison, topics })));
    expect(text).toContain(
      'Gastric bypass. Not known: leak, clot, reoperation 30 d, reflux (only counted in another way).',
    );
    expect(text.match(/first and second operations mixed/g)).toHaveLength(1);
    expect(text).toMatch(
      /first and second operations mixed\s+Gastric bypass: a \(death, leak, bleeding, clot/,
    );
  });

  it('says what is open for a final, also on an example', () => {
    const text = textOf(compose('clinician-sheet', makeComparison(fiveOptions, { cautions: [practiceHit] })));
    expect(text).toContain('What is still open?');
    expect(text).toContain('Nobody has yet approved the clinic’s profile.'.replace('’', "'"));
    expect(text).toContain('1 warning comes from usual practice only.');
  });

  it('tells of earlier operations, pregnancy, leaning and what matters', () => {
    const file = makeCase({
      health: {
        conditions: ['reflux'],
        pregnancy: { planned_within_months: 12 },
        earlier_operations: [
          {
            operation: 'band',
            date: '2009-06',
            weight_before: '108 kg',
            lowest_weight: '70 kg',
            trouble: 'slippage',
            status: 'in-place',
          },
        ],
      },
      decision: {
        options: fiveOptions,
        matters_most: [{ code: 'keep-options-open' }],
        leaning: { option: 'sleeve', reasons: [{ code: 'can-be-undone' }] },
      },
    });
    const tree = compose('clinician-sheet', makeComparison(fiveOptions), { case: file });
    const text = loose(textOf(tree));
    expect(text).toContain('planned within 12 months');
    expect(text).toContain(
      'Stomach band, June 2009, in place, 108.0 kg before it, lowest 70.0 kg, trouble: slippage.',
    );
    expect(text).toContain('What matters most to this person: “I want to be able to change my mind later.”');
    expect(text).toContain('Dr. A. Example leans to: a sleeve. It can be undone.');
  });

  it('marks figures whose BMI was assumed, and explains the mark', () => {
    const comparison = makeComparison(fiveOptions);
    const topics = comparison.topics.map((topic) => ({
      ...topic,
      rows: topic.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell) =>
          cell.state === 'known' ? { ...cell, lead: { ...cell.lead, bmiBasis: 'assumed' as const } } : cell,
        ),
      })),
    }));
    const text = textOf(compose('clinician-sheet', { ...comparison, topics }));
    expect(text).toContain('size*');
    expect(text).toContain('* BMI assumed:');
    expect(textOf(compose('clinician-sheet', comparison))).not.toContain('BMI assumed');
  });
});

describe('a figure with a published interval', () => {
  it('says how sure it is in the sources and on the clinician sheet', () => {
    const comparison = makeComparison(fiveOptions);
    const topics = comparison.topics.map((topic) => ({
      ...topic,
      rows: topic.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell) =>
          cell.id === 'bypass/bleeding/30d' && cell.state === 'known' && cell.value.kind === 'proportion'
            ? {
                ...cell,
                value: {
                  ...cell.value,
                  interval: { low: 0.0102, high: 0.0207, basis: 'published' as const },
                },
              }
            : cell,
        ),
      })),
    }));
    const record = makeRecord({
      id: 'bypass.bleeding.study-a',
      option: 'bypass',
      people: { indication: 'first-operation', bmi: { mean: 46.04 }, diabetes: 'all', group: 'over-65' },
    });
    const base = evidenceFor(comparison);
    const evidence = { ...base, records: [...base.records.filter(({ id }) => id !== record.id), record] };
    const sources = topicNamed(compose('sources', { ...comparison, topics }, { evidence }), 'Gastric bypass')
      .strips[0]?.rows;
    const row = sources?.find(({ name }) => name === 'Bleeding, in the first month');
    expect(wordsOf(row).map(loose).join(' ')).toContain(
      'Could be 10 to 21 out of 1,000. BMI: 46 on average. Age: not stated. Special group: people aged 65 or older. All had diabetes.',
    );
    expect(loose(textOf(compose('clinician-sheet', { ...comparison, topics }, { evidence })))).toContain(
      '10.2 to 20.7†',
    );
  });
});
