import type { Markup } from '../../model/locale.ts';
import { riskTimes } from './possible-harms.ts';
import { ownBmi } from './say-bmi.ts';
import { choiceInWords } from './say-choice.ts';
import { gainOf } from './say-gain.ts';
import { benefitLines, countedLines, harmLines, otherHarmLines, harmsCounted } from './say-risk.ts';
import { onlyAbout, optionList } from './scene.ts';
import type { NamedOption, Scene } from './scene.ts';
import { body, lineOf } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { viewAsks } from './view-asks.ts';
import { pictureFor } from './view-drawing.ts';
import { viewHealth } from './view-health.ts';
import { isProcedure } from './view-people.ts';
import { viewUndo } from './view-undo.ts';
import { viewWhy } from './view-why.ts';
import type { WhyView } from './view-why.ts';
import { afterColon, bold, joined, runIn } from './words.ts';

/** What was explained, point by point, with what the pages say of the chosen option; each is ticked and initialled. */
export function talkAbout(scene: Scene, option: NamedOption): readonly (readonly Line[])[] {
  const alone = onlyAbout(scene, option);
  return [
    ...whyTreated(scene).map((said) => point(scene, 'why', [said])),
    point(scene, 'matters', [whatMatters(alone, option)]),
    point(scene, 'advice', [adviceOn(alone, option)]),
    point(scene, 'choices', [otherChoices(scene, option)]),
    point(scene, 'what', [whatIsDone(scene, option)]),
    point(scene, 'gain', [gainOf(scene, option), ...benefitLines(scene, option), ...gainUnknown(scene)]),
    ...whatCanGoWrong(scene, option),
    point(scene, 'own_health', [ownHealth(alone)]),
    point(scene, 'undo', undoing(alone)),
    [...point(scene, 'life', stayAndVisits(alone)), ...forLife(alone)],
    point(scene, 'unknown', [scene.words.say(`options.${option.code}.unknown`)]),
    point(scene, 'nothing', nothingOf(scene)),
    point(scene, 'team', [teamOf(scene, option)]),
  ];
}

/** The head of a point stands in the line of its first words. */
function point({ words }: Scene, key: string, [first, ...others]: readonly Markup[]): readonly Line[] {
  const head = bold(words.say(`consent.talk.${key}`));
  return [first === undefined ? head : joined(head, first), ...others].map(body);
}

/** Illnesses of one point: more would make a row that no page holds, and that nobody takes in at once. */
const mostAtOnce = 12;

/** What is to be treated: weight and the illnesses that the case names, so many to a point. */
function whyTreated(scene: Scene): readonly Markup[] {
  const { words, format, clinic, comparison } = scene;
  const { health } = scene.case;
  const { weightKg } = comparison.person;
  const illnesses = health.conditions.map((code) => words.plain(`codes.conditions.${code}`));
  const weight = words.say('consent.talk.why_weight', {
    weight: format.weight(weightKg, clinic.clinic.units),
    bmi: ownBmi(scene),
  });
  const starts = illnesses.map((_, index) => index).filter((index) => index % mostAtOnce === 0);
  const [first, ...others] = starts.map((start) =>
    words.say('comparison.health.you.condition', {
      what: format.list(illnesses.slice(start, start + mostAtOnce), 'and'),
    }),
  );
  return first === undefined ? [weight] : [joined(weight, first), ...others];
}

function whatMatters(alone: Scene, option: NamedOption): Markup {
  const { said } = viewWhy(alone, option);
  return said.length === 0 ? alone.words.say('operation.why.none') : joined(...said);
}

function adviceOn(scene: Scene, option: NamedOption): Markup {
  const { surgeon, against } = viewWhy(scene, option);
  const said = [surgeon, against].flatMap((one) => (one === null ? [] : [whyInLine(scene, one)]));
  return said.length === 0 ? scene.words.say('comparison.opinion.none') : joined(...said);
}

function whyInLine({ words }: Scene, { lead, reasons }: NonNullable<WhyView['against']>): Markup {
  const [first, ...others] = reasons;
  return first === undefined ? lead : joined(runIn(words, lead, first), ...others);
}

function otherChoices(scene: Scene, option: NamedOption): Markup {
  const others = scene.options.filter(({ code }) => code !== option.code).map(({ code }) => code);
  return scene.words.say('consent.talk.choices_named', { options: optionList(scene, others, 'and') });
}

/** How one sleeps, as the steps of the drawing begin. */
const sleep: readonly string[] = ['asleep', 'sleepy'];

