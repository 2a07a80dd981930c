import { describe, expect, it } from 'vitest';

import { escapeText } from '../../../../src/compose/markup/escape-text.ts';
import { createNotes } from '../../../../src/compose/view/notes.ts';
import { lazyView } from '../../../../src/compose/view/lazy-view.ts';
import { viewAsks } from '../../../../src/compose/view/view-asks.ts';
import { viewHealth } from '../../../../src/compose/view/view-health.ts';
import { viewNext } from '../../../../src/compose/view/view-next.ts';
import { viewOpen } from '../../../../src/compose/view/view-open.ts';
import { viewOpinion } from '../../../../src/compose/view/view-opinion.ts';
import type { OpinionView } from '../../../../src/compose/view/view-opinion.ts';
import { viewStudies } from '../../../../src/compose/view/view-study.ts';
import { viewUndo } from '../../../../src/compose/view/view-undo.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import { ownWords } from '../../../../src/compose/view/view-matters.ts';
import { freeText, runIn } from '../../../../src/compose/view/words.ts';
import type { CautionHit, IndicationNote, OptionColumn, Topic } from '../../../../src/model/comparison.ts';
import type { EvidenceBase } from '../../../../src/model/evidence.ts';
import { makeCase, makeClinic, readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveOptions,
  makeComparison,
  practiceHit,
  realLocale,
  shareCell,
  topicsOf,
} from '../../../helpers/compose-inputs.ts';
import type { Row } from '../../../../src/compose/view/shared-shapes.ts';
import { reviewOf } from '../../../helpers/words-review.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain } from '../../../helpers/read-tables.ts';

const notes: { readonly [K in IndicationNote]: K } = {
  'under-35': 'under-35',
  'under-30': 'under-30',
  'asian-27-5': 'asian-27-5',
  'asian-25': 'asian-25',
  'under-18-5': 'under-18-5',
  adolescent: 'adolescent',
  pregnant: 'pregnant',
  'low-after-operation': 'low-after-operation',
};

describe.each(['en', 'es'])('notes on thresholds in %s', (tag) => {
  it('have words for every one', async () => {
    const comparison = makeComparison(fiveOptions, { notes: Object.values(notes) });
    const lines = viewHealth(await sceneFor(tag, { comparison })).flatMap((callout) => callout.lines);
    expect(lines).toHaveLength(Object.keys(notes).length);
    expect(new Set(lines.map(({ words }) => words.markup)).size).toBe(lines.length);
  });
});

describe('causes of cautions', () => {
  it('are sentences for conditions, medicines, the past, and the rest', async () => {
    const hit = (trigger: string): typeof practiceHit => ({ ...practiceHit, triggers: [trigger] });
    const triggers = [
      'medicine:insulin',
      'history:pancreatitis',
      'smoking:current',
      'pregnancy:planned',
      'age',
      'mystery',
    ];
    const comparison = makeComparison(fiveOptions, { cautions: triggers.map(hit) });
    const lines = viewHealth(await sceneFor('en', { comparison })).flatMap((callout) => callout.lines);
    expect(lines.map(({ words }) => plain(words.markup).split(' For ')[0])).toEqual([
      'You take insulin.',
      'You have had an inflamed pancreas, a gland behind the stomach.',
      'You smoke.',
      'You plan to get pregnant.',
      'Your age matters here.',
      // A cause without words is left out; the caution itself is not.
      '',
    ]);
  });
});

describe('cautions with a part of one cause', () => {
  it('stand together, so that an illness is named once, and one without words stays by itself', async () => {
    const hit = (options: readonly string[], ...triggers: readonly string[]): CautionHit => ({
      ...practiceHit,
      options,
      triggers,
    });
    const cautions = [
      hit(['sleeve'], 'condition:oesophagitis'),
      hit(['bypass'], 'medicine:insulin'),
      hit(['plication'], 'condition:reflux', 'condition:oesophagitis'),
      hit(['semaglutide'], 'condition:reflux'),
      hit(['bypass'], 'unknown:cause'),
      hit(['sleeve'], 'unknown:cause', 'medicine:insulin'),
    ];
    const comparison = makeComparison(fiveOptions, { cautions });
    const lines = viewHealth(await sceneFor('en', { comparison })).flatMap((callout) => callout.lines);
    expect(lines.map(({ words }) => plain(words.markup).replace(/: .*/, '').trim())).toEqual([
      'You have acid that rises into your food pipe (reflux). You have an inflamed food pipe. For a sleeve',
      'For stomach folding',
      'For semaglutide',
      'You take insulin. For a gastric bypass',
      'For a sleeve',
      'For a gastric bypass',
    ]);
  });
});

