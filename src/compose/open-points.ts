import { openMatters } from '../model/aftercare-plan.ts';
import { documentsOf } from '../model/case.ts';
import { homeDocuments, studyDocuments } from '../model/codes.ts';
import { writtenTexts } from '../model/written-texts.ts';
import { isPastReview } from '../model/review.ts';
import type { OpenPoint, UnwrittenText } from '../model/open-point.ts';
import type { LocalText } from '../model/scalars.ts';
import { citedStudies, citedTexts } from './view/cited-studies.ts';
import { stateOfWords } from '../model/words-review.ts';
import type { SceneInput } from './view/scene.ts';

export type OpenInput = Omit<
  SceneInput,
  'state' | 'documentId' | 'readings' | 'printed' | 'score' | 'consent'
>;

/** Every point that is open, in the order in which they are printed; none: the packet may be final. */
export function findOpenPoints(input: OpenInput): readonly OpenPoint[] {
  const { clinic, evidence, date } = input;
  return [
    ...unreadWords(input),
    ...(clinic.approved === null ? [{ code: 'profile' } as const] : []),
    ...studyForms(input),
    ...unwrittenTexts(input),
    ...counted('practice', unconfirmed(input)),
    ...counted('citations', incompleteCitations(input)),
    ...counted('aftercare', leftToClinic(input)),
    ...(date > evidence.nextReview ? [{ code: 'past_review' } as const] : []),
    ...counted('past_reading', pastReading(input)),
  ];
}

type Counted = Exclude<
  Extract<OpenPoint, { readonly count: number }>,
  { readonly code: 'free_text' }
>['code'];

function counted(code: Counted, count: number): readonly OpenPoint[] {
  return count === 0 ? [] : [{ code, count }];
}

/** Words that no qualified person has read as they are now, by the clinic's ledger. */
function unreadWords({ locale, clinic, case: asked }: OpenInput): readonly OpenPoint[] {
  const words = stateOfWords(locale, clinic.reviewed, documentsOf(asked));
  if (words.state === 'reviewed') return [];
  return words.state === 'changed'
    ? [{ code: 'words_changed', reviews: words.reviews }]
    : [{ code: 'words', documents: words.documents }];
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

/** Free texts of case and clinic that these pages print, and that are not there in their language. */
function unwrittenTexts(input: OpenInput): readonly OpenPoint[] {
  const texts = [...textsOfCase(input), ...textsOfClinic(input)]
    .filter(({ text }) => text[input.locale.tag] === undefined)
    .map(({ in: file, path }) => ({ in: file, path }));
  return texts.length === 0 ? [] : [{ code: 'free_text', count: texts.length, texts }];
}

interface FreeText extends UnwrittenText {
  readonly text: LocalText;
}

function textsOfCase({ case: { decision } }: OpenInput): readonly FreeText[] {
  const { leaning, advised_against: against, matters_most: matters } = decision;
  const entries = [
    ...matters.map((entry, index) => ({ entry, path: ['matters_most', index] })),
    ...(leaning?.reasons ?? []).map((entry, index) => ({ entry, path: ['leaning', 'reasons', index] })),
    ...against.flatMap(({ reasons }, at) =>
      reasons.map((entry, index) => ({ entry, path: ['advised_against', at, 'reasons', index] })),
    ),
  ];
  return entries.flatMap(({ entry, path }) =>
    'text' in entry ? [{ in: 'case', path: ['decision', ...path, 'text'], text: entry.text }] : [],
  );
}

/** What the comparison prints of the protocol. */
const comparedTopics = ['stay', 'time_off', 'visits', 'for_life'] as const;

function textsOfClinic(input: OpenInput): readonly FreeText[] {
  const { protocol, under_study: studies, prefer } = input.clinic;
  const { chosen } = input.case.decision;
  const compared = input.comparison.options.flatMap(({ code }) => [
    ...comparedTopics.map((topic) => ({ path: ['protocol', topic, code], text: protocol[topic][code] })),
    { path: ['under_study', code, 'oversight'], text: studies[code]?.oversight },
  ]);
  const afterwards = speaksOfHome(input) && chosen !== null ? writtenTexts(protocol, chosen) : [];
  return [
    ...compared,
    ...prefer.map(({ reason }, index) => ({ path: ['prefer', index, 'reason'], text: reason })),
    ...afterwards.map(({ path, text }) => ({ path: ['protocol', ...path], text })),
  ].flatMap(({ path, text }) => (text === undefined ? [] : [{ in: 'clinic', path, text }]));
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

/** Studies and texts that the sources of these pages name, and whose authors, title, year or journal nobody has seen. */
function incompleteCitations(input: OpenInput): number {
  if (!documentsOf(input.case).some((kind) => studyDocuments.includes(kind))) return 0;
  const unseen = (id: string): number => input.evidence.studies.get(id)?.citation_unseen?.length ?? 0;
  const texts = citedTexts(input).filter(({ citation_unseen: fields = [] }) => fields.length > 0);
  return citedStudies(input).filter((id) => unseen(id) > 0).length + texts.length;
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
