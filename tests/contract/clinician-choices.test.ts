import { describe, expect, it } from 'vitest';

import { cellsShown, knownCells } from '../../src/compose/view/cells-shown.ts';
import { clinicianFigures } from '../../src/compose/view/clinician-figures.ts';
import { outcomeName, shortId } from '../../src/compose/view/clinician-ids.ts';
import { clinicianOthers } from '../../src/compose/view/clinician-others.ts';
import { sayUnknown } from '../../src/compose/view/clinician-reasons.ts';
import type { Scene } from '../../src/compose/view/scene.ts';
import type { UnknownCell } from '../../src/model/comparison.ts';
import { sceneFor } from '../helpers/compose-scene.ts';
import { exampleCases, exampleLanguages, openExample } from '../helpers/example-packets.ts';
import { plain } from '../helpers/read-tables.ts';

/** Characters of a reason that a reader takes in at once: more than half a line of the sheet is too long. */
const oneLine = 75;

async function sceneOf(reference: string, language: string): Promise<Scene> {
  const { prepared, open } = await openExample(reference);
  const { case: given, clinic, comparison } = open;
  return sceneFor(language, { case: given, clinic, comparison, evidence: prepared.evidence });
}

/** What is wrong with how the sheet explains a cell without a figure; nothing if all is well. */
function faultsOf(scene: Scene, cell: UnknownCell, lines: readonly string[]): readonly string[] {
  const silent = plain(scene.words.say('clinician-sheet.others.silent').markup);
  if (cell.setAside.length === 0) return lines.includes(silent) ? [] : [`${cell.id}: not a word`];
  const option = scene.options.find(({ code }) => code === cell.option)?.name ?? '';
  const line = lines.find((one) => one.startsWith(`${option}. `)) ?? '';
  const why = plain(sayUnknown(scene, cell.reason).markup);
  return [
    ...(why.trim() === '' ? [`${cell.id}: no reason`] : []),
    ...(why.length > oneLine ? [`${cell.id}: too long: ${why}`] : []),
    ...(line.includes(`(${why})`) ? [] : [`${cell.id}: its reason is not said: ${why}`]),
    ...(line.includes(outcomeName(scene, cell.outcome)) ? [] : [`${cell.id}: its outcome is not named`]),
  ];
}

const both = exampleCases.flatMap((reference) =>
  exampleLanguages.map((language) => [reference, language] as const),
);

describe.each(both)('the choices of %s on the clinician sheet in %s', (reference, language) => {
  it('are explained for each figure by one word, which a sentence over the table explains', async () => {
    const scene = await sceneOf(reference, language);
    const parts = clinicianFigures(scene);
    const rows = parts
      .flatMap(({ table }) => table.rows)
      .map(({ cells }) => cells.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' ')))
      .filter((cells) => cells.length > 1);
    const lead = parts
      .flatMap(({ intro }) => intro.map(({ markup }) => plain(markup)))
      .join(' ')
      .toLowerCase();
    const known = knownCells(scene.comparison);
    expect(known.length).toBeGreaterThan(0);
    const shown = rows.map(([record]) => record);
    expect(known.filter(({ cell }) => !shown.includes(shortId(cell.lead.record)))).toEqual([]);
    expect(rows.length).toBeGreaterThanOrEqual(known.length);
    for (const cells of rows) {
      const why = (cells.at(-1) ?? '').replace(/[*,].*$/, '');
      expect(why).toMatch(/\S/);
      expect(lead).toContain(`${why.toLowerCase()}:`);
    }
  });

  it('are explained for each cell without a figure by a few words, or by one sentence for all without a record', async () => {
    const scene = await sceneOf(reference, language);
    const lines = clinicianOthers(scene).map(({ markup }) => plain(markup));
    const unknown = cellsShown(scene.comparison).flatMap(({ cell }) =>
      cell.state === 'not-known' ? [cell] : [],
    );
    expect(unknown.length).toBeGreaterThan(0);
    expect(unknown.flatMap((cell) => faultsOf(scene, cell, lines))).toEqual([]);
  });
});