describe('what an option asks', () => {
  it('marks a stay that comes from studies', async () => {
    const comparison = makeComparison(fiveOptions);
    const [sleeve, ...others] = comparison.options;
    if (sleeve === undefined) throw new Error('no option');
    const known = shareCell({ option: 'sleeve', outcome: 'hospital-stay', asked: {} }, [1, 2]);
    const stay = { ...known, id: 'sleeve/stay', value: { kind: 'amount' as const, value: 2, unit: 'days' } };
    const scene = await sceneFor('en', {
      comparison: { ...comparison, options: [{ ...sleeve, stay }, ...others] },
    });
    const { table, fromClinic } = viewAsks(scene);
    expect(table.rows[0]?.cells[1]?.lines.map(({ words }) => plain(words.markup))).toEqual([
      '2 days',
      'in studies',
    ]);
    expect(fromClinic).toBe(false);
  });
});

/** What is said of each option that can be undone as given. */
async function undoings({
  possible,
  changeTo,
}: Pick<OptionColumn['reversibility'], 'possible' | 'changeTo'>): Promise<readonly string[]> {
  const reversibility = { possible, changeTo, weightAfterKnown: false, goneBefore: [] };
  const options = makeComparison(fiveOptions).options.map((option) => ({ ...option, reversibility }));
  const scene = await sceneFor('en', { comparison: makeComparison(fiveOptions, { options }) });
  const evidence = { ...scene.evidence, options: readShippedEvidence().options };
  const rows = viewUndo({ ...scene, evidence });
  return rows.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' '));
}

describe('undoing', () => {
  it('says what an operation can be changed into, but not itself', async () => {
    const rows = viewUndo(await sceneFor('en'));
    const said = rows.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' '));
    expect(said[0]).toMatch(/^Partly\. .* It can be changed into a gastric bypass or another operation\.$/);
    expect(said[1]).toMatch(/changed into another operation\.$/);
    expect(said[3]).not.toContain('It can be changed into');
    expect(rows[0]?.wayBack).toEqual({ possible: 'partly', alt: 'Sleeve: can it be undone? Partly.' });
  });

  it('says in whom weight was followed where they are not like this person, and only beside a figure', async () => {
    const comparison = makeComparison(fiveOptions);
    const options = comparison.options.map((option) => ({
      ...option,
      reversibility: { ...option.reversibility, weightAfterDiffers: { code: 'no-diabetes-only' } as const },
    }));
    const saidTo = async (changes: Partial<typeof comparison.person>): Promise<string> => {
      const person = { ...comparison.person, ...changes };
      const rows = viewUndo(await sceneFor('en', { comparison: { ...comparison, options, person } }));
      return (rows[3]?.lines ?? []).map(({ words }) => plain(words.markup)).join(' ');
    };
    expect(await saidTo({})).toMatch(/about 6 below the start\. None of these people had diabetes\.$/);
    for (const changes of [{ age: 16 }, { pregnantNow: true }])
      expect(await saidTo(changes)).not.toContain('these people');
  });

  it.each([
    ['a gastric bypass or another operation', 'partly', ['bypass', 'duodenal-switch']],
    ['another operation', 'partly', ['duodenal-switch', 'band']],
    ['a gastric bypass or another treatment', 'partly', ['bypass', 'balloon', 'duodenal-switch']],
  ] as const)('names of these only what is a choice: %s (%s, %j)', async (expected, possible, changeTo) => {
    const [said = ''] = await undoings({ possible, changeTo });
    expect(/It can be changed into (.*)\.$/.exec(said)?.[1]).toBe(expected);
  });

  it.each([
    ['a gastric bypass', ['bypass']],
    ['a gastric bypass or another operation', ['bypass', 'duodenal-switch']],
    ['another operation', ['duodenal-switch', 'sleeve']],
  ] as const)('says once that what cannot be undone can only become %s', async (expected, changeTo) => {
    const [sleeve, bypass] = await undoings({ possible: 'no', changeTo });
    const gone = 'No. The part that is taken out is gone for good.';
    expect(sleeve).toBe(`${gone} A sleeve can only be changed into ${expected}.`);
    // Words of its own say what only a change can do; without them nothing is made up.
    expect(bypass).not.toContain('changed into');
  });
});

