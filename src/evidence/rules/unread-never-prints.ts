import { isPrintable } from '../../model/evidence.ts';
import type { Caution } from '../../model/evidence-rules.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A number that is not part of a name such as B12. */
const bareNumber = /(?<![A-Za-z0-9])\d/;

/** Texts that a patient page may print stand on a page that was read, or hold no figure. */
export const unreadNeverPrints: EvidenceRule = {
  name: 'unread-never-prints',
  description: 'a printed caution or reversal was read on a page, or holds no number',
  check: (evidence) => {
    const cautions = evidence.cautions.flatMap((caution) => {
      const fault = cautionFault(caution);
      return fault === undefined ? [] : [{ entry: caution, ...fault }];
    });
    const reversals = evidence.reversibility
      .filter(
        ({ undo }) => undo.weight_after.basis === 'not-known' && bareNumber.test(undo.weight_after.statement),
      )
      .map((entry) => ({
        entry,
        at: ['undo', 'weight_after', 'statement'],
        message: 'weight after undoing is not known, yet has a number',
      }));
    const withoutStudy = evidence.reversibility
      .filter(({ undo }) => undo.weight_after.basis === 'page' && undo.weight_after.study === undefined)
      .map((entry) => ({
        entry,
        at: ['undo', 'weight_after'],
        message: 'weight after undoing was read on a page, but names no study',
      }));
    return [...cautions, ...reversals, ...withoutStudy].map(({ entry, at, message }) =>
      faultIn(evidence, entry, {
        code: 'EVIDENCE_UNVERIFIED',
        message,
        hint: 'Read the source, or leave the figure out.',
        at,
      }),
    );
  },
};

function cautionFault(
  caution: Caution,
): { readonly at: readonly string[]; readonly message: string } | undefined {
  if (caution.basis === 'page') {
    const read = isPrintable(caution) && caution.sources.some(isPrintable);
    return read ? undefined : { at: ['basis'], message: 'the basis is a page, but no source was read' };
  }
  if (caution.ask === undefined)
    return { at: ['basis'], message: 'the basis is practice, but there is no line to ask with' };
  return bareNumber.test(caution.ask)
    ? { at: ['ask'], message: 'a line to ask with must hold no number' }
    : undefined;
}
