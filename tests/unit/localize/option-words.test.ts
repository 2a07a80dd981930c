import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { beforeAll, describe, expect, it } from 'vitest';

import type { Words } from '../../../src/localize/words.ts';
import type { OptionDefinition } from '../../../src/model/evidence.ts';
import type { Reversibility } from '../../../src/model/evidence-rules.ts';
import { kilogramsPerPound } from '../../../src/model/quantity.ts';
import { isPrintable } from '../../../src/model/evidence.ts';
import { loadFonts } from '../../../src/render/fonts.ts';
import { textWidth } from '../../../src/render/measure-text.ts';
import { readShippedEvidence } from '../../helpers/compare-inputs.ts';
import { shippedWords } from '../../helpers/locale-words.ts';
import { figuresIn, spelledFiguresIn } from '../../helpers/numbers-in-words.ts';

function read(file: string): unknown {
  return parse(readFileSync(new URL(`../../../src/evidence/data/${file}`, import.meta.url), 'utf8'));
}
const options = (read('options.yaml') as readonly OptionDefinition[]).filter(({ choosable }) => choosable);
const ways = new Map(
  (read('reversibility.yaml') as readonly Reversibility[]).map((way) => [way.option, way]),
);

/** Figures that were read on a page: never those of a second account or from memory. */
function publishedFigures(option: string): ReadonlySet<number> {
  const undo = ways.get(option)?.undo;
  if (undo === undefined) return new Set();
  const texts = [undo.how, undo.what_remains, undo.weight_after.statement];
  const data = undo.data.filter(({ seen }) => seen === 'page');
  const figures = [
    ...texts.flatMap((text) => [...figuresIn(text), ...spelledFiguresIn(text)]),
    ...data.flatMap(({ events, n, percent, estimate, time }) => [events, n, percent, estimate, time?.months]),
  ].filter((figure) => figure !== undefined);
  return new Set([...figures, ...figures.flatMap(inTheOtherUnit), ...figures.flatMap(inSmallUnits)]);
}

/** Kilograms under one, as whole grams and ounces. */
function inSmallUnits(figure: number): readonly number[] {
  return figure < 1 ? [Math.round(figure * 1000), Math.round((figure / kilogramsPerPound) * 16)] : [];
}

/** What is said of each hundred is a percent; "about 12" is 11.6 rounded, and never rounds to nought. */
const ofEachHundred = /\b(?:each|cada) 100\b/giu;
const roundly = /(?:about|cerca de) (\d+)/giu;

function notPublished(text: string, published: ReadonlySet<number>): readonly number[] {
  const rounded = new Set([...published].map(Math.round).filter((figure) => figure > 0));
  const about = [...text.matchAll(roundly)].map(([, figure]) => Number(figure));
  const exact = figuresIn(text.replace(ofEachHundred, '').replace(roundly, ''));
  return [
    ...about.filter((figure) => !rounded.has(figure)),
    ...exact.filter((figure) => !published.has(figure)),
  ];
}

/** Kilograms as pounds and back, to whole numbers or one place. */
function inTheOtherUnit(figure: number): readonly number[] {
  return [figure / kilogramsPerPound, figure * kilogramsPerPound].flatMap((other) => [
    Math.round(other),
    Math.round(other * 10) / 10,
  ]);
}

describe.each([
  ['en', /not known|no figure/i],
  ['es', /no se sabe|no hay datos/i],
] as const)('the options in %s', (tag, notKnown) => {
  let words: Words;
  beforeAll(async () => {
    words = await shippedWords(tag);
  });
  const textOf = (code: string, part: string): string =>
    words.entries.get(`options.${code}.${part}`)?.text ?? '';

  it.each(options.map((option) => [option.code, option.figures_from] as const))(
    '%s says of the way back no figure but those read on a page',
    (code, from) => {
      const published = publishedFigures(from);
      const strange = ['undo', 'weight_after'].flatMap((part) => notPublished(textOf(code, part), published));
      expect(strange).toEqual([]);
    },
  );

  it.each(options.map((option) => [option.code, option.figures_from] as const))(
    '%s says that the weight afterwards is not known where it is not',
    (code, from) => {
      const basis = ways.get(from)?.undo.weight_after.basis;
      const text = textOf(code, 'weight_after');
      // With no operation there is nothing to undo, so nothing is unknown either.
      const said = code === 'no-operation' || basis === 'page' || notKnown.test(text);
      expect([basis, text, said]).toEqual([basis, text, true]);
      expect(basis === 'not-known' ? figuresIn(text) : []).toEqual([]);
    },
  );

  it('keeps every name within two lines of 106 points in bold 13 point letters', async () => {
    await loadFonts();
    const width = (text: string): number => textWidth(text, { size: 13, weight: 700 });
    const tooWide = [...words.entries.values()]
      .filter(({ key }) => /^options\.[^.]+\.name$/.test(key))
      .map(({ text }) => text)
      .filter((name) => !breaks(name).some((lines) => lines.every((line) => width(line) <= 106)));
    expect(tooWide).toEqual([]);
  });
});

describe('what no figure tells about weight', () => {
  it.each(['semaglutide', 'tirzepatide', 'endoscopic-sleeve'])(
    'begins for %s no more than a year after the longest figure that was read',
    async (option) => {
      const words = await shippedWords('en');
      const [years = 0] = spelledFiguresIn(words.entries.get(`options.${option}.unknown`)?.text ?? '');
      const months = readShippedEvidence()
        .records.filter((record) => record.option === option && record.outcome === 'weight-loss')
        .filter(isPrintable)
        .map(({ time }) => time.months ?? 0);
      const longest = Math.ceil(Math.max(...months) / 12);
      expect(years - longest).toBeGreaterThanOrEqual(0);
      expect(years - longest).toBeLessThanOrEqual(1);
    },
  );
});

/** A name on one line, and on two in every way. */
function breaks(name: string): readonly (readonly string[])[] {
  const parts = name.split(' ');
  const twoLines = parts
    .slice(1)
    .map((_, index) => [parts.slice(0, index + 1).join(' '), parts.slice(index + 1).join(' ')]);
  return [[name], ...twoLines];
}
