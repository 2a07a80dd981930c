import { reasonCodes } from '../../model/codes.ts';
import type { OutcomeDefinition } from '../../model/evidence.ts';
import type { LookOf, ReasonRule } from '../../model/reason-rules.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Found {
  readonly message: string;
  readonly at: DataPath;
}

/** A reason that nothing checks would look like one that was checked and found good. */
export const reasonsChecked: EvidenceRule = {
  name: 'reasons-checked',
  description: 'each coded reason of a surgeon has one row, whose looks fit the outcomes and each other',
  check: (evidence) => {
    const codes = evidence.reasons.map(({ code }) => code);
    const faults = evidence.reasons.flatMap((rule, index) =>
      [
        ...(codes.indexOf(rule.code) < index ? [{ message: `${rule.code} stands twice`, at: [] }] : []),
        ...misplacedOutcomes(rule, evidence),
        ...circularWishes(rule, evidence.reasons),
      ].map((found) => faultOf(evidence, rule, found)),
    );
    const missing = reasonCodes.filter((code) => !codes.includes(code));
    const last: object = evidence.reasons.at(-1) ?? evidence.release;
    return [
      ...faults,
      ...missing.map((code) =>
        faultOf(evidence, last, { message: `the reason ${code} has no row in reasons.yaml`, at: [] }),
      ),
    ];
  },
};

function faultOf(evidence: EvidenceSet, entry: object, { message, at }: Found) {
  const hint = 'Correct the row in reasons.yaml, or add one.';
  return faultIn(evidence, entry, { code: 'EVIDENCE_INVALID', message, hint, at });
}

type Group = OutcomeDefinition['group'][number];

/** Groups in which an outcome can have a figure at these times. */
const groupsAt: Readonly<Record<LookOf<'compare'>['times'], readonly Group[]>> = {
  'first-month': ['early-harm'],
  'later-years': ['late-harm', 'living-with-it', 'benefit'],
  weight: ['weight'],
};

function misplacedOutcomes({ looks }: ReasonRule, { outcomes }: EvidenceSet): readonly Found[] {
  const groups = new Map(outcomes.map(({ code, group }) => [code, group]));
  return looks.flatMap((look, index) => {
    if (look.look !== 'compare' && look.look !== 'recover') return [];
    const wanted = look.look === 'recover' ? (['benefit'] as const) : groupsAt[look.times];
    return look.outcomes.flatMap((outcome, place): readonly Found[] => {
      const known = groups.get(outcome);
      // An outcome that is not defined at all is told by another rule.
      if (known === undefined || known.some((group) => wanted.some((one) => one === group))) return [];
      const at = ['looks', index, 'outcomes', place];
      return [{ message: `${outcome} has no figures of that sort (${wanted.join(', ')})`, at }];
    });
  });
}

/** A wish is judged by another reason, which must not be judged by wishes itself. */
function circularWishes({ looks }: ReasonRule, reasons: readonly ReasonRule[]): readonly Found[] {
  const circular = new Set(
    reasons.filter((rule) => rule.looks.some(({ look }) => look === 'wishes')).map(({ code }) => code),
  );
  return looks.flatMap((look, index) =>
    look.look === 'wishes'
      ? Object.entries(look.reasons)
          .filter(([, code]) => circular.has(code))
          .map(([wish, code]) => ({
            message: `${code} is itself judged by wishes`,
            at: ['looks', index, 'reasons', wish],
          }))
      : [],
  );
}
