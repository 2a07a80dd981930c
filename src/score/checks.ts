import type { CriterionCheck } from '../model/criterion.ts';
import type { Check } from './check.ts';
import * as action from './checks/action.ts';
import * as chances from './checks/chances.ts';
import * as deciding from './checks/deciding.ts';
import * as decision from './checks/decision.ts';
import * as grounds from './checks/grounds.ts';
import * as layout from './checks/layout.ts';
import * as message from './checks/message.ts';
import * as risk from './checks/risk.ts';
import * as wording from './checks/wording.ts';

/** What looks for each criterion that a program can judge. */
export const checks: Readonly<Record<CriterionCheck, Check>> = {
  'condition-named': decision.conditionNamed,
  'decision-stated': decision.decisionStated,
  'options-listed': decision.optionsListed,
  'good-points': decision.goodPoints,
  'bad-points': decision.badPoints,
  'life-with-each': decision.lifeWithEach,
  'nothing-done': decision.nothingDone,
  'side-by-side': decision.sideBySide,
  'equal-detail': chances.equalDetail,
  'chances-given': chances.chancesGiven,
  'people-described': chances.peopleDescribed,
  'counts-of-people': chances.countsOfPeople,
  'same-time': chances.sameTime,
  'same-denominator': chances.sameDenominator,
  'several-forms': chances.severalForms,
  'chance-shown-twice': risk.chanceShownTwice,
  'studies-cited': grounds.studiesCited,
  dated: grounds.dated,
  'review-dated': grounds.reviewDated,
  'funding-said': grounds.fundingSaid,
  'method-said': grounds.methodSaid,
  'certainty-said': grounds.certaintySaid,
  'uncertainty-shown': grounds.uncertaintyShown,
  'reading-level-said': grounds.readingLevelSaid,
  'matters-asked': deciding.mattersAsked,
  'steps-to-decide': deciding.stepsToDecide,
  worksheet: deciding.worksheet,
  'everyday-words': wording.everydayWords,
  'terms-explained': wording.termsExplained,
  'active-voice': wording.activeVoice,
  'whole-numbers': wording.wholeNumbers,
  'no-arithmetic': wording.noArithmetic,
  'short-chunks': wording.shortChunks,
  'speaks-to-reader': wording.speaksToReader,
  headings: layout.headings,
  summary: layout.summary,
  'visual-cues': layout.visualCues,
  'pictures-titled': layout.picturesTitled,
  'simple-tables': layout.simpleTables,
  'charts-explained': layout.chartsExplained,
  'numbers-explained': layout.numbersExplained,
  lists: layout.lists,
  'unknown-said': layout.unknownSaid,
  'action-named': action.actionNamed,
  'action-in-steps': action.actionInSteps,
  tool: action.tool,
  'calculation-steps': action.calculationSteps,
  'title-first': message.titleFirst,
  'one-message': message.oneMessage,
  'message-first': message.messageFirst,
  'message-marked': message.messageMarked,
  'message-pictured': message.messagePictured,
  'active-message': message.activeMessage,
  'risk-explained': risk.riskExplained,
  'risks-and-benefits': risk.risksAndBenefits,
};
