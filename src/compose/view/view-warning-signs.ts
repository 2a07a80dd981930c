import { InternalError } from '../../diagnostics/diagnostic.ts';
import { urgencies } from '../../model/aftercare-codes.ts';
import type { Urgency } from '../../model/aftercare-codes.ts';
import type { Threshold, WarningSign } from '../../model/aftercare-plan.ts';
import { documentsOf } from '../../model/case.ts';
import type { Markup } from '../../model/locale.ts';
import type { Practice } from '../../model/protocol-of.ts';
import type { LocalText } from '../../model/scalars.ts';
import { forWhom, planOf, saidForWhom } from './say-aftercare.ts';
import { emergencyFirst, emergencyOrigins, emergencyOriginsShape, namesSign } from './say-emergency-first.ts';
import { chosenOption } from './scene.ts';
import type { Scene } from './scene.ts';
import { count, group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { body, lineShape } from './shared-shapes.ts';
import { nameContact } from './view-contacts.ts';
import { surgeonName } from './view-opinion.ts';
import { fromGuideline, originsOf } from './view-rules.ts';

const sentenceShape = group({ parts: list(group({ words: optional(markup), share: count, alt: text })) });

const framesShape = list(
  group({
    urgency: text,
    heading: text,
    note: text,
    /** Which number comes first, and for what; empty where there is nothing to choose. */
    first: optional(markup),
    phones: list(group({ number: text, label: markup, hours: optional(markup) })),
    items: list(lineShape),
  }),
);

export const warningSignsShape = group({
  /** To call about at once or on the same day. */
  urgent: framesShape,
  /** To speak of at a visit: one frame or none. */
  later: framesShape,
  /** What to say on the phone. */
  say: list(sentenceShape),
  /** Sources of signs that the clinic does not name itself. */
  origins: list(markup),
  /** Where it was read which number comes first; null where the pages for home say so. */
  emergencyOrigins: optional(emergencyOriginsShape),
});
export type WarningSignsView = Viewed<typeof warningSignsShape>;

/** The page for the fridge. A degree of urgency without signs has no frame. */
export function viewWarningSigns(scene: Scene): WarningSignsView {
  const { warnings } = planOf(scene);
  const frames = urgencies
    .filter((urgency) => warnings[urgency].length > 0)
    .map((urgency) => frameOf(scene, urgency));
  return {
    urgent: frames.filter(({ urgency }) => urgency !== 'visit'),
    later: frames.filter(({ urgency }) => urgency === 'visit'),
    say: sayOf(scene),
    origins: originsOf(scene, Object.values(warnings).flat()),
    // The page for the fridge keeps to what is needed in a hurry: the pages for home name the same sources.
    emergencyOrigins:
      frames.some(({ first }) => first !== null) && !documentsOf(scene.case).includes('homecare')
        ? emergencyOrigins(scene, [chosenOption(scene).code])
        : null,
  };
}

function frameOf(scene: Scene, urgency: Urgency): WarningSignsView['urgent'][number] {
  const { warnings, calls } = planOf(scene);
  const { emergency } = scene.clinic.clinic.phones;
  const contacts = calls.filter((call) => call.urgency === urgency).map((call) => nameContact(scene, call));
  // A number for one sign stands beside that sign.
  const phones = contacts.filter(({ about }) => about === null);
  const isChoice = urgency === 'now' && phones.some(({ number }) => number !== emergency);
  const signs = warnings[urgency].map((sign) => ({ sign, said: withCalls(scene, sign, urgency) }));
  return {
    urgency,
    heading: scene.words.plain(`warning-signs.${urgency}.heading`),
    // Where a number does not answer, the note names the one that does.
    note: scene.words.plain(`warning-signs.${urgency}.note`, urgency === 'now' ? { emergency } : {}),
    first: isChoice ? emergencyFirst(scene, [chosenOption(scene).code]) : null,
    phones: phones.map(({ name, number, hours }) => ({
      number,
      label: name,
      hours: hours === null ? null : scene.words.free(hours),
    })),
    items: signs
      .filter((one) => !isChoice || !isSaidFirst(scene, one.sign, one.said))
      .map(({ said }) => body(said)),
  };
}

/** Whether those words say all that there is to say of a sign: twice on one page, it would stand at two numbers. */
function isSaidFirst(scene: Scene, { sign }: WarningSign, said: Markup): boolean {
  if (sign === null || !namesSign(scene, sign, [chosenOption(scene).code])) return false;
  return said.markup === scene.words.say(`aftercare.signs.${sign}`).markup;
}

/** A sign, and the numbers that the clinic has for it alone. */
function withCalls(scene: Scene, sign: WarningSign, urgency: Urgency): Markup {
  return planOf(scene)
    .calls.filter((call) => call.urgency === urgency)
    .map((call) => nameContact(scene, call))
    .filter(({ about }) => about !== null && about === sign.sign)
    .reduce(
      (said, { name, number }) => scene.words.say('aftercare.sign_call', { sign: said, who: name, number }),
      signInWords(scene, sign, urgency),
    );
}

function signInWords(scene: Scene, sign: WarningSign, urgency: Urgency): Markup {
  const { words } = scene;
  const written = writtenSign(scene, sign, urgency);
  const { means, first } = written === undefined || 'text' in written ? {} : written;
  const named = namedSign(scene, sign, urgency);
  const measured =
    means === undefined ? named : words.say('common.labelled', { label: named, text: words.free(means) });
  const forThem = sign.sign === null ? forWhom : saidForWhom;
  const said = forThem(scene, sign.who, measured);
  return first === undefined
    ? said
    : words.say('warning-signs.first', { sign: said, what: words.free(first) });
}

/** A number in the words is the clinic's own; without one the words are those of a sign that guidelines name too. */
function namedSign(scene: Scene, sign: WarningSign, urgency: Urgency): Markup {
  const { words } = scene;
  if (sign.sign === null) return words.free(ownWords(scene, sign, urgency));
  const key = `aftercare.signs.${sign.sign}`;
  if (sign.threshold !== null) return withThreshold(scene, key, sign.threshold);
  const said = words.say(key);
  return sign.from === 'guideline' ? fromGuideline(sign.facts, said) : said;
}

function withThreshold(scene: Scene, key: string, { value, unit }: Threshold): Markup {
  return unit === 'celsius'
    ? scene.words.say(`${key}_from`, { temperature: sayTemperature(scene, value) })
    : scene.words.say(`${key}_over`, { number: scene.format.number(value) });
}

/** Degrees in the units of the clinic; Fahrenheit is worked out to one decimal. */
function sayTemperature({ words, format, unit }: Scene, value: number): string {
  const celsius = format.number(value);
  return unit === 'metric'
    ? words.plain('aftercare.temperature.metric', { celsius })
    : words.plain('aftercare.temperature.us', { celsius, fahrenheit: format.number(value * 1.8 + 32, 1) });
}

type WrittenSign = Practice<'warnings'>['now'][number];
const lists = { now: 'now', today: 'today', visit: 'at_visit' } as const;

function ownWords(scene: Scene, sign: WarningSign, urgency: Urgency): LocalText {
  const written = writtenSign(scene, sign, urgency);
  if (written === undefined || 'code' in written)
    throw new InternalError('a plan names a sign that the clinic did not write');
  return written.text;
}

/** The line of the clinic's protocol that a sign is from; a sign of guidelines has none. */
function writtenSign({ clinic }: Scene, { entry }: WarningSign, urgency: Urgency): WrittenSign | undefined {
  if (entry === null) return undefined;
  return clinic.protocol.warnings[entry.option]?.[lists[urgency]][entry.index ?? 0];
}

function sayOf(scene: Scene): WarningSignsView['say'] {
  const { words, format } = scene;
  const option = chosenOption(scene);
  const isTaken = option.column.kind === 'medicine';
  const who = words.say(isTaken ? 'warning-signs.say.who_medicine' : 'warning-signs.say.who', {
    name: scene.case.patient.name,
    option: option.inText,
    date: format.date(planOf(scene).date),
    surgeon: surgeonName(scene),
  });
  const said = (key: string): Part => ({ words: words.say(`warning-signs.say.${key}`), share: 0, alt: '' });
  const blank = (key: string, share: number): Part => ({
    words: null,
    share,
    alt: words.plain(`warning-signs.say.${key}`),
  });
  return [
    { parts: [{ words: who, share: 0, alt: '' }] },
    { parts: [said('have'), blank('sign', 2), said('since'), blank('time', 1)] },
    { parts: [said('temperature'), blank('degrees', 1), said('pulse'), blank('beats', 1)] },
  ];
}
type Part = WarningSignsView['say'][number]['parts'][number];
