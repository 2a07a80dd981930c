import type { Case } from '../model/case.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import type { CautionHit } from '../model/comparison.ts';
import type { Caution } from '../model/evidence-rules.ts';
import { isPrintable } from '../model/evidence.ts';
import { severeForms } from '../model/severe-forms.ts';
import type { OptionDesk } from './describe-option.ts';
import type { Subject } from './subject.ts';
import { findTriggers } from './find-triggers.ts';

const effects: readonly CautionHit['effect'][] = [
  'contra-indicated',
  'outside-indication',
  'prefer-other',
  'extra-risk',
  'needs-check',
];
const strengths: readonly CautionHit['strength'][] = ['strong', 'moderate', 'weak'];

export interface CautionInput {
  readonly health: Case['health'];
  readonly subject: Subject;
  readonly desks: readonly OptionDesk[];
  readonly clinic: ClinicProfile;
}

interface Fired {
  readonly caution: Caution;
  readonly triggers: readonly string[];
  readonly options: readonly string[];
}

/** The warnings that the case triggers for its options: gravest first, then best founded, then by id. */
export function triggerCautions(cautions: readonly Caution[], input: CautionInput): readonly CautionHit[] {
  const fired = cautions.flatMap((caution): readonly Fired[] => {
    const triggers = findTriggers(caution.when, input.health, input.subject);
    return triggers === undefined
      ? []
      : [{ caution, triggers, options: touchedOptions(caution, input.desks) }];
  });
  const standing = fired.filter(({ caution }) => input.clinic.cautions[caution.id] !== 'struck');
  return fired
    .map((hit) => ({
      ...hit,
      options: hit.options.filter((option) => !hasSeverer(standing, hit.caution, option)),
    }))
    .filter(({ options }) => options.length > 0)
    .map((hit) => describeHit(hit, { clinic: input.clinic, favours: favouredBy(hit, standing, input.desks) }))
    .sort(byGravity);
}

function touchedOptions(caution: Caution, desks: readonly OptionDesk[]): readonly string[] {
  return desks.filter((desk) => caution.options.includes(desk.figuresFrom)).map(({ code }) => code);
}

/** Beside a row about the severe form, the row about the plain form of the same option would say it twice. */
function hasSeverer(fired: readonly Fired[], caution: Caution, option: string): boolean {
  return fired.some((other) => hides(other, caution, option));
}

function hides(other: Fired, caution: Caution, option: string): boolean {
  const own = conditionsOf(caution);
  return (
    other.options.includes(option) &&
    severeForms.some(
      ({ mild, severe }) => own.includes(mild) && !own.includes(severe) && isOnlySevere(other, mild, severe),
    )
  );
}

/** Options of the case that a row holds up as better, by code; who has the severe form has what the plain row says of them too. */
function favouredBy(hit: Fired, fired: readonly Fired[], desks: readonly OptionDesk[]): readonly string[] {
  const milder = fired.filter((other) => other.options.some((option) => hides(hit, other.caution, option)));
  const favours = [hit, ...milder].flatMap(({ caution }) => caution.favours ?? []);
  return desks
    .filter((desk) => favours.includes(desk.figuresFrom))
    .map(({ code }) => code)
    .sort(byText);
}

function isOnlySevere({ caution, triggers }: Fired, mild: string, severe: string): boolean {
  return triggers.includes(`condition:${severe}`) && !conditionsOf(caution).includes(mild);
}

function conditionsOf({ when }: Caution): readonly string[] {
  return when.condition === undefined ? [] : [when.condition].flat();
}

interface HitContext {
  readonly clinic: ClinicProfile;
  readonly favours: readonly string[];
}

function describeHit({ caution, triggers, options }: Fired, { clinic, favours }: HitContext): CautionHit {
  const verdict = clinic.cautions[caution.id];
  return {
    id: caution.id,
    options,
    effect: caution.effect,
    strength: caution.strength,
    // A statement that nobody read at its source is never printed as if somebody had.
    basis: caution.basis === 'page' && isPrintable(caution) ? 'page' : 'practice',
    ...(favours.length === 0 ? {} : { favours }),
    triggers: withoutMilder(triggers),
    ...(verdict === undefined ? {} : { clinic: verdict }),
  };
}

/** Who has severe reflux is not told of reflux as well. */
function withoutMilder(triggers: readonly string[]): readonly string[] {
  const said = severeForms
    .filter(({ severe }) => triggers.includes(`condition:${severe}`))
    .map(({ mild }) => `condition:${mild}`);
  return triggers.filter((trigger) => !said.includes(trigger));
}

function byText(a: string, b: string): number {
  return a < b ? -1 : 1;
}

function byGravity(a: CautionHit, b: CautionHit): number {
  return (
    effects.indexOf(a.effect) - effects.indexOf(b.effect) ||
    strengths.indexOf(a.strength) - strengths.indexOf(b.strength) ||
    byText(a.id, b.id)
  );
}
