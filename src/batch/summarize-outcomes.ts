import type { DiagnosticCode } from '../diagnostics/codes.ts';
import type { FieldPlace } from '../input/index.ts';
import type { PacketState } from '../model/packet.ts';
import type { ReviewScope } from '../model/review-scope.ts';
import type { WordsReview } from '../model/words-review.ts';
import type { OpenMatter } from './open-matters.ts';
import type { Outcome } from './run-batch.ts';

/** How many packets of a language came to what. A case that could not be opened is counted in no language. */
export interface LanguageCount extends Readonly<Record<PacketState, number>> {
  readonly language: string;
  readonly notMade: number;
}

/** A text of clinic or case, and the languages of packets in which it is not written. */
export interface UnwrittenIn extends FieldPlace {
  readonly languages: readonly string[];
}

/** One thing that keeps packets from being final, said once for all of them. */
export interface OpenGroup {
  readonly code: OpenMatter['code'] | 'example';
  /** Languages of the packets, sorted. */
  readonly languages: readonly string[];
  /** References of the cases, sorted. */
  readonly cases: readonly string[];
  readonly packets: number;
  /** Profile in which the clinic settles it. */
  readonly clinic?: string;
  /** Of `study_form`. */
  readonly option?: string;
  /** Of `words`: documents that nobody has ever read. */
  readonly documents?: ReviewScope;
  /** Of `words_changed`: reviews that no longer hold. */
  readonly reviews?: readonly WordsReview[];
  /** Of `free_text`, by file and line. */
  readonly texts?: readonly UnwrittenIn[];
}

/** A packet that was not made, or a case that could not be opened. */
export interface Failure {
  readonly file: string;
  /** Line of the first error, where it has one. */
  readonly line?: number;
  readonly case?: string;
  /** Absent: none of the languages that the case asks for. */
  readonly language?: string;
  /** Codes of the errors, each once. */
  readonly codes: readonly DiagnosticCode[];
}

export interface BatchSummary {
  /** Sorted by tag. */
  readonly languages: readonly LanguageCount[];
  readonly open: readonly OpenGroup[];
  readonly notMade: readonly Failure[];
}

type Made = Extract<Outcome, { made: true }>;
type NotMade = Extract<Outcome, { made: false }>;

/** What became of many packets, for the person who hands them out. Holds references of cases and nothing of people. */
export function summarizeOutcomes(outcomes: readonly Outcome[]): BatchSummary {
  const packets = packetsOf(outcomes);
  return {
    languages: countLanguages(packets),
    open: groupOpen(packets.filter((one) => one.made)),
    notMade: packets.filter((one) => !one.made).map(describeFailure),
  };
}

function describeFailure({ file, caseReference, language, diagnostics }: NotMade): Failure {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const span = errors.find((error) => error.span !== undefined)?.span;
  return {
    file: span?.file ?? file,
    ...(span === undefined ? {} : { line: span.line }),
    ...(caseReference === undefined ? {} : { case: caseReference }),
    ...(language === undefined ? {} : { language }),
    codes: [...new Set(errors.map(({ code }) => code))],
  };
}

/** One outcome a packet: of documents that are files of their own the first. */
export function packetsOf(outcomes: readonly Outcome[]): readonly Outcome[] {
  const nameOf = ({ file, language }: Outcome): string => JSON.stringify([file, language]);
  const names = outcomes.map(nameOf);
  return outcomes.filter((outcome, index) => names.indexOf(nameOf(outcome)) === index);
}

function countLanguages(packets: readonly Outcome[]): readonly LanguageCount[] {
  return sorted(packets.flatMap(({ language }) => language ?? [])).map((language) => {
    const own = packets.filter((packet) => packet.language === language);
    const inState = (state: PacketState): number =>
      own.filter((packet) => packet.made && packet.state === state).length;
    return {
      language,
      final: inState('final'),
      draft: inState('draft'),
      example: inState('example'),
      notMade: own.filter(({ made }) => !made).length,
    };
  });
}

