import type { OutcomeRow, Topic, TopicId } from '../../model/comparison.ts';
import { lazyView } from './lazy-view.ts';
import type { Scene } from './scene.ts';
import { body, plainRow } from './shared-shapes.ts';
import type { ChoiceTableView } from './shared-shapes.ts';
import { viewAsks } from './view-asks.ts';
import { viewChoices, viewCover } from './view-choices.ts';
import { viewContents } from './view-contents.ts';
import { viewConsent } from './view-consent.ts';
import { viewConsentCheck } from './view-consent-check.ts';
import { viewClinician } from './view-clinician.ts';
import { viewDocumentScore } from './view-document-score.ts';
import { viewHealth } from './view-health.ts';
import { viewHomecare } from './view-homecare.ts';
import { viewLanguageNotice } from './view-language-notice.ts';
import { viewLeanChecks } from './view-lean-checks.ts';
import { viewLines } from './view-lines.ts';
import { viewMatters } from './view-matters.ts';
import { viewNext } from './view-next.ts';
import { viewOpen, viewUntranslated } from './view-open.ts';
import { viewOperation } from './view-operation.ts';
import { surgeonName, viewOpinion } from './view-opinion.ts';
import { viewOwn } from './view-own.ts';
import { viewPeople } from './view-people.ts';
import { viewQuestions } from './view-questions.ts';
import type { ViewModel } from './view-shape.ts';
import { viewSources } from './view-sources.ts';
import { viewStudies } from './view-study.ts';
import { viewTables } from './view-table.ts';
import { viewUndo } from './view-undo.ts';
import { untoldEarly } from './view-untold.ts';
import { viewVitamins } from './view-vitamins.ts';
import { viewWarningSigns } from './view-warning-signs.ts';
import { viewWeighing } from './view-weighing.ts';
import { viewWeight } from './view-weight.ts';

/**
 * The only thing that templates see: every number already in words, every name already chosen. A part is worked out
 * when a template first names it, since no kind of document needs all.
 */
export function buildView(scene: Scene): ViewModel {
  const { locale, words } = scene;
  return lazyView<ViewModel>({
    date: () => locale.formatter.date(scene.date),
    surgeon: () => surgeonName(scene),
    contents: () => viewContents(scene),
    languageNotice: () => viewLanguageNotice(scene),
    cover: () => viewCover(scene),
    choices: () => viewChoices(scene),
    studies: () => viewStudies(scene),
    health: () => viewHealth(scene),
    weight: () => viewWeight(scene),
    lines: () => viewLines(scene),
    firstMonth: () => viewPeople(scene, topicOf(scene, 'first-month')),
    firstMonthQuestion: () => firstMonthQuestion(scene),
    firstMonthTables: () => tablesOf(scene, 'first-month'),
    laterYears: () => viewPeople(scene, topicOf(scene, 'later-years')),
    laterTables: () => tablesOf(scene, 'later-years'),
    livingTables: () => tablesOf(scene, 'living-with-it'),
    benefitTables: () => tablesOf(scene, 'benefits'),
    undo: () => viewUndo(scene),
    own: () => viewOwn(scene),
    unknown: () =>
      scene.options.map((option) => plainRow(option, [body(words.say(`options.${option.code}.unknown`))])),
    asks: () => viewAsks(scene),
    opinion: () => viewOpinion(scene),
    matters: () => viewMatters(scene),
    next: () => viewNext(scene),
    questions: () => viewQuestions(scene),
    consent: () => viewConsent(scene),
    operation: () => viewOperation(scene),
    homecare: () => viewHomecare(scene),
    warningSigns: () => viewWarningSigns(scene),
    vitamins: () => viewVitamins(scene),
    sources: () => viewSources(scene),
    clinician: () => viewClinician(scene),
    weighing: () => viewWeighing(scene),
    leanChecks: () => viewLeanChecks(scene),
    documentScore: () => viewDocumentScore(scene),
    consentCheck: () => viewConsentCheck(scene),
    open: () => viewOpen(scene),
    untranslated: () => viewUntranslated(scene),
    isDraft: () => scene.state === 'draft',
  });
}

function topicOf(scene: Scene, id: TopicId): Topic | undefined {
  return scene.comparison.topics.find((topic) => topic.id === id);
}

/** Where the table tells of deaths alone, a heading that asks for problems would promise more. */
function firstMonthQuestion(scene: Scene): string {
  const topic = topicOf(scene, 'first-month');
  const told = topic === undefined ? [] : rowsOf(topic).map(({ outcome }) => outcome);
  const isMore = topic !== undefined && untoldEarly(scene, topic).length > 0;
  const form = !isMore && told.join() === 'death' ? '_death' : '';
  return scene.words.plain(`comparison.first_month.question${form}`);
}

/** An outcome that the topic draws as a picture is not said again in its table. */
function rowsOf(topic: Topic): readonly OutcomeRow[] {
  return topic.rows.filter((row) => row.outcome !== topic.picture?.outcome);
}

function tablesOf(scene: Scene, id: TopicId): readonly ChoiceTableView[] {
  const topic = topicOf(scene, id);
  if (topic === undefined) return [];
  const rows = rowsOf(topic);
  return [...viewTables(scene, rows, topic.denominator), ...untoldEarly(scene, topic)];
}
