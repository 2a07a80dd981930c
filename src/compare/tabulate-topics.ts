import type { OutcomeRow, Topic } from '../model/comparison.ts';
import type { TopicPlans } from '../model/topic-plan.ts';
import {
  buildBestRow,
  buildRow,
  buildWholeRow,
  chooseDenominator,
  countKnown,
  keepBestRows,
  keepFirstRows,
} from './choose-rows.ts';
import type { OptionDesk } from './describe-option.ts';
import { findFloor } from './find-contradiction.ts';
import type { Subject } from './subject.ts';
import { firstMonth } from './weigh-time.ts';

/** The four topics beside weight, in the order of the page; what each may show is data. */
export function tabulateTopics(
  desks: readonly OptionDesk[],
  subject: Subject,
  plans: TopicPlans,
): readonly Topic[] {
  return [
    tabulateFirstMonth(desks, plans['first-month']),
    tabulateLaterYears(desks, plans['later-years']),
    tabulateLiving(desks, plans['living-with-it']),
    tabulateBenefits(desks, subject, plans.benefits),
  ];
}

function tabulateFirstMonth(desks: readonly OptionDesk[], plan: TopicPlans['first-month']): Topic {
  const all = plan.rows.map((outcome) => buildRow(desks, outcome, firstMonth));
  const rows = keepFirstRows(all, plan.most);
  const picture = firstKnown(
    plan.picture.map((outcome) =>
      buildWholeRow(desks, { outcome, window: firstMonth }, (desk) => findFloor(all, outcome, desk)),
    ),
  );
  return {
    id: 'first-month',
    denominator: chooseDenominator(rows),
    // A thousand people whatever the figures, so that first-month pictures of two cases can be laid side by side.
    picture: picture === undefined ? null : { ...picture, denominator: 1000 },
    rows,
  };
}

function tabulateLaterYears(desks: readonly OptionDesk[], plan: TopicPlans['later-years']): Topic {
  const picture = firstKnown(plan.picture.map((outcome) => buildBestRow(desks, outcome)));
  const outcomes = plan.rows.filter((outcome) => outcome !== picture?.outcome);
  const rows = keepBestRows(
    outcomes.map((outcome) => buildBestRow(desks, outcome)),
    plan.most,
  );
  return {
    id: 'later-years',
    denominator: chooseDenominator(rows),
    picture: picture === undefined ? null : { ...picture, denominator: chooseDenominator([picture]) },
    rows,
  };
}

function tabulateLiving(desks: readonly OptionDesk[], plan: TopicPlans['living-with-it']): Topic {
  const rows = keepBestRows(
    plan.rows.map((outcome) => buildBestRow(desks, outcome)),
    plan.most,
  );
  return { id: 'living-with-it', denominator: chooseDenominator(rows), picture: null, rows };
}

/** Rows stay even without a figure: that nothing is known about an illness the person has is worth saying. */
function tabulateBenefits(
  desks: readonly OptionDesk[],
  subject: Subject,
  plan: TopicPlans['benefits'],
): Topic {
  const rows = plan
    .filter(({ condition }) => subject.conditions.has(condition))
    .map(({ outcomes }) => {
      const choices = outcomes.map((outcome) => buildBestRow(desks, outcome));
      return firstKnown(choices) ?? choices[0];
    })
    .filter((row) => row !== undefined);
  return { id: 'benefits', denominator: chooseDenominator(rows), picture: null, rows };
}

function firstKnown(rows: readonly OutcomeRow[]): OutcomeRow | undefined {
  return rows.find((row) => countKnown(row) > 0);
}
