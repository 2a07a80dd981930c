import type { Case } from '../../model/case.ts';
import type { OptionColumn } from '../../model/comparison.ts';
import type { EvidenceBase } from '../../model/evidence.ts';
import type { Means } from '../../model/reason-check.ts';
import type { LookOf } from '../../model/reason-rules.ts';
import type { OptionDesk } from '../describe-option.ts';
import type { OptionKind } from '../subject.ts';
import { firstMonth, laterWindows, weightWindows } from '../weigh-time.ts';
import type { TimeWindows } from '../weigh-time.ts';

/** What the reasons of one case are checked with. */
export interface ReasonDesk {
  readonly given: Case;
  readonly evidence: EvidenceBase;
  readonly desks: readonly OptionDesk[];
  /** The same options, each with what the pages say of it. */
  readonly options: readonly AskedOption[];
}

/** The option that a reason is about. */
export interface AskedOption {
  readonly desk: OptionDesk;
  readonly column: OptionColumn;
}

/** Windows of a look. */
export function windowsOf(times: LookOf<'compare'>['times']): TimeWindows {
  switch (times) {
    case 'first-month':
      return [firstMonth];
    case 'later-years':
      return laterWindows;
    case 'weight':
      return weightWindows;
  }
}

/** Options of one sort are weighed against each other: what is done to the body, what is taken or learned, nothing. */
export function areAlike(a: OptionKind, b: OptionKind): boolean {
  return sorts[a] === sorts[b];
}

const sorts: Readonly<Record<OptionKind, 'done' | 'taken' | 'none'>> = {
  operation: 'done',
  endoscopic: 'done',
  medicine: 'taken',
  programme: 'taken',
  none: 'none',
};

/** The other options of the case of the same sort. */
export function alikeOthers(desks: readonly OptionDesk[], { code, kind }: OptionDesk): readonly OptionDesk[] {
  return desks.filter((other) => other.code !== code && areAlike(other.kind, kind));
}

/** What an answer means for the reason, as its row of the data says. */
export function meaningOf(look: Answered, answer: 'yes' | 'no' | undefined): Means {
  return (answer === undefined ? undefined : look[answer]) ?? 'nothing';
}

interface Answered {
  readonly yes?: 'supports' | 'contradicts' | undefined;
  readonly no?: 'supports' | 'contradicts' | undefined;
}
