import type { CheckedElement, ConsentElement, ConsentPlace } from '../model/consent-element.ts';
import type { DocumentTree } from '../model/document.ts';
import type { ScorePlace } from '../model/document-score.ts';
import type { Locale } from '../model/locale.ts';
import type { OpenCase } from '../model/packet.ts';
import { holdsPlace } from './consent-places.ts';
import { blocksOf, placeOf } from './pages.ts';

export interface ConsentInput {
  readonly documents: readonly DocumentTree[];
  readonly locale: Locale;
  readonly elements: readonly ConsentElement[];
  /** Which elements apply; see `conditionsOf`. */
  readonly conditions: readonly Condition[];
}

type Condition = NonNullable<ConsentElement['when']>;

/** What is so in a case: something is done to the body, somebody interprets, the chosen option is under study. */
export function conditionsOf({
  case: asked,
  comparison,
}: Pick<OpenCase, 'case' | 'comparison'>): readonly Condition[] {
  const option = comparison.options.find(({ code }) => code === asked.decision.chosen);
  return [
    ...(option?.kind === 'operation' || option?.kind === 'endoscopic' ? (['procedure'] as const) : []),
    ...(asked.interpreter.needed ? (['interpreter'] as const) : []),
    ...(option?.standing.maturity === 'under-study' ? (['under-study'] as const) : []),
  ];
}

/** Holds the record of the talk against every element that applies; nothing where the packet has none. */
export function checkConsent({
  documents,
  locale,
  elements,
  conditions,
}: ConsentInput): readonly CheckedElement[] {
  const trees = documents.filter(({ kind }) => kind === 'consent');
  if (trees.length === 0) return [];
  return elements
    .filter(({ when }) => when === undefined || conditions.includes(when))
    .map((element): CheckedElement => {
      const found = (element.where ?? []).map((place) => findPlace(place, trees, locale));
      const places = found.filter((place) => place !== undefined);
      const whole = places.length === found.length;
      return { element, outcome: outcomeOf(element, whole), places: whole ? places : [] };
    });
}

function findPlace(
  place: ConsentPlace,
  trees: readonly DocumentTree[],
  locale: Locale,
): ScorePlace | undefined {
  const placed = blocksOf(trees).find(({ block }) => holdsPlace(block, place, locale));
  return placed === undefined ? undefined : placeOf(placed);
}

/** What the clinic or a study must bring is owed by them as long as the pages do not show it; all else is lost. */
function outcomeOf({ by, where }: ConsentElement, whole: boolean): CheckedElement['outcome'] {
  if (by === 'study') return 'study';
  if (by === 'clinic') return where !== undefined && whole ? 'met' : 'clinic';
  if (!whole) return 'lost';
  return by === 'pages' ? 'met' : 'talk';
}
