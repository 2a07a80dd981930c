import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const releaseDated: EvidenceRule = {
  name: 'release-dated',
  description: 'the next review of the whole comes after the release',
  check: (evidence) => {
    const { release } = evidence;
    if (release.next_review > release.date) return [];
    return [
      faultIn(evidence, release, {
        code: 'EVIDENCE_INVALID',
        message: 'the next review is not after the release',
        hint: 'Correct the date.',
        at: ['next_review'],
      }),
    ];
  },
};
