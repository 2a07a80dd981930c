import { openMatters } from '../../model/aftercare-plan.ts';
import type { AftercarePlan, SupplementPlan } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import type { LocalText } from '../../model/scalars.ts';
import {
  freeSentence,
  planOf,
  sayAmount,
  sayDay,
  sayPeriod,
  saidForWhom,
  sayRepetition,
  saySpan,
  upperFirst,
  writtenAt,
} from './say-aftercare.ts';
import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { bloodTestsShape, checkRowsShape, viewBloodTests } from './view-blood-tests.ts';
import type { CheckRow } from './view-blood-tests.ts';
import { adviceByPlace, fromGuideline, originsOf, ruleInWords } from './view-rules.ts';
import { asMarkup, bold, joined, sentence } from './words.ts';

export const vitaminsShape = group({
  /** How long: for life, from a day on where that is the same for all. */
  intro: text,
  /** What to take. */
  supplements: checkRowsShape,
  /** How to take it, where the clinic does not say. */
  handling: list(markup),
  tests: bloodTestsShape,
  /** Names of what guidelines differ on and the clinic does not say; empty if there is none. */
  ask: text,
  origins: list(markup),
});
export type VitaminsView = Viewed<typeof vitaminsShape>;
/** What to take, and when blood is tested, from the plan of the time after the treatment. */
export function viewVitamins(scene: Scene): VitaminsView {
  const plan = planOf(scene);
  const { supplements, tests, advice } = plan;
  const { ofVitamins: handling } = adviceByPlace(advice);
  return {
    intro: introOf(scene, supplements),
    supplements: supplements.map((one) => supplementRow(scene, one, commonStart(supplements) !== null)),
    handling: handling.map((rule) => ruleInWords(scene, rule)),
    tests: viewBloodTests(scene, tests),
    ask: namesToAsk(scene, plan),
    origins: originsOf(scene, [...supplements, ...tests, ...handling]),
  };
}

/** The day from which all are taken for life, if it is the same for all; it is then said once. */
function commonStart(supplements: readonly SupplementPlan[]): string | null {
  const [first] = supplements;
  const isCommon = supplements.every(({ starts, lastDay }) => starts === first?.starts && lastDay === null);
  return first !== undefined && isCommon ? first.starts : null;
}

function introOf(scene: Scene, supplements: readonly SupplementPlan[]): string {
  const start = commonStart(supplements);
  return start === null
    ? scene.words.plain('vitamins.take.intro')
    : scene.words.plain('vitamins.take.intro_from', { date: sayDay(scene, start) });
}

function supplementRow(scene: Scene, plan: SupplementPlan, isDated: boolean): CheckRow {
  const line = plan.entry === null ? null : writtenAt(scene, 'supplements', plan.entry);
  const free = (text: LocalText | undefined): readonly Line[] =>
    text === undefined ? [] : [body(scene.words.free(text))];
  const period = isDated ? '' : sayPeriod(scene, plan.starts, plan.lastDay);
  return {
    name: scene.words.plain(`aftercare.supplements.${plan.supplement}`),
    due: '',
    lines: [
      ...free(line?.product),
      ...doseLines(scene, plan, line?.how),
      ...(period === '' ? [] : [body(sentence(scene.words, asMarkup(period)))]),
      ...dueLines(scene, plan),
    ],
  };
}

/** How much and how often; how to take it goes on in the same line. */
function doseLines(scene: Scene, plan: SupplementPlan, how: LocalText | undefined): readonly Line[] {
  const { words } = scene;
  if (plan.from === 'guideline') return [body(saidForWhom(scene, plan.who, guidelineDose(scene, plan)))];
  const often = sayOften(scene, plan);
  const said =
    plan.dose === null ? often : words.plain('aftercare.dose', { dose: sayDose(scene, plan.dose), often });
  const dose = bold(saidForWhom(scene, plan.who, sentence(words, asMarkup(upperFirst(said)))));
  return [body(how === undefined ? dose : joined(dose, freeSentence(scene, how)))];
}

function guidelineDose(scene: Scene, { supplement, amounts, facts }: SupplementPlan): Markup {
  const { words, clinic, format } = scene;
  if (amounts.length === 0)
    return fromGuideline(
      facts,
      words.say(`aftercare.guideline.${supplement}`, { clinic: clinic.clinic.name }),
    );
  const amount = format.list(
    amounts.map((one) => sayAmount(scene, one)),
    'or',
  );
  return fromGuideline(facts, words.say('aftercare.guideline.dose', { amount }));
}

function sayDose({ words, format }: Scene, { amount, unit }: NonNullable<SupplementPlan['dose']>): string {
  return words.plain(`aftercare.doses.${unit}`, { number: format.number(amount), count: amount });
}

/** "3 times a day", "once a day", "every 3 months". */
function sayOften(scene: Scene, { timesADay: times, every }: SupplementPlan): string {
  const { words } = scene;
  const isDaily = every.unit === 'day' && every.count === 1;
  const daily =
    times === 1
      ? words.plain('aftercare.often.once')
      : words.plain('aftercare.often.daily', { times, count: times });
  if (isDaily) return daily;
  const spaced = words.plain('aftercare.often.spaced', { span: saySpan(scene, every) });
  return times === 1 ? spaced : words.plain('aftercare.dose', { dose: daily, often: spaced });
}

/** Days of what is taken once in a while. */
function dueLines(scene: Scene, { due, then }: SupplementPlan): readonly Line[] {
  if (due.length === 0) return [];
  const days = scene.format.list(
    due.map(({ date }) => sayDay(scene, date)),
    'and',
  );
  return [
    body(scene.words.say('vitamins.due', { days })),
    ...(then === null ? [] : [body(sayRepetition(scene, then))]),
  ];
}

/** What guidelines differ on, or somebody must prescribe, and the clinic says nothing of. */
function namesToAsk({ words, format }: Scene, plan: AftercarePlan): string {
  const subjects = openMatters(plan).flatMap(({ topic, subject }) =>
    topic === 'supplement' && subject !== null ? [`aftercare.supplements.${subject}`] : [],
  );
  const names = subjects.filter((key) => words.has(key)).map((key) => words.plain(key));
  return format.list([...new Set(names)], 'and');
}
