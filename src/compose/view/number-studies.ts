import type { KnownCell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { isCopy } from '../../model/copy-sites.ts';
import type { Study } from '../../model/study.ts';
import type { Scene } from './scene.ts';
import { asMarkup, inLanguage, joined } from './words.ts';

/** Studies numbered in the order in which the sources name them. */
export interface StudyNumbers {
  /** Number of a study, from 1; a study not yet named gets the next. */
  readonly of: (study: string) => number;
  /** Citations in the order of the numbers. */
  readonly citations: () => readonly Markup[];
}

/** Titles and journals stand in the language in which they were published. */
const languageOfCitations = 'en';

export function numberStudies(scene: Scene, cells: readonly KnownCell[]): StudyNumbers {
  const order: string[] = [];
  const numberOf = (study: string): number => {
    const known = order.indexOf(study);
    return known === -1 ? order.push(study) : known + 1;
  };
  for (const cell of cells) {
    numberOf(cell.lead.study);
    for (const id of cell.others?.records ?? []) {
      const study = scene.records.get(id)?.study;
      if (study !== undefined) numberOf(study);
    }
  }
  return {
    of: numberOf,
    citations: () =>
      order.map((id) => {
        const study = scene.evidence.studies.get(id);
        return study === undefined ? asMarkup(id) : citationOf(scene, study);
      }),
  };
}

/** What was published, whether a study or a guideline. */
export type Published = Pick<Study, 'citation' | 'citation_unseen' | 'seen_at'>;

/**
 * Authors, year, title, journal, and the shortest address under which it can be found; what was not seen is said. Where
 * no authors are known the title begins, as is usual, not a year in brackets.
 */
export function citationOf(scene: Scene, study: Published): Markup {
  const { authors, year, journal } = study.citation;
  const title = titleOf(study);
  const dated = year === undefined ? undefined : `(${String(year)})`;
  const where = addressOf(scene, study);
  const named = authors === undefined ? [atStart(title), dated] : [authors, dated, atStart(title)];
  // A place that only exists on the web is not said twice, as its name and in its address.
  const place = journal === undefined || where.includes(journal) ? undefined : atStart(journal);
  const parts = [...named, place].filter((part) => part !== undefined);
  const published = asPublished(scene, parts.map(withStop).join(' '));
  const unseen = unseenFields(scene, study);
  return joined(
    published,
    ...(where === '' ? [] : [asMarkup(`${where}.`)]),
    ...(isCopyOnly(scene, study) ? [scene.words.say('sources.copy')] : []),
    ...(unseen.length === 0
      ? []
      : [scene.words.say('sources.unseen', { fields: scene.format.list(unseen, 'and') })]),
  );
}

/** As librarians write it: what says which text it is, though nobody has seen its title, stands in square brackets. */
function titleOf({ citation: { title }, citation_unseen: unseen = [] }: Published): string | undefined {
  const isOwn = unseen.includes('title') && title?.startsWith('[') === false;
  return isOwn ? `[${title}]` : title;
}

function unseenFields({ words }: Scene, study: Published): readonly string[] {
  const fields = study.citation_unseen ?? [];
  const hasTitle = study.citation.title !== undefined;
  return fields.map((field) =>
    words.plain(`sources.fields.${field === 'title' && hasTitle ? 'title_in_brackets' : field}`),
  );
}

/** Words of a citation, in the language in which they were published. */
export function asPublished({ locale }: Scene, said: string): Markup {
  return inLanguage(said, { language: languageOfCitations, document: locale.tag });
}

/** With a capital, as each part of a citation begins a sentence; the name of a host stays as it is typed. */
function atStart(part: string): string;
function atStart(part: string | undefined): string | undefined;
function atStart(part: string | undefined): string | undefined {
  const isHost = part !== undefined && /^[a-z0-9-]+\.[a-z]/.test(part);
  return isHost ? part : part?.replace(/^\[?\p{Ll}/u, (first) => first.toUpperCase());
}

/** DOI and PubMed number; without them the address where it was read, unless that is a copy: nobody is sent to one. */
function addressOf(
  { evidence }: Scene,
  { citation: { doi, pmid }, seen_at: seenAt = [] }: Published,
): string {
  const named = [
    ...(doi === undefined ? [] : [`doi.org/${doi}`]),
    ...(pmid === undefined ? [] : [`PubMed ${pmid}`]),
  ];
  if (named.length > 0) return named.join('; ');
  return shortAddress(seenAt.find((url) => !isCopy(url, evidence.copySites)) ?? '');
}

/** Whether nobody has opened the original, only copies of it. */
function isCopyOnly({ evidence }: Scene, { seen_at: seenAt = [] }: Published): boolean {
  return seenAt.length > 0 && seenAt.every((url) => isCopy(url, evidence.copySites));
}

/** As a reader types it: without what a browser adds, and with signs for their codes ("≥" for "%e2%89%a5"). */
export function shortAddress(url: string): string {
  return readable(url)
    .trim()
    .replace(/^https?:\/\/(www\.)?/, '')
    .replace(/\/$/, '');
}

function readable(url: string): string {
  try {
    return decodeURI(url);
  } catch {
    // A sign that only looks like a code stays as it is.
    return url;
  }
}

function withStop(part: string): string {
  const bare = part.replace(/[.\s]+$/, '');
  return /[?!]$/.test(bare) ? bare : `${bare}.`;
}
