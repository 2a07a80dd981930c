import { listFacts, listRecords } from '../evidence/index.ts';
import { aftercareTopics } from '../model/aftercare-codes.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { SeenSchema } from '../model/study.ts';
import type { Call } from './context.ts';
import { textOption } from './context.ts';
import { showFacts } from './show-fact.ts';
import { showRecords } from './show-record.ts';

/** What `evidence list` prints, as values and as text; or why the call is refused. */
export type Listing =
  { readonly value: readonly object[]; readonly text: () => string } | { readonly refused: string };

/** Records and facts on aftercare. Only records have an outcome and only facts a topic, so either leaves out the others. */
export function listEvidence(evidence: EvidenceBase, call: Call): Listing {
  const [option, outcome, topic] = ['option', 'outcome', 'topic'].map((name) => textOption(call, name));
  const seen = SeenSchema.optional().safeParse(textOption(call, 'seen'));
  if (!seen.success) return { refused: '--seen takes page, page-2nd or memory' };
  const refused = whyRefused(evidence, { option, outcome, topic });
  if (refused !== undefined) return { refused };
  const common = { ...given('option', option), ...given('seen', seen.data) };
  const records =
    topic === undefined ? listRecords(evidence, { ...common, ...given('outcome', outcome) }) : undefined;
  const asked = aftercareTopics.find((code) => code === topic);
  const facts =
    outcome === undefined ? listFacts(evidence, { ...common, ...given('topic', asked) }) : undefined;
  return {
    value: [...(records ?? []).map(({ record }) => record), ...(facts ?? [])],
    text: () =>
      [records && showRecords(records), facts && showFacts(facts)]
        .filter((part) => part !== undefined)
        .join('\n\n'),
  };
}

type Asked = Readonly<Record<'option' | 'outcome' | 'topic', string | undefined>>;

function whyRefused(evidence: EvidenceBase, { option, outcome, topic }: Asked): string | undefined {
  if (outcome !== undefined && topic !== undefined)
    return 'records have an outcome, facts on aftercare a topic: give one of the two';
  return (
    findUnknown(codesOf(evidence.options), option) ??
    findUnknown(codesOf(evidence.outcomes), outcome) ??
    findUnknown(aftercareTopics, topic)
  );
}

function given<K extends string, V>(key: K, value: V | undefined): { readonly [key in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [key in K]?: V });
}

function codesOf(defined: readonly { readonly code: string }[]): readonly string[] {
  return defined.map(({ code }) => code);
}

function findUnknown(codes: readonly string[], code: string | undefined): string | undefined {
  if (code === undefined || codes.includes(code)) return undefined;
  return `there is no ${code}; there are ${codes.join(', ')}`;
}
