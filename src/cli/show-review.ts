import type { DueSource, ReviewState } from '../evidence/index.ts';
import { alignColumns, countOf } from './align-columns.ts';

/** What has to be read again and where, and what nobody has read at its source. */
export function showReview(state: ReviewState): string {
  const unread = state.unread.map(({ record }) => [record.id, record.seen]);
  const unconfirmed = state.unconfirmed.map((study) => [study.id, (study.citation_unseen ?? []).join(', ')]);
  return [
    `The whole is to be looked over by ${state.nextReview}${state.due ? ': that day has come.' : '.'}`,
    '',
    ...showSources(state),
    ...showFactSources(state),
    '',
    `${countOf(unread.length, 'figure')} that nobody has read at the source; no patient page shows them:`,
    ...alignColumns(unread, '  '),
    '',
    `${countOf(unconfirmed.length, 'study', 'studies')} with parts of the citation to confirm:`,
    ...alignColumns(unconfirmed, '  '),
  ].join('\n');
}

function showSources({ sources, until, next }: ReviewState): readonly string[] {
  const figures = sources.reduce((sum, { records }) => sum + records.length, 0);
  const later =
    next === undefined ? '' : ` The next is due on ${next.by} (${countOf(next.figures, 'figure')}).`;
  if (figures === 0) return [`No source is to be read again by ${until}.${later}`];
  const studies = countOf(sources.length, 'study', 'studies');
  return [
    `${countOf(figures, 'figure')} of ${studies} to be read again by ${until}.${later}`,
    ...sources.flatMap(showSource),
  ];
}

/** Facts on aftercare that are due, and how many nobody has read. */
function showFactSources({ aftercare, until, unreadFacts }: ReviewState): readonly string[] {
  const count = aftercare.reduce((sum, { records }) => sum + records.length, 0);
  const due =
    count === 0
      ? []
      : [
          '',
          `${countOf(count, 'fact')} on aftercare of ${countOf(aftercare.length, 'source')} to be read again by ${until}.`,
          ...aftercare.flatMap(showSource),
        ];
  if (unreadFacts.length === 0) return due;
  const unread = `${countOf(unreadFacts.length, 'fact')} on aftercare that nobody has read at the source`;
  return [
    ...due,
    '',
    `${unread}; no patient page gives them as a rule (evidence list --seen memory or page-2nd).`,
  ];
}

function showSource({ by, study, records, places }: DueSource): readonly string[] {
  const rows = [
    ...places.map((place, index) => [index === 0 ? 'read at' : '', place]),
    ...records.map((record, index) => [index === 0 ? 'figures' : '', record]),
  ];
  return [`  ${by}  ${study}`, ...alignColumns(rows, '    ')];
}
