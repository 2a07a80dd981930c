import type { Cell, KnownCell } from '../../model/comparison.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import { sameDose } from '../../model/medicine-dose.ts';
import { sourceOf } from './say-share.ts';
import type { Scene } from './scene.ts';
import { figure } from './words.ts';

type Dose = NonNullable<EvidenceRecord['dose']>;

/** "10 or 15 mg once a week"; null where no medicine was taken or the source does not say how much. */
export function doseName(
  { words, format }: Pick<Scene, 'words' | 'format'>,
  dose: Dose | undefined,
): string | null {
  if (dose === undefined || dose === 'unstated') return null;
  const mg = format.list(
    dose.mg.map((amount) => format.number(amount)),
    'or',
  );
  return words.plain(`common.dose.per_${dose.per}`, { mg });
}

/** The dose of the figure that leads, tied to its record; null as above. */
function doseFigure(scene: Scene, cell: KnownCell): Markup | null {
  const name = doseName(scene, scene.records.get(cell.lead.record)?.dose);
  return name === null ? null : figure(name, sourceOf(cell));
}

/** "Dose: 15 mg once a week." */
export function doseInWords(scene: Scene, cell: KnownCell): Markup | null {
  const dose = doseFigure(scene, cell);
  return dose === null ? null : scene.words.say('common.dose.fact', { dose });
}

/** "275 lb on 15 mg once a week": a figure in a line that has no room for a sentence. */
export function withDose(scene: Scene, words: Markup, cell: KnownCell): Markup {
  const dose = doseFigure(scene, cell);
  return dose === null ? words : scene.words.say('common.dose.on', { words, dose });
}

/** The dose that all known figures are of, tied to the first of them; null where they are not all of one. */
export function sharedDose(scene: Scene, cells: readonly (Cell | undefined)[]): Markup | null {
  const known = cells.filter((cell) => cell?.state === 'known');
  const doseOf = (cell: KnownCell): EvidenceRecord['dose'] => scene.records.get(cell.lead.record)?.dose;
  const [first] = known;
  const isShared = first !== undefined && known.every((cell) => sameDose(doseOf(cell), doseOf(first)));
  return isShared ? doseFigure(scene, first) : null;
}
