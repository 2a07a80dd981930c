import { describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { readDocument } from '../../src/readability/index.ts';
import { demand, exampleCases, exampleLanguages, openExample } from '../helpers/example-packets.ts';

const patientKinds = [
  'comparison',
  'questions',
  'consent',
  'operation',
  'homecare',
  'warning-signs',
  'vitamins',
  'sources',
];

describe.each(exampleCases)('the pages of %s', (reference) => {
  it.each(exampleLanguages)('are easy enough to read in %s, by both formulas', async (language) => {
    const { prepared, open } = await openExample(reference);
    const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, language)));
    const readings = documents.map(readDocument).filter(({ kind }) => patientKinds.includes(kind));
    expect(readings.map(({ results }) => results.length)).toEqual(readings.map(() => 2));
    expect(readings).not.toEqual([]);
    const hard = readings.flatMap(({ kind, results }) =>
      results
        .filter(({ passes }) => !passes)
        .map(({ formula, score }) => `${kind} ${formula} ${score.toFixed(1)}`),
    );
    expect(hard).toEqual([]);
    const sources = documents.find(({ kind }) => kind === 'sources');
    const said = sources === undefined ? [] : expectedText(sources).map(({ text }) => text);
    const others = sources === undefined ? [] : readings.filter(({ kind }) => kind !== 'sources');
    const titles = others.map(({ title }) => `${title}:`);
    expect(titles.filter((title) => !said.some((text) => text.startsWith(title)))).toEqual([]);
  });
});
