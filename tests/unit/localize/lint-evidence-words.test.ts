import { describe, expect, it } from 'vitest';

import { lintEvidenceWords } from '../../../src/localize/index.ts';
import { makeCaution, makeEvidence } from '../../helpers/compare-inputs.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const settings = `name: Some language
direction: ltr
format: en-US
first_weekday: sunday
range_word: to
units: { kilogram: '{{n}} kg', pound: '{{n}} lb' }
common_words: [the, and, of, your, with]
misleading: {never: [rare], only_with_count: [common]}
sentence_words: 12
`;
const sleeve =
  'name: a\n  in_text: a\n  trade: a\n  choice: a\n  undo: a\n  weight_after: a\n  unknown: a\n  for_life: a\n';
const group = 'name: b\n  in_text: b\n  trade: b\n  choice: b\n';
const words = {
  'locales/en/locale.yaml': settings,
  'locales/en/options.yaml': `sleeve:\n  ${sleeve}any-surgery:\n  ${group}`,
  'locales/en/outcomes.yaml': 'leak:\n  name: A leak\n  explained: It leaks.\n',
  'locales/en/cautions.yaml': 'reflux-sleeve:\n  statement: c\nsmoking-sleeve:\n  ask: d\n',
  'locales/en/codes.yaml': 'metrics:\n  TWL: e\n',
  'locales/en/criteria.yaml': 'a-1: g\na-2: h\n',
  'locales/en/consent-elements.yaml': 'hospital: i\nward: k\n',
  'locales/en/consent.yaml': 'facts:\n  clinic: j\n',
};

const option = { name: 'x', kind: 'operation', meaning: 'x', maturity: 'established' } as const;
const evidence = {
  ...makeEvidence([], {
    cautions: [
      makeCaution({ id: 'reflux-sleeve' }),
      makeCaution({ id: 'smoking-sleeve', basis: 'practice', ask: 'Ask.' }),
    ],
  }),
  options: [
    { ...option, code: 'sleeve', choosable: true, figures_from: 'sleeve' },
    { ...option, code: 'any-surgery', choosable: false, figures_from: 'any-surgery' },
  ],
  outcomes: makeEvidence([]).outcomes.filter(({ code }) => code === 'leak'),
  metrics: [{ code: 'TWL', unit: '%', meaning: 'x' }],
  criteria: [
    { id: 'a-1', set: 'actionability', says: 'x', by: 'generator', check: 'lists', seen: 'memory' } as const,
    { id: 'a-2', set: 'actionability', says: 'x', by: 'study', seen: 'memory' } as const,
    { id: 'c-7', set: 'certification', says: 'x', by: 'none', seen: 'memory' } as const,
  ],
  consentElements: [
    {
      id: 'hospital',
      says: 'x',
      by: 'pages' as const,
      where: [{ block: 'facts' as const, words: 'consent.facts.clinic' }],
      sources: [{ document: 'hospital-form' as const, seen: 'memory' as const }],
    },
    {
      id: 'ward',
      says: 'x',
      by: 'talk' as const,
      sources: [{ document: 'own-rule' as const, seen: 'own' as const }],
    },
  ],
};

/** Findings as `code file:line path`. */
async function lint(changed: Readonly<Record<string, string>> = {}): Promise<readonly string[]> {
  const workspace = createMemoryWorkspace({ ...words, ...changed });
  const found = await lintEvidenceWords(workspace, 'locales', evidence);
  return found.map(
    ({ code, span, path }) => `${code} ${String(span?.file)}:${String(span?.line)} ${String(path)}`,
  );
}

describe('the words that the evidence calls for', () => {
  it('are all there in a language that has them', async () => {
    expect(await lint()).toEqual([]);
  });

  it.each([
    {
      what: 'a choosable option, all of it',
      file: 'options.yaml',
      text: '  for_life: a\n',
      key: 'options.sleeve.for_life',
    },
    {
      what: 'a group of options, in short',
      file: 'options.yaml',
      text: '  trade: b\n',
      key: 'options.any-surgery.trade',
    },
    {
      what: 'an outcome',
      file: 'outcomes.yaml',
      text: '  explained: It leaks.\n',
      key: 'outcomes.leak.explained',
    },
    {
      what: 'a caution that was read, as a statement',
      file: 'cautions.yaml',
      text: 'reflux-sleeve:\n  statement: c\n',
      key: 'cautions.reflux-sleeve.statement',
    },
    {
      what: 'a caution of practice, as a question',
      file: 'cautions.yaml',
      text: 'smoking-sleeve:\n  ask: d\n',
      key: 'cautions.smoking-sleeve.ask',
    },
    { what: 'a metric', file: 'codes.yaml', text: 'metrics:\n  TWL: e\n', key: 'codes.metrics.TWL' },
    {
      what: 'an element of a consent',
      file: 'consent-elements.yaml',
      text: 'hospital: i\n',
      key: 'consent-elements.hospital',
    },
    {
      what: 'a place of an element, by which the pages are searched',
      file: 'consent.yaml',
      text: 'facts:\n  clinic: j\n',
      key: 'consent.facts.clinic',
    },
    { what: 'a criterion that can be met', file: 'criteria.yaml', text: 'a-1: g\n', key: 'criteria.a-1' },
  ])('are those of $what', async ({ file, text, key }) => {
    const path = `locales/en/${file}`;
    const whole = words[path as keyof typeof words];
    expect(whole.split(text)).toHaveLength(2);
    expect(await lint({ [path]: whole.replace(text, '') || 'other: f\n' })).toEqual([
      `LOCALE_KEY_MISSING ${path}:1 ${key}`,
    ]);
  });

  it('are asked of every language', async () => {
    const spanish = Object.fromEntries(
      Object.entries(words).map(([path, text]) => [path.replace('/en/', '/es/'), text]),
    );
    const outcomes = { 'locales/es/outcomes.yaml': 'leak:\n  name: Una fuga\n' };
    expect(await lint({ ...spanish, ...outcomes })).toEqual([
      'LOCALE_KEY_MISSING locales/es/outcomes.yaml:1 outcomes.leak.explained',
    ]);
  });

  it('are not words for a code that the evidence does not have, said once a code', async () => {
    const outcomes = `${words['locales/en/outcomes.yaml']}leek:\n  name: A leek\n  explained: It grows.\n`;
    expect(await lint({ 'locales/en/outcomes.yaml': outcomes })).toEqual([
      'LOCALE_KEY_UNUSED locales/en/outcomes.yaml:5 outcomes.leek.name',
    ]);
  });
});
