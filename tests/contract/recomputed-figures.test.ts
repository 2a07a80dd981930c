import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { demand, exampleCases, openExample } from '../helpers/example-packets.ts';
import { sayOwn, sayRecomputed } from '../helpers/recompute-figure.ts';
import type { Body } from '../helpers/recompute-figure.ts';

interface Printed {
  readonly figure: string;
  readonly records: readonly string[];
  readonly text: string;
}

/** Comparison, consent and sources of an example, whatever it asks for itself; about what its surgeon leans to. */
function asksForAll(text: string): string {
  const all = text.replace(/^(documents|packet): .*$/m, 'documents: [comparison, consent, sources]');
  const option = /option: (\S+)/.exec(text)?.[1] ?? '';
  return all.includes('chosen:') ? all : all.replace(/^plan:/m, `  chosen: ${option}\nplan:`);
}

async function printedFigures(reference: string): Promise<readonly Printed[]> {
  const { prepared, open } = await openExample(reference, asksForAll);
  const { documents } = demand(composePacket(prepared, open, identifyPacket(prepared, open, 'en')));
  expect(documents.map(({ kind }) => kind)).toEqual(['comparison', 'consent', 'sources']);
  return documents.flatMap((tree) =>
    expectedText(tree).flatMap(({ figures, text }) =>
      figures.map(({ value, records }) => ({ figure: value.replaceAll('\u00a0', ' '), records, text })),
    ),
  );
}

/** From the text of the case itself: "118.4 kg" and "164 cm", or "214 lb" and "5 ft 2 in". */
function bodyOf(reference: string): Body {
  const { patient } = parse(readFileSync(`examples/cases/${reference}.yaml`, 'utf8')) as {
    readonly patient: { readonly weight: string; readonly height: string };
  };
  const [weight = NaN] = numbersIn(patient.weight);
  const [first = NaN, inches = 0] = numbersIn(patient.height);
  return {
    kg: patient.weight.endsWith(' kg') ? weight : weight * 0.45359237,
    metres: patient.height.endsWith(' cm') ? first / 100 : (first * 12 + inches) * 0.0254,
  };
}

function numbersIn(said: string): readonly number[] {
  return (said.match(/\d+(\.\d+)?/g) ?? []).map(Number);
}

describe('every figure of a comparison, a record of the talk and its sources', () => {
  it.each(exampleCases)('%s is what the data files give when worked out anew', async (reference) => {
    const printed = await printedFigures(reference);
    expect(printed.length).toBeGreaterThan(5);
    const body = bodyOf(reference);
    const published = printed.filter(({ records }) => records.length > 0);
    const differ = published.filter(({ figure, records }) => !sayRecomputed(records, body).has(figure));
    expect(differ).toEqual([]);
    const own = printed.filter(({ records }) => records.length === 0);
    expect(own.filter(({ figure, text }) => !ownCounts(text).flat().includes(figure))).toEqual([]);
  });
});

const { surgeons } = parse(readFileSync('examples/clinic.yaml', 'utf8')) as {
  readonly surgeons: readonly {
    readonly results?: readonly { readonly events: number; readonly n: number }[];
  }[];
};

/** What the clinic's own counts give that this sentence names. */
function ownCounts(text: string): readonly (readonly string[])[] {
  return surgeons
    .flatMap(({ results = [] }) => results.map(({ events, n }) => sayOwn(events, n)))
    .filter(([counted = '']) => text.replaceAll('\u00a0', ' ').includes(`${counted} people`));
}

describe('what is worked out anew', () => {
  const body = { kg: 118.4, metres: 1.64 };

  it('gives what was worked out on paper', () => {
    const sleeve = sayRecomputed(['sleeve.weight-loss.60m.kaiser-2020.twl'], body);
    for (const said of ['219 lb (99 kg)', '42 lb', '218 to 221 lb', '16.0']) expect(sleeve).toContain(said);
    const death = sayRecomputed(['sleeve.death.30d.nsqip-2005-2011.after-band'], body);
    for (const said of ['1 of 130', 'fewer than 1 to 43']) expect(death).toContain(said);
  });

  it('has no room for another number', () => {
    const sleeve = sayRecomputed(['sleeve.weight-loss.60m.kaiser-2020.twl'], body);
    for (const said of ['220 lb (99 kg)', '43 lb', '217 to 221 lb']) expect(sleeve).not.toContain(said);
  });
});
