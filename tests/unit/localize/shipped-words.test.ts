import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { beforeAll, describe, expect, it } from 'vitest';

import { variablesOf } from '../../../src/localize/words.ts';
import type { Words } from '../../../src/localize/words.ts';
import {
  conditionCodes,
  historyCodes,
  matterCodes,
  medicineCodes,
  reasonCodes,
} from '../../../src/model/codes.ts';
import type {
  Indication,
  MatchReason,
  MissingReason,
  RecordUse,
  SetAsideReason,
} from '../../../src/model/comparison.ts';
import {
  EvidenceRecordSchema,
  IndicationSchema,
  PeopleGroupSchema,
  RecordTimeSchema,
} from '../../../src/model/evidence-record.ts';
import { CautionSchema } from '../../../src/model/evidence-rules.ts';
import type { Locale, TextVariable } from '../../../src/model/locale.ts';
import { StudyDesignSchema } from '../../../src/model/study.ts';
import { allLanguages } from '../../helpers/all-languages.ts';
import { shippedLocale, shippedWords } from '../../helpers/locale-words.ts';
import { figuresIn } from '../../helpers/numbers-in-words.ts';

const data = new URL('../../../src/evidence/data/', import.meta.url);
const codesOf = (file: string): readonly string[] =>
  (parse(readFileSync(new URL(file, data), 'utf8')) as { code: string }[]).map(({ code }) => code);
const choosable = (
  parse(readFileSync(new URL('options.yaml', data), 'utf8')) as { code: string; choosable: boolean }[]
)
  .filter((option) => option.choosable)
  .map(({ code }) => code);

/** Variables of each reason, as in model/comparison.ts. The type makes a new code a fault here. */
const reasons: Readonly<Record<MissingReason['code'] | SetAsideReason['code'], readonly string[]>> = {
  'no-record': [],
  'counted-in-part': [],
  'done-otherwise': [],
  'not-verified': ['seen'],
  'other-time': ['longest'],
  'not-convertible': ['metric'],
  'bmi-outside': ['low', 'yours'],
  'bmi-mean-only': ['mean', 'yours'],
  'bmi-assumed': ['low', 'high', 'yours'],
  'bmi-unknown': ['yours'],
  'age-outside': ['low', 'yours'],
  'age-unknown': ['yours'],
  'adults-only': ['yours'],
  'adolescents-only': ['yours'],
  indication: ['theirs', 'yours'],
  'indication-mixed': [],
  'indication-unknown': [],
  'operations-mixed': ['theirs'],
  'removed-before': [],
  stages: ['theirs'],
  'several-operations': ['count'],
  'already-has': ['condition'],
  'diabetes-only': [],
  'no-diabetes-only': [],
  group: ['group'],
  pregnancy: [],
  'same-people': ['as'],
  'time-unclear': [],
  'weaker-match': [],
  variant: ['variant'],
  'other-dose': ['dose'],
  'dose-unstated': [],
  'reference-weight': ['reference'],
  'group-size-unknown': [],
  'too-few-people': ['n'],
  contradicted: ['by'],
  'other-measure': ['kind'],
};
/** How the people of a study may differ from a person: said beside a figure too. */
const near: Readonly<Record<MatchReason['code'], true>> = {
  'bmi-outside': true,
  'bmi-mean-only': true,
  'bmi-assumed': true,
  'bmi-unknown': true,
  'age-outside': true,
  'age-unknown': true,
  'adults-only': true,
  'adolescents-only': true,
  indication: true,
  'indication-mixed': true,
  'indication-unknown': true,
  'operations-mixed': true,
  'removed-before': true,
  stages: true,
  'several-operations': true,
  'already-has': true,
  'diabetes-only': true,
  'no-diabetes-only': true,
  group: true,
  pregnancy: true,
};
const missing: Readonly<Record<MissingReason['code'], true>> = {
  ...near,
  'no-record': true,
  'counted-in-part': true,
  'done-otherwise': true,
  'not-verified': true,
  'other-time': true,
  'time-unclear': true,
  'not-convertible': true,
  contradicted: true,
  'too-few-people': true,
};
const missingCodes = Object.keys(missing);
const nearCodes = Object.keys(near);
/** What decides that a record leads. The type makes a new one a fault here. */
const ledBy: Readonly<Record<RecordUse['ledBy'], true>> = {
  'only-one': true,
  match: true,
  time: true,
  measure: true,
  'side-by-side': true,
  design: true,
  dose: true,
  size: true,
  year: true,
  id: true,
  'clinic-preference': true,
};
/** Kinds of figure that cannot stand for the outcome asked: by record, by what it counts, by how it is given. */
const measures = [
  ...EvidenceRecordSchema.options.map((kind) => kind.shape.kind.value),
  'narrower',
  'wider',
  'rate',
  'count',
  'range',
  // Weights of another outcome than weight lost.
  'weight-regain',
];
/** Said of a cell, never of one record. */
const ofCells: readonly string[] = ['no-record', 'counted-in-part', 'done-otherwise'];
const asideCodes = Object.keys(reasons).filter((code) => !ofCells.includes(code));
const ofPerson: Readonly<Record<Exclude<Indication, 'none'>, true>> = {
  'first-operation': true,
  'after-band': true,
  'after-sleeve': true,
  'after-bypass': true,
  'after-plication': true,
  'after-other': true,
  'band-trouble': true,
};

