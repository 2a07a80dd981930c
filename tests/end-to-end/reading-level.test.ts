import { describe, expect, it } from 'vitest';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import type { DocumentReading } from '../../src/model/reading-level.ts';
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
/** Between them they hold every kind; each language is composed for these alone, to save time. */
const fewCases = ['QB-1102', 'QB-1128'];

interface Read {
  readonly documents: readonly DocumentTree[];
  readonly readings: readonly DocumentReading[];
}

async function readPacket(reference: string, language: string): Promise<Read> {
  const { prepared, open } = await openExample(reference);
  const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, language)));
  return {
    documents,
    readings: documents.map(readDocument).filter(({ kind }) => patientKinds.includes(kind)),
  };
}

function hardIn({ readings }: Read): readonly string[] {
  return readings.flatMap(({ kind, results }) =>
    results
      .filter(({ passes }) => !passes)
      .map(({ formula, score }) => `${kind} ${formula} ${score.toFixed(1)}`),
  );
}

/** Titles of the other documents of which the sources do not say how hard they are to read. */
function unsaidIn({ documents, readings }: Read): readonly string[] {
  const sources = documents.find(({ kind }) => kind === 'sources');
  if (sources === undefined) return [];
  const said = expectedText(sources).map(({ text }) => text);
  return readings
    .filter(
      ({ kind, results, sentences }) => kind !== 'sources' && (results.length > 0 || sentences !== null),
    )
    .map(({ title }) => title)
    .filter((title) => !said.some((text) => text.startsWith(title) && /\d/.test(text)));
}

describe.each(exampleCases)('the pages of %s', (reference) => {
  it.each(exampleLanguages)('are easy enough to read in %s, by both formulas', async (language) => {
    const read = await readPacket(reference, language);
    expect(read.readings.map(({ results }) => results.length)).toEqual(read.readings.map(() => 2));
    expect(read.readings).not.toEqual([]);
    expect([hardIn(read), unsaidIn(read)]).toEqual([[], []]);
  });
});

describe.each(fewCases)('the pages of %s', (reference) => {
  it.each(['fr', 'pt-BR'])('are easy enough to read in %s, by both formulas', async (language) => {
    const read = await readPacket(reference, language);
    expect(read.readings.filter(({ results }) => results.length === 2)).not.toEqual([]);
    expect([hardIn(read), unsaidIn(read)]).toEqual([[], []]);
  });

  it('are for class six or lower in Russian by one formula, and harder by the other, as they say', async () => {
    const read = await readPacket(reference, 'ru');
    const hard = hardIn(read);
    expect(hard.filter((one) => !one.includes(' oborneva '))).toEqual([]);
    // Words of medicine are long in Russian: this much is not reached, and may not grow.
    expect(hard.filter((one) => Number(one.split(' ').at(-1)) < 55)).toEqual([]);
    expect(unsaidIn(read)).toEqual([]);
  });

  it.each(['ar', 'hi', 'ht', 'ko', 'tl', 'vi', 'zh-Hans'])(
    'have short sentences in %s, which has no formula, and the sources say so',
    async (language) => {
      const read = await readPacket(reference, language);
      expect(read.readings.flatMap(({ results }) => results)).toEqual([]);
      const measured = read.readings.flatMap(({ sentences }) => (sentences === null ? [] : [sentences]));
      expect(measured).not.toEqual([]);
      expect(measured.filter(({ passes }) => !passes)).toEqual([]);
      expect(unsaidIn(read)).toEqual([]);
    },
  );
});
