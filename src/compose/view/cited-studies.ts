import type { AftercareSource } from '../../model/aftercare.ts';
import type { CautionHit, OptionColumn } from '../../model/comparison.ts';
import type { OptionCode } from '../../model/evidence-record.ts';
import type { PointSource } from '../../model/evidence-rules.ts';
import { definitionStatement } from '../../model/statement.ts';
import { sourcedCells } from './list-sourced-cells.ts';
import { noteStatements } from './note-statements.ts';
import { mayState, patientCautions } from './patient-cautions.ts';
import { callsNow } from './say-call-now.ts';
import { emergencySources } from './say-emergency-first.ts';
import type { Scene } from './scene.ts';

/** What decides which studies are cited; no words. */
export type Citing = Pick<Scene, 'comparison' | 'evidence' | 'clinic'>;

export type CitedSource = Pick<PointSource, 'study' | 'url' | 'text' | 'seen'>;

/** Every study that the sources of this person name, in no particular order, each once. */
export function citedStudies(scene: Citing): readonly string[] {
  const { comparison, evidence } = scene;
  const studyOf = new Map(evidence.records.map(({ id, study }) => [id, study]));
  const cells = sourcedCells(scene).flatMap(({ cell }) => [
    cell.lead.study,
    ...(cell.others?.records ?? []).flatMap((record) => studyOf.get(record) ?? []),
  ]);
  const points = [
    ...noteRows(scene),
    ...patientCautions(scene).flatMap((hit) => cautionRows(scene, hit)),
    ...comparison.options.flatMap((option) => undoRows(scene, option)),
  ].flatMap(({ study, seen }) => (seen === 'page' && study !== undefined ? [study] : []));
  return [...new Set([...cells, ...comparison.weight.courses.map(({ study }) => study), ...points])];
}

/** The options of which a caution says for what the emergency number comes first. */
export function sentToEmergency(scene: Citing): readonly OptionCode[] {
  const hits = patientCautions(scene).filter((hit) => callsNow(scene, hit));
  return [...new Set(hits.flatMap(({ options }) => options))];
}

/** The texts, no studies, where that was read. */
export function citedTexts(scene: Citing): readonly AftercareSource[] {
  const options = sentToEmergency(scene);
  return options.length === 0 ? [] : emergencySources(scene, options);
}

/** Where the thresholds of the notes were read. */
export function noteRows({ comparison, evidence }: Citing): readonly CitedSource[] {
  const ids = comparison.notes.flatMap((note) => noteStatements[note]);
  return evidence.definitions.filter(({ id }) => ids.includes(definitionStatement(id)));
}

/** Where a caution was read, if its statement may be printed. */
export function cautionRows(scene: Citing, hit: CautionHit): readonly CitedSource[] {
  if (!mayState(scene, hit)) return [];
  return scene.evidence.cautions.find((caution) => caution.id === hit.id)?.sources ?? [];
}

/** Where it was read whether an option can be undone, and what follows. */
export function undoRows({ evidence }: Citing, { figuresFrom }: OptionColumn): readonly CitedSource[] {
  const entry = evidence.reversibility.get(figuresFrom);
  if (entry === undefined) return [];
  const study = entry.undo.weight_after.study;
  return [
    ...entry.sources,
    ...entry.undo.data,
    ...(study === undefined ? [] : [{ study, seen: 'page' as const }]),
  ];
}
