import type { RecordDetails, RecordRow } from '../evidence/index.ts';
import type { EvidenceRecord, People } from '../model/evidence-record.ts';
import { writeDose } from '../model/medicine-dose.ts';
import type { Study } from '../model/study.ts';
import { alignColumns, countOf } from './align-columns.ts';

/** Records one a line: id, people, how sure, how it was read, figure. */
export function showRecords(rows: readonly RecordRow[]): string {
  const lines = rows.map(({ record }) => [
    record.id,
    record.people.indication,
    record.certainty,
    record.seen,
    showFigure(record),
  ]);
  return [...alignColumns(lines), '', countOf(rows.length, 'record')].join('\n');
}

/** Everything about one record, and where it was read. */
export function showRecordDetails(details: RecordDetails): string {
  const { record, study, printable, samePeopleAs, siblings } = details;
  const lines: readonly (readonly [string, string | undefined])[] = [
    ['record', record.id],
    ['figure', showFigure(record)],
    ['definition', record.definition],
    ['dose', record.dose && writeDose(record.dose)],
    ['people', showPeople(record.people)],
    ['time', showTime(record)],
    ['certainty', record.certainty],
    ['read', `${record.seen}${printable ? '' : ' (never printed for a patient)'}`],
    ['note', record.note],
    ['study', `${record.study} (${record.design ?? study?.design ?? 'unknown design'})`],
    ...(study === undefined ? [] : showStudy(study)),
    ['read at', (record.seen_at ?? study?.seen_at ?? []).join(' ')],
    ['read again', showReviewOf(details)],
    ['same people', samePeopleAs.map(({ id }) => id).join(', ')],
    ['also there', siblings.join(', ')],
  ];
  const given = lines.flatMap(([name, value]) =>
    value === undefined || value === '' ? [] : [[name, value]],
  );
  return alignColumns(given).join('\n');
}

/** By when, and where that day comes from. */
export function showReviewOf({ review }: Pick<RecordDetails, 'review'>): string | undefined {
  if (review === undefined) return undefined;
  const { by, setBy, readOn } = review;
  return setBy === 'interval'
    ? `by ${by} (counted from ${readOn})`
    : `by ${by} (set by the ${setBy}; read by ${readOn})`;
}

function showStudy({ citation, setting }: Study): readonly (readonly [string, string | undefined])[] {
  return [...showCitation(citation), ['setting', setting]];
}

/** The citation of a study, or of a source of aftercare, as rows of name and value. */
export function showCitation(
  citation: Study['citation'],
): readonly (readonly [string, string | undefined])[] {
  const { authors, year, title, journal } = citation;
  const parts = [authors, year, title, journal].filter((part) => part !== undefined);
  return [
    ['citation', parts.map((part) => String(part).replace(/\.$/, '')).join('. ')],
    ['doi', citation.doi],
    ['pubmed', citation.pmid],
  ];
}

/** The value as the data file has it, for example `events 598, n 370369`. */
function showFigure({ value }: EvidenceRecord): string {
  return Object.entries(value)
    .map(([key, part]: [string, unknown]) => `${key} ${String(part)}`)
    .join(', ');
}

function showTime({ time }: EvidenceRecord): string {
  if (time.days !== undefined) return `${time.basis} ${String(time.days)} days`;
  return time.months === undefined ? time.basis : `${time.basis} ${String(time.months)} months`;
}

function showPeople({ bmi, bmi_by_sex: bySex, age, ...rest }: People): string {
  const spread = (name: string, of: object | undefined): string[] =>
    of === undefined
      ? []
      : [
          `${name} ${Object.entries(of)
            .map(([key, part]) => `${key} ${String(part)}`)
            .join(' ')}`,
        ];
  const others = Object.entries(rest).map(([key, part]) =>
    key === 'indication' ? String(part) : `${key.replaceAll('_', ' ')} ${String(part)}`,
  );
  const sexes = [...spread('BMI of women', bySex?.female), ...spread('BMI of men', bySex?.male)];
  return [...others, ...spread('BMI', bmi), ...sexes, ...spread('age', age)].join('; ');
}