describe('undoing after an operation that took something out', () => {
  const undoingAfter = async (goneBefore: readonly string[], tag = 'en'): Promise<readonly Row[]> => {
    const comparison = makeComparison(fiveOptions);
    const options = comparison.options.map((option) =>
      option.code === 'bypass'
        ? { ...option, reversibility: { ...option.reversibility, goneBefore } }
        : option,
    );
    return viewUndo(await sceneFor(tag, { comparison: { ...comparison, options } }));
  };

  it('says in the first lines that this stays gone, and stands on the row of that operation', async () => {
    const rows = await undoingAfter(['sleeve']);
    const said = rows.map(({ lines }) => lines[0]?.words.markup ?? '');
    const sentence = 'The part of your stomach that an earlier operation took out stays gone.';
    expect(said.map((markup) => plain(markup).endsWith(sentence))).toEqual([
      false,
      true,
      false,
      false,
      false,
    ]);
    expect(said[1]).toContain('undo:sleeve');
    const [, spanish] = await undoingAfter(['sleeve'], 'es');
    expect(plain(spanish?.lines[0]?.words.markup ?? '')).toMatch(/operación anterior no vuelve\.$/);
  });

  it('says nothing of it where nothing was taken out', async () => {
    const rows = await undoingAfter([]);
    expect(
      rows.flatMap(({ lines }) => lines).filter(({ words }) => words.markup.includes('stays gone')),
    ).toEqual([]);
  });
});

describe('undoing for good', () => {
  it('says nothing of weight where nothing can be undone and nothing was measured', async () => {
    const comparison = makeComparison(fiveOptions);
    const undoing = async (possible: 'no' | 'partly', weightAfterKnown: boolean): Promise<string> => {
      const options = comparison.options.map((option) => ({
        ...option,
        reversibility: { possible, changeTo: [], weightAfterKnown, goneBefore: [] },
      }));
      const [sleeve] = viewUndo(await sceneFor('en', { comparison: { ...comparison, options } }));
      return (sleeve?.lines ?? []).map(({ words }) => plain(words.markup)).join(' ');
    };
    const weight = plain((await sceneFor('en')).words.say('options.sleeve.weight_after').markup);
    expect(await undoing('no', true)).toContain(weight);
    expect(await undoing('partly', false)).toContain(weight);
    expect(await undoing('no', false)).not.toContain(weight);
    expect(await undoing('no', false)).toMatch(/^No\. /);
  });
});

describe('undoing for people in whom it was not measured', () => {
  it('says no figure to anyone under 18 or pregnant, and else the whole text', async () => {
    const comparison = makeComparison(fiveOptions);
    const undo = 'It takes another operation. In 1 study, 8 out of 10 could. <b>Ask first.</b>';
    const undoing = async (person: object): Promise<string> => {
      const changed = { ...comparison, person: { ...comparison.person, ...person } };
      const scene = await sceneFor('en', { comparison: changed });
      const say: Scene['words']['say'] = (key, variables) =>
        key === 'options.sleeve.undo' ? { markup: undo } : scene.words.say(key, variables);
      const [sleeve] = viewUndo({ ...scene, words: { ...scene.words, say } });
      return (sleeve?.lines ?? []).map(({ words }) => plain(words.markup)).join(' ');
    };
    const whole = 'It takes another operation. In 1 study, 8 out of 10 could. Ask first.';
    expect(await undoing({ age: 18 })).toContain(whole);
    for (const person of [{ age: 17 }, { pregnantNow: true }]) {
      const said = await undoing(person);
      expect(said).toContain('Partly. It takes another operation. Ask first.');
      expect(said).not.toMatch(/\d/);
    }
  });
});

