import type { Markup } from '../../model/locale.ts';
import { cellsShown } from './cells-shown.ts';
import { outcomeName } from './clinician-ids.ts';
import type { Scene } from './scene.ts';
import { plainSeries } from './words.ts';

interface Coded {
  readonly name: string;
  readonly code: string;
}

/**
 * How to write an id in full: the sheet prints its end, beside the option and the outcome it belongs to. Codes that
 * the name already says are left out.
 */
export function clinicianKey(scene: Scene): Markup {
  const codes = [...optionCodes(scene), ...outcomeCodes(scene)]
    .filter(({ name, code }) => !name.toLowerCase().replaceAll(' ', '-').endsWith(code))
    .map((one) => scene.words.plain('clinician-sheet.ids.code', { ...one }));
  return scene.words.say('clinician-sheet.ids.key', { codes: plainSeries(scene.words, 'items', codes) });
}

function optionCodes({ options }: Scene): readonly Coded[] {
  return options.map(({ name, column }) => ({ name, code: column.figuresFrom }));
}

function outcomeCodes(scene: Scene): readonly Coded[] {
  const told = cellsShown(scene.comparison).flatMap(({ cell }) =>
    cell.state === 'known' || cell.setAside.length > 0 ? [cell.outcome] : [],
  );
  return [...new Set(told)].map((code) => ({ name: outcomeName(scene, code), code }));
}
