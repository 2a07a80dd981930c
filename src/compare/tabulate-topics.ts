import type { OutcomeRow, Topic } from '../model/comparison.ts';
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
import * as plan from './topic-plan.ts';
import { firstMonth, laterWindows } from './weigh-time.ts';

/** The four topics beside weight, in the order of the page. */
export function tabulateTopics(desks: readonly OptionDesk[], subject: Subject): readonly Topic[] {
  return [
    tabulateFirstMonth(desks),
    tabulateLaterYears(desks),
    tabulateLiving(desks),
    tabulateBenefits(desks, subject),
  ];
}

function tabulateFirstMonth(desks: readonly OptionDesk[]): Topic {
  const all = plan.firstMonthRows.map((outcome) => buildRow(desks, outcome, firstMonth));
  const rows = keepFirstRows(all, plan.firstMonthLimit);
  const picture = firstKnown(
    plan.firstMonthPicture.map((outcome) =>
      buildWholeRow(desks, { outcome, window: firstMonth }, (option) => findFloor(all, option)),
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

function tabulateLaterYears(desks: readonly OptionDesk[]): Topic {
  const picture = firstKnown(plan.laterPicture.map((outcome) => buildBestRow(desks, outcome, laterWindows)));
  const outcomes = plan.laterRows.filter((outcome) => outcome !== picture?.outcome);
  const rows = keepBestRows(
    outcomes.map((outcome) => buildBestRow(desks, outcome, laterWindows)),
    plan.laterLimit,
  );
  return {
    id: 'later-years',
    denominator: chooseDenominator(rows),
    picture: picture === undefined ? null : { ...picture, denominator: chooseDenominator([picture]) },
    rows,
  };
}

function tabulateLiving(desks: readonly OptionDesk[]): Topic {
  const rows = keepBestRows(
    plan.livingRows.map((outcome) => buildBestRow(desks, outcome, laterWindows)),
    plan.livingLimit,
  );
  return { id: 'living-with-it', denominator: chooseDenominator(rows), picture: null, rows };
}

/** Rows stay even without a figure: that nothing is known about an illness the person has is worth saying. */
function tabulateBenefits(desks: readonly OptionDesk[], subject: Subject): Topic {
  const rows = plan.benefitRows
    .filter(({ condition }) => subject.conditions.has(condition))
    .map(({ outcomes }) => {
      const choices = outcomes.map((outcome) => buildBestRow(desks, outcome, laterWindows));
      return firstKnown(choices) ?? choices[0];
    })
    .filter((row) => row !== undefined);
  return { id: 'benefits', denominator: chooseDenominator(rows), picture: null, rows };
}

function firstKnown(rows: readonly OutcomeRow[]): OutcomeRow | undefined {
  return rows.find((row) => countKnown(row) > 0);
}