describe('the opinion', () => {
  const leaning = { option: 'sleeve', reasons: [{ code: 'reflux-better' }] };
  const opinion = async (changes: {
    readonly decision?: object;
    readonly cautions?: readonly CautionHit[];
    readonly possible?: 'yes' | 'no' | 'partly';
    readonly surgeon?: string;
    readonly evidence?: EvidenceBase;
    /** Whether weight after undoing is known; else it is left out as the topics are, which bring points of their own. */
    readonly weightAfterKnown?: boolean;
    readonly topics?: readonly Topic[];
  }): Promise<OpinionView> => {
    const { decision, cautions = [], possible = 'yes', surgeon = 'surgeon-1' } = changes;
    const { weightAfterKnown = false, topics = [] } = changes;
    const comparison = makeComparison(fiveOptions, { cautions, topics });
    const options = comparison.options.map((option) => ({
      ...option,
      reversibility: { ...option.reversibility, possible, weightAfterKnown },
    }));
    const file = makeCase({ decision: { options: fiveOptions, leaning, ...decision } });
    const plan = { ...file.plan, surgeon };
    const input = { comparison: { ...comparison, options }, case: { ...file, plan } };
    const scene = await sceneFor('en', input);
    return viewOpinion({ ...scene, evidence: changes.evidence ?? scene.evidence });
  };
  const see = 'Read what “About your own health” says about this choice.';

  const against = async (changes: Parameters<typeof opinion>[0]): Promise<readonly string[]> =>
    ((await opinion(changes)).leaning?.against ?? []).map(({ markup }) => plain(markup));

  it('always has something to ask against it', async () => {
    expect(await against({})).toEqual(['Ask your surgeon what speaks against it.']);
    expect(await against({ possible: 'no' })).toEqual(['It cannot be undone.']);
    expect(await against({ possible: 'partly' })).toEqual(['It can only be undone in part.']);
    const studied = { leaning: { ...leaning, option: 'plication' } };
    expect(await against({ decision: studied })).toEqual(['It is still under study.']);
  });

  it('names the harm of the option that the pages count most often, with its number, its time and how sure it is', async () => {
    const topics = topicsOf(fiveOptions);
    expect(await against({ topics })).toEqual([
      expect.stringMatching(/^Reflux, .*: 31 out of 100\. Of the problems .* to the most people\.$/),
    ]);
    // A single figure has none to be more common than; one or two people are no share.
    const only = (events: number): readonly Topic[] => {
      const cell = shareCell({ option: 'sleeve', outcome: 'leak', asked: { days: 30 } }, [events, 1000]);
      return topics.slice(0, 1).map((topic) => ({
        ...topic,
        picture: null,
        rows: [{ outcome: 'leak', asked: { days: 30 }, cells: [cell] }],
      }));
    };
    expect(await against({ topics: only(6) })).toEqual(['A leak, in the first month: 6 out of 1,000.']);
    expect(await against({ topics: only(2) })).toEqual(['Ask your surgeon what speaks against it.']);
  });

  it('says that weight comes back once a treatment is stopped, or of what undoes one, and never of an operation that stays', async () => {
    const weightAfterKnown = true;
    const decision = { leaning: { ...leaning, option: 'semaglutide' } };
    expect(await against({ decision, weightAfterKnown })).toEqual([
      'When you stop: Most of the lost weight comes back.',
    ]);
    expect(await against({ decision })).toEqual(['Ask your surgeon what speaks against it.']);
    expect(await against({ possible: 'partly', weightAfterKnown })).toEqual([
      'It can only be undone in part.',
    ]);
  });

  it('keeps what is advised against apart from what speaks against the leaning', async () => {
    const decision = { advised_against: [{ option: 'bypass', reasons: [{ code: 'no-pain-medicine' }] }] };
    expect(await against({ decision, possible: 'no' })).toEqual(['It cannot be undone.']);
    const { advised } = await opinion({ decision });
    expect(advised.map(({ words }) => plain(words.markup))).toEqual([
      expect.stringMatching(/^Dr\. A\. Example advises against a gastric bypass\. ./),
    ]);
  });

  it('counts a caution against an option only where it tells it from others of its kind, and is no mere check', async () => {
    const hit = { ...practiceHit, triggers: ['smoking:current'] };
    const operations = ['sleeve', 'bypass', 'plication'];
    const smoking = ['You smoke. Ask your surgeon if this counts against this option.', see];
    expect(await against({ cautions: [{ ...hit, options: ['sleeve'] }] })).toEqual(smoking);
    expect(await against({ cautions: [{ ...hit, options: operations.slice(0, 2) }] })).toEqual(smoking);
    const nothing = ['Ask your surgeon what speaks against it.'];
    expect(await against({ cautions: [{ ...hit, options: operations }] })).toEqual([see]);
    expect(await against({ cautions: [{ ...hit, options: ['bypass'] }] })).toEqual(nothing);
    const check = { ...hit, options: ['sleeve'], effect: 'needs-check' as const };
    expect(await against({ cautions: [check] })).toEqual([see]);
    // The only one of its kind has none to be told from.
    const alone = { leaning: { ...leaning, option: 'semaglutide' } };
    expect(await against({ decision: alone, cautions: [{ ...hit, options: ['semaglutide'] }] })).toEqual(
      smoking,
    );
  });

  it('leads to the box on health in a point of its own, without a number that looks like a score', async () => {
    const hit = { ...practiceHit, triggers: ['smoking:current'] };
    const cautions = [
      { ...hit, options: ['sleeve'] },
      { ...hit, options: ['sleeve', 'bypass', 'plication'], triggers: ['age'] },
      { ...hit, options: ['sleeve'], effect: 'needs-check' as const },
      { ...hit, options: ['semaglutide'] },
    ];
    const [health = '', ...rest] = await against({ cautions });
    expect(health).toMatch(/^You smoke\. /);
    expect(rest).toEqual([see]);
    expect(see).not.toMatch(/\d/);
  });

  it('says once where the warnings are, after all that they are about', async () => {
    const cautions = ['smoking:current', 'age'].map((trigger) => ({
      ...practiceHit,
      triggers: [trigger],
      options: ['sleeve'],
    }));
    expect(await against({ cautions })).toEqual([
      'You smoke. Your age matters here. Ask your surgeon if this counts against this option.',
      see,
    ]);
  });

  it('says what an illness does that speaks against the option, and never the illness alone', async () => {
    const evidence = readShippedEvidence();
    const hit = (id: string, trigger: string): CautionHit => {
      const { effect, strength, basis } =
        evidence.cautions.find((caution) => caution.id === id) ?? practiceHit;
      return { id, effect, strength, basis, triggers: [trigger], options: ['bypass'] };
    };
    const cautions = [
      hit('diabetes-bypass-ulcer', 'condition:type-2-diabetes'),
      hit('h-pylori-bypass', 'condition:h-pylori'),
      hit('alcohol-bypass', 'condition:alcohol-problem'),
    ];
    const decision = { leaning: { ...leaning, option: 'bypass' } };
    expect(await against({ decision, cautions, evidence })).toEqual([
      'With diabetes, ulcers (open sores) at the join are seen more often.',
      expect.stringMatching(/^You have .*\. You have .*\. With this option, it can mean more problems\.$/),
      see,
    ]);
  });

  it('is that of “your surgeon” where the clinic names nobody', async () => {
    const view = await opinion({ surgeon: 'surgeon-9' });
    expect(plain(view.leaning?.lead.markup ?? '')).toBe('Your surgeon leans to a sleeve.');
  });

  it('is none where the option it leans to is not compared', async () => {
    const decision = { leaning: { ...leaning, option: 'band' } };
    expect((await opinion({ decision })).leaning).toBeNull();
  });
});

