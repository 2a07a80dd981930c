import { isForAll } from '../../model/aftercare-plan.ts';
import type { Due, Repetition, TestPlan } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import {
  forWhom,
  freeSentence,
  saidForWhom,
  saySpan,
  sayNext,
  sayRepetition,
  upperFirst,
  writtenAt,
} from './say-aftercare.ts';
import type { Scene } from './scene.ts';
import { group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineShape } from './shared-shapes.ts';
import { fromGuideline } from './view-rules.ts';
import { asMarkup, joined, sentence } from './words.ts';

export const checkRowsShape = list(group({ name: text, due: text, lines: list(lineShape) }));
export type CheckRow = Viewed<typeof checkRowsShape>[number];

export const bloodTestsShape = group({
  /** At most four days to tick side by side. */
  boards: list(group({ columns: list(text), rows: checkRowsShape })),
  /** What goes on after the days to tick, once where that is the same for all; and tests without a day within two years. */
  later: list(markup),
});
export type BloodTestsView = Viewed<typeof bloodTestsShape>;

const mostColumns = 4;

/** Every day of tests is a column; what goes on after two years is said below: in large print days stand under a test. */
export function viewBloodTests(scene: Scene, tests: readonly TestPlan[]): BloodTestsView {
  const days = [...new Set(tests.flatMap(({ due }) => due.map(({ date }) => date)))].sort((a, b) =>
    a < b ? -1 : 1,
  );
  const boards = Array.from({ length: Math.ceil(days.length / mostColumns) }, (_, board) =>
    days.slice(board * mostColumns, (board + 1) * mostColumns),
  );
  const common = commonRepetition(tests);
  return {
    boards: boards.map((shown) => ({
      columns: shown.map((day) => columnOf(scene, tests, day)),
      rows: tests.flatMap((plan) => testRow(scene, plan, shown)),
    })),
    later: [
      ...(common === null ? [] : [scene.words.say('vitamins.goes_on', sayNext(scene, common))]),
      ...tests.flatMap((plan) => laterTest(scene, plan, common)),
    ],
  };
}

/** "6 months", and the day. */
function columnOf(scene: Scene, tests: readonly TestPlan[], day: string): string {
  const after = tests.flatMap(({ due }) => due).find(({ date }) => date === day)?.after ?? null;
  const date = scene.format.shortDate(day);
  if (after === null) return date;
  // The head of a narrow column: a number never stands apart from its unit.
  const span = saySpan(scene, after).replace(' ', '\u00a0');
  return scene.words.plain('vitamins.column', { span, date });
}

/** How blood tests go on after two years, if it is the same for all of them; it is then said once. */
function commonRepetition(tests: readonly TestPlan[]): Repetition | null {
  const blood = tests.filter((plan) => !isScan(plan));
  const [first = null, ...others] = blood.map(({ then }) => then);
  const same = others.every(
    (other) => other?.next.date === first?.next.date && other?.lastDay === first?.lastDay,
  );
  return same && first?.lastDay === null ? first : null;
}

function isScan({ tests }: TestPlan): boolean {
  return tests.length > 0 && tests.every((test) => test === 'bone-density');
}

function testRow(scene: Scene, plan: TestPlan, days: readonly string[]): readonly CheckRow[] {
  const due = days.flatMap((day, index) => (isDue(plan.due, day) ? [String(index + 1)] : []));
  if (due.length === 0) return [];
  return [
    {
      name: scene.words.plain(isScan(plan) ? 'vitamins.scan' : 'vitamins.blood'),
      due: due.join(' '),
      lines: whatIsTested(scene, plan).map(body),
    },
  ];
}

/** A scan has its name already; the words of a clinic on it, or whose advice it is, stand there too. */
function whatIsTested(scene: Scene, plan: TestPlan): readonly Markup[] {
  const isNamed = isScan(plan) && plan.from === 'clinic' && isForAll(plan.who);
  const said = testedIn(scene, isNamed ? { ...plan, tests: [] } : plan);
  return said.markup === '' ? [] : [said];
}

function isDue(due: readonly Due[], day: string): boolean {
  return due.some(({ date }) => date === day);
}

/** What is tested: names, or the clinic's words. */
function testedIn(scene: Scene, plan: TestPlan): Markup {
  const { words } = scene;
  const other = plan.entry === null ? undefined : writtenAt(scene, 'blood_tests', plan.entry).other;
  if (plan.from === 'guideline') {
    const said = words.say('aftercare.guideline.tests', { tests: namesOf(scene, plan) });
    return fromGuideline(plan.facts, saidForWhom(scene, plan.who, said));
  }
  const own = other === undefined ? [] : [freeSentence(scene, other)];
  if (plan.tests.length === 0) return forWhom(scene, plan.who, joined(...own));
  const named = sentence(words, asMarkup(upperFirst(namesOf(scene, plan))));
  return saidForWhom(scene, plan.who, joined(named, ...own));
}

function namesOf({ words, format }: Scene, { tests }: TestPlan): string {
  return format.list(
    tests.map((test) => words.plain(`aftercare.tests.${test}`)),
    'and',
  );
}

function laterTest(scene: Scene, plan: TestPlan, common: Repetition | null): readonly Markup[] {
  if (plan.atEachVisit) {
    // Only guidelines tie a test to every visit.
    const said = scene.words.say('aftercare.guideline.tests_each_visit', { tests: namesOf(scene, plan) });
    return [fromGuideline(plan.facts, said)];
  }
  const isSaid = common !== null && !isScan(plan) && plan.due.length > 0;
  if (isSaid || plan.then === null) return [];
  return [joined(testedIn(scene, plan), sayRepetition(scene, plan.then))];
}
