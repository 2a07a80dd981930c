import { isPrintable } from '../../model/evidence.ts';
import type { EvidenceRecord, RecordOf } from '../../model/evidence-record.ts';
import type { OptionDesk } from '../describe-option.ts';
import { enoughPeople } from '../enough-people.ts';
import { matchPeople } from '../match-people.ts';
import { monthsOf, weighTime } from '../weigh-time.ts';
import type { TimeWindow } from '../weigh-time.ts';
import type { PublishedContrast } from '../../model/reason-check.ts';
import type { Hint } from './hint.ts';

type ContrastRecord = RecordOf<'contrast'>;

/** Two options of the case, the one of the reason first. */
export interface DeskPair {
  readonly mine: OptionDesk;
  readonly theirs: OptionDesk;
}

/**
 * Published contrasts of two options, of people like this person, with a 95 % interval: the most direct there is, since
 * its interval is that of the difference. One written from the other side counts the other way round.
 */
export function readContrasts(
  { mine, theirs }: DeskPair,
  outcome: string,
  windows: readonly TimeWindow[],
): readonly Hint[] {
  return [
    ...contrastsOf(mine, theirs, outcome).flatMap((record) => readOne(record, mine, windows)),
    ...contrastsOf(theirs, mine, outcome)
      .flatMap((record) => readOne(record, theirs, windows))
      .map(turnRound),
  ];
}

function contrastsOf(desk: OptionDesk, other: OptionDesk, outcome: string): readonly ContrastRecord[] {
  const records: readonly EvidenceRecord[] = desk.records.get(outcome) ?? [];
  return records
    .filter((record) => record.kind === 'contrast')
    .filter(({ versus }) => versus === other.figuresFrom);
}

function readOne(record: ContrastRecord, desk: OptionDesk, windows: readonly TimeWindow[]): readonly Hint[] {
  const window = windows.find((one) => weighTime(record.time, one).inside);
  const stated = stateContrast(record);
  if (window === undefined || stated === undefined || !isUsable(record, desk)) return [];
  const { low, high, measure } = stated;
  const none = measure.endsWith('-ratio') ? 1 : 0;
  return [
    {
      direction: low > none ? 'more' : high < none ? 'fewer' : 'unclear',
      asked: window.asked,
      months: monthsOf(record.time) ?? 0,
      records: [record.id],
      stands: { basis: 'contrast', contrast: { of: desk.code, ...stated } },
    },
  ];
}

/** Only with a 95 % interval of enough people can a contrast tell anything from chance. */
function stateContrast({ value }: ContrastRecord): Omit<PublishedContrast, 'of'> | undefined {
  const { measure, estimate, low, high, unit, n = enoughPeople } = value;
  if (estimate === undefined || low === undefined || high === undefined) return undefined;
  const isSure = value.interval === 'ci95' || value.interval === 'cri95';
  if (!isSure || n < enoughPeople) return undefined;
  return { measure, estimate, low, high, ...(unit === undefined ? {} : { unit }) };
}

function isUsable(record: ContrastRecord, desk: OptionDesk): boolean {
  if (!isPrintable(record) || record.scope !== undefined || record.variant !== undefined) return false;
  return desk.studies.has(record.study) && matchPeople(record, desk.subject, desk).level !== 'other-people';
}

function turnRound(hint: Hint): Hint {
  const turned = { more: 'fewer', fewer: 'more', unclear: 'unclear' } as const;
  return { ...hint, direction: turned[hint.direction] };
}