describe('what happens next', () => {
  it('says to take time, but to ask how soon where an earlier operation gives trouble that may not wait', async () => {
    const time = async (trouble: string | undefined): Promise<string> => {
      const earlier = {
        operation: 'band',
        status: 'in-place',
        ...(trouble === undefined ? {} : { trouble }),
      };
      const file = makeCase({
        decision: { options: fiveOptions },
        health: { earlier_operations: [earlier] },
      });
      return plain(viewNext(await sceneFor('en', { case: file })).time.markup);
    };
    expect(await time(undefined)).toBe('Take the time you need.');
    expect(await time('reflux')).toBe('Take the time you need.');
    expect(await time('slippage')).toBe('Ask how soon you have to decide.');
  });
});

describe('an option under study', () => {
  it('says who watches over it, and that a form is missing only where it is', async () => {
    const clinic = makeClinic();
    const entry = {
      oversight: { en: 'The Sennet Research Board' },
      approval: 'S-1',
      contact: '555 0163',
      form: null as string | null,
    };
    const panel = async (form: string | null, surgeons = clinic.surgeons): Promise<readonly string[]> => {
      const under_study = { plication: { ...entry, form } };
      const scene = await sceneFor('en', { clinic: { ...clinic, surgeons, under_study } });
      return (viewStudies(scene)[0]?.lines ?? []).map(({ words }) => plain(words.markup));
    };
    const missing = 'The approval form is still missing. Until it is there, you cannot sign for this choice.';
    expect(await panel(null)).toContain(missing);
    const complete = await panel('form.pdf');
    expect(complete).not.toContain(missing);
    expect(complete).toContain('These people watch over the study: The Sennet Research Board.');
    const unknown = 'Ask your surgeon how many people have had it here, and how they are.';
    expect(complete).toContain(unknown);
    expect(await panel('form.pdf', [])).toContain(unknown);
  });

  it('names the form as its paper does, in the language of the page where it has one', async () => {
    const entry = {
      oversight: { en: 'The Board', es: 'El comité' },
      approval: 'S-1',
      contact: '555 0163',
      form: 'Consent 3',
      form_names: { es: 'Consentimiento 3' },
    };
    const clinic = { ...makeClinic(), under_study: { plication: entry } };
    const lines = async (tag: string): Promise<string> =>
      (viewStudies(await sceneFor(tag, { clinic }))[0]?.lines ?? [])
        .map(({ words }) => plain(words.markup))
        .join('\n');
    expect(await lines('en')).toContain('the form of the study: “Consent 3”.');
    expect(await lines('es')).toContain('el formulario del estudio: “Consentimiento 3”.');
    expect(await lines('fr')).toContain('Consent 3');
  });
});

