import type { CellValue, SetAsideReason } from '../model/comparison.ts';
import { isPrintable } from '../model/evidence.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import type { Study } from '../model/study.ts';
import type { OptionDesk } from './describe-option.ts';
import { matchPeople } from './match-people.ts';
import type { PeopleMatch } from './match-people.ts';
import { readAmount } from './read-amount.ts';
import { readProportion } from './read-proportion.ts';
import { weightForPerson } from './weight-for-person.ts';
import { weighTime } from './weigh-time.ts';
import type { TimeWindow } from './weigh-time.ts';

/** A record that may lead or stand beside the lead. */
export interface Candidate {
  readonly record: EvidenceRecord;
  readonly study: Study;
  readonly match: PeopleMatch;
  readonly value: CellValue;
  /** See `TimeVerdict`. */
  readonly steps: number;
  readonly rank: number;
}

/** How near a record came to being used; the later the stage, the more it tells a reader who is told "not known". */
export type Stage = 'kind' | 'seen' | 'people' | 'time' | 'value';

export interface Refusal {
  readonly record: EvidenceRecord;
  readonly stage: Stage;
  readonly reason: SetAsideReason;
  readonly inTime: boolean;
  /** Its people are like this person, or near. */
  readonly fits: boolean;
}

export type Assessment =
  | { readonly usable: true; readonly candidate: Candidate }
  | { readonly usable: false; readonly refusal: Refusal };

/** Whether a record may be shown to this person for an option at a time, or the first reason why not. */
export function assessRecord(record: EvidenceRecord, desk: OptionDesk, window: TimeWindow): Assessment {
  const time = weighTime(record.time, window);
  const match = matchPeople(record, desk.subject, desk);
  const fits = match.level !== 'other-people';
  const refuse = (stage: Stage, reason: SetAsideReason): Assessment => ({
    usable: false,
    refusal: { record, stage, reason, inTime: time.inside, fits },
  });
  const study = desk.studies.get(record.study);
  const value = readValue(record, desk);
  const otherwise = nameOtherFigure(record, value);
  // Without its publication a figure cannot be cited, so it counts as unread.
  if (!isPrintable(record) || study === undefined) {
    const unread = { code: 'not-verified', seen: record.seen } as const;
    return refuse(otherwise === undefined ? 'seen' : 'kind', unread);
  }
  if (otherwise !== undefined) return refuse('kind', otherwise);
  if (match.level === 'other-people') return refuse('people', match.reasons[0]);
  if (!time.inside) return refuse('time', nameTime(record, time.why));
  if (isReason(value)) return refuse('value', value);
  return { usable: true, candidate: { record, study, match, value, steps: time.steps, rank: time.rank } };
}

/** Why a record is not a figure of its outcome after the option as done today. */
function nameOtherFigure(
  record: EvidenceRecord,
  value: CellValue | SetAsideReason,
): SetAsideReason | undefined {
  // Counts less or more than the outcome says.
  if (record.scope !== undefined) return { code: 'other-measure', kind: record.scope };
  const variant = differentlyDone(record);
  if (variant !== undefined) return { code: 'variant', variant };
  return isReason(value) && value.code === 'other-measure' ? value : undefined;
}

/**
 * What was done is not the option as done today: the record says so, or its id says that the treatment had been
 * stopped before the figure was taken (ids end in what tells a record apart).
 */
function differentlyDone(record: EvidenceRecord): string | undefined {
  if (record.variant !== undefined) return record.variant;
  return isOfStopped(record) ? (record.definition ?? 'stopped') : undefined;
}

/** Whether the figure is of people who had stopped the treatment. */
export function isOfStopped({ id }: EvidenceRecord): boolean {
  return id.split('.').includes('stopped');
}

function readValue(record: EvidenceRecord, desk: OptionDesk): CellValue | SetAsideReason {
  switch (record.kind) {
    case 'risk':
    case 'benefit':
      return readProportion(record);
    case 'weight':
      return weightForPerson(record, desk.subject);
    case 'duration':
      return readAmount(record);
    case 'score':
    case 'contrast':
    case 'report':
      return { code: 'other-measure', kind: record.kind };
  }
}

function isReason(value: CellValue | SetAsideReason): value is SetAsideReason {
  return 'code' in value;
}

function nameTime({ time }: EvidenceRecord, why: 'other-time' | 'time-unclear'): SetAsideReason {
  if (why === 'time-unclear') return { code: why };
  return {
    code: why,
    ...(time.months === undefined ? {} : { months: time.months }),
    ...(time.days === undefined ? {} : { days: time.days }),
  };
}
