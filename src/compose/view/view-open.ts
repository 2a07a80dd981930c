import { openMatters } from '../../model/aftercare-plan.ts';
import { documentsOf } from '../../model/case.ts';
import { homeDocuments } from '../../model/codes.ts';
import type { LocalText } from '../../model/scalars.ts';
import type { Markup } from '../../model/locale.ts';
import { isPastReview } from '../../model/review.ts';
import { knownCells } from './cells-shown.ts';
import type { NamedOption, Scene } from './scene.ts';
import { list, markup } from './shape.ts';
import type { Viewed } from './shape.ts';

export const openShape = list(markup);

/** What stands between this document and a final one, each point in a sentence. */
export function viewOpen(scene: Scene): Viewed<typeof openShape> {
  return [
    ...wordsPoints(scene),
    ...(scene.clinic.approved === null ? [scene.words.say('common.open.profile')] : []),
    ...scene.options.flatMap((option) => studyPoints(scene, option)),
    ...counted(
      scene,
      'free_text',
      freeTexts(scene).filter((text) => text[scene.locale.tag] === undefined).length,
    ),
    ...counted(scene, 'practice', unconfirmed(scene)),
    ...counted(scene, 'citations', incompleteCitations(scene)),
    ...counted(scene, 'aftercare', leftToClinic(scene)),
    ...(scene.date > scene.evidence.nextReview ? [scene.words.say('common.open.past_review')] : []),
    ...counted(scene, 'past_reading', pastReading(scene)),
  ];
}

function wordsPoints(scene: Scene): readonly Markup[] {
  if (scene.locale.reviewed !== null) return [];
  return [scene.words.say('common.open.words', { language: scene.locale.name })];
}

function studyPoints(scene: Scene, option: NamedOption): readonly Markup[] {
  if (option.tag === '') return [];
  const entry = scene.clinic.under_study[option.code];
  const form = entry?.form ?? null;
  return form === null ? [scene.words.say('common.open.study_form', { option: option.name })] : [];
}

function counted(scene: Scene, key: string, count: number): readonly Markup[] {
  return count === 0 ? [] : [scene.words.say(`common.open.${key}`, { count })];
}

/** Matters of the time after the treatment, where the packet speaks of it. */
function leftToClinic({ aftercare, case: asked }: Scene): number {
  const speaks = documentsOf(asked).some((kind) => homeDocuments.includes(kind));
  return aftercare === null || !speaks ? 0 : openMatters(aftercare).length;
}

/** Every free text of case and clinic that these pages print. */
function freeTexts(scene: Scene): readonly LocalText[] {
  const { decision } = scene.case;
  const { protocol, under_study: studies, prefer } = scene.clinic;
  const reasons = [
    ...(decision.leaning?.reasons ?? []),
    ...decision.advised_against.flatMap((entry) => entry.reasons),
  ];
  const said = [...decision.matters_most, ...reasons].flatMap((entry) =>
    'text' in entry ? [entry.text] : [],
  );
  const clinic = scene.options.flatMap(({ code }) => [
    protocol.stay[code],
    protocol.time_off[code],
    protocol.visits[code],
    protocol.for_life[code],
    studies[code]?.oversight,
  ]);
  return [...said, ...clinic.filter((text) => text !== undefined), ...prefer.map(({ reason }) => reason)];
}

function unconfirmed(scene: Scene): number {
  return scene.comparison.cautions.filter(
    (hit) => hit.basis === 'practice' && scene.clinic.cautions[hit.id] === undefined,
  ).length;
}

/** Studies behind a figure shown whose authors, title, year or journal nobody has seen. */
function incompleteCitations(scene: Scene): number {
  const studies = new Set(knownCells(scene.comparison).map(({ cell }) => cell.lead.study));
  return [...studies].filter((id) => scene.evidence.studies.get(id)?.citation_unseen !== undefined).length;
}

/** Studies behind a figure shown that were to be read again before the day of these pages. */
function pastReading(scene: Scene): number {
  const past = scene.comparison.recordsUsed
    .flatMap((id) => scene.records.get(id) ?? [])
    .filter((record) => isPastReview(scene.evidence, record, scene.date));
  return new Set(past.map(({ study }) => study)).size;
}
