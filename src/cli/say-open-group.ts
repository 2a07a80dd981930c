import type { OpenGroup } from '../batch/index.ts';
import type { WordsReview } from '../model/words-review.ts';

/** What is open, and what to do next. */
export interface SaidGroup {
  readonly what: string;
  /** In this order. */
  readonly next: readonly string[];
}

/**
 * Says what keeps some packets from being final. `tag` stands for the language in commands: that of the group, or TAG
 * where one sentence speaks of several.
 */
export function sayOpenGroup(group: OpenGroup, tag = group.languages[0] ?? 'TAG'): SaidGroup {
  return sayings[group.code]({ clinic: 'clinic.yaml', ...group, tag });
}

interface Asked extends OpenGroup {
  readonly clinic: string;
  readonly tag: string;
}

const sayings: Readonly<Record<OpenGroup['code'], (asked: Asked) => SaidGroup>> = {
  words: ({ tag, clinic, documents = 'all' }) => ({
    what: `nobody qualified has read the words${documents === 'all' ? '' : ` of ${documents.join(', ')}`}`,
    next: [reading(tag), signing(tag, clinic)],
  }),
  words_changed: ({ tag, clinic, reviews = [] }) => ({
    what: `the words changed after ${readers(reviews)}`,
    next: [
      `see which with plainleaf languages list --clinic ${clinic} --language ${tag}, and have them read`,
      signing(tag, clinic),
    ],
  }),
  free_text: () => ({
    what: 'texts of the clinic or the case that are not written in the language of the packet',
    next: ['add them at these lines, each under its language'],
  }),
  profile: ({ clinic }) => ({
    what: 'nobody has approved the clinic profile',
    next: [`write approved: {by, on} into ${clinic}`],
  }),
  study_form: ({ clinic, option = '' }) => ({
    what: `${option} is under study, and no approval form is named`,
    next: [`write under_study.${option}.form into ${clinic}`],
  }),
  practice: ({ clinic }) => ({
    what: 'warnings from usual practice that the clinic has neither confirmed nor struck',
    next: [`decide on each under cautions in ${clinic}; the clinician sheet names them`],
  }),
  aftercare: ({ clinic }) => ({
    what: 'matters of the time afterwards that are left to the clinic',
    next: [`decide on them under protocol in ${clinic}; the clinician sheet names them`],
  }),
  citations: () => ({
    what: 'studies of which part of the reference has not been confirmed',
    next: ['see them with plainleaf evidence due'],
  }),
  past_review: () => ({
    what: 'the day to look over the whole evidence has passed',
    next: ['see it with plainleaf evidence due'],
  }),
  past_reading: () => ({
    what: 'the day to read a study again has passed',
    next: ['see them, and where to read, with plainleaf evidence due'],
  }),
  example: () => ({
    what: 'examples, of invented people',
    next: ['nothing: they are never final, as example: true stands in the case'],
  }),
};

function readers(reviews: readonly WordsReview[]): string {
  return reviews.map(({ by, on }) => `${by.name} (${by.role}) read them on ${on}`).join(', ');
}

/** There is no file to translate the language into from which the others come. */
function reading(tag: string): string {
  return `have them read on the pages${tag === 'en' ? '' : `, or from plainleaf languages export ${tag}`}`;
}

function signing(tag: string, clinic: string): string {
  return `then plainleaf languages sign ${tag} --clinic ${clinic}`;
}
