import type { EvidenceSet } from '../evidence-set.ts';
import { arithmeticCheckNames, arithmeticChecks } from './arithmetic-checks.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const arithmeticAgrees: EvidenceRule = {
  name: 'arithmetic-agrees',
  description: 'counts, percents and intervals agree, or the record is a named exception with a reason',
  check: (evidence) => {
    const found = findFaults(evidence);
    const excepted = new Set(evidence.arithmeticExceptions.map(({ record, check }) => `${check} ${record}`));
    const faults = found
      .filter(({ record, check }) => !excepted.has(`${check} ${record.id}`))
      .map(({ record, check, message }) =>
        faultIn(evidence, record, {
          code: 'EVIDENCE_ARITHMETIC',
          message,
          hint: `Re-read the source; if it prints this, add a ${check} exception with the reason.`,
          at: ['value'],
        }),
      );
    return [
      ...faults,
      ...idleExceptions(evidence, new Set(found.map(({ record, check }) => `${check} ${record.id}`))),
    ];
  },
};

function findFaults(evidence: EvidenceSet) {
  const designs = new Map(evidence.studies.map((study) => [study.id, study.design]));
  return evidence.records.flatMap((record) =>
    arithmeticCheckNames.flatMap((check) => {
      const message = arithmeticChecks[check](record, record.design ?? designs.get(record.study));
      return message === undefined ? [] : [{ record, check, message }];
    }),
  );
}

/** An exception that is no longer needed would hide the next mistake in that record. */
function idleExceptions(evidence: EvidenceSet, failing: ReadonlySet<string>) {
  return evidence.arithmeticExceptions
    .filter(({ record, check }) => !failing.has(`${check} ${record}`))
    .map((exception) =>
      faultIn(evidence, exception, {
        code: 'EVIDENCE_ARITHMETIC',
        message: `the exception is not needed: ${exception.record} passes the check ${exception.check}, or is not there`,
        hint: 'Remove the exception.',
      }),
    );
}