describe('open points', () => {
  it('are none where words, profile and forms are there and nothing waits', async () => {
    const clinic = {
      ...makeClinic(),
      approved: { by: 'M. Example', on: '2026-10-01' },
      under_study: {
        plication: { oversight: { en: 'The Board' }, approval: 'S-1', contact: '555 0163', form: 'form.pdf' },
      },
    };
    const locale = await realLocale('en');
    const reviewed = [reviewOf(locale)];
    expect(viewOpen(await sceneFor('en', { clinic: { ...clinic, reviewed }, locale }))).toEqual([]);
    const changed = [{ ...reviewOf(locale), digest: '0'.repeat(64) }];
    const [point] = viewOpen(await sceneFor('en', { clinic: { ...clinic, reviewed: changed }, locale }));
    expect(point?.markup).toBe(
      'The words in English were changed after a qualified person had checked them.',
    );
  });

  it('count texts that are absent in this language, incomplete references and a review that is due', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit] });
    const clinic = {
      ...makeClinic(),
      approved: { by: 'M. Example', on: '2026-10-01' },
      cautions: { [practiceHit.id]: 'confirmed' as const },
    };
    const evidence = {
      ...evidenceFor(comparison, { nextReview: '2026-11-24' }),
      earlier: [{ version: '2024.01', date: '2024-01-01', digest: '0'.repeat(64), changes: null }],
    };
    const studies = new Map(
      [...evidence.studies].map(([id, study]) => [id, { ...study, citation_unseen: ['year' as const] }]),
    );
    const decision = { options: fiveOptions, matters_most: [{ text: { en: 'x' } }, { text: { es: 'x' } }] };
    const scene = await sceneFor('es', {
      comparison,
      clinic,
      evidence: { ...evidence, studies },
      case: { ...makeCase({ decision }), documents: ['comparison'] },
    });
    expect(viewOpen(scene).map(({ markup }) => plain(markup))).toEqual([
      'Una persona calificada todavía no ha revisado las palabras en este idioma: español.',
      expect.stringContaining('está en estudio y falta el formulario de aprobación.'),
      '1 texto de la clínica o de la persona no está en este idioma.',
      'En 1 fuente, una parte de la referencia no se ha confirmado.',
      'Ya pasó la fecha para volver a revisar los estudios.',
      'Ya pasó el día para volver a leer 1 estudio.',
    ]);
  });
});

