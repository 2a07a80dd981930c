import type { Caution, Reversibility } from '../../model/evidence-rules.ts';
import { holdsFigure, isCautionRead, isUndoingRead } from '../../model/statement.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Texts that a patient page may print stand on a page that was read, or hold no figure. */
export const unreadNeverPrints: EvidenceRule = {
  name: 'unread-never-prints',
  description: 'a printed caution or reversal was read on a page, or holds no number',
  check: (evidence) => {
    const cautions = evidence.cautions.flatMap((caution) => {
      const fault = cautionFault(caution);
      return fault === undefined ? [] : [{ entry: caution, ...fault }];
    });
    const reversals = evidence.reversibility.flatMap((entry) =>
      undoFaults(entry).map((fault) => ({ entry, ...fault })),
    );
    return [...cautions, ...reversals].map(({ entry, at, message }) =>
      faultIn(evidence, entry, {
        code: 'EVIDENCE_UNVERIFIED',
        message,
        hint: 'Read the source, or leave the figure out.',
        at,
      }),
    );
  },
};

interface Fault {
  readonly at: readonly string[];
  readonly message: string;
}

function undoFaults(entry: Reversibility): readonly Fault[] {
  const { how, what_remains: remains, weight_after: weight } = entry.undo;
  const at = ['undo', 'weight_after'];
  return [
    ...(holdsFigure(`${how} ${remains}`) && !isUndoingRead(entry)
      ? [{ at: ['undo', 'how'], message: 'what undoing takes has a number, but no source was read' }]
      : []),
    ...(weight.basis === 'not-known' && holdsFigure(weight.statement)
      ? [{ at: [...at, 'statement'], message: 'weight after undoing is not known, yet has a number' }]
      : []),
    ...(weight.basis === 'page' && weight.study === undefined
      ? [{ at, message: 'weight after undoing was read on a page, but names no study' }]
      : []),
  ];
}

function cautionFault(caution: Caution): Fault | undefined {
  if (caution.basis === 'page') {
    return isCautionRead(caution)
      ? undefined
      : { at: ['basis'], message: 'the basis is a page, but no source was read' };
  }
  if (caution.ask === undefined)
    return { at: ['basis'], message: 'the basis is practice, but there is no line to ask with' };
  return holdsFigure(caution.ask)
    ? { at: ['ask'], message: 'a line to ask with must hold no number' }
    : undefined;
}
