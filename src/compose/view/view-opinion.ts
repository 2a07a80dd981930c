import type { Reason } from '../../model/case.ts';
import type { Markup } from '../../model/locale.ts';
import type { ReasonCheck, ReasonFinding } from '../../model/reason-check.ts';
import type { NamedOption, Scene } from './scene.ts';
import { upperFirst } from './say-aftercare.ts';
import { healthAgainst } from './say-against.ts';
import { mostCommonHarm, weightComesBack } from './say-drawbacks.ts';
import { sayUnsupported } from './say-support.ts';
import { optionsNamed } from './scene.ts';
import { group, list, markup, optional } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineShape, withDuty } from './shared-shapes.ts';
import type { Line } from './shared-shapes.ts';
import { staysGone } from './view-undo.ts';
import { joined } from './words.ts';

export const opinionShape = group({
  /** Null where the surgeon has written no leaning. */
  leaning: optional(group({ lead: markup, reasons: list(markup), against: list(markup) })),
  advised: list(lineShape),
  second: list(lineShape),
});
export type OpinionView = Viewed<typeof opinionShape>;

/** What the surgeon thinks, as one opinion, with what speaks against it, and whom else to ask. */
export function viewOpinion(scene: Scene): OpinionView {
  const { leaning, advised_against: advised } = scene.case.decision;
  const [option] = leaning === null ? [] : optionsNamed(scene, [leaning.option]);
  return {
    leaning:
      leaning === null || option === undefined
        ? null
        : {
            lead: scene.words.say('comparison.opinion.leans', {
              surgeon: surgeonFirst(scene),
              option: option.inText,
            }),
            reasons: leaning.reasons.map((reason) =>
              reasonForPatients(scene, reason, { stance: 'for', option: leaning.option }),
            ),
            against: againstIt(scene, option),
          },
    advised: advised.flatMap((entry) =>
      optionsNamed(scene, [entry.option]).map((named) => advisedLine(scene, named, entry.reasons)),
    ),
    second: secondOpinions(scene),
  };
}

/** Name of the surgeon of this case as the clinic writes it in the language of the page. */
export function surgeonName(scene: Scene): string {
  const surgeon = scene.clinic.surgeons.find((one) => one.id === scene.case.plan.surgeon);
  return surgeon?.names?.[scene.locale.tag] ?? surgeon?.name ?? scene.words.plain('common.your_surgeon');
}

/** What a reason is given for: the option, and whether it speaks for or against it. */
export interface Stance {
  readonly stance: 'for' | 'against';
  readonly option: string;
}

/** The same at the start of a sentence: within one some languages have a small word before it, as "la Dra.". */
export function surgeonFirst(scene: Scene): string {
  return upperFirst(surgeonName(scene));
}

/** A reason as patients read it: in words, and what to know of it where nothing found bears it out. */
export function reasonForPatients(scene: Scene, reason: Reason, stance: Stance): Markup {
  const check = checkOf(scene, reason, stance);
  const beside = check === undefined ? null : sayUnsupported(scene, check);
  return joined(reasonInWords(scene, reason, stance), ...(beside === null ? [] : [beside]));
}

/** A coded reason that compares says with which other options it was compared: "fewer problems" than what? */
export function reasonInWords(scene: Scene, reason: Reason, stance: Stance): Markup {
  if (!('code' in reason)) return scene.words.free(reason.text);
  const said = scene.words.say(`codes.reasons.${reason.code}`);
  const others = (checkOf(scene, reason, stance)?.findings ?? []).flatMap(comparedWith);
  if (others.length === 0) return said;
  const names = [...new Set(others)].map((code) => scene.words.plain(`options.${code}.in_text`));
  return joined(said, scene.words.say('codes.reason_compared', { others: scene.format.list(names, 'and') }));
}

/** Nothing can check a reason in free words. */
function checkOf(scene: Scene, reason: Reason, { stance, option }: Stance): ReasonCheck | undefined {
  if (!('code' in reason)) return undefined;
  return scene.comparison.reasons.find(({ id }) => id === `${stance}/${option}/${reason.code}`);
}

function comparedWith(finding: ReasonFinding): readonly string[] {
  if (finding.find === 'compare') return finding.pairs.map(({ other }) => other);
  return finding.find === 'fewer-cautions' ? finding.others.map(({ option }) => option) : [];
}

/**
 * Against the option the surgeon leans to: own health, weight that comes back, that it cannot be undone, that it is under
 * study, and its most common harm. A case that leans to an option and advises against it is refused, so there are no
 * reasons of the surgeon against it.
 */
function againstIt(scene: Scene, option: NamedOption): readonly Markup[] {
  const { words } = scene;
  const { possible } = option.column.reversibility;
  const found = [
    ...healthAgainst(scene, option),
    ...[weightComesBack(scene, option)].filter((said) => said !== null),
    ...(possible === 'no' || possible === 'partly'
      ? [joined(words.say(`comparison.opinion.undone_${possible}`), ...staysGone(scene, option))]
      : []),
    ...(option.tag === '' ? [] : [words.say('comparison.opinion.under_study')]),
    ...[mostCommonHarm(scene, option)].filter((said) => said !== null),
  ];
  return found.length === 0 ? [words.say('comparison.opinion.nothing_against')] : found;
}

function advisedLine(scene: Scene, option: NamedOption, reasons: readonly Reason[]): Line {
  const lead = scene.words.say('comparison.opinion.advises_against', {
    surgeon: surgeonFirst(scene),
    option: option.inText,
  });
  const against = { stance: 'against', option: option.code } as const;
  return body(joined(lead, ...reasons.map((reason) => reasonForPatients(scene, reason, against))));
}

function secondOpinions(scene: Scene): readonly Line[] {
  const { second_opinion: others } = scene.clinic;
  if (others.length === 0) return [body(scene.words.say('comparison.opinion.second_none'))];
  return others.map(({ name, phone }) =>
    withDuty('phone', scene.words.say('comparison.opinion.second', { name, phone })),
  );
}
