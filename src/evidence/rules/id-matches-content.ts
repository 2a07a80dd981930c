import type { EvidenceRecord } from '../../model/evidence-record.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** An id is what people quote, so it must not say anything else than its record. */
export const idMatchesContent: EvidenceRule = {
  name: 'id-matches-content',
  description:
    'a record id begins with its option, outcome, time and study, and stands in the file of its option',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      const start = `${record.option}.${record.outcome}.${timeInId(record)}.${record.study}`;
      const idFault =
        record.id === start || record.id.startsWith(`${start}.`)
          ? []
          : [
              mismatch(`the id does not begin with ${start}`, 'Rename the record, or correct its content.', [
                'id',
              ]),
            ];
      const file = evidence.place(record)?.file ?? '';
      const inItsFile =
        file === '' ||
        file.endsWith(`records/${record.option}.yaml`) ||
        file.includes(`records/${record.option}/`);
      const fileFault = inItsFile
        ? []
        : [
            mismatch(
              `a record of ${record.option} stands in the file of another option`,
              'Move the record.',
              ['option'],
            ),
          ];
      return [...idFault, ...fileFault].map((fault) => faultIn(evidence, record, fault));
    }),
};

function mismatch(message: string, hint: string, at: readonly string[]) {
  return { code: 'EVIDENCE_ID_MISMATCH', message, hint, at } as const;
}

function timeInId({ time }: EvidenceRecord): string {
  if (time.days !== undefined) return `${String(time.days)}d`;
  if (time.months !== undefined) return `${String(time.months)}m`;
  return time.basis === 'peri-operative' ? 'peri' : 'unclear';
}
