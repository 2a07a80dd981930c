import type { MissingReason, SetAsideReason } from '../../model/comparison.ts';
import type { Markup, TextVariable } from '../../model/locale.ts';
import { shortId, tied } from './clinician-ids.ts';
import { reasonVariables } from './say-reason.ts';
import type { Scene } from './scene.ts';
import { inLanguage } from './words.ts';

/** What a clinician would ask first of a record that was not used, in the order in which the sheet answers. */
export const kinds = ['people', 'time', 'measure', 'technique', 'dose', 'same', 'unread'] as const;
type Kind = (typeof kinds)[number];

/** The type makes a new reason a fault here. */
const kindOf: { readonly [C in SetAsideReason['code']]: Kind } = {
  'bmi-outside': 'people',
  'bmi-mean-only': 'people',
  'bmi-assumed': 'people',
  'bmi-unknown': 'people',
  'age-outside': 'people',
  'age-unknown': 'people',
  'adults-only': 'people',
  'adolescents-only': 'people',
  indication: 'people',
  'indication-mixed': 'people',
  'indication-unknown': 'people',
  'operations-mixed': 'people',
  'removed-before': 'people',
  stages: 'technique',
  'several-operations': 'people',
  'already-has': 'people',
  'diabetes-only': 'people',
  'no-diabetes-only': 'people',
  group: 'people',
  pregnancy: 'people',
  'weaker-match': 'people',
  'too-few-people': 'people',
  'other-time': 'time',
  'time-unclear': 'time',
  'reference-weight': 'measure',
  'not-convertible': 'measure',
  'group-size-unknown': 'measure',
  contradicted: 'measure',
  'other-measure': 'measure',
  variant: 'technique',
  'other-dose': 'dose',
  'dose-unstated': 'dose',
  'same-people': 'same',
  'not-verified': 'unread',
};

/** Reasons whose number or record stands behind each id, so that the words before the ids are said once. */
const detailed: ReadonlySet<SetAsideReason['code']> = new Set([
  'bmi-mean-only',
  'too-few-people',
  'same-people',
]);

export interface SaidReason {
  readonly kind: Kind;
  readonly phrase: Markup;
  /** What differs from record to record, in brackets behind the ids. */
  readonly detail: string | null;
}

/** Why a record was set aside, as the clinician sheet says it: its kind, a phrase for many records, a detail for one. */
export function sayReason(scene: Scene, reason: SetAsideReason): SaidReason {
  const { words } = scene;
  const { code } = reason;
  const variables = { ...reasonVariables(scene, reason), ...namesOf(scene, reason) };
  const own = `clinician-sheet.reasons.${code}`;
  const key = words.has(own) ? own : `missing.set_aside.${code}`;
  return {
    kind: kindOf[code],
    phrase: words.say(key, variables),
    detail: detailed.has(code) ? tied(words.plain(`clinician-sheet.details.${code}`, variables)) : null,
  };
}

/** Codes in words; what only the evidence says stays in its own language, marked as such. */
function namesOf({ words, locale }: Scene, reason: SetAsideReason): Readonly<Record<string, TextVariable>> {
  switch (reason.code) {
    case 'not-verified':
      return { seen: words.plain(`clinician-sheet.seen.${reason.seen}`) };
    case 'same-people':
      return { as: shortId(reason.as) };
    case 'reference-weight':
      return { reference: words.plain(`clinician-sheet.reference.${reason.reference}`) };
    case 'not-convertible':
      return words.has(`codes.metrics.${reason.metric}`)
        ? { metric: words.plain(`codes.metrics.${reason.metric}`) }
        : {};
    case 'indication':
      return { theirs: words.plain(`clinician-sheet.indications.${reason.theirs}`) };
    case 'variant':
      return { variant: inLanguage(reason.variant, { language: 'en', document: locale.tag }) };
    default:
      return {};
  }
}

/** Why the patient pages call a cell not known, in a phrase: of several records together, else of the nearest one. */
export function sayUnknown(scene: Scene, reason: MissingReason): Markup {
  const { words } = scene;
  const own = `clinician-sheet.unknown.${reason.code}`;
  const variables = reasonVariables(scene, reason);
  switch (reason.code) {
    case 'no-record':
    case 'counted-in-part':
    case 'done-otherwise':
    case 'not-verified':
    case 'other-time':
    case 'not-convertible':
    case 'contradicted':
    case 'too-few-people':
      return words.say(own, variables);
    default: {
      const why = sayReason(scene, reason).phrase;
      return reason.code === 'indication' ? words.say(own, { why }) : why;
    }
  }
}
