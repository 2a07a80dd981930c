import type { ScorePlace } from '../model/document-score.ts';
import { placeOf } from './pages.ts';
import type { Pages, Placed } from './pages.ts';

/** What a look at the pages found. `missing` names where it is lost, if that is one place. */
export type Finding =
  | { readonly found: 'met' | 'missing'; readonly places: readonly ScorePlace[] }
  | { readonly found: 'person' | 'not-applicable' };

export type Check = (pages: Pages) => Finding;

export const missing: Finding = { found: 'missing', places: [] };
export const forPerson: Finding = { found: 'person' };
export const notApplicable: Finding = { found: 'not-applicable' };

/** Met where there is anything at all. */
export function foundAt(placed: readonly Placed[]): Finding {
  return placed.length === 0 ? missing : { found: 'met', places: placed.map(placeOf) };
}

/** Lost at the first of `bad`; else met at `good`. */
export function unless(bad: readonly Placed[], good: readonly Placed[]): Finding {
  const [first] = bad;
  return first === undefined ? foundAt(good) : { found: 'missing', places: [placeOf(first)] };
}

/** Met where every part is: the places of all, or the first part that is lost. */
export function every(...findings: readonly Finding[]): Finding {
  const lost = findings.find(({ found }) => found !== 'met');
  if (lost !== undefined) return lost;
  return { found: 'met', places: findings.flatMap((one) => ('places' in one ? one.places : [])) };
}

/** Met where each document has it; else lost at the top of the first that has not. */
export function inEach(documents: Pages['documents'], placed: readonly Placed[]): Finding {
  const without = documents.find((tree) => !placed.some((one) => one.tree === tree));
  if (without === undefined) return foundAt(firstOfEach(documents, placed));
  const [block] = without.blocks;
  return block === undefined ? missing : { found: 'missing', places: [placeOf({ tree: without, block })] };
}

function firstOfEach(documents: Pages['documents'], placed: readonly Placed[]): readonly Placed[] {
  return documents.flatMap((tree) => placed.find((one) => one.tree === tree) ?? []);
}