/** A matter of one packet. */
interface Member {
  readonly matter: OpenMatter | { readonly code: 'example' };
  readonly packet: Made;
}

/** In this order: what is of a language, what is of the clinic, what is of the evidence, what is of the case. */
const order: readonly OpenGroup['code'][] = [
  'words',
  'words_changed',
  'free_text',
  'profile',
  'study_form',
  'practice',
  'aftercare',
  'citations',
  'past_review',
  'past_reading',
  'example',
];

function groupOpen(packets: readonly Made[]): readonly OpenGroup[] {
  const groups = new Map<string, Member[]>();
  for (const packet of packets) {
    const example = packet.state === 'example' ? [{ code: 'example' } as const] : [];
    for (const matter of [...packet.open, ...example]) {
      const key = groupOf({ matter, packet });
      groups.set(key, [...(groups.get(key) ?? []), { matter, packet }]);
    }
  }
  return [...groups.values()]
    .flatMap((members) => describeGroup(members))
    .sort((a, b) => order.indexOf(a.code) - order.indexOf(b.code) || compare(nameOf(a), nameOf(b)));
}

const nameOf = ({ languages, option = '' }: OpenGroup): string => [option, ...languages].join();

/** What tells a group from others: whose words, or whose profile. */
function groupOf({ matter, packet }: Member): string {
  const { code } = matter;
  if (code === 'words' || code === 'words_changed') return [code, packet.clinic, packet.language].join('\n');
  if (code === 'study_form') return [code, packet.clinic, matter.option].join('\n');
  return isOfClinic(code) ? [code, packet.clinic].join('\n') : code;
}

/** What the clinic settles in its profile. */
function isOfClinic(code: OpenGroup['code']): boolean {
  return !['free_text', 'citations', 'past_review', 'past_reading', 'example'].includes(code);
}

function describeGroup(members: readonly Member[]): readonly OpenGroup[] {
  const [first] = members;
  if (first === undefined) return [];
  const { code } = first.matter;
  return [
    {
      code,
      languages: sorted(members.flatMap(({ packet }) => packet.language ?? [])),
      cases: sorted(members.flatMap(({ packet }) => packet.caseReference ?? [])),
      packets: members.length,
      ...(isOfClinic(code) ? { clinic: first.packet.clinic } : {}),
      ...(first.matter.code === 'study_form' ? { option: first.matter.option } : {}),
      ...(code === 'words' ? { documents: documentsOf(members) } : {}),
      ...(code === 'words_changed' ? { reviews: reviewsOf(members) } : {}),
      ...(code === 'free_text' ? { texts: textsOf(members) } : {}),
    },
  ];
}

function documentsOf(members: readonly Member[]): ReviewScope {
  const lists = members.flatMap(({ matter }) => (matter.code === 'words' ? [matter.documents] : []));
  const named = lists.flatMap((list) => (list === 'all' ? [] : list));
  return lists.includes('all') ? 'all' : [...new Set(named)];
}

function reviewsOf(members: readonly Member[]): readonly WordsReview[] {
  const reviews = members.flatMap(({ matter }) => (matter.code === 'words_changed' ? matter.reviews : []));
  return [...new Map(reviews.map((review) => [review.digest, review])).values()];
}

function textsOf(members: readonly Member[]): readonly UnwrittenIn[] {
  const texts = members.flatMap(({ matter, packet }) =>
    matter.code === 'free_text' ? matter.texts.map((text) => ({ text, language: packet.language })) : [],
  );
  const keyOf = ({ file, field }: FieldPlace): string => `${file}\n${field}`;
  return [...new Map(texts.map(({ text }) => [keyOf(text), text])).values()]
    .map((text) => {
      const lacking = texts.filter((one) => keyOf(one.text) === keyOf(text));
      return { ...text, languages: sorted(lacking.flatMap(({ language }) => language ?? [])) };
    })
    .sort((a, b) => compare(a.file, b.file) || a.line - b.line || compare(a.field, b.field));
}

function sorted(texts: readonly string[]): readonly string[] {
  return [...new Set(texts)].sort(compare);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
