import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { isPrintable } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { expectedText } from '../model/tree-text.ts';
import type { DocumentTree } from '../model/document.ts';
import type { ComparisonTable } from '../model/comparison.ts';

/** Cells that hold the clinic's own count and so name no record of the evidence. */
const ownCell = /\/own$/;

/**
 * The last gate before paper: every figure of a document names records, and each of them was read on a page of its
 * source. Figures drawn in pictures are the cells of the comparison, so those are checked too.
 */
export function guardFigures(
  tree: DocumentTree,
  comparison: ComparisonTable,
  evidence: EvidenceBase,
): readonly Diagnostic[] {
  const printable = new Set(evidence.records.filter(isPrintable).map((record) => record.id));
  const figures = expectedText(tree).flatMap((piece) =>
    piece.figures.map((figure) => ({ ...figure, origin: piece.origin })),
  );
  const nameless = figures.filter(({ cell, records }) => records.length === 0 && !ownCell.test(cell));
  const drawn = comparison.recordsUsed.map((record) => ({ record, origin: '' }));
  const named = figures.flatMap(({ records, origin }) => records.map((record) => ({ record, origin })));
  const unread = [...named, ...drawn].filter(({ record }) => !printable.has(record));
  return [
    ...nameless.map(({ cell, origin }) =>
      refusal(`The figure of the cell ${cell} names no record.`, { path: cell, origin }),
    ),
    ...unique(unread).map(({ record, origin }) =>
      refusal(`The record ${record} was not read on a page of its source, so no page may show it.`, {
        path: record,
        origin,
      }),
    ),
  ];
}

function unique(
  all: readonly { record: string; origin: string }[],
): readonly { record: string; origin: string }[] {
  return all.filter((one, index) => all.findIndex((other) => other.record === one.record) === index);
}

/** `origin`: template file and line, or empty. */
export function refusal(
  message: string,
  place: { readonly path: string; readonly origin: string },
): Diagnostic {
  const [file = '', line = ''] = place.origin.split(':');
  return {
    code: 'EVIDENCE_UNVERIFIED',
    severity: 'error',
    message,
    hint: 'Read the figure in the study and record that, or leave it out.',
    path: place.path,
    ...(file === '' ? {} : { span: { file, line: Number(line) || 1, column: 1 } }),
  };
}
