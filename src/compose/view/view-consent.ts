import { tied } from './clinician-ids.ts';
import { declinedInWords, outcomesOfDeclined } from './say-declined.ts';
import { outcomeMeanings } from './say-meanings.ts';
import { outcomesNamed } from './say-risk.ts';
import { upperFirst } from './say-aftercare.ts';
import { talkAbout } from './say-talk.ts';
import { chosenOption, onlyAbout } from './scene.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { lineShape } from './shared-shapes.ts';
import { healthShape, viewHealth } from './view-health.ts';
import { surgeonName } from './view-opinion.ts';
import { isProcedure } from './view-people.ts';
import { studyShape, viewStudies } from './view-study.ts';
import { adultAge } from './view-undo.ts';

export const consentShape = group({
  facts: list(group({ label: text, value: text })),
  /** The panel of an option under study: who oversees it, what is not known. */
  study: studyShape,
  /** What the person's own health means for the option that was chosen. */
  health: healthShape,
  /** What was explained, each point with what the pages say of the chosen option. */
  talk: list(group({ lines: list(lineShape) })),
  /** What the names of harms and gains in the talk mean, where they do not say it. */
  meanings: list(markup),
  teachBack: list(text),
  /** Who interprets, between which languages; null where nobody is needed. */
  interpreter: optional(text),
  /** What is agreed to or not, a line each. */
  yes: list(text),
  /** The options that were offered and not chosen, each with its first figures. */
  declined: list(markup),
  /** The answer that one of them is not wanted, on one line: a verb without its "not" says the opposite. */
  refusal: text,
  signers: list(text),
  /** What stands on every field to sign while nobody may; empty on a final. */
  plate: text,
});
export type ConsentView = Viewed<typeof consentShape>;

/** The record of the talk about the option that was chosen. The case names it, or the input stage has refused. */
export function viewConsent(scene: Scene): ConsentView {
  const option = chosenOption(scene);
  const alone = onlyAbout(scene, option);
  const { words } = scene;
  const others = scene.options.filter(({ code }) => code !== option.code);
  const outcomes = [
    ...outcomesNamed(scene, option),
    ...others.flatMap((other) => outcomesOfDeclined(scene, other)),
  ];
  return {
    facts: factsOf(scene, option),
    study: viewStudies(alone),
    health: viewHealth(alone),
    talk: talkAbout(scene, option).map((lines) => ({ lines })),
    meanings: outcomeMeanings(scene, outcomes),
    teachBack: ['done', 'worst', 'call'].map((key) => words.plain(`consent.teach_back.${key}`)),
    interpreter: interpreterOf(scene),
    yes: askedOf(option).map((key) => words.plain(`consent.yes.${key}`, { option: option.inText })),
    declined: others.map((other) => declinedInWords(scene, other)),
    refusal: tied(words.plain('consent.declined.no')),
    signers: signersFor(scene, option).map((key) => words.plain(`consent.sign.${key}`)),
    plate: scene.state === 'final' ? '' : words.plain('consent.sign.draft'),
  };
}

/** A person under age signs too, beside who decides. */
function signersFor({ comparison }: Scene, option: NamedOption): readonly string[] {
  const parent = comparison.person.age < adultAge ? ['parent'] : [];
  const asleep = isProcedure(option) ? ['anesthesia'] : [];
  return ['patient', ...parent, 'surgeon', 'talker', ...asleep, 'witness'];
}

/** Whom a person lets take part is asked where something is done to the body. */
function askedOf(option: NamedOption): readonly string[] {
  const parts = ['blood', 'learners', 'watching', 'exams', 'other_surgeon'];
  return ['choice', ...(isProcedure(option) ? parts : [])];
}

function factsOf(scene: Scene, option: NamedOption): ConsentView['facts'] {
  const { words, format } = scene;
  const { patient, plan } = scene.case;
  const facts: readonly (readonly [key: string, value: string])[] = [
    ['clinic', scene.clinic.clinic.name],
    ['patient', patient.name],
    ['born', format.date(patient.born)],
    ['option', option.name],
    ['trade', words.plain(`options.${option.code}.trade`)],
    [
      'planned',
      plan.operation_date === undefined ? words.plain('consent.not_yet') : format.date(plan.operation_date),
    ],
    ['surgeon', surgeonName(scene)],
    ...standingOf(scene, option),
    ['language', languageOfTalk(scene)],
  ];
  return facts.map(([key, value]) => ({ label: words.plain(`consent.facts.${key}`), value }));
}

/** Nothing where nobody has recorded it, as of doing nothing: "not recorded" would sound like a fault of the choice. */
function standingOf({ words }: Scene, { column }: NamedOption): readonly (readonly [string, string])[] {
  const { maturity } = column.standing;
  return maturity === 'not-recorded' ? [] : [['standing', words.plain(`consent.standing.${maturity}`)]];
}

/** With a capital, as the other facts: many languages write the names of languages small. */
function languageOfTalk({ words, format, case: { interpreter }, locale }: Scene): string {
  const { language } = interpreter;
  if (!interpreter.needed || language === undefined) return upperFirst(format.languageName(locale.tag));
  return upperFirst(words.plain('consent.interpreted', { language: format.languageName(language) }));
}

function interpreterOf({ words, format, case: { interpreter } }: Scene): string | null {
  if (!interpreter.needed) return null;
  const { language } = interpreter;
  return language === undefined
    ? words.plain('consent.interpreter.any')
    : words.plain('consent.interpreter.statement', { language: format.languageName(language) });
}