function whatIsDone(scene: Scene, option: NamedOption): Markup {
  const { words } = scene;
  const steps = pictureFor(scene, option)?.steps.filter((step) => sleep.includes(step)) ?? [];
  return joined(
    choiceInWords(scene, option),
    ...steps.map((step) => words.say(`operation.step.${step}`)),
    ...(isProcedure(option) ? [words.say('consent.talk.sleep')] : []),
  );
}

/** With figures where there are any; then by name alone what these pages do not count. */
function whatCanGoWrong(scene: Scene, option: NamedOption): readonly (readonly Line[])[] {
  const { words } = scene;
  const told = riskTimes.map((when) => ({
    when,
    counted: harmLines(scene, option, when),
    others: otherHarmLines(scene, option, when),
  }));
  const counted = told.map(({ when, counted: lines, others }) => {
    const none = words.say(`consent.talk.${others.length === 0 ? 'none_listed' : 'none_counted'}`);
    const twice = when === 'later' ? countedTwice(scene, option) : [];
    return point(scene, when, lines.length === 0 ? [none] : [...lines, ...twice]);
  });
  const others = told.flatMap((one) => one.others);
  if (others.length === 0) return counted;
  const parts = inParts([words.say('consent.talk.else_ask'), ...others]);
  return [
    ...counted,
    ...parts.map((part) => point(scene, 'else', part)),
    point(scene, 'slow', slowHarms(scene, option)),
  ];
}

/** Lines of one point: more would make a row that no page holds. */
const mostLines = 6;

function inParts<T>(lines: readonly T[]): readonly (readonly T[])[] {
  const starts = lines.map((_, index) => index).filter((index) => index % mostLines === 0);
  return starts.map((start) => lines.slice(start, start + mostLines));
}

/** A change of operation is one more operation too, but another study counted it, for another time. */
function countedTwice(scene: Scene, option: NamedOption): readonly Markup[] {
  const counted = harmsCounted(scene, option).map(({ outcome }) => outcome);
  const both = counted.includes('reoperation') && counted.includes('conversion');
  return both ? [scene.words.say('consent.talk.includes')] : [];
}

/** Of an illness that no topic asks about nobody says here how it changes. */
function gainUnknown({ words, evidence, case: { health } }: Scene): readonly Markup[] {
  const asked = evidence.topics.benefits.map(({ condition }) => condition);
  const isLeft = health.conditions.some((code) => !asked.includes(code));
  return isLeft ? [words.say('consent.talk.gain_none')] : [];
}

/** What comes slowly and is counted by each study in its own way: weight that returns, and a lack of vitamins. */
function slowHarms(scene: Scene, option: NamedOption): readonly Markup[] {
  // Taking a band out ends what it did to eating; what goes in by mouth leaves the way of the food as it is.
  const lacks = option.column.kind === 'operation' && option.column.indication !== 'band-trouble';
  const keys = ['slow_regain', ...(lacks ? ['slow_vitamins'] : [])];
  return keys.map((key) => scene.words.say(`consent.talk.${key}`));
}

/** The box on one's own health has it all; here that it was talked about. */
function ownHealth(alone: Scene): Markup {
  const any = viewHealth(alone).length > 0;
  return alone.words.say(any ? 'consent.talk.own_health_box' : 'consent.talk.own_health_none');
}

/** The same sentences as in the comparison. */
function undoing(alone: Scene): readonly Markup[] {
  return viewUndo(alone).flatMap(({ lines }) => lines.map(({ words }) => words));
}

function stayAndVisits(alone: Scene): readonly Markup[] {
  const { table } = viewAsks(alone);
  const [row] = table.rows;
  return table.columns.flatMap(({ label }, index) => {
    const lines = row?.cells[index]?.lines ?? [];
    if (index === 0 || lines.length === 0) return [];
    return [
      alone.words.say('consent.talk.asks', { label, words: joined(...lines.map(({ words }) => words)) }),
    ];
  });
}

function forLife(alone: Scene): readonly Line[] {
  const [first, ...others] = viewAsks(alone).forLife.flatMap(({ lines }) => lines);
  if (first === undefined) return [];
  const label = alone.words.plain('comparison.asks.for_life');
  const said = alone.words.say('consent.talk.asks', {
    label,
    words: afterColon(alone.words, first.words),
  });
  return [body(said), ...others.map(({ words }) => lineOf('small', words))];
}

function nothingOf(scene: Scene): readonly Markup[] {
  const nothing = scene.options.find(({ code }) => code === 'no-operation');
  return nothing === undefined ? [] : [gainOf(scene, nothing), ...countedLines(scene, nothing)];
}

function teamOf({ words }: Scene, option: NamedOption): Markup {
  return words.say(isProcedure(option) ? 'consent.talk.team_words' : 'consent.talk.team_care');
}
