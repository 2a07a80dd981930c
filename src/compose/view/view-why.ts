import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, optional, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { ownWords } from './view-matters.ts';
import { reasonForPatients, surgeonFirst } from './view-opinion.ts';

export const whyShape = group({
  /** What the person said matters, in quotation marks. */
  said: list(markup),
  /** What the surgeon thinks of it; null where nothing was written down. */
  surgeon: optional(group({ lead: markup, reasons: list(markup) })),
  /** That the surgeon advises against it, and why. */
  against: optional(group({ lead: markup, reasons: list(markup) })),
});
export type WhyView = Viewed<typeof whyShape>;

/** Why this option was chosen: what the person said, and what the surgeon thinks, for and against. */
export function viewWhy(scene: Scene, option: NamedOption): WhyView {
  return {
    said: scene.case.decision.matters_most.map((matter) => ownWords(scene, matter)),
    surgeon: leaning(scene, option),
    against: advice(scene, option),
  };
}

function leaning(scene: Scene, option: NamedOption): WhyView['surgeon'] {
  const { leaning: lean } = scene.case.decision;
  if (lean === null) return null;
  const names = { surgeon: surgeonFirst(scene), option: option.inText };
  if (lean.option !== option.code) {
    // Its words, not its column: the scene may be of the chosen option alone.
    const words = { ...names, other: scene.words.plain(`options.${lean.option}.in_text`) };
    return { lead: scene.words.say('operation.why.other_choice', words), reasons: [] };
  }
  const reasons = lean.reasons.map((reason) =>
    reasonForPatients(scene, reason, { stance: 'for', option: lean.option }),
  );
  const key = reasons.length === 0 ? 'same_choice' : 'same_choice_why';
  return { lead: scene.words.say(`operation.why.${key}`, names), reasons };
}

function advice(scene: Scene, option: NamedOption): WhyView['against'] {
  const entry = scene.case.decision.advised_against.find((one) => one.option === option.code);
  if (entry === undefined) return null;
  const lead: Markup = scene.words.say('comparison.opinion.advises_against', {
    surgeon: surgeonFirst(scene),
    option: option.inText,
  });
  const stance = { stance: 'against', option: option.code } as const;
  return { lead, reasons: entry.reasons.map((reason) => reasonForPatients(scene, reason, stance)) };
}
