import type { OutcomeRow } from '../model/comparison.ts';
import type { TopicPlans } from '../model/topic-plan.ts';
import { buildRow, buildWholeRow } from './choose-rows.ts';
import type { OptionDesk } from './describe-option.ts';
import { findFloor } from './find-contradiction.ts';
import { firstMonth } from './weigh-time.ts';
import type { TimeWindow } from './weigh-time.ts';

/** A row as its topic would show it, whether or not the topic does: an outcome drawn for the first month is a whole. */
export function buildTopicRow(
  desks: readonly OptionDesk[],
  plans: TopicPlans,
  { outcome, window }: { readonly outcome: string; readonly window: TimeWindow },
): OutcomeRow {
  const { picture, rows } = plans['first-month'];
  if (window !== firstMonth || !picture.includes(outcome)) return buildRow(desks, outcome, window);
  const parts = rows.map((part) => buildRow(desks, part, firstMonth));
  return buildWholeRow(desks, { outcome, window }, (desk) => findFloor(parts, outcome, desk));
}
