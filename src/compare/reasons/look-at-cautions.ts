import type { Caution, CautionCoverage } from '../../model/evidence-rules.ts';
import { isPrintable } from '../../model/evidence.ts';
import type { FindingOf, Means, ReasonFinding } from '../../model/reason-check.ts';
import type { LookOf } from '../../model/reason-rules.ts';
import type { OptionDesk } from '../describe-option.ts';
import { findTriggers } from '../find-triggers.ts';
import { alikeOthers, meaningOf } from './reason-desk.ts';
import type { AskedOption, ReasonDesk } from './reason-desk.ts';

/** A caution that the case calls up, whatever its options, with the codes that called it up. */
interface Called {
  readonly caution: Caution;
  readonly triggers: readonly string[];
  /** A source was read; else it stands on usual practice and can bear nothing out. */
  readonly isRead: boolean;
}

/** What cautions say of the option, for the conditions and medicines of the look that the case has. */
export function lookCautions(
  look: LookOf<'cautions'>,
  { desk }: AskedOption,
  room: ReasonDesk,
): ReasonFinding {
  const codes = codesOf(look, desk, room);
  const about = callAll(desk, room).filter(({ triggers }) => triggers.some((code) => codes.includes(code)));
  const warning = about.filter((called) => warns(called, desk, look.effects));
  const warned = warning.filter(({ isRead }) => isRead);
  const favouring = about.filter(({ caution, isRead }) => isRead && favours(caution, desk));
  if (warned.length > 0) return say('warned', warned, look.warned);
  const onPages = favouring.filter(({ caution }) => isCompared(caution, room));
  if (onPages.length > 0) return say('favoured', onPages, look.favoured);
  if (favouring.length > 0) return say('favoured', favouring);
  if (warning.length > 0) return say('practice', warning);
  const isSpared = codes.length > 0 && codes.every((code) => isAccountedFor(code, desk, room));
  return isSpared ? say('spared', [], look.spared) : say('silent', []);
}

function say(
  said: FindingOf<'cautions'>['said'],
  called: readonly Called[],
  means: Means = 'nothing',
): ReasonFinding {
  const cautions = called.map(({ caution }) => caution.id).sort(byText);
  return { find: 'cautions', said, means, cautions };
}

/** Conditions and medicines of the look that the case has, as triggers write them. */
function codesOf(
  look: LookOf<'cautions'>,
  { subject }: OptionDesk,
  { given }: ReasonDesk,
): readonly string[] {
  const { condition = [], medicine = [] } = look;
  return [
    ...condition.filter((code) => subject.conditions.has(code)).map((code) => `condition:${code}`),
    ...medicine.filter((code) => given.health.medicines.includes(code)).map((code) => `medicine:${code}`),
  ];
}

/** Better than a choice that this person does not have bears nothing out: no page of theirs prints that caution. */
function isCompared({ options }: Caution, { desks }: ReasonDesk): boolean {
  return desks.some(({ figuresFrom }) => options.includes(figuresFrom));
}

function favours(caution: Caution, desk: OptionDesk): boolean {
  return caution.favours?.includes(desk.figuresFrom) ?? false;
}

/** What the person's illnesses warn of: here and not with others of the same sort, or with each of them and not here. */
export function lookFewerCautions(
  look: LookOf<'fewer-cautions'>,
  { desk }: AskedOption,
  room: ReasonDesk,
): ReasonFinding {
  const ill = callAll(desk, room).filter(
    ({ triggers, isRead }) => isRead && triggers.some((code) => code.startsWith('condition:')),
  );
  const touching = (one: OptionDesk): readonly string[] =>
    ill.filter((called) => warns(called, one, look.effects)).map(({ caution }) => caution.id);
  const alike = alikeOthers(room.desks, desk);
  const own = touching(desk);
  const others = alike.map((other) => ({
    option: other.code,
    cautions: touching(other)
      .filter((id) => !own.includes(id))
      .sort(byText),
  }));
  // What touches every option alike is no reason for or against one.
  const mine = own.filter((id) => alike.some((other) => !touching(other).includes(id))).sort(byText);
  const isSafer =
    mine.length === 0 && others.length > 0 && others.every(({ cautions }) => cautions.length > 0);
  const isRiskier = mine.length > 0 && others.every(({ cautions }) => cautions.length === 0);
  const answer = isSafer ? 'yes' : isRiskier ? 'no' : undefined;
  return { find: 'fewer-cautions', means: meaningOf(look, answer), mine, others };
}

function callAll({ subject, clinic }: OptionDesk, { evidence, given }: ReasonDesk): readonly Called[] {
  return evidence.cautions
    .filter(({ id }) => clinic.cautions[id] !== 'struck')
    .flatMap((caution) => {
      const triggers = findTriggers(caution.when, given.health, subject);
      const isRead = caution.basis === 'page' && isPrintable(caution);
      return triggers === undefined ? [] : [{ caution, triggers, isRead }];
    });
}

function warns({ caution }: Called, desk: OptionDesk, effects: readonly Caution['effect'][]): boolean {
  return effects.includes(caution.effect) && caution.options.includes(desk.figuresFrom);
}

/** The coverage accounts for the option with a reason why nothing warns of it; "not known" is no such reason. */
function isAccountedFor(code: string, desk: OptionDesk, { evidence }: ReasonDesk): boolean {
  const bare = code.slice(code.indexOf(':') + 1);
  const entry = evidence.cautionCoverage.find((coverage) => coverage.code === bare);
  const isAbout = ({ options, why }: CautionCoverage['others'][number]): boolean =>
    options.includes(desk.figuresFrom) && why !== 'not known';
  return entry?.others.some(isAbout) ?? false;
}

/** Of ids, which are never the same. */
function byText(a: string, b: string): number {
  return a < b ? -1 : 1;
}
