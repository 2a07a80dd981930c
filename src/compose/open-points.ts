import { openMatters } from '../model/aftercare-plan.ts';
import { documentsOf } from '../model/case.ts';
import { homeDocuments } from '../model/codes.ts';
import { writtenTexts } from '../model/protocol-of.ts';
import { isPastReview } from '../model/review.ts';
import type { LocalText } from '../model/scalars.ts';
import { knownCells } from './view/cells-shown.ts';
import { stateOfWords } from '../model/words-review.ts';
import type { SceneInput } from './view/scene.ts';

/** What stands between a packet and a final one. */
export type OpenPoint =
  | { readonly code: 'words' | 'words_changed' | 'profile' | 'past_review' }
  | { readonly code: 'study_form'; readonly option: string }
  | {
      readonly code: 'free_text' | 'practice' | 'citations' | 'aftercare' | 'past_reading';
      /** How many of them. */
      readonly count: number;
    };

export type OpenInput = Omit<SceneInput, 'state' | 'documentId' | 'readings' | 'score' | 'consent'>;

/** Every point that is open, in the order in which they are printed; none: the packet may be final. */
export function findOpenPoints(input: OpenInput): readonly OpenPoint[] {
  const { locale, clinic, evidence, date } = input;
  return [
    ...unreadWords(input),
    ...(clinic.approved === null ? [{ code: 'profile' } as const] : []),
    ...studyForms(input),
    ...counted('free_text', freeTexts(input).filter((text) => text[locale.tag] === undefined).length),
    ...counted('practice', unconfirmed(input)),
    ...counted('citations', incompleteCitations(input)),
    ...counted('aftercare', leftToClinic(input)),
    ...(date > evidence.nextReview ? [{ code: 'past_review' } as const] : []),
    ...counted('past_reading', pastReading(input)),
  ];
}

type Counted = Extract<OpenPoint, { readonly count: number }>['code'];

function counted(code: Counted, count: number): readonly OpenPoint[] {
  return count === 0 ? [] : [{ code, count }];
}

/** Words that no qualified person has read as they are now, by the clinic's ledger. */
function unreadWords({ locale, clinic, case: asked }: OpenInput): readonly OpenPoint[] {
  const { state } = stateOfWords(locale, clinic.reviewed, documentsOf(asked));
  if (state === 'reviewed') return [];
  return [{ code: state === 'changed' ? 'words_changed' : 'words' }];
}

/** Options under study without the approval form of the clinic. */
function studyForms({ comparison, clinic }: OpenInput): readonly OpenPoint[] {
  return comparison.options
    .filter(({ code, standing }) => {
      const form = clinic.under_study[code]?.form ?? null;
      return standing.maturity === 'under-study' && form === null;
    })
    .map(({ code }) => ({ code: 'study_form', option: code }));
}

/** Every free text of case and clinic that these pages print. */
function freeTexts(input: OpenInput): readonly LocalText[] {
  const { decision } = input.case;
  const { protocol, under_study: studies, prefer } = input.clinic;
  const reasons = [
    ...(decision.leaning?.reasons ?? []),
    ...decision.advised_against.flatMap((entry) => entry.reasons),
  ];
  const said = [...decision.matters_most, ...reasons].flatMap((entry) =>
    'text' in entry ? [entry.text] : [],
  );
  const compared = input.comparison.options.flatMap(({ code }) => [
    protocol.stay[code],
    protocol.time_off[code],
    protocol.visits[code],
    protocol.for_life[code],
    studies[code]?.oversight,
  ]);
  return [
    ...said,
    ...compared.filter((text) => text !== undefined),
    ...prefer.map(({ reason }) => reason),
    ...(speaksOfHome(input) && decision.chosen !== null ? writtenTexts(protocol, decision.chosen) : []),
  ];
}

/** Whether the packet has pages on the time after the treatment. */
export function speaksOfHome({ case: asked }: Pick<OpenInput, 'case'>): boolean {
  return documentsOf(asked).some((kind) => homeDocuments.includes(kind));
}

function unconfirmed({ comparison, clinic }: OpenInput): number {
  return comparison.cautions.filter(
    (hit) => hit.basis === 'practice' && clinic.cautions[hit.id] === undefined,
  ).length;
}

/** Studies behind a figure shown whose authors, title, year or journal nobody has seen. */
function incompleteCitations({ comparison, evidence }: OpenInput): number {
  const studies = new Set(knownCells(comparison).map(({ cell }) => cell.lead.study));
  return [...studies].filter((id) => evidence.studies.get(id)?.citation_unseen !== undefined).length;
}

/** Matters of the time after the treatment, where the packet speaks of it. */
function leftToClinic(input: OpenInput): number {
  return input.aftercare === null || !speaksOfHome(input) ? 0 : openMatters(input.aftercare).length;
}

/** Studies behind a figure shown that were to be read again before the day of these pages. */
function pastReading({ comparison, evidence, date }: OpenInput): number {
  const used = new Set(comparison.recordsUsed);
  const past = evidence.records.filter(
    (record) => used.has(record.id) && isPastReview(evidence, record, date),
  );
  return new Set(past.map(({ study }) => study)).size;
}
