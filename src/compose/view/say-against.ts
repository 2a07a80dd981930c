import type { CautionHit } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { mayState, patientCautions } from './patient-cautions.ts';
import type { NamedOption, Scene } from './scene.ts';
import { triggersInWords } from './view-health.ts';
import { joined, standingOn } from './words.ts';

/** A sentence that tells against an option, with the facts of the case that it is about. */
interface Against {
  readonly causes: readonly Markup[];
  readonly why: Markup;
}

/**
 * What of the person's health speaks against an option, each with what it does: an illness alone is no reason, and may be
 * one for the option too. Only what tells the option from others is named, so the last says where all about it stands,
 * also what has only to be checked.
 */
export function healthAgainst(scene: Scene, option: NamedOption): readonly Markup[] {
  const isInBox = patientCautions(scene).some(({ options }) => options.includes(option.code));
  const see = isInBox ? [scene.words.say('comparison.opinion.see_health')] : [];
  return [...healthAgainstAlone(scene, option), ...see];
}

/** The same on a page that has no box with these warnings. */
export function healthAgainstAlone(scene: Scene, option: NamedOption): readonly Markup[] {
  return reasonsOfHealth(scene, option).map(({ causes, why }) => joined(...causes, why));
}

function reasonsOfHealth(scene: Scene, option: NamedOption): readonly Against[] {
  return patientCautions(scene)
    .filter((hit) => hit.effect !== 'needs-check' && tellsApart(scene, hit, option))
    .map((hit) => against(scene, hit))
    .reduce<readonly Against[]>(withOneMore, []);
}

/** A caution that touches every operation of the case alike is no reason against one of them. */
function tellsApart(scene: Scene, hit: CautionHit, option: NamedOption): boolean {
  const touched = [hit, ...counterparts(scene, hit, option)].flatMap(({ options }) => options);
  const alike = scene.options.filter(
    ({ code, column }) => column.kind === option.column.kind && code !== option.code,
  );
  return (
    hit.options.includes(option.code) &&
    (alike.length === 0 || alike.some(({ code }) => !touched.includes(code)))
  );
}

/** What the same fact of the case means for other options: an earlier clot is a reason for care with any operation. */
function counterparts(scene: Scene, hit: CautionHit, option: NamedOption): readonly CautionHit[] {
  return patientCautions(scene).filter(
    ({ effect, options, triggers }) =>
      effect !== 'needs-check' &&
      !options.includes(option.code) &&
      triggers.some((trigger) => hit.triggers.includes(trigger)),
  );
}

/** What was read, where its first sentence says it all; else the fact of the case, and what such a warning means. */
function against(scene: Scene, hit: CautionHit): Against {
  const { words, evidence } = scene;
  const isStated = mayState(scene, hit);
  if (
    isStated &&
    evidence.cautions.some(({ id, opens_with_reason: opens }) => id === hit.id && opens === true)
  ) {
    const said = firstSentence(words.say(`cautions.${hit.id}.statement`));
    return { causes: [], why: standingOn([cautionStatement(hit.id)], said) };
  }
  const means = isStated ? hit.effect : 'not-known';
  return { causes: [triggersInWords(scene, hit)], why: words.say(`comparison.opinion.means.${means}`) };
}

/** Facts that mean the same stand together before what they mean. */
function withOneMore(all: readonly Against[], one: Against): readonly Against[] {
  const known = all.find(({ why }) => why.markup === one.why.markup);
  if (known === undefined) return [...all, one];
  const said = known.causes.map(({ markup }) => markup);
  const causes = [...known.causes, ...one.causes.filter(({ markup }) => !said.includes(markup))];
  return all.map((other) => (other === known ? { ...known, causes } : other));
}

/** The words up to the end of their first sentence. */
export function firstSentence({ markup }: Markup): Markup {
  return { markup: markup.split(/(?<=[.!?।]) |(?<=。)/u)[0] ?? markup };
}
