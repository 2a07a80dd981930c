import type { OutcomeDefinition } from '../../model/evidence.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

type Parts = NonNullable<OutcomeDefinition['parts']>[number];

/** An outcome and one that is called part of it. */
interface Pair {
  readonly whole: OutcomeDefinition;
  readonly part: OutcomeDefinition;
  readonly how: Parts;
}

/** A check that can never come true looks like one that found nothing. */
export const partsFit: EvidenceRule = {
  name: 'parts-fit',
  description:
    'an outcome names each of its parts once, of its own sort, never itself, and where they can be compared',
  check: (evidence) => {
    const outcomes = new Map(evidence.outcomes.map((outcome) => [outcome.code, outcome]));
    return evidence.outcomes.flatMap((whole) => {
      const named = (whole.parts ?? []).flatMap((how, row) =>
        how.outcomes.map((code, index) => ({ code, how, at: ['parts', row, 'outcomes', index] })),
      );
      return named.flatMap(({ code, how, at }, index) => {
        const part = outcomes.get(code);
        const twice = named.findIndex((other) => other.code === code && other.how === how) < index;
        const messages = [
          ...(twice ? [`${code} is named twice`] : []),
          // An outcome that is not defined at all is told by another rule.
          ...(part === undefined ? [] : misfits({ whole, part, how }, { evidence, outcomes })),
        ];
        const hint = 'Correct the parts of the outcome in outcomes.yaml.';
        return messages.map((message) =>
          faultIn(evidence, whole, { code: 'EVIDENCE_INVALID', message, hint, at }),
        );
      });
    });
  },
};

interface Around {
  readonly evidence: EvidenceSet;
  readonly outcomes: ReadonlyMap<string, OutcomeDefinition>;
}

function misfits({ whole, part, how }: Pair, { evidence, outcomes }: Around): readonly string[] {
  const { picture, rows } = evidence.topics['first-month'];
  const compared =
    how.held_against === 'first-month'
      ? picture.includes(whole.code) && rows.includes(part.code)
      : (how.after ?? part.applies_to).some((kind) => part.applies_to.includes(kind));
  return [
    ...(holds(part, whole.code, outcomes) ? [`${whole.code} is itself part of ${part.code}`] : []),
    ...(part.better === whole.better ? [] : [`${part.code} is not better the same way as ${whole.code}`]),
    ...(compared ? [] : [`${part.code} is never compared with ${whole.code} (${how.held_against})`]),
  ];
}

/** Whether an outcome is the sought one, or has it among its parts, near or far. */
function holds(
  outcome: OutcomeDefinition,
  sought: string,
  outcomes: ReadonlyMap<string, OutcomeDefinition>,
): boolean {
  const reached = new Set([outcome.code]);
  // A set hands out what is added while it is read, so each code is followed once, circles included.
  for (const code of reached)
    for (const part of outcomes.get(code)?.parts?.flatMap((how) => how.outcomes) ?? []) reached.add(part);
  return reached.has(sought);
}
