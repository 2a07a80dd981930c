import type { EvidenceRecord } from '../../model/evidence-record.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Whether the band came out in the same operation changes what a figure of the new one means. */
export const exchangeStated: EvidenceRule = {
  name: 'exchange-stated',
  description: 'a figure of people who had a band says how the band was exchanged, or that nobody states it',
  check: (evidence) =>
    evidence.records.flatMap((record) =>
      isStated(record)
        ? []
        : [
            faultIn(evidence, record, {
              code: 'EVIDENCE_NO_PEOPLE',
              message: 'the people had a band, and nothing says if it came out in the same operation',
              hint: 'Set stages to one, two or either as the source says, or to unstated.',
              at: ['people'],
            }),
          ],
    ),
};

function isStated({ people }: EvidenceRecord): boolean {
  return (people.indication === 'after-band') === (people.stages !== undefined);
}
