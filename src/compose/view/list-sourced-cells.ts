import type { KnownCell } from '../../model/comparison.ts';
import { knownCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';
import { weightInShort } from './view-weight.ts';

type Sourced = Pick<Scene, 'comparison' | 'clinic'>;

/** The figures that the patient pages print, each of which a reader must find again in the sources. */
export function sourcedCells(scene: Sourced): readonly ShownCell<KnownCell>[] {
  const inShort = new Set(scene.comparison.options.map((option) => weightInShort(scene, option)?.id));
  return knownCells(scene.comparison).filter(({ cell }) => inShort.has(cell.id) || standsOnPage(scene, cell));
}

/** Not a weight beside a line of one study, nor a stay that the clinic states itself. */
function standsOnPage(scene: Sourced, cell: KnownCell): boolean {
  if (cell.outcome === 'hospital-stay') return scene.clinic.protocol.stay[cell.option] === undefined;
  const { courses, mainMonths } = scene.comparison.weight;
  if (!isWeight(cell) || cell.asked.months === mainMonths) return true;
  return !cell.value.computed && courses.every(({ option }) => option !== cell.option);
}