describe.each(['en', 'es'])('the words of %s', (tag) => {
  let locale: Locale;
  let words: Words;
  beforeAll(async () => {
    locale = await shippedLocale(tag);
    words = await shippedWords(tag);
  });
  const without = (keys: readonly string[]): readonly string[] =>
    keys.filter((key) => !locale.translator.has(key));
  const under = (group: string, codes: readonly string[]): readonly string[] =>
    codes.map((code) => `codes.${group}.${code}`);

  it('name every code of a case', () => {
    const keys = [
      ...under('conditions', conditionCodes),
      ...under('medicines', medicineCodes),
      ...under('history', historyCodes),
      ...under('matters', matterCodes),
      ...under('reasons', reasonCodes),
    ];
    expect(without(keys)).toEqual([]);
  });

  it('name every code of the evidence', () => {
    const keys = [
      ...under('groups', PeopleGroupSchema.options),
      ...under('indications', [...IndicationSchema.options, ...Object.keys(ofPerson)]),
      ...under('designs', StudyDesignSchema.options),
      ...under('certainty', ['high', 'moderate', 'low', 'very-low']),
      ...under('effects', CautionSchema.shape.effect.options),
      ...under('maturity', ['established', 'newer', 'under-study', 'not-recorded']),
      ...under('time_basis', RecordTimeSchema.shape.basis.options),
      ...under('metrics', codesOf('metrics.yaml')),
    ];
    expect(without(keys)).toEqual([]);
  });

  it('describe every option, and in full those that a person may choose', () => {
    const short = codesOf('options.yaml').flatMap((code) =>
      namesOf(code, ['name', 'in_text', 'trade', 'choice']),
    );
    const full = choosable.flatMap((code) => namesOf(code, ['undo', 'weight_after', 'unknown', 'for_life']));
    expect(without([...short, ...full])).toEqual([]);
  });

  it('describe every outcome, with questions for those that may be drawn', () => {
    const drawn = [
      'major-complication',
      'any-complication',
      'serious-adverse-event',
      'reoperation',
      'reintervention',
    ];
    const keys = codesOf('outcomes.yaml').flatMap((code) => [
      `outcomes.${code}.name`,
      `outcomes.${code}.explained`,
    ]);
    const questions = drawn.flatMap((code) => [
      `outcomes.${code}.question_early`,
      `outcomes.${code}.question_late`,
    ]);
    expect(without([...keys, ...questions])).toEqual([]);
  });

  it('give each reason for a gap, a near match or a record set aside, with the variables it has', () => {
    const said = [
      ...missingCodes.map((code) => [`missing.${code}`, code] as const),
      ...nearCodes.map((code) => [`missing.near.${code}`, code] as const),
      ...asideCodes.map((code) => [`missing.set_aside.${code}`, code] as const),
    ].map(([key, code]) => locale.translator.text(key, valuesFor(code)));
    expect(said.filter((text) => text === '' || /\{\{|\}\}/.test(text))).toEqual([]);
  });

  it('name each kind of measure that cannot stand for an outcome, and each thing that decides which record leads', () => {
    const keys = [
      ...under('measures', measures),
      ...Object.keys(ledBy).map((code) => `clinician-sheet.led_by.${code}`),
      'clinician-sheet.led_by.course',
    ];
    expect(without(keys)).toEqual([]);
    const said = keys.map((key) => locale.translator.text(key));
    expect(said.filter((text) => text.trim() === '')).toEqual([]);
    // Shares of risk and of benefit are the same kind of measure; all else is told apart.
    expect(new Set(said).size).toBe(keys.length - 1);
    expect(locale.translator.text('codes.measures.risk')).toBe(
      locale.translator.text('codes.measures.benefit'),
    );
  });

  it('have a form of each limit for a range and for an upper end', () => {
    const keys = ['bmi-outside', 'age-outside'].flatMap((code) => [
      `missing.${code}`,
      `missing.near.${code}`,
    ]);
    for (const key of keys) {
      const forms = ['-high', '-range'].map((form) =>
        variablesOf(words.entries.get(`${key}${form}`)?.text ?? ''),
      );
      expect([key, ...forms]).toEqual([key, ['high', 'yours'], ['high', 'low', 'yours']]);
    }
    expect(locale.translator.text('missing.other-time-longest', { longest: 'X' })).toContain('X');
    for (const key of ['missing.stages', 'missing.near.stages'])
      expect(locale.translator.text(`${key}-two`)).not.toBe(locale.translator.text(key));
  });

  it('say a length of time in every way, for one and for many', () => {
    for (const unit of ['days', 'months', 'years'])
      for (const way of ['', 'within_', 'after_', 'about_', 'unclear_'])
        for (const count of [1, 2, 30]) {
          expect(locale.translator.text(`codes.time.${way}${unit}`, { count })).toContain(String(count));
        }
  });

  it('keep the names of options and outcomes short enough for their columns', () => {
    const limit = (key: string): number => (key.startsWith('options.') ? 26 : 22);
    const names = [...words.entries.values()].filter(({ key }) =>
      /^(options|outcomes)\.[^.]+\.name$/.test(key),
    );
    expect(names.length).toBe(codesOf('options.yaml').length + codesOf('outcomes.yaml').length);
    expect(names.filter(({ key, text }) => text.length > limit(key)).map(({ text }) => text)).toEqual([]);
  });

  it('tell options and outcomes apart by their names', () => {
    for (const namespace of ['options', 'outcomes']) {
      const names = [...words.entries.values()]
        .filter(({ key }) => key.startsWith(`${namespace}.`) && key.endsWith('.name'))
        .map(({ text }) => text);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  function valuesFor(code: string): Readonly<Record<string, TextVariable>> {
    const names = reasons[code as keyof typeof reasons];
    return Object.fromEntries(names.map((name) => [name, name === 'count' ? 2 : `<${name}>`]));
  }
});

describe('the two languages', () => {
  it('say the same figures, each as often', async () => {
    const [english, spanish] = [await shippedWords('en'), await shippedWords('es')];
    const figures = (text: string | undefined): readonly number[] =>
      [...figuresIn(text ?? '')].sort((a, b) => a - b);
    const apart = [...english.entries.values()]
      .filter(({ key }) => spanish.entries.has(key))
      .map(({ key, text }) => ({ key, en: figures(text), es: figures(spanish.entries.get(key)?.text) }))
      .filter(({ en, es }) => en.join() !== es.join());
    expect(apart).toEqual([]);
  });
});

describe('weight once a bypass is undone', () => {
  // A BMI that people came up to reads as a good result to whoever is told no start.
  it.each(allLanguages)(
    'is said as a gain on what people weighed before, never as a BMI: %s',
    async (tag) => {
      const { entries } = await shippedWords(tag);
      const said = entries.get('options.bypass.weight_after')?.text ?? '';
      expect(figuresIn(said)).toEqual(expect.arrayContaining([18, 48, 100]));
      expect(figuresIn(said)).not.toContain(28);
    },
  );
});

function namesOf(code: string, parts: readonly string[]): readonly string[] {
  return parts.map((part) => `options.${code}.${part}`);
}

describe('how sure a figure is', () => {
  it.each(allLanguages)('has the same words among the sources as beside the figure: %s', async (tag) => {
    const { entries } = await shippedWords(tag);
    const text = (key: string): string => entries.get(key)?.text ?? '';
    for (const level of ['low', 'very-low']) {
      const said = text(`sources.certainties.${level}`);
      expect(said).not.toBe('');
      expect(text(`common.unsure.mark.${level}`)).toContain(said);
    }
  });
});

describe('where the numbers to call are', () => {
  // They stand at the foot of each page, and on the first page for home at its head too: no page says only the one.
  it.each(allLanguages)(
    'is said in the same words on the pages for home as on those before: %s',
    async (tag) => {
      const { entries } = await shippedWords(tag);
      const said = entries.get('homecare.short.call')?.text ?? '';
      expect(said).not.toBe('');
      expect(entries.get('operation.short.call')?.text).toBe(said);
    },
  );
});

describe('a clot', () => {
  it.each([
    ['en', /clot/i],
    ['es', /coágul/i],
    ['fr', /caillot/i],
    ['pt-BR', /coágul/i],
    ['ht', /kayo/i],
    ['ru', /тромб/i],
  ])('is explained by other words than its own name: %s', async (tag, name) => {
    const { entries } = await shippedWords(tag);
    expect(entries.get('outcomes.clot.name')?.text).toMatch(name);
    expect(entries.get('outcomes.clot.explained')?.text).not.toMatch(name);
  });

  it('and the medicine against it are said in plain Spanish where the case names that medicine', async () => {
    const { entries } = await shippedWords('es');
    expect(entries.get('codes.medicines.blood-thinner')?.text).toMatch(
      /^una medicina .*\(un anticoagulante\)$/,
    );
  });
});

describe('Korean words', () => {
  it('have no space before a bracket that explains the word before it', async () => {
    const { entries } = await shippedWords('ko');
    const parted = [...entries.values()].filter(({ text }) =>
      /(?:\p{Script=Hangul}|words\}\}|outcomes\}\}|°F) \(/u.test(text),
    );
    expect(parted.map(({ key }) => key)).toEqual([]);
  });
});
