import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const idUnique: EvidenceRule = {
  name: 'id-unique',
  description: 'an id or code stands once in its list',
  check: (evidence) => {
    const named = <T extends object>(entries: readonly T[], nameOf: (entry: T) => string) =>
      entries.map((entry) => ({ entry, name: nameOf(entry) }));
    const lists: readonly (readonly { entry: object; name: string }[])[] = [
      named(evidence.options, ({ code }) => code),
      named(evidence.outcomes, ({ code }) => code),
      named(evidence.metrics, ({ code }) => code),
      named(evidence.studies, ({ id }) => id),
      named(evidence.records, ({ id }) => id),
      named(evidence.reversibility, ({ option }) => option),
      named(evidence.cautions, ({ id }) => id),
      named(evidence.cautionCoverage, ({ code }) => code),
      named(evidence.standing, ({ id }) => id),
      named(evidence.riskFactors, ({ id }) => id),
      named(evidence.definitions, ({ id }) => id),
      named(evidence.aftercare, ({ id }) => id),
      named(evidence.aftercareSources, ({ id }) => id),
      named(evidence.arithmeticExceptions, ({ record, check }) => `${record} ${check}`),
    ];
    return lists.flatMap((list) => {
      const first = new Map<string, object>();
      return list.flatMap(({ entry, name }) => {
        const earlier = first.get(name);
        if (earlier === undefined) {
          first.set(name, entry);
          return [];
        }
        return [
          faultIn(evidence, entry, {
            code: 'EVIDENCE_DUPLICATE_ID',
            message: `${name} stands twice`,
            hint: 'Rename or remove one of the two.',
            related: { message: 'the first one', entry: earlier },
          }),
        ];
      });
    });
  },
};
