import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { readDrawings } from '../../../../src/compose/drawings/read-drawings.ts';
import { OptionDefinitionSchema } from '../../../../src/model/evidence.ts';
import { realLocale, realTemplates } from '../../../helpers/compose-inputs.ts';

const outlines = `
outlines:
  pipe: { path: M 10 0 L 10 40, width: 10 }
views:
  before:
    height: 50
    layers: [{ look: way, parts: [pipe] }]
    food: M 10 4 L 10 40
    labels: [{ words: food_pipe, at: [8, 10], side: left }]
`;
const operation = `
option: sleeve
basis: common practice
pictures:
  - { earlier: none, before: before, after: after, steps: [asleep, close] }
outlines:
  edge: { path: M 12 0 L 12 40 }
views:
  after:
    height: 60
    layers: [{ look: way, parts: [pipe] }, { look: cut, parts: [edge] }]
    food: M 10 4 L 10 50
    labels: [{ words: cut_closed, at: [12, 20], side: right }]
  later:
    like: after
    labels: [{ words: stomach, at: [10, 20], side: left }]
`;

function read(changes: Readonly<Record<string, string>> = {}): ReturnType<typeof readDrawings> {
  const files = { 'drawings/outlines.yaml': outlines, 'drawings/sleeve.yaml': operation, ...changes };
  return readDrawings(Object.entries(files).map(([path, text]) => ({ path, text })));
}

function faultsOf(changes: Readonly<Record<string, string>>): readonly string[] {
  const result = read(changes);
  return result.ok ? [] : result.diagnostics.map(({ span, message }) => `${String(span?.file)}: ${message}`);
}

const planted = (from: string, to: string): Readonly<Record<string, string>> => {
  expect(operation).toContain(from);
  return { 'drawings/sleeve.yaml': operation.replace(from, to) };
};

describe('reading the drawings of operations', () => {
  it('puts the outlines of all files together, layer by layer', () => {
    const result = read();
    const [picture] = result.ok ? (result.value.get('sleeve') ?? []) : [];
    expect(picture).toEqual({
      earlier: 'none',
      before: {
        name: 'before',
        height: 50,
        food: 'M 10 4 L 10 40',
        layers: [{ look: 'way', outlines: [{ path: 'M 10 0 L 10 40', width: 10 }] }],
        labels: [{ words: 'food_pipe', side: 'left', x: 8, y: 10 }],
      },
      after: {
        name: 'after',
        height: 60,
        food: 'M 10 4 L 10 50',
        layers: [
          { look: 'way', outlines: [{ path: 'M 10 0 L 10 40', width: 10 }] },
          { look: 'cut', outlines: [{ path: 'M 12 0 L 12 40' }] },
        ],
        labels: [{ words: 'cut_closed', side: 'right', x: 12, y: 20 }],
      },
      steps: ['asleep', 'close'],
    });
  });

  it('gives a view that is like another the same layers under its own labels', () => {
    const result = read(planted('after: after', 'after: later'));
    const [picture] = result.ok ? (result.value.get('sleeve') ?? []) : [];
    expect(picture?.after).toMatchObject({ name: 'later', height: 60, labels: [{ words: 'stomach' }] });
    expect(picture?.after.layers.length).toBe(2);
  });

  it.each([
    [
      'an outline that is not there',
      'parts: [edge]',
      'parts: [egde]',
      'There is no outline egde, which after names.',
    ],
    ['a view that is not there', 'after: after', 'after: afterwards', 'There is no view afterwards.'],
    [
      'a view like one that is not there',
      'like: after',
      'like: before',
      'The view later is like one that is not there.',
    ],
    ['an outline that is there twice', 'edge: {', 'pipe: {', 'The outline pipe is there twice.'],
    ['a view that is there twice', '  later:', '  before:', 'The view before is there twice.'],
    [
      'a curve that nobody draws',
      'M 12 0 L 12 40',
      'M 12 0 Q 1 1 12 40',
      'outlines.edge.path: a path takes absolute M, L, C and Z with spaces between.',
    ],
    [
      'another basis',
      'basis: common practice',
      'basis: page',
      'basis: Invalid input: expected "common practice".',
    ],
    ['text that is no YAML', 'option: sleeve', 'option: [', 'This file is not valid YAML.'],
  ])('finds %s', (...[, from, to, message]) => {
    expect(faultsOf(planted(from, to))).toContain(`drawings/sleeve.yaml: ${message}`);
  });

  it('finds two files about one option', () => {
    const second = operation.replace(/outlines:[^]*/, '');
    expect(faultsOf({ 'drawings/z.yaml': second })).toEqual(['drawings: Two files are about one option.']);
  });
});

describe('the drawings that are shipped', () => {
  it('are of every operation and endoscopic treatment that a case may choose, and of nothing else', async () => {
    const { drawings } = await realTemplates();
    const text = readFileSync(
      join(import.meta.dirname, '../../../../src/evidence/data/options.yaml'),
      'utf8',
    );
    const choosable = OptionDefinitionSchema.array()
      .parse(parse(text))
      .filter((option) => option.choosable && ['operation', 'endoscopic'].includes(option.kind))
      .map(({ code }) => code);
    expect([...drawings.keys()].sort()).toEqual(choosable.toSorted());
  });

  it('show a first operation, or for taking a band out the band', async () => {
    const { drawings } = await realTemplates();
    const first = [...drawings].filter(([, pictures]) => !pictures.some(({ earlier }) => earlier === 'none'));
    expect(first.map(([option]) => option)).toEqual(['band-removal']);
    for (const [, pictures] of drawings) {
      const earlier = pictures.map((picture) => picture.earlier);
      expect(new Set(earlier).size).toBe(earlier.length);
    }
  });

  it.each(['en', 'es'])('have words in %s for every step, label and text alternative', async (tag) => {
    const { drawings } = await realTemplates();
    const { translator } = await realLocale(tag);
    const keys = [...drawings.values()]
      .flat()
      .flatMap(({ before, after, steps }) => [
        ...steps.map((step) => `step.${step}`),
        ...[before, after].flatMap(({ name, labels }) => [
          `alt.${name.replaceAll('-', '_')}`,
          ...labels.map(({ words }) => `label.${words}`),
        ]),
      ]);
    expect(keys.length).toBeGreaterThan(200);
    const stays = [...drawings.keys()].map((option) => `stays.${option.replaceAll('-', '_')}`);
    expect([...new Set([...keys, ...stays])].filter((key) => !translator.has(`operation.${key}`))).toEqual(
      [],
    );
  });
});
