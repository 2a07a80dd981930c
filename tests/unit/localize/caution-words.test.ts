import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { beforeAll, describe, expect, it } from 'vitest';

import { firstSentence } from '../../../src/compose/view/say-against.ts';
import type { Words } from '../../../src/localize/words.ts';
import type { Caution } from '../../../src/model/evidence-rules.ts';
import { shippedWords } from '../../helpers/locale-words.ts';
import { countsIn, figuresIn, percentsIn, spelledFiguresIn } from '../../helpers/numbers-in-words.ts';

const file = new URL('../../../src/evidence/data/cautions.yaml', import.meta.url);
const cautions = parse(readFileSync(file, 'utf8')) as readonly Caution[];
const sourced = cautions.filter(({ basis }) => basis === 'page');
const practice = cautions.filter(({ basis }) => basis === 'practice');

/** Figures of the evidence that no patient reads: ratios, and a share that belongs to other people (reflux-sleeve). */
const leftOut: Readonly<Record<string, readonly number[]>> = {
  // "Up to 35" says the same as "to 34.9", in whole numbers.
  'bmi-30-to-34': [34.9],
  'bmi-50-to-60': [1.65, 1.85],
  // Four groups of four sizes are said out of 10,000 each, as the statement works them out.
  'bmi-60-plus': [14, 73, 101, 3822, 10652, 78668, 218922],
  'reflux-sleeve': [4, 16],
  'smoking-bypass': [2.5, 3.5],
  'anti-inflammatory-bypass': [2.4],
  'aspirin-bypass': [1.3],
  'steroid-bypass-ulcer': [2.8],
  'steroid-surgery': [1.4, 1.5],
  'weakened-immunity-surgery': [1.4, 1.5],
  'h-pylori-bypass': [5],
  'diabetes-bypass-ulcer': [1.8],
  'kidney-disease-bleeding': [1.6],
  'previous-clot': [1.6, 2.8, 3.1, 3.5],
  'blood-thinner-bleeding': [2.5, 3.7, 3.8],
  'pregnancy-small-baby-bypass': [2.7],
  'age-65-surgery': [1.2, 2.5],
  'b12-deficiency-bypass': [1.86],
};

describe.each([
  ['en', /^Ask /, /\bnone\b/i],
  ['es', /^(?:Pregunte|Pida) /, /\bninguna\b/i],
] as const)('the cautions in %s', (tag, asks, none) => {
  let words: Words;
  beforeAll(async () => {
    words = await shippedWords(tag);
  });
  const textOf = (key: string): string => words.entries.get(key)?.text ?? '';

  it('are those of the evidence, each a statement or a question as its basis asks', () => {
    const wanted = cautions.flatMap(({ id, basis, call_now: signs }) => [
      `cautions.${id}.${basis === 'page' ? 'statement' : 'ask'}`,
      ...(signs === undefined ? [] : [`cautions.${id}.choice`]),
    ]);
    const written = [...words.entries.keys()].filter((key) => key.startsWith('cautions.'));
    expect([...written].sort(byText)).toEqual([...wanted].sort(byText));
  });

  it.each(practice.map(({ id }) => id))('%s asks, and holds no figure', (id) => {
    const text = textOf(`cautions.${id}.ask`);
    expect(text).toMatch(asks);
    expect(figuresIn(text)).toEqual([]);
  });

  it.each(sourced.map(({ id, statement }) => [id, statement] as const))(
    '%s says no figure of its own',
    (id, source) => {
      const { percents, rest } = countsIn(textOf(`cautions.${id}.statement`));
      const published = [...figuresIn(source), ...spelledFiguresIn(source)];
      expect(percents.filter((percent) => !percentsIn(source).includes(percent))).toEqual([]);
      expect(percentsIn(rest).filter((percent) => !percentsIn(source).includes(percent))).toEqual([]);
      expect(figuresIn(rest).filter((figure) => !published.includes(figure))).toEqual([]);
    },
  );

  it.each(sourced.map(({ id, statement }) => [id, statement] as const))(
    '%s drops no figure but ratios',
    (id, source) => {
      const text = textOf(`cautions.${id}.statement`);
      const { percents, rest } = countsIn(text);
      const said = new Set([...percents, ...figuresIn(rest), ...(none.test(text) ? [0] : [])]);
      const dropped = new Set(figuresIn(source).filter((figure) => !said.has(figure)));
      expect([...dropped].sort((a, b) => a - b)).toEqual(leftOut[id] ?? []);
    },
  );
});

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

describe('a caution whose first sentence is a reason', () => {
  const opening = cautions.filter(({ opens_with_reason: opens }) => opens === true);

  it('was read on a page, and is more than a check', () => {
    expect(opening.length).toBeGreaterThan(0);
    expect(opening.filter(({ basis, effect }) => basis !== 'page' || effect === 'needs-check')).toEqual([]);
  });

  it.each(['ar', 'en', 'es', 'fr', 'hi', 'ht', 'ko', 'pt-BR', 'ru', 'tl', 'vi', 'zh-Hans'])(
    'says it whole in %s',
    async (tag) => {
      const words = await shippedWords(tag);
      const firsts = opening.map(({ id }) =>
        firstSentence({ markup: words.entries.get(`cautions.${id}.statement`)?.text ?? '' }),
      );
      const broken = firsts.filter(
        ({ markup }) => !/[.।。]$/u.test(markup) || count(markup, /[(（]/gu) !== count(markup, /[)）]/gu),
      );
      expect(broken).toEqual([]);
    },
  );
});

function count(text: string, mark: RegExp): number {
  return (text.match(mark) ?? []).length;
}
