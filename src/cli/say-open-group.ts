import type { OpenGroup } from '../batch/index.ts';

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
  const { clinic = 'clinic.yaml', option = '' } = group;
  switch (group.code) {
    case 'words':
      return {
        what: `nobody qualified has read the words${ofDocuments(group)}`,
        next: [reading(tag), signing(tag, clinic)],
      };
    case 'words_changed':
      return {
        what: `the words changed after ${readers(group)}`,
        next: [
          `see which with plainleaf languages list --clinic ${clinic} --language ${tag}, and have them read`,
          signing(tag, clinic),
        ],
      };
    case 'free_text':
      return {
        what: 'texts of the clinic or the case that are not written in the language of the packet',
        next: ['add them at these lines, each under its language'],
      };
    case 'profile':
      return {
        what: 'nobody has approved the clinic profile',
        next: [`write approved: {by, on} into ${clinic}`],
      };
    case 'study_form':
      return {
        what: `${option} is under study, and no approval form is named`,
        next: [`write under_study.${option}.form into ${clinic}`],
      };
    case 'practice':
      return {
        what: 'warnings from usual practice that the clinic has neither confirmed nor struck',
        next: [`decide on each under cautions in ${clinic}; the clinician sheet names them`],
      };
    case 'aftercare':
      return {
        what: 'matters of the time afterwards that are left to the clinic',
        next: [`decide on them under protocol in ${clinic}; the clinician sheet names them`],
      };
    default:
      return ofEvidence[group.code];
  }
}

const ofEvidence: Readonly<Record<'citations' | 'past_review' | 'past_reading' | 'example', SaidGroup>> = {
  citations: {
    what: 'studies of which part of the reference has not been confirmed',
    next: ['see them with plainleaf evidence due'],
  },
  past_review: {
    what: 'the day to look over the whole evidence has passed',
    next: ['see it with plainleaf evidence due'],
  },
  past_reading: {
    what: 'the day to read a study again has passed',
    next: ['see them, and where to read, with plainleaf evidence due'],
  },
  example: {
    what: 'examples, of invented people',
    next: ['nothing: they are never final, as example: true stands in the case'],
  },
};

function ofDocuments({ documents = 'all' }: OpenGroup): string {
  return documents === 'all' ? '' : ` of ${documents.join(', ')}`;
}

function readers({ reviews = [] }: OpenGroup): string {
  const each = reviews.map(({ by, on }) => `${by.name} (${by.role}) read them on ${on}`);
  return each.length === 0 ? 'they were read' : each.join(', ');
}

/** There is no file to translate the language into from which the others come. */
function reading(tag: string): string {
  return `have them read on the pages${tag === 'en' ? '' : `, or from plainleaf languages export ${tag}`}`;
}

function signing(tag: string, clinic: string): string {
  return `then plainleaf languages sign ${tag} --clinic ${clinic}`;
}
