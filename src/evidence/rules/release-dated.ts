import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const releaseDated: EvidenceRule = {
  name: 'release-dated',
  description: 'the version is the month of the release, and the next review comes after it',
  check: (evidence) => {
    const { release } = evidence;
    const fault = (message: string, at: string) =>
      faultIn(evidence, release, {
        code: 'EVIDENCE_INVALID',
        message,
        hint: 'Correct the date or the version.',
        at: [at],
      });
    return [
      ...(release.version === release.date.slice(0, 7).replace('-', '.')
        ? []
        : [fault('the version is not the month of the date', 'version')]),
      ...(release.next_review > release.date
        ? []
        : [fault('the next review is not after the release', 'next_review')]),
    ];
  },
};
