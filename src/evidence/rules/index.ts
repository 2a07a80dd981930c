import { aftercareCitedKnown } from './aftercare-cited-known.ts';
import { aftercareCodeFits } from './aftercare-code-fits.ts';
import { aftercareConflictBothWays } from './aftercare-conflict-both-ways.ts';
import { aftercareIronApart } from './aftercare-iron-apart.ts';
import { aftercareOptionKnown } from './aftercare-option-known.ts';
import { aftercarePlaceSeen } from './aftercare-place-seen.ts';
import { aftercareSourcePresent } from './aftercare-source-present.ts';
import { aftercareTimingStated } from './aftercare-timing-stated.ts';
import { aftercareUnitFits } from './aftercare-unit-fits.ts';
import { arithmeticAgrees } from './arithmetic-agrees.ts';
import { citationComplete } from './citation-complete.ts';
import { codeKnown } from './code-known.ts';
import { consentElementsComplete } from './consent-elements-complete.ts';
import { coverageComplete } from './coverage-complete.ts';
import { criteriaComplete } from './criteria-complete.ts';
import { doseStated } from './dose-stated.ts';
import { exchangeStated } from './exchange-stated.ts';
import { favouredWasRead } from './favoured-was-read.ts';
import { idMatchesContent } from './id-matches-content.ts';
import { idUnique } from './id-unique.ts';
import { intervalInOrder } from './interval-in-order.ts';
import { maturityAgrees } from './maturity-agrees.ts';
import { outcomePossible } from './outcome-possible.ts';
import { overlapBothWays } from './overlap-both-ways.ts';
import { overlapGroupClosed } from './overlap-group-closed.ts';
import { partsFit } from './parts-fit.ts';
import { peopleStated } from './people-stated.ts';
import { placeWhereSeen } from './place-where-seen.ts';
import { reasonsChecked } from './reasons-checked.ts';
import { referenceWeightStated } from './reference-weight-stated.ts';
import { releaseDated } from './release-dated.ts';
import { releaseHistory } from './release-history.ts';
import { reversalStated } from './reversal-stated.ts';
import { reviewDated } from './review-dated.ts';
import type { EvidenceRule } from './rule.ts';
import { scopeDefined } from './scope-defined.ts';
import { shareHasDenominator } from './share-has-denominator.ts';
import { subgroupStated } from './subgroup-stated.ts';
import { timeStated } from './time-stated.ts';
import { topicFits } from './topic-fits.ts';
import { unitFitsMetric } from './unit-fits-metric.ts';
import { unreadNeverPrints } from './unread-never-prints.ts';
import { yearsInOrder } from './years-in-order.ts';

/** Everything the data promise beyond their shape. Add a rule here and it holds for every release. */
export const evidenceRules: readonly EvidenceRule[] = [
  releaseDated,
  releaseHistory,
  reviewDated,
  maturityAgrees,
  reversalStated,
  idUnique,
  codeKnown,
  idMatchesContent,
  citationComplete,
  yearsInOrder,
  placeWhereSeen,
  overlapBothWays,
  overlapGroupClosed,
  peopleStated,
  subgroupStated,
  exchangeStated,
  scopeDefined,
  doseStated,
  timeStated,
  outcomePossible,
  topicFits,
  partsFit,
  shareHasDenominator,
  intervalInOrder,
  unitFitsMetric,
  referenceWeightStated,
  arithmeticAgrees,
  unreadNeverPrints,
  favouredWasRead,
  coverageComplete,
  reasonsChecked,
  criteriaComplete,
  consentElementsComplete,
  aftercareSourcePresent,
  aftercarePlaceSeen,
  aftercareCodeFits,
  aftercareOptionKnown,
  aftercareTimingStated,
  aftercareUnitFits,
  aftercareIronApart,
  aftercareConflictBothWays,
  aftercareCitedKnown,
];
