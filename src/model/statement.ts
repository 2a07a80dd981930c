import { mayPrintAsRule } from './aftercare-rules.ts';
import type { Caution, Definition, Reversibility } from './evidence-rules.ts';
import { isPrintable } from './evidence.ts';
import type { EvidenceBase } from './evidence.ts';

/**
 * Rows of the evidence, other than records, that whole sentences of a page stand on: `undo:bypass`,
 * `undo:bypass#weight_after`, `caution:reflux-sleeve`, `definition:asian-obesity-2022`, `aftercare:fluid.band.textbook`.
 * The part before the colon is the kind, the rest is the key of the row in its data file, so an id lasts as long as its
 * row. An id is a qualified
 * name as it is, which lets the provenance use it unchanged.
 */
export type StatementId = `${StatementKind}:${string}`;
export type StatementKind = 'undo' | 'caution' | 'definition' | 'aftercare';

/** What sentences stand on that only repeat what the case says of the person: the case, by its name in provenance. */
export const theCase = 'plainleaf:case';

/** Words of an option on undoing it. */
export function undoStatement(option: string): StatementId {
  return `undo:${option}`;
}

/** Words of an option on weight once it is undone. */
export function weightAfterStatement(option: string): StatementId {
  return `undo:${option}#weight_after`;
}

export function cautionStatement(id: string): StatementId {
  return `caution:${id}`;
}

export function definitionStatement(id: string): StatementId {
  return `definition:${id}`;
}

/** What a fact on aftercare says. */
export function aftercareStatement(id: string): StatementId {
  return `aftercare:${id}`;
}

/** Kind of an id; undefined for what is no statement of the evidence, such as the case. */
export function statementKind(id: string): StatementKind | undefined {
  const [prefix = ''] = id.split(':');
  return kinds.find((kind) => kind === prefix);
}

const kinds: readonly StatementKind[] = ['undo', 'caution', 'definition', 'aftercare'];

type Rows = Pick<
  EvidenceBase,
  'reversibility' | 'cautions' | 'definitions' | 'aftercare' | 'aftercareSources'
>;

/**
 * Every statement of the evidence, with whether its figures may be printed for a patient: its source was read on a page,
 * and what it says of aftercare is nobody else's to decide.
 */
export function listStatements(rows: Rows): ReadonlyMap<string, boolean> {
  return new Map<string, boolean>([
    ...[...rows.reversibility].flatMap(([option, entry]): [string, boolean][] => [
      [undoStatement(option), isUndoingRead(entry)],
      [weightAfterStatement(option), entry.undo.weight_after.basis === 'page'],
    ]),
    ...rows.cautions.map((row): [string, boolean] => [cautionStatement(row.id), isCautionRead(row)]),
    ...rows.definitions.map((row: Definition): [string, boolean] => [
      definitionStatement(row.id),
      isPrintable(row),
    ]),
    ...rows.aftercare.map((fact): [string, boolean] => [
      aftercareStatement(fact.id),
      mayPrintAsRule(fact, rows.aftercareSources.get(fact.source)),
    ]),
  ]);
}

/** Whether something of what undoing takes was read on a page. */
export function isUndoingRead({ undo, sources }: Pick<Reversibility, 'undo' | 'sources'>): boolean {
  return [...sources, ...undo.data].some(isPrintable);
}

/** Whether the warning itself was read on a page, and does not stand on usual practice. */
export function isCautionRead(caution: Pick<Caution, 'basis' | 'seen' | 'sources'>): boolean {
  return caution.basis === 'page' && isPrintable(caution) && caution.sources.some(isPrintable);
}

/** Whether words hold a number in digits that is not part of a name such as B12. */
export function holdsFigure(words: string): boolean {
  return /(?<![A-Za-z0-9])\d/.test(words);
}
