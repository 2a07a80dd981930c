import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import type { DocumentKind } from '../../src/model/codes.ts';
import type { CriterionOutcome, DocumentScore } from '../../src/model/document-score.ts';
import { readDocument } from '../../src/readability/index.ts';
import { scoreDocuments } from '../../src/score/index.ts';
import type { ScoreInput } from '../../src/score/index.ts';
import { demand, openExample } from './example-packets.ts';

/** The documents of an example packet, ready to be held against the criteria; `change` alters the text of its case first. */
export async function scoreInputOf(
  reference: string,
  language: string,
  change?: (text: string) => string,
): Promise<ScoreInput> {
  const { prepared, open } = await openExample(reference, change);
  const identity = identifyPacket(prepared, open, language);
  const { documents } = demand(composePacket(prepared, open, identity));
  const reporting: readonly DocumentKind[] = ['sources', 'clinician-sheet'];
  const readings = documents.filter(({ kind }) => !reporting.includes(kind)).map(readDocument);
  return { documents, readings, locale: identity.locale, evidence: prepared.evidence };
}

export function outcomesOf(score: DocumentScore): ReadonlyMap<string, CriterionOutcome> {
  return new Map(score.items.map(({ criterion, outcome }) => [criterion.id, outcome]));
}

/** A line a set, then a line a criterion with the first places that meet it, or where it is lost. */
export function describeScore(input: ScoreInput): readonly string[] {
  const { items, sets } = scoreDocuments(input);
  const totals = Object.entries(sets).map(
    ([set, { met, applicable, person }]) =>
      `${set}: ${String(met)} of ${String(applicable)}, ${String(person)} for a person`,
  );
  const lines = items.map(({ criterion, outcome, places }) => {
    const named = places.map(({ document, heading }) =>
      heading === undefined ? document : `${document} “${heading}”`,
    );
    const shown = [...new Set(named)].slice(0, 3).join('; ');
    return `${criterion.id} ${outcome}${shown === '' ? '' : `: ${shown}`}`;
  });
  return [...totals, ...lines];
}
