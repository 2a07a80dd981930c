import type { OutcomeDefinition } from '../../model/evidence.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Named {
  readonly outcome: string;
  readonly at: DataPath;
  /** The group that an outcome of this topic belongs to. */
  readonly group: OutcomeDefinition['group'][number];
}

export const topicFits: EvidenceRule = {
  name: 'topic-fits',
  description: 'a topic names each outcome once, and only outcomes of the group that it shows',
  check: (evidence) => {
    const groups = new Map(evidence.outcomes.map(({ code, group }) => [code, group]));
    return listsOf(evidence).flatMap((list) => {
      const codes = list.map(({ outcome }) => outcome);
      return list.flatMap(({ outcome, at, group }, index) => {
        const known = groups.get(outcome);
        const messages = [
          ...(codes.indexOf(outcome) < index ? [`${outcome} stands twice in the topic`] : []),
          ...(known === undefined || known.includes(group) ? [] : [`${outcome} is no outcome of ${group}`]),
        ];
        const hint = 'Remove it from the topic, or correct the group of the outcome.';
        return messages.map((message) =>
          faultIn(evidence, evidence.topics, { code: 'EVIDENCE_INVALID', message, hint, at }),
        );
      });
    });
  },
};

/** What may be drawn stands in a list of its own, since it may stand in the table too. */
function listsOf({ topics }: EvidenceSet): readonly (readonly Named[])[] {
  const harms = (['first-month', 'later-years'] as const).flatMap((id) =>
    (['picture', 'rows'] as const).map((part) =>
      topics[id][part].map((outcome, index): Named => ({
        outcome,
        at: [id, part, index],
        group: id === 'first-month' ? 'early-harm' : 'late-harm',
      })),
    ),
  );
  const living = topics['living-with-it'].rows.map((outcome, index): Named => ({
    outcome,
    at: ['living-with-it', 'rows', index],
    group: 'living-with-it',
  }));
  const benefits = topics.benefits.flatMap(({ outcomes }, row) =>
    outcomes.map((outcome, index): Named => ({
      outcome,
      at: ['benefits', row, 'outcomes', index],
      group: 'benefit',
    })),
  );
  return [...harms, living, benefits];
}
