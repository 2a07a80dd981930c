import type {
  KnownCell,
  MatchReason,
  MissingReason,
  SetAsideReason,
  UnknownCell,
} from '../../model/comparison.ts';
import { isPossible } from '../../model/evidence.ts';
import type { Markup } from '../../model/locale.ts';
import { isSlight } from '../../model/slight-difference.ts';
import { doseName } from './say-dose.ts';
import { bmiBeside } from './say-bmi.ts';
import { keyFor, sayExchange, stagesForm } from './say-exchange.ts';
import type { Form } from './say-exchange.ts';
import { sayLength } from './say-time.ts';
import type { Scene } from './scene.ts';
import { joined } from './words.ts';

type Variables = Record<string, string | number>;

/** Under "Not known": "for people like you. These studies were in …" */
export function whyUnknown(scene: Scene, cell: UnknownCell): Markup {
  const why = isOfEarlier(scene, cell)
    ? scene.words.say('missing.no-record-earlier')
    : sayMissing(scene, cell);
  return joined(scene.words.say('common.for_people_like_you'), why);
}

/**
 * Whether only an earlier operation can cause this, since the choice itself cannot: else a leak without an operation
 * would be "not known" for one person and "cannot happen" for another, and nobody would say why.
 */
function isOfEarlier({ comparison, evidence }: Scene, { option, outcome, reason }: UnknownCell): boolean {
  if (reason.code !== 'no-record' || comparison.person.asked === 'first-operation') return false;
  const kind = comparison.options.find(({ code }) => code === option)?.kind;
  const definition = evidence.outcomes.find(({ code }) => code === outcome);
  return kind !== undefined && definition !== undefined && !isPossible(definition, kind, false);
}

/** The same as a note under a table. */
export function unknownNote(scene: Scene, cell: UnknownCell): Markup {
  return joined(scene.words.say('common.not_known_for_you'), sayMissing(scene, cell));
}

/** Why nothing is known: another figure may be shown with one slight difference, so that such a one is never said alone. */
export function sayMissing(scene: Scene, cell: UnknownCell): Markup {
  const { reason } = cell;
  const key = isShorter(cell) ? 'missing.other-time-longest' : `missing.${formOf(reason)}`;
  const longest =
    reason.code === 'other-time' ? { longest: sayLength(scene, { months: reason.longestMonths ?? 0 }) } : {};
  const said = scene.words.say(key, { ...patientVariables(scene, reason), ...longest });
  const alone = !isSlight(reason, scene.comparison.person.bmi);
  return alone ? said : joined(said, scene.words.say('missing.one_more'));
}

/** Whether the studies ended before the time asked, which is worth saying; else they measured at another time. */
function isShorter({ reason, asked }: UnknownCell): boolean {
  return (
    reason.code === 'other-time' &&
    reason.longestMonths !== undefined &&
    reason.longestMonths < (asked.months ?? 0)
  );
}

/**
 * The one difference of a `near` match, in a sentence, and how their band was exchanged where that may not be as
 * planned. Null where the people are like this person.
 */
export function sayNear(scene: Scene, cell: KnownCell, form: Form = 'one'): Markup | null {
  const said = [sayDifference(scene, cell, form), sayExchange(scene, cell, form)].filter(
    (part) => part !== null,
  );
  return said.length === 0 ? null : joined(...said);
}

/** The one difference of a `near` match but for how a band was exchanged, in a sentence. */
export function sayDifference(scene: Scene, { lead }: KnownCell, form: Form = 'one'): Markup | null {
  const [reason] = lead.match === 'near' ? lead.reasons : [];
  if (reason === undefined || reason.code === 'stages') return null;
  return sayOtherPeople(scene, reason, form);
}

/** How the people of a figure differ from this person, in a sentence beside it. */
export function sayOtherPeople(scene: Scene, reason: MatchReason, form: Form = 'one'): Markup {
  const key = keyFor(scene.words, { group: 'near', code: formOf(reason), form });
  return scene.words.say(key, patientVariables(scene, reason));
}

