import type { AftercareFact, AftercareSource } from '../../model/aftercare.ts';
import { whyWithheld } from '../../model/aftercare-rules.ts';
import type { WarningSign } from '../../model/aftercare-plan.ts';
import type { OptionCode } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import { citationOf } from './number-studies.ts';
import type { Scene } from './scene.ts';
import { group, list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';
import { fromGuideline } from './view-rules.ts';

/** For which signs the emergency number comes before all others; null where nothing that was read says so. */
export function emergencyFirst(scene: Scene, options: readonly OptionCode[]): Markup | null {
  const facts = factsFor(scene, options);
  if (facts.length === 0) return null;
  const { words, format, clinic } = scene;
  const signs = format.list(
    subjectsOf(facts).map((subject) => words.plain(`aftercare.emergency_signs.${subject}`)),
    'or',
  );
  const { emergency } = clinic.clinic.phones;
  return fromGuideline(
    facts.map(({ id }) => id),
    words.say('aftercare.emergency_first', { emergency, signs }),
  );
}

/** Where that was read: what the sources are about, and each of them once. */
export const emergencyOriginsShape = group({ lead: markup, sources: list(markup) });
export type EmergencyOrigins = Viewed<typeof emergencyOriginsShape>;

/** Null where it is not said. */
export function emergencyOrigins(scene: Scene, options: readonly OptionCode[]): EmergencyOrigins | null {
  const sources = emergencySources(scene, options);
  if (sources.length === 0) return null;
  const { emergency } = scene.clinic.clinic.phones;
  return {
    lead: scene.words.say('sources.emergency_first', { emergency }),
    sources: sources.map((source) => citationOf(scene, source)),
  };
}

/** The texts it was read in, each once. */
export function emergencySources(
  scene: Pick<Scene, 'evidence'>,
  options: readonly OptionCode[],
): readonly AftercareSource[] {
  const ids = new Set(factsFor(scene, options).map(({ source }) => source));
  return [...ids].flatMap((id) => scene.evidence.aftercareSources.get(id) ?? []);
}

/** What those words have to name so that a sign of the clinic's list stands in them. */
const parts: Readonly<Partial<Record<string, readonly AftercareFact['subject'][]>>> = {
  fainting: ['pass-out'],
  'chest-pain-breathless': ['chest-pain', 'breathless'],
};

/** Whether those words name a sign. */
export function namesSign(scene: Scene, sign: WarningSign['sign'], options: readonly OptionCode[]): boolean {
  const named = subjectsOf(factsFor(scene, options));
  const wanted = parts[sign ?? ''] ?? [];
  return wanted.length > 0 && wanted.every((subject) => named.includes(subject));
}

/** In the order of the evidence. Several options share one sentence, so that it has to hold for each of them. */
function factsFor(
  { evidence }: Pick<Scene, 'evidence'>,
  options: readonly OptionCode[],
): readonly AftercareFact[] {
  return evidence.aftercare.filter(
    (fact) =>
      fact.topic === 'emergency-first' &&
      options.every(
        (option) => whyWithheld(fact, evidence.aftercareSources.get(fact.source), option).length === 0,
      ),
  );
}

function subjectsOf(facts: readonly AftercareFact[]): readonly AftercareFact['subject'][] {
  return [...new Set(facts.map(({ subject }) => subject))];
}
