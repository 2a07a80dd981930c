import { readFileSync } from 'node:fs';

import { beforeAll, describe, expect, it } from 'vitest';

import { planAftercare } from '../../../src/aftercare/index.ts';
import { composeDocument } from '../../../src/compose/index.ts';
import type { Templates } from '../../../src/compose/index.ts';
import { readClinic } from '../../../src/input/index.ts';
import type { AftercarePlan } from '../../../src/model/aftercare-plan.ts';
import type { ClinicProfile } from '../../../src/model/clinic.ts';
import type { DocumentKind } from '../../../src/model/codes.ts';
import type { DocumentTree, TextRun } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { holdsFigure } from '../../../src/model/statement.ts';
import { inlineText, labelText } from '../../../src/model/text-piece.ts';
import { expectedText } from '../../../src/model/tree-text.ts';
import { readShippedFacts, readShippedSources } from '../../helpers/aftercare-inputs.ts';
import { makeCase, makeClinic } from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';
import {
  blocksOfType,
  evidenceFor,
  makeComparison,
  realLocale,
  realTemplates,
  textOf,
} from '../../helpers/compose-inputs.ts';
import { readKnownCodes } from '../../helpers/known-codes.ts';
import { demand } from '../../helpers/example-packets.ts';

const kinds = ['homecare', 'warning-signs', 'vitamins'] as const satisfies readonly DocumentKind[];
/** A Thursday. */
const day = '2027-01-14';
const facts = readShippedFacts();
const sources = readShippedSources();

let templates: Templates;
const locales = new Map<string, Locale>();

beforeAll(async () => {
  templates = await realTemplates();
  for (const tag of ['en', 'es', 'fr', 'zh-Hans']) locales.set(tag, await realLocale(tag));
});

const profile = new URL('../../../examples/clinic.yaml', import.meta.url);
const exampleClinic: ClinicProfile = demand(
  readClinic(readFileSync(profile, 'utf8'), 'clinic.yaml', { ...readKnownCodes(), today: '2026-11-28' }),
);

interface Made {
  readonly plan: AftercarePlan;
  readonly tree: DocumentTree;
  readonly texts: readonly string[];
}

interface Asked {
  readonly option?: string;
  readonly clinic?: ClinicProfile;
  readonly health?: CaseChanges['health'];
  readonly tag?: string;
  readonly documents?: readonly DocumentKind[];
}

function make(
  kind: DocumentKind,
  { option = 'sleeve', clinic = exampleClinic, health = {}, tag = 'en', documents = [kind] }: Asked = {},
): Made {
  const comparison = makeComparison([option, 'no-operation']);
  const evidence = { ...evidenceFor(comparison), aftercare: facts, aftercareSources: sources };
  const made = makeCase({
    health,
    decision: { options: [option, 'no-operation'], chosen: option },
    plan: { surgeon: clinic.surgeons[0]?.id ?? 'surgeon-1', operation_date: day },
  });
  const given = { ...made, documents: [...documents] };
  const plan = planAftercare({ case: given, clinic, evidence, option, date: day });
  const locale = locales.get(tag);
  if (locale === undefined) throw new Error(`no locale ${tag}`);
  const common = { kind, templates, comparison, evidence, clinic, locale, state: 'example' } as const;
  const tree = demand(
    composeDocument({
      ...common,
      otherLocales: [...locales.values()].filter((other) => other !== locale),
      case: given,
      aftercare: plan,
      date: '2026-11-28',
      documentId: 'T-1',
    }),
  );
  return { plan, tree, texts: expectedText(tree).map(({ text }) => text) };
}

const silent = makeClinic();
const everything: CaseChanges['health'] = {
  conditions: ['type-2-diabetes', 'alcohol-problem'],
  medicines: [
    'metformin',
    'blood-pressure-medicine',
    'sglt2-inhibitor',
    'narrow-dose-range',
    'oral-contraceptive',
  ],
  smoking: 'current',
};
const treatments = [
  'sleeve',
  'bypass',
  'one-anastomosis-bypass',
  'duodenal-switch',
  'single-anastomosis-switch',
  'band',
];

