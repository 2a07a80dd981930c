import type { CautionHit } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement, isCautionRead } from '../../model/statement.ts';
import type { Scene } from './scene.ts';
import { standingOn } from './words.ts';

/** Cautions that the clinic has not struck, in the order of the comparison. */
export function patientCautions(scene: Pick<Scene, 'comparison' | 'clinic'>): readonly CautionHit[] {
  return scene.comparison.cautions.filter((hit) => scene.clinic.cautions[hit.id] !== 'struck');
}

/** The statement where a source was read; else only what to ask, which holds no figure. */
export function cautionText(scene: Scene, hit: CautionHit): Markup {
  const words = scene.words.say(`cautions.${hit.id}.${mayState(scene, hit) ? 'statement' : 'ask'}`);
  return standingOn([cautionStatement(hit.id)], words);
}

/** Second guard beside the comparison's: the evidence itself must say that the statement's source was read. */
export function mayState(scene: Pick<Scene, 'evidence'>, hit: CautionHit): boolean {
  const caution = scene.evidence.cautions.find((row) => row.id === hit.id);
  return hit.basis === 'page' && caution !== undefined && isCautionRead(caution);
}