describe('small tools', () => {
  it('number a note once, whichever records it names', () => {
    const found = createNotes();
    const note = (record: string): { markup: string } => ({
      markup: `Only <fig cell="${record}" records="${record}">5</fig> people.`,
    });
    expect([found.cite(note('a')), found.cite({ markup: 'Other.' }), found.cite(note('b'))]).toEqual([
      1, 2, 1,
    ]);
    expect(found.all()).toHaveLength(2);
  });

  it('keep which figures a note is about', () => {
    const found = createNotes();
    const month = { days: 30 };
    const first = shareCell({ option: 'sleeve', outcome: 'leak', asked: month }, [5, 100]);
    const second = shareCell({ option: 'bypass', outcome: 'leak', asked: month }, [5, 100]);
    for (const cell of [first, second]) found.cite({ markup: 'The study does not say.' }, cell);
    found.cite({ markup: '“None of 212”: up to 18.' });
    expect(found.all().map(({ cells }) => cells)).toEqual([[first, second], []]);
  });

  it('work a part out once, and only when it is asked for', () => {
    let made = 0;
    const view = lazyView<{ one: number; two: number }>({
      one: () => (made += 1),
      two: () => {
        throw new Error('nobody asked');
      },
    });
    expect([view.one, view.one, made]).toEqual([1, 1, 1]);
    expect(Object.keys(view)).toEqual(['one', 'two']);
  });

  it('take free text in the language of the document, else the first by code', () => {
    expect(freeText({ es: 'b', en: 'a' }, 'es')).toEqual(['es', 'b']);
    expect(freeText({ fr: 'c', en: 'a' }, 'es')).toEqual(['en', 'a']);
    expect(freeText({}, 'es')).toEqual(['es', '']);
    expect(escapeText('<a href="x">&')).toBe('&lt;a href=&quot;x&quot;&gt;&amp;');
  });
});

describe('what a person said, in quotation marks', () => {
  const text = { en: 'I want to walk.', ru: 'Я хочу ходить.', es: 'Quiero caminar.' };

  it.each([
    ['en', '“I want to walk.”'],
    ['ru', '«Я хочу ходить».'],
    ['es', '“Quiero caminar”.'],
    ['fr', '« I want to walk. »'],
    ['zh-Hans', '“I want to walk.”'],
  ])('has its full stop where the language sets it: %s', async (tag, said) => {
    expect(plain(ownWords(await sceneFor(tag), { text }).markup)).toBe(said);
    const question = ownWords(await sceneFor(tag), { text: { [tag]: 'Why?' } });
    expect(plain(question.markup)).toMatch(/Why\?.*[”»]$/);
  });
});

describe('a sentence after a colon', () => {
  const lead = { markup: '<b>A:</b>' };
  const after = async (tag: string, markup: string): Promise<string> =>
    runIn((await sceneFor(tag)).words, lead, { markup }).markup.replace('<b>A:</b> ', '');

  it('begins with a small letter where the language asks for it', async () => {
    expect(await after('es', '<stands on="x">Con diabetes.</stands>')).toBe(
      '<stands on="x">con diabetes.</stands>',
    );
    expect(await after('ru', 'У людей чаще.')).toBe('у людей чаще.');
    expect(await after('fr', 'L’acide monte.')).toBe('l’acide monte.');
    expect(await after('en', 'With diabetes.')).toBe('With diabetes.');
  });

  it('keeps the capitals of an abbreviation, a title and another language', async () => {
    expect(await after('es', 'HbA1c baja.')).toBe('HbA1c baja.');
    expect(await after('es', 'IMC de 40.')).toBe('IMC de 40.');
    expect(await after('es', 'Dr. Vega llama.')).toBe('Dr. Vega llama.');
    expect(await after('ru', '<lang code="en">Vitamins.</lang>')).toBe('<lang code="en">Vitamins.</lang>');
    const { words } = await sceneFor('es');
    expect(runIn(words, { markup: 'Hecho.' }, { markup: 'Luego.' }).markup).toBe('Hecho. Luego.');
  });
});
