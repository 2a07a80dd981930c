import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DocumentTree, TextRun } from '../model/document.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { holdsFigure, listStatements, theCase } from '../model/statement.ts';
import { refusal } from './guard-figures.ts';

/**
 * Where sentences bring figures of their own, not those of a cell: cautions and what is said of undoing. There a
 * digit must stand on a row of the evidence that was read on a page; a row that is named anywhere must be there.
 */
export function guardStatements(tree: DocumentTree, evidence: EvidenceBase): readonly Diagnostic[] {
  const read = new Map([...listStatements(evidence), [theCase, true]]);
  const faults = wordsIn(tree.blocks, { origin: '', guarded: false }).flatMap(({ run, origin, guarded }) => {
    const { statements = [], value } = run;
    const strange = statements.filter((id) => !read.has(id));
    const figure = tree.audience === 'patient' && holdsFigure(value);
    const unread = figure ? statements.filter((id) => read.get(id) === false) : [];
    return [
      ...strange.map((id) => ({
        path: id,
        origin,
        what: 'is not in the evidence, so no page may stand on it',
      })),
      ...unread.map((id) => ({
        path: id,
        origin,
        what: 'was not read on a page, so no page may show a figure of it',
      })),
      ...(figure && guarded && statements.length === 0 ? [{ path: '', origin, what: '' }] : []),
    ];
  });
  return faults.map(({ path, origin, what }) =>
    refusal(
      path === ''
        ? 'A caution, or words on undoing, hold a figure and name no row of the evidence.'
        : `The statement ${path} ${what}.`,
      { path, origin },
    ),
  );
}

interface Place {
  /** Template file and line of the nearest node that has them. */
  readonly origin: string;
  /** Whether a digit here is a figure that must name its row. */
  readonly guarded: boolean;
}

/** Words stand at every depth and in every kind of block, so the tree is searched as plain data. */
function wordsIn(node: unknown, place: Place): readonly (Place & { readonly run: TextRun })[] {
  if (typeof node !== 'object' || node === null) return [];
  if (isTextRun(node)) return [{ ...place, run: node }];
  const origin = 'origin' in node && typeof node.origin === 'string' ? node.origin : place.origin;
  const guarded = place.guarded || isCaution(node) || isWayBack(node);
  return Object.values(node).flatMap((child) => wordsIn(child, { origin, guarded }));
}

function isTextRun(node: object): node is TextRun {
  return 'type' in node && node.type === 'text' && 'value' in node;
}

function isCaution(node: object): boolean {
  return 'duty' in node && node.duty === 'caution';
}

function isWayBack(node: object): boolean {
  return 'layout' in node && node.layout === 'way-back';
}