/** Every run of words, at any depth. */
function runsIn(node: unknown): readonly TextRun[] {
  if (typeof node !== 'object' || node === null) return [];
  if ('type' in node && node.type === 'text' && 'value' in node) return [node as TextRun];
  return Object.values(node).flatMap(runsIn);
}

describe.each(['en', 'es'])('the pages for home, in %s', (tag) => {
  it.each(treatments)(
    'have words for all that guidelines say of %s where the clinic says nothing',
    (option) => {
      for (const health of [{}, everything]) {
        for (const kind of kinds) {
          const { texts } = make(kind, { option, clinic: silent, health, tag });
          expect(texts.join('\n')).not.toMatch(/\baftercare\.|undefined|\{\{/);
        }
      }
    },
  );

  it.each(['sleeve', 'bypass', 'semaglutide', 'band-removal'])(
    'have words for all that a clinic says of %s',
    (option) => {
      for (const kind of kinds) {
        const { texts } = make(kind, { option, health: everything, tag });
        expect(texts.join('\n')).not.toMatch(/\baftercare\.|undefined|\{\{/);
      }
    },
  );

  it('say at home for what the number for one sign is', () => {
    const { tree } = make('homecare', { tag });
    const [contacts] = blocksOfType(tree, 'strip');
    const sign = make('warning-signs', { tag }).texts.find((text) => text.endsWith(': 988')) ?? '';
    const said =
      contacts?.rows.map(({ words }) =>
        words.map(({ inlines }) => inlines.map(({ value }) => value).join('')),
      ) ?? [];
    const crisis = said.find(([number]) => number === '988');
    expect(sign.length).toBeGreaterThan(0);
    expect(crisis?.[1]).toContain(sign.slice(0, sign.search(/[.।。]/)));
  });

  it('name the number for one sign beside that sign, and not among those for all', () => {
    const { tree, texts } = make('warning-signs', { tag });
    expect(texts.filter((text) => text.endsWith(': 988'))).toHaveLength(1);
    const phones = blocksOfType(tree, 'warning-frames').flatMap(({ frames }) =>
      frames.flatMap(({ phones: listed }) => listed.map(({ number }) => number)),
    );
    expect(phones).toContain('911');
    expect(phones).not.toContain('988');
  });

  it('print in a guideline line no figure but of facts that may print', () => {
    for (const option of treatments) {
      for (const kind of kinds) {
        const { tree } = make(kind, { option, clinic: silent, health: everything, tag });
        const bare = runsIn(tree.blocks).filter(
          ({ value, statements = [] }) =>
            /A guideline says|Una guía dice/.test(value) && holdsFigure(value) && statements.length === 0,
        );
        expect(bare).toEqual([]);
      }
    }
  });
});

describe('what only a guideline says', () => {
  it('is said as such: visits, tests, doses and rules', () => {
    const { texts: home, plan } = make('homecare', { clinic: silent });
    expect(plan.visits.map(({ from }) => from)).toContain('guideline');
    const visits = home.filter((text) => /^Visit\b/.test(text));
    expect(visits.length).toBeGreaterThan(0);
    expect(visits.filter((text) => !text.includes('A guideline says'))).toEqual([]);
    const { texts: pills } = make('vitamins', { clinic: silent });
    expect(pills.filter((text) => /kidneys/.test(text) && !text.includes('A guideline says'))).toEqual([]);
    expect(pills.join('\n')).toContain('A guideline says to test: kidneys, liver');
  });

  it('is never said of what the clinic wrote', () => {
    expect(make('vitamins').texts.join('\n')).not.toContain('A guideline says to test');
    expect(make('homecare').texts.join('\n')).not.toContain('A guideline says to be seen');
  });
});

describe('the plan for the time at home', () => {
  it('prints every line that the clinic wrote for the treatment', () => {
    const { texts, plan } = make('homecare');
    const { protocol } = exampleClinic;
    const written = [
      ...(protocol.diet['sleeve'] ?? []).map(({ what }) => what),
      ...(['lifting', 'driving', 'work', 'walking', 'wound'] as const).flatMap((topic) =>
        (protocol[topic]['sleeve'] ?? []).map(({ what }) => what),
      ),
    ].map(({ en = '' }) => en);
    expect(written.length).toBeGreaterThan(10);
    expect(written.filter((words) => !texts.some((text) => text.includes(words)))).toEqual([]);
    expect(plan.diet).toHaveLength(5);
  });

  it('says with the medicines what to do about a dose missed and about those of before', () => {
    const { texts } = make('homecare');
    const at = (text: string): number => texts.indexOf(text);
    const order = [
      'Which medicines do I take?',
      'A dose you forget or throw up',
      'Medicines you took before',
      'What else keeps me well?',
      'Coffee and caffeine',
    ].map(at);
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('gives each visit its day, moved to a day on which the clinic sees people', () => {
    const { texts } = make('homecare');
    // 2 days after a Thursday is a Saturday, on which this clinic calls; 3 months after is a Wednesday, and it sees
    // people on Monday, Tuesday, Thursday and Friday.
    for (const expected of [
      'Saturday, January\u00A016,\u00a02027',
      'Thursday, January\u00A028,\u00a02027',
      'Thursday, April\u00A015,\u00a02027',
    ])
      expect(texts).toContain(expected);
  });

  it('begins with the day and the treatment', () => {
    expect(textOf(make('homecare').tree)).toContain(
      'Your operation is on Thursday, January\u00A014,\u00a02027: a sleeve.',
    );
    expect(textOf(make('homecare', { option: 'semaglutide' }).tree)).toContain(
      'You start semaglutide on Thursday',
    );
  });

  it('asks what nobody says', () => {
    const { texts } = make('homecare', { clinic: silent });
    const [asked = ''] = texts.filter((text) => text.includes('Ask before you go home'));
    for (const topic of [
      'driving',
      'work',
      'pain',
      'going to the toilet',
      'travel',
      'sex',
      'coffee',
      'a dose you forget',
      'medicines',
    ])
      expect(asked).toContain(topic);
    expect(make('homecare').texts.some((text) => text.includes('Ask before you go home'))).toBe(false);
    expect(textOf(make('homecare', { option: 'band-removal' }).tree)).toContain(
      'Ask before you go home: going to the toilet, travel, sex, coffee and caffeine, a dose you forget or throw up, and medicines you took before.',
    );
    // A medicine needs no advice on travel.
    expect(textOf(make('homecare', { option: 'semaglutide' }).tree)).not.toContain('travel');
  });

  it('says what a guideline is only where a line of one stands', () => {
    const said = 'A guideline is the advice of experts.';
    expect(textOf(make('homecare').tree)).toContain(said);
    expect(textOf(make('homecare', { option: 'band-removal' }).tree)).not.toContain(said);
    expect(textOf(make('vitamins').tree)).not.toContain(said);
  });

  it('says it once, in the first topic there is, whichever parts the clinic leaves to guidelines', () => {
    const { protocol } = exampleClinic;
    for (const left of [
      {},
      { follow_up: {} },
      { follow_up: {}, medicines_after: {} },
      { medicines_after: {} },
    ]) {
      const clinic = { ...exampleClinic, protocol: { ...protocol, ...left } };
      const said = textOf(make('homecare', { clinic }).tree);
      expect(said.split('A guideline is the advice of experts.')).toHaveLength(2);
      expect(said.indexOf('A guideline is the advice')).toBeLessThan(said.indexOf(' A guideline says to'));
    }
  });

  it('sends home with the guideline on a medicine whose dose must be exact, also where the clinic says how to swallow', () => {
    expect(make('homecare').texts.join('\n')).toContain(
      'If you take a medicine whose dose must be exact: A guideline says to plan the dose with a specialist',
    );
  });

  it('says in short only what holds: no days to wait for, and no vitamins for life, where there are none', () => {
    const short = (option: string) => textOf(make('homecare', { option }).tree);
    expect(short('sleeve')).toContain('Take your vitamins for life.');
    expect(short('band-removal')).toContain('Take your vitamins until the day on your list.');
    expect(short('band-removal')).toContain('Go back to lifting');
    expect(short('semaglutide')).not.toContain('Go back to lifting');
  });

  it('says to whom a line is, where the case does not tell', () => {
    expect(make('homecare').texts.join('\n')).toContain(
      'If you still have your gallbladder (the small bag under the liver): Medicine against gallstones',
    );
    const without = make('homecare', { health: { history: ['gallbladder-removed'] } });
    expect(without.texts.join('\n')).not.toContain('gallstones, as prescribed');
  });

  it('goes on with a small letter after a colon in a language that writes so, but for what the clinic wrote', () => {
    const french = make('homecare', { tag: 'fr' }).texts.join('\n').replaceAll('\u00a0', ' ');
    expect(french).toContain('doit être exacte : une recommandation dit');
    expect(french).toContain('Jusqu’au 13 juillet : si vous avez encore votre vésicule');
    expect(french).toContain('À partir du 28 janvier : Desk work.');
    const spanish = make('homecare', { tag: 'es' }).texts.join('\n').replaceAll('\u00a0', ' ');
    expect(spanish).toContain('Hasta el 13 de enero de 2028: Nada de alcohol');
    expect(spanish).toContain('Hasta el 13 de julio: si todavía tiene vesícula');
    const english = make('homecare').texts.join('\n').replaceAll('\u00a0', ' ');
    expect(english).toContain('Until July 13: If you still have your gallbladder');
  });

  it('names each number to call once, with its hours', () => {
    const { texts } = make('homecare');
    expect(texts.filter((text) => text === '555-0134')).toHaveLength(1);
    expect(texts).toContain('Day and night.');
  });
});

/** What is said in another language than the document's, with that language. */
function foreign(node: unknown): readonly (readonly [string, string | undefined])[] {
  return runsIn(node).flatMap(({ value, language }) => (language === undefined ? [] : [[value, language]]));
}

describe('what stands between a label and its words', () => {
  it.each([
    ['en', ': '],
    ['fr', '\u00a0: '],
    ['zh-Hans', '：'],
  ])('is the colon of the language, with its white: %s', (tag, colon) => {
    expect(make('homecare', { tag }).tree.colon).toBe(colon);
  });
});

describe('what a clinic says in English alone', () => {
  it('names stages of eating in English, in the rows and in the calendar, with dates of the document', () => {
    const { tree } = make('homecare', { tag: 'zh-Hans' });
    const [calendar] = blocksOfType(tree, 'calendar');
    const names = ['Clear liquids', 'Full liquids', 'Pureed food', 'Soft food', 'Normal food'];
    const marked = names.map((name) => [name, 'en']);
    expect(calendar?.stages.flatMap(({ label }) => foreign(label))).toEqual(marked);
    expect(calendar?.stages.flatMap(({ dated }) => foreign(dated))).toEqual(marked);
    expect(calendar?.stages.map(({ dated }) => labelText(dated))[0]).toBe('Clear liquids：到1月16日为止');
    const rows = blocksOfType(tree, 'strip').flatMap((strip) => strip.rows.map(({ name }) => name));
    for (const one of marked) expect(rows.flatMap(foreign)).toContainEqual(one);
  });

  it('is said to be so right under the numbers to call, which stand before all that may go over to the next page', () => {
    const { tree } = make('homecare', { tag: 'zh-Hans' });
    const topics = tree.blocks.filter((block) => block.type === 'topic');
    const [calls, short] = topics.map(({ blocks }) => blocks.map(({ type }) => type));
    expect(calls).toEqual(['strip', 'paragraph']);
    expect(short).toEqual(['list']);
    expect(tree.blocks.slice(0, 6).map(({ type }) => type)).toEqual([
      'heading',
      ...Array<string>(3).fill('paragraph'),
      ...Array<string>(2).fill('topic'),
    ]);
  });

  it('names numbers in English, and when somebody answers, with the mark at its end that English has', () => {
    const [contacts] = blocksOfType(make('homecare', { tag: 'zh-Hans' }).tree, 'strip');
    const said = ['Nurse line', 'Monday to Friday, 8 to 5.', 'Surgeon on call', 'Day and night.'];
    for (const text of said) expect(foreign(contacts)).toContainEqual([text, 'en']);
    const frames = blocksOfType(make('warning-signs', { tag: 'zh-Hans' }).tree, 'warning-frames');
    const phones = frames.flatMap((block) => block.frames.flatMap((one) => one.phones));
    expect(phones.flatMap((phone) => foreign(phone))).toContainEqual(['Nurse line', 'en']);
    expect(phones.flatMap((phone) => foreign(phone))).toContainEqual(['Monday to Friday, 8 to 5', 'en']);
  });

  it('is said as the words of the document where the clinic has them', () => {
    const { tree } = make('homecare', { tag: 'es' });
    expect(foreign(blocksOfType(tree, 'calendar'))).toEqual([]);
    expect(blocksOfType(tree, 'calendar').flatMap(({ stages }) => stages)[0]?.label).toBe('Líquidos claros');
  });
});

describe('the calendar', () => {
  function days(asked: Asked = {}) {
    const [calendar] = blocksOfType(make('homecare', asked).tree, 'calendar');
    return calendar?.weeks.flat() ?? [];
  }

  it('begins with the week of the operation and ends with the week in which six weeks are over', () => {
    const all = days();
    expect(all.slice(0, 5).map((one) => one?.label ?? '')).toEqual(['', '', '', '', 'Jan\u00A014']);
    // Six weeks after a Thursday is a Thursday; two days are left of that week.
    expect(all.filter((one) => one !== null)).toHaveLength(45);
    expect(all.at(-1)?.label).toBe('27');
    expect(all.filter((one) => one?.label.startsWith('Feb')).map((one) => one?.label)).toEqual([
      'Feb\u00A01',
    ]);
  });

  it('marks the days to come in, and not a call', () => {
    const marked = days().flatMap((one) => (one?.comesIn === true ? [one.label] : []));
    expect(marked).toEqual(['Jan\u00A014', '28', '25']);
  });

  it('notes a call, the vitamins and a rule that begins or is over', () => {
    const january = days().slice(0, 21);
    const notes = new Map(january.flatMap((one) => (one === null ? [] : [[one.label, one.notes] as const])));
    expect(notes.get('16')).toEqual(['By phone']);
    // No driving until January 20; vitamins from January 21.
    expect(notes.get('21')).toEqual(['Driving', 'Vitamins']);
    // A visit, lifting, work, bathing and the shots against clots on one day.
    expect(notes.get('28')).toEqual(['Visit', 'See list']);
  });

  it('has a stage of eating on each day that the clinic says one for', () => {
    expect(days().filter((one) => one !== null && one.stage === undefined)).toEqual([]);
    expect(days()[4]?.stage).toBe(0);
  });

  it('explains only the words that stand on it, and that a word under the date is bold where its days are listed', () => {
    const explained = (asked: Asked = {}): readonly string[] => {
      const { tree, texts } = make('homecare', asked);
      const [calendar] = blocksOfType(tree, 'calendar');
      return [
        texts.find((text) => text.startsWith('Come in on dates in a black box')) ?? '',
        calendar?.listed ?? '',
      ];
    };
    const [intro = '', listed = ''] = explained();
    const notes = days().flatMap((one) => one?.notes ?? []);
    const named = [...intro.matchAll(/“(?<word>[^”]+)”/g)].map(({ groups }) => groups?.['word'] ?? '');
    expect(named).toEqual(['Wounds', 'See list']);
    expect(named.filter((word) => !notes.includes(word))).toEqual([]);
    expect(listed).toContain('Come in where a word under the date is bold. A word such as “Wounds” means');
    const { protocol } = exampleClinic;
    const none = {
      lifting: {},
      driving: {},
      work: {},
      walking: {},
      wound: {},
      medicines_after: {},
      supplements: {},
    };
    const plain = { ...exampleClinic, protocol: { ...protocol, ...none } };
    expect(explained({ clinic: plain }).join(' ')).not.toMatch(/“/);
  });

  it('is left out where nothing happens in six weeks', () => {
    expect(days({ clinic: silent })).toEqual([]);
  });
});

describe('the page for the fridge', () => {
  function frames(asked: Asked = {}) {
    return blocksOfType(make('warning-signs', asked).tree, 'warning-frames').flatMap((block) => block.frames);
  }

  it('prints every sign of the plan once, the most urgent first', () => {
    const { plan } = make('warning-signs');
    const first = inlineText(frames()[0]?.first ?? []);
    // These stand where it says which number comes first.
    expect(first).toMatch(/pass out.*short of breath, or have chest pain/);
    const saidFirst = plan.warnings.now.filter(
      ({ sign }) => sign === 'fainting' || sign === 'chest-pain-breathless',
    );
    expect(saidFirst.length).toBe(2);
    expect(frames().map(({ urgency, items }) => [urgency, items.length])).toEqual([
      ['now', plan.warnings.now.length - saidFirst.length],
      ['today', plan.warnings.today.length],
      ['visit', plan.warnings.visit.length],
    ]);
    const said = frames().flatMap(({ items }) =>
      items.map(({ inlines }) => inlines.map(({ value }) => value).join('')),
    );
    expect(new Set(said).size).toBe(said.length);
  });

  it('says for what the emergency number comes first, in the words of the pages for home, where there are others', () => {
    for (const tag of locales.keys()) {
      const [now, ...others] = frames({ tag });
      const first = inlineText(now?.first ?? []);
      expect(first).toContain('911');
      expect(make('homecare', { tag }).texts.join('\n')).toContain(first);
      expect(others.map(({ first }) => first)).toEqual([undefined, undefined]);
    }
    const { call } = exampleClinic.protocol;
    const alone = { ...call, sleeve: call['sleeve']?.filter(({ phone }) => phone !== '555-0134') ?? [] };
    const clinic = { ...exampleClinic, protocol: { ...exampleClinic.protocol, call: alone } };
    const [only] = frames({ clinic });
    expect(only?.first).toBeUndefined();
    expect(only?.items.length).toBe(make('warning-signs', { clinic }).plan.warnings.now.length);
  });

  it('leaves where it was read which number comes first to the pages for home, where there are any', () => {
    const said = 'On when to call 911 first:';
    const inAll = { documents: ['homecare', 'warning-signs'] } as const;
    expect(make('warning-signs').texts.join('\n')).toContain(said);
    expect(make('warning-signs', inAll).texts.join('\n')).not.toContain(said);
    expect(make('homecare', inAll).texts.join('\n')).toContain(said);
  });

  it('says whose the words in another language are right after the signs that cannot wait', () => {
    const types = make('warning-signs', { tag: 'zh-Hans' }).tree.blocks.map(({ type }) => type);
    expect(types.slice(0, 4)).toEqual(['heading', 'warning-frames', 'paragraph', 'say']);
  });

  it('keeps among the signs what the words on the first number do not say of one', () => {
    const { warnings } = exampleClinic.protocol;
    const { sleeve } = warnings;
    const now = (sleeve?.now ?? []).map((sign) =>
      'code' in sign && sign.code === 'fainting' ? { ...sign, means: { en: 'even once' } } : sign,
    );
    const own = { ...warnings, ...(sleeve === undefined ? {} : { sleeve: { ...sleeve, now } }) };
    const clinic = { ...exampleClinic, protocol: { ...exampleClinic.protocol, warnings: own } };
    expect(make('warning-signs', { clinic }).texts.join('\n')).toContain('You pass out: even once');
  });

  it('says the number for a fever and a pulse only as the clinic does', () => {
    // 38 °C is 100.4 °F: 38 × 1.8 + 32.
    const own = make('warning-signs').texts.join('\n');
    expect(own).toContain('A fever of 100.4\u00A0°F (38\u00A0°C) or more');
    expect(own).toContain('More than 120 heartbeats a minute');
    const theirs = make('warning-signs', { clinic: silent }).texts.join('\n');
    expect(theirs).toContain('A fever');
    expect(theirs).not.toMatch(/°F|times a minute/);
  });

  it('gives each frame the numbers of its urgency', () => {
    const phones = frames().map(({ phones: numbers }) => numbers.map(({ number }) => number));
    expect(phones).toEqual([['911', '555-0134'], ['555-0129', '555-0134'], ['555-0129']]);
  });

  it('says of each number when somebody answers, most of all at night', () => {
    const hours = frames().map(({ phones: numbers }) => numbers.map((phone) => phone.hours));
    expect(hours).toEqual([
      [undefined, 'Day and night'],
      ['Monday to Friday, 8 to 5', 'All other hours'],
      ['Monday to Friday, 8 to 5'],
    ]);
  });

  it('says to people with diabetes what to do before they call about low sugar, as the clinic wrote it', () => {
    const health = { conditions: ['type-2-diabetes'] } as const;
    const said = 'You sweat, shake or feel weak between meals';
    expect(make('warning-signs', { health }).texts.filter((text) => text.includes('shake or feel'))).toEqual([
      `${said}. First: if your sugar is under 70 mg/dL, drink half a cup of juice.`,
    ]);
    expect(make('warning-signs').texts.join('\n')).not.toContain('half a cup of juice');
    const inSpanish = make('warning-signs', { health, tag: 'es' }).texts.join('\n');
    expect(inSpanish).toContain('Primero: si su azúcar está por debajo de 70');
    expect(inSpanish).toContain('tome medio vaso de jugo.');
  });

  it('says what the clinic counts as a sign behind it, in each language it wrote, and nothing where it wrote none', () => {
    const texts = (tag: string, option: string, clinic = exampleClinic): string =>
      make('warning-signs', { tag, option, clinic }).texts.join('\n');
    expect(texts('en', 'band-removal')).toContain('or no drink stays down: for 4 hours or more');
    expect(texts('es', 'band-removal')).toContain('no retiene lo que bebe: por 4 horas o más');
    expect(texts('en', 'sleeve')).toMatch(/or no drink stays down(?!:)/);
    expect(texts('en', 'band-removal', silent)).not.toContain('4 hours');
  });

  it('lets nobody wait for a visit with feet that are numb, with or without a word of the clinic', () => {
    const place = (clinic: ClinicProfile): readonly (string | undefined)[] =>
      frames({ clinic })
        .filter(({ items }) =>
          items.some(({ inlines }) => inlines.some(({ value }) => value.includes('tingling'))),
        )
        .map(({ urgency }) => urgency);
    expect([place(exampleClinic), place(silent)]).toEqual([['today'], ['today']]);
  });

  it('lets nobody with diabetes wait with signs of low sugar', () => {
    const sugar = (health: CaseChanges['health']) =>
      frames({ health })
        .filter(({ items }) => JSON.stringify(items).includes('You sweat, shake or feel weak'))
        .map(({ urgency }) => urgency);
    expect(sugar({})).toEqual(['visit']);
    expect(sugar({ conditions: ['type-2-diabetes'] })).toEqual(['today']);
  });

  it('says who calls, of an operation and of a medicine', () => {
    const said = (option: string, tag: string) => textOf(make('warning-signs', { option, tag }).tree);
    expect(said('band-removal', 'en')).toContain(
      'My operation was on January\u00A014,\u00a02027: taking the band out.',
    );
    expect(said('semaglutide', 'en')).toContain('I started semaglutide on January\u00A014,\u00a02027');
    expect(said('band-removal', 'es')).toContain(
      'Me operaron el 14\u00A0de\u00a0enero\u00a0de\u00a02027: retirar la banda.',
    );
    expect(said('semaglutide', 'es')).toContain(
      'Empecé la semaglutida el 14\u00A0de\u00a0enero\u00a0de\u00a02027.',
    );
  });

  it('names the sources of signs only where they are not the clinic', () => {
    const origins = 'Where signs come from that your clinic does not list';
    expect(textOf(make('warning-signs').tree)).not.toContain(origins);
    expect(textOf(make('warning-signs', { clinic: silent }).tree)).toContain(origins);
  });
});

describe('the sheet for the clinician', () => {
  it('lists by why what no page says, each fact once, where the packet speaks of that time', () => {
    const { plan, tree } = make('clinician-sheet', { documents: ['vitamins', 'clinician-sheet'] });
    const said = textOf(tree);
    expect(plan.undecided.length).toBeGreaterThan(3);
    for (const { facts: open } of plan.undecided)
      for (const { id } of open) expect(said.split(id)).toHaveLength(2);
    expect(said).toContain("Not on the clinic's own list:");
  });

  it('says nothing of it where the packet does not', () => {
    const { tree } = make('clinician-sheet', { documents: ['clinician-sheet'] });
    expect(textOf(tree)).not.toContain('Time after the treatment');
  });

  it('has words for every reason, with a silent clinic, in both languages', () => {
    for (const tag of ['en', 'es'])
      for (const option of treatments) {
        const asked = {
          documents: ['homecare', 'clinician-sheet'],
          option,
          clinic: silent,
          health: everything,
          tag,
        } as const;
        expect(make('clinician-sheet', asked).plan.undecided.length).toBeGreaterThan(5);
      }
  });
});

describe('the list of vitamins', () => {
  it('says once from when, where that is the same for all', () => {
    const { texts } = make('vitamins');
    expect(texts.filter((text) => text.includes('January\u00A021'))).toEqual([
      expect.stringMatching(/^Start on January\u00A021\. Take these for life\. Tick what you have at home\./),
    ]);
    expect(texts).toContain('500\u00A0mg, 3 times a day. Calcium itself (“elemental”), as citrate.');
  });

  it('ends every line as a sentence, also where the clinic wrote none, and none of them twice', () => {
    for (const kind of ['vitamins', 'homecare'] as const) {
      for (const tag of locales.keys()) {
        const lines = blocksOfType(make(kind, { tag }).tree, 'checklist').flatMap(({ rows }) =>
          rows.flatMap((row) => row.detail.map(({ inlines }) => inlineText(inlines))),
        );
        expect(lines.length).toBeGreaterThan(5);
        expect(lines.filter((line) => !/[^.।。][.।。]$/u.test(line))).toEqual([]);
      }
    }
  });

  it('ticks each test on its day, and says what goes on', () => {
    const boards = blocksOfType(make('vitamins').tree, 'checklist').filter(
      ({ columns }) => columns.length > 0,
    );
    expect(boards).toMatchObject([
      {
        columns: [
          expect.stringContaining('Apr\u00A015, 2027'),
          expect.stringContaining('Jul\u00A015, 2027'),
          expect.stringContaining('Jan\u00A014, 2028'),
          expect.stringContaining('Jan\u00A015, 2029'),
        ],
        rows: [{ due: [true, true, true, true] }, { due: [false, false, false, true] }],
      },
    ]);
    expect(make('vitamins').texts.join('\n')).toContain('Blood tests go on every 12 months for life.');
    expect(make('vitamins').texts).toContain('Bone scan');
    expect(make('vitamins').texts.join('\n')).not.toContain('A scan of your bones');
  });

  it('says how tests go on after all days to tick, also where each goes on in its own way', () => {
    const { protocol } = exampleClinic;
    const [first] = protocol.blood_tests['sleeve'] ?? [];
    if (first === undefined) throw new Error('the example clinic tests no blood after a sleeve');
    const every = { count: 6, unit: 'month' } as const;
    const sleeve = [first, { ...first, tests: ['zinc' as const], every }];
    const clinic = { ...exampleClinic, protocol: { ...protocol, blood_tests: { sleeve } } };
    const { tree, texts } = make('vitamins', { clinic });
    const details = blocksOfType(tree, 'checklist').flatMap(({ rows }) =>
      rows.flatMap(({ detail }) => detail),
    );
    const said = (text: string): boolean => /every (?:6|12) months/.test(text);
    expect(details.filter(({ inlines }) => inlines.some(({ value }) => said(value)))).toEqual([]);
    expect(texts.filter(said)).toHaveLength(2);
  });

  it('asks about vitamins on which guidelines differ, and prints no dose of them', () => {
    const { texts, plan } = make('vitamins', { clinic: silent });
    const [asked = ''] = texts.filter((text) => text.startsWith('Ask your clinic whether'));
    expect(asked).toContain('Calcium');
    expect(plan.supplements.map(({ supplement }) => supplement)).not.toContain('calcium');
  });
});
