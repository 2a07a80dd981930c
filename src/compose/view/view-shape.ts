import { flag, group, list, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { choiceTableShape } from './shared-shapes.ts';
import { asksShape } from './view-asks.ts';
import { choicesShape, coverShape } from './view-choices.ts';
import { contentsShape } from './view-contents.ts';
import { consentShape } from './view-consent.ts';
import { consentCheckShape } from './view-consent-check.ts';
import { clinicianShape } from './view-clinician.ts';
import { healthShape } from './view-health.ts';
import { homecareShape } from './view-homecare.ts';
import { languageNoticeShape } from './view-language-notice.ts';
import { documentScoreShape } from './view-document-score.ts';
import { leanChecksShape } from './view-lean-checks.ts';
import { lineBoardShape } from './view-lines.ts';
import { mattersShape } from './view-matters.ts';
import { nextShape } from './view-next.ts';
import { openShape } from './view-open.ts';
import { operationShape } from './view-operation.ts';
import { opinionShape } from './view-opinion.ts';
import { ownShape } from './view-own.ts';
import { peopleShape } from './view-people.ts';
import { questionsShape } from './view-questions.ts';
import { sourcesShape } from './view-sources.ts';
import { studyShape } from './view-study.ts';
import { undoShape } from './view-undo.ts';
import { vitaminsShape } from './view-vitamins.ts';
import { warningSignsShape } from './view-warning-signs.ts';
import { weightShape } from './view-weight.ts';
import { weighingShape } from './view-weighing.ts';
import { rowShape } from './shared-shapes.ts';

/** Everything that templates may name. The lint of templates walks it; the view model has its type. */
export const viewShape = group({
  date: text,
  surgeon: text,
  contents: contentsShape,
  languageNotice: languageNoticeShape,
  cover: coverShape,
  choices: choicesShape,
  studies: studyShape,
  health: healthShape,
  weight: weightShape,
  lines: optional(lineBoardShape),
  firstMonth: optional(peopleShape),
  firstMonthQuestion: text,
  firstMonthTables: list(choiceTableShape),
  laterYears: optional(peopleShape),
  laterTables: list(choiceTableShape),
  livingTables: list(choiceTableShape),
  benefitTables: list(choiceTableShape),
  undo: undoShape,
  own: ownShape,
  unknown: list(rowShape),
  asks: asksShape,
  opinion: opinionShape,
  matters: mattersShape,
  next: nextShape,
  questions: questionsShape,
  consent: consentShape,
  operation: operationShape,
  homecare: homecareShape,
  warningSigns: warningSignsShape,
  vitamins: vitaminsShape,
  sources: sourcesShape,
  clinician: clinicianShape,
  weighing: weighingShape,
  leanChecks: leanChecksShape,
  documentScore: documentScoreShape,
  consentCheck: consentCheckShape,
  open: openShape,
  untranslated: openShape,
  isDraft: flag,
});
export type ViewModel = Viewed<typeof viewShape>;