/** Whether the one difference of a `near` match is in the BMI, which the sources state of every figure. */
export function differsByBmi({ lead }: KnownCell): boolean {
  return lead.match === 'near' && lead.reasons[0]?.code.startsWith('bmi') === true;
}

/** The same with BMIs as patients read them: in whole numbers, where that keeps who is above whom. */
function patientVariables(scene: Scene, reason: MissingReason): Variables {
  const variables = reasonVariables(scene, reason);
  if (!reason.code.startsWith('bmi')) return variables;
  const others = Object.entries(reason).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number' && entry[0] !== 'yours',
  );
  const said = bmiBeside(
    scene.format,
    'yours' in reason && typeof reason.yours === 'number' ? reason.yours : scene.comparison.person.bmi,
    others.map(([, value]) => value),
  );
  const written = others.map(([name], index): [string, string] => [name, said.others[index] ?? '']);
  const numbers: Variables = Object.fromEntries(written);
  return { ...variables, ...numbers, yours: said.yours };
}

/** Why a record was set aside, in a phrase for the clinician sheet. */
export function saySetAside(scene: Scene, reason: SetAsideReason): string {
  return scene.words.plain(`missing.set_aside.${reason.code}`, reasonVariables(scene, reason));
}

/** A reason with limits has three forms of words: a lower one, an upper one, both; an exchange of a band has two. */
function formOf(reason: MissingReason): string {
  if (reason.code === 'stages') return stagesForm(reason);
  if (reason.code !== 'bmi-outside' && reason.code !== 'age-outside') return reason.code;
  if (reason.high === undefined) return reason.code;
  return reason.low === undefined ? `${reason.code}-high` : `${reason.code}-range`;
}

/** What the words of a reason are given: its numbers as read, its codes in words. */
export function reasonVariables(scene: Scene, reason: MissingReason | SetAsideReason): Variables {
  const written = Object.entries(reason)
    .filter(([name]) => name !== 'code')
    .map(([name, value]: [string, unknown]): [string, string | number] => {
      if (typeof value !== 'number') return [name, String(value)];
      // A count chooses a plural form, so it stays a number.
      return [
        name,
        name === 'count' ? value : scene.format.number(value, decimalsOf(reason.code, name, value)),
      ];
    });
  return { ...Object.fromEntries(written), ...namesOf(scene, reason) };
}

/** For clinicians. The person's BMI is always said to one decimal; limits of a study only where they are not whole. */
function decimalsOf(code: string, name: string, value: number): number {
  if (!code.startsWith('bmi')) return 0;
  return name === 'yours' || !Number.isInteger(value) ? 1 : 0;
}

/** Codes of a reason, in words. */
function namesOf({ words, format }: Scene, reason: MissingReason | SetAsideReason): Variables {
  switch (reason.code) {
    case 'other-measure':
      return words.has(`codes.measures.${reason.kind}`)
        ? { kind: words.plain(`codes.measures.${reason.kind}`) }
        : {};
    case 'already-has':
      return { condition: words.plain(`codes.conditions.${reason.condition}`) };
    case 'operations-mixed':
      return {
        theirs: format.list(
          reason.theirs.map((code) => words.plain(`options.${code}.in_text`)),
          'or',
        ),
      };
    case 'stages':
      return { theirs: words.plain(`codes.stages.${reason.theirs}`) };
    case 'other-dose':
      return { dose: doseName({ words, format }, { mg: [...reason.mg], per: reason.per }) ?? '' };
    case 'group':
      return { group: words.plain(`codes.groups.${reason.group}`) };
    case 'indication':
      return {
        theirs: words.plain(`codes.indications.${reason.theirs}`),
        yours: words.plain(`codes.indications.${reason.yours}`),
      };
    default:
      return {};
  }
}
