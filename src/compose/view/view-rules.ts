import { isForAll } from '../../model/aftercare-plan.ts';
import { aftercareStatement } from '../../model/statement.ts';
import type { DatedRule, Grounds } from '../../model/aftercare-plan.ts';
import type { Markup } from '../../model/locale.ts';
import { citationOf } from './number-studies.ts';
import { dated, forWhom, saidForWhom, sayAmount, sayPeriod, writtenAt } from './say-aftercare.ts';
import type { Scene } from './scene.ts';
import { body, plainRow } from './shared-shapes.ts';
import type { Line, Row } from './shared-shapes.ts';
import { afterColon, joined, standingOn } from './words.ts';

/** Rules in rows by what they are about, in the order in which each comes first. */
export function ruleRows(scene: Scene, rules: readonly DatedRule[]): readonly Row[] {
  const rows = new Map<string, Line[]>();
  for (const rule of rules) {
    const name = nameOf(scene, rule);
    rows.set(name, [...(rows.get(name) ?? []), body(ruleInWords(scene, rule))]);
  }
  return [...rows].map(([name, lines]) => plainRow({ name, tag: '' }, lines));
}

/** What is advised, by where it stands: how vitamins are taken, how medicines are, and all else of life at home. */
interface AdviceByPlace {
  readonly ofVitamins: readonly DatedRule[];
  readonly ofMedicines: readonly DatedRule[];
  readonly atHome: readonly DatedRule[];
}

export function adviceByPlace(advice: readonly DatedRule[]): AdviceByPlace {
  const isOfVitamins = ({ topic }: DatedRule): boolean => topic === 'supplement';
  const isOfMedicines = ({ about }: DatedRule): boolean =>
    about === 'missed-dose' || about === 'own-medicines';
  return {
    ofVitamins: advice.filter(isOfVitamins),
    ofMedicines: advice.filter(isOfMedicines),
    atHome: advice.filter((rule) => !isOfVitamins(rule) && !isOfMedicines(rule)),
  };
}

/** "From January 28: Desk work."; "If you are pregnant: A guideline says …". */
export function ruleInWords(scene: Scene, rule: DatedRule): Markup {
  const period = sayPeriod(scene, rule.starts, rule.lastDay);
  const said =
    rule.entry === null
      ? saidForWhom(scene, rule.who, guidelineInWords(scene, rule))
      : forWhom(scene, rule.who, clinicInWords(scene, rule.entry));
  // A line that the clinic wrote for everybody begins as the clinic wrote it: a name may stand there.
  const isOwn = rule.entry === null || !isForAll(rule.who);
  return dated(scene, period, period !== '' && isOwn ? afterColon(scene.words, said) : said);
}

type Entry = NonNullable<Grounds['entry']>;

function clinicInWords(scene: Scene, entry: Entry): Markup {
  const topic = entry.topic as 'lifting' | 'medicines_after' | 'advice';
  return scene.words.free(writtenAt(scene, topic, entry).what);
}

/** One sentence for each amount that is stated, since several are never added. */
function guidelineInWords(scene: Scene, { about, amounts, tests, facts }: DatedRule): Markup {
  const { words, format } = scene;
  const named = format.list(
    tests.map((test) => words.plain(`aftercare.tests.${test}`)),
    'and',
  );
  const say = (amount: string): Markup =>
    words.say(`aftercare.guideline.${about ?? ''}`, {
      amount,
      tests: named,
      clinic: scene.clinic.clinic.name,
    });
  const said = amounts.length === 0 ? [say('')] : amounts.map((amount) => say(sayAmount(scene, amount)));
  return fromGuideline(facts, joined(...said));
}

/** Words tied to the facts that they stand on. */
export function fromGuideline(facts: readonly string[], words: Markup): Markup {
  return standingOn(facts.map(aftercareStatement), words);
}

function nameOf({ words }: Scene, { topic, about }: DatedRule): string {
  return topic === 'advice'
    ? words.plain(`aftercare.advice.${about ?? ''}`)
    : words.plain(`aftercare.topics.${topic}`);
}

/** Where the lines of guidelines come from: each source once, in the order of the lines. */
export function originsOf(scene: Scene, lines: readonly Grounds[]): readonly Markup[] {
  const ids = lines.filter(({ from }) => from === 'guideline').flatMap(({ sources }) => sources);
  return [...new Set(ids)].flatMap((id) => {
    const source = scene.evidence.aftercareSources.get(id);
    return source === undefined ? [] : [citationOf(scene, source)];
  });
}
