import { documentsOf } from '../model/case.ts';
import type { Case } from '../model/case.ts';
import type { Cell, ComparisonTable, OutcomeRow } from '../model/comparison.ts';
import type { TopicPlans } from '../model/topic-plan.ts';
import { buildBestRow, buildRow } from './choose-rows.ts';
import type { OptionDesk } from './describe-option.ts';
import { firstMonth } from './weigh-time.ts';

interface Shown {
  readonly case: Case;
  readonly desks: readonly OptionDesk[];
  readonly topics: ComparisonTable['topics'];
}

/**
 * Harms of the chosen option that no topic shows with a figure: a topic has room for a few outcomes, at the time at
 * which most options have one. A record of the talk must say them all, and why where nobody can say how often. Where no
 * figure is of this option alone, one of operations counted together stands in, and says so. None for a case that
 * asks for no such record: nothing else prints them.
 */
export function findFurtherHarms(shown: Shown, plans: TopicPlans): readonly Cell[] {
  const { chosen } = shown.case.decision;
  const desk = shown.desks.find(({ code }) => code === chosen);
  if (desk === undefined || !documentsOf(shown.case).includes('consent')) return [];
  const told = outcomesTold(shown.topics, desk.code);
  const isFurther = (outcome: string): boolean => !told.has(outcome);
  const early = plans['first-month'].rows.filter(isFurther);
  const later = [...plans['later-years'].rows, ...plans['living-with-it'].rows].filter(isFurther);
  return [
    ...early.map((outcome) => aloneOrTogether(desk, (one) => buildRow([one], outcome, firstMonth))),
    ...later.map((outcome) => aloneOrTogether(desk, (one) => buildBestRow([one], outcome))),
  ].filter((cell) => cell.state !== 'not-possible');
}

function aloneOrTogether(desk: OptionDesk, build: (desk: OptionDesk) => OutcomeRow): Cell {
  const [alone] = build(desk).cells as readonly [Cell];
  if (alone.state !== 'not-known') return alone;
  const [together] = build({ ...desk, records: desk.together }).cells;
  return together?.state === 'known' ? { ...together, setAside: alone.setAside } : alone;
}

/** Outcomes of which a topic says a figure of this option. */
function outcomesTold(topics: Shown['topics'], code: string): ReadonlySet<string> {
  const cells = topics.flatMap(({ picture, rows }) =>
    [...(picture === null ? [] : [picture]), ...rows].flatMap((row) => row.cells),
  );
  const known = cells.filter(({ option, state }) => option === code && state === 'known');
  return new Set(known.map(({ outcome }) => outcome));
}
