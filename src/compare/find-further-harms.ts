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
 * Harms that no topic shows with a figure: a topic has room for a few outcomes, at the time at which most options have
 * one. A record of the talk must say all those of the chosen option, and why where nobody can say how often. Where no
 * figure is of this option alone, one of operations counted together stands in, and says so. It must say too what comes
 * to people who have nothing done, as far as it was counted. None for a case that asks for no such record: nothing else
 * prints them.
 */
export function findFurtherHarms(shown: Shown, plans: TopicPlans): readonly Cell[] {
  if (!documentsOf(shown.case).includes('consent')) return [];
  const { chosen } = shown.case.decision;
  return shown.desks.flatMap((desk) => {
    if (desk.code === chosen) return [...earlyHarms(shown, plans, desk), ...laterHarms(shown, plans, desk)];
    return desk.code === 'no-operation'
      ? laterHarms(shown, plans, desk).filter(({ state }) => state === 'known')
      : [];
  });
}

function earlyHarms({ topics }: Shown, plans: TopicPlans, desk: OptionDesk): readonly Cell[] {
  const told = outcomesTold(topics, desk.code);
  return plans['first-month'].rows
    .filter((outcome) => !told.has(outcome))
    .map((outcome) => aloneOrTogether(desk, (one) => buildRow([one], outcome, firstMonth)))
    .filter(({ state }) => state !== 'not-possible');
}

function laterHarms({ topics }: Shown, plans: TopicPlans, desk: OptionDesk): readonly Cell[] {
  const told = outcomesTold(topics, desk.code);
  return [...plans['later-years'].rows, ...plans['living-with-it'].rows]
    .filter((outcome) => !told.has(outcome))
    .map((outcome) => aloneOrTogether(desk, (one) => buildBestRow([one], outcome)))
    .filter(({ state }) => state !== 'not-possible');
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
