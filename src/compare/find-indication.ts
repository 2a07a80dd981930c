import type { Case, EarlierOperation } from '../model/case.ts';
import type { Indication, OptionColumn } from '../model/comparison.ts';
import type { Subject } from './subject.ts';

/** Earlier operations of which people were studied when they had another. */
const studied: ReadonlyMap<string, Indication> = new Map([
  ['band', 'after-band'],
  ['sleeve', 'after-sleeve'],
  ['bypass', 'after-bypass'],
  ['plication', 'after-plication'],
]);

/** What a person had before; the last of several operations decides. */
export function historyIndication(
  asked: Case['decision']['asked'],
  earlier: readonly EarlierOperation[],
): Indication {
  if (asked === 'first-operation') return 'first-operation';
  return studied.get(earlier.at(-1)?.operation ?? '') ?? 'after-other';
}

/** Whose figures apply to an option for this person. */
export function findIndication(subject: Subject, option: Pick<OptionColumn, 'code' | 'kind'>): Indication {
  if (option.code === 'band-removal' && subject.bandInPlace) return 'band-trouble';
  return option.kind === 'operation' || option.kind === 'endoscopic' ? subject.history : 'none';
}
