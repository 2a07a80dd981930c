import type { AftercareSubject, AftercareTopic, TestCode, Urgency, WhoCode } from './aftercare-codes.ts';
import type { WithheldReason } from './aftercare-rules.ts';
import type { AftercareTiming, Amount } from './aftercare.ts';
import type { Protocol } from './clinic-protocol.ts';
import type { ClinicProfile } from './clinic.ts';
import type { Dose } from './dose.ts';
import type { OptionCode } from './evidence-record.ts';
import type { AdviceCode, SignCode, StaffCode, SupplementCode } from './protocol-codes.ts';
import type { AfterTopic } from './protocol-of.ts';
import type { Span } from './span.ts';

/**
 * What to do when before and after a treatment, counted from its day. Codes, numbers and ISO days only: the words are
 * those of the locales, and the clinic's own, which stand in its profile at `entry`.
 */
export interface AftercarePlan {
  readonly option: OptionCode;
  /** Day 0: the day of the operation, or of the first dose. */
  readonly date: string;
  /** How long in hospital, in the clinic's words; null if it does not say. */
  readonly stay: ProtocolEntry | null;
  /** Before the day. */
  readonly before: readonly DatedRule[];
  readonly diet: readonly DietStage[];
  /** In order of date; repeated ones up to two years after the day, and no further. */
  readonly visits: readonly Visit[];
  /** Visits that go on after that. */
  readonly laterVisits: readonly LaterVisit[];
  /** Lifting, driving, work, walking and wounds, in this order. */
  readonly activity: readonly DatedRule[];
  readonly medicines: readonly DatedRule[];
  readonly supplements: readonly SupplementPlan[];
  readonly tests: readonly TestPlan[];
  /** Everything else. */
  readonly advice: readonly DatedRule[];
  readonly warnings: Readonly<Record<Urgency, readonly WarningSign[]>>;
  readonly calls: readonly Contact[];
  /** What prints no rule, for the clinician: guidelines that leave it to the clinic, and topics of which nothing is said. */
  readonly undecided: readonly Undecided[];
}

/** Where in the protocol of the profile something stands. */
export interface ProtocolEntry {
  readonly topic: AfterTopic | 'stay';
  /** The option under which it is written; another one where the clinic says that the two are the same. */
  readonly option: OptionCode;
  /** Place in its list, from 0 (of warnings: in the list of its urgency); null where there is no list. */
  readonly index: number | null;
}

/** Who says so. */
export interface Grounds {
  readonly from: 'clinic' | 'guideline';
  /** Of the clinic: where its words stand. */
  readonly entry: ProtocolEntry | null;
  /** Of a guideline: the facts it stands on. Of the clinic: facts on the same matter that were read, for the clinician. */
  readonly facts: readonly string[];
  /** Sources of these facts. */
  readonly sources: readonly string[];
}

export interface DatedRule extends Grounds {
  readonly topic: AfterTopic | AftercareTopic;
  /** More closely; null where the clinic's words say it. */
  readonly about: AftercareSubject | AdviceCode | null;
  /** Whom it is for, so far as the case does not tell; `adults` is everybody. */
  readonly who: WhoCode;
  readonly phase: AftercareTiming['phase'];
  /** First and last day; null: not stated. */
  readonly starts: string | null;
  readonly lastDay: string | null;
  /** Of a guideline. Several are several statements on the same matter, and are never added. */
  readonly amounts: readonly Amount[];
  /** Of a guideline: what is tested. */
  readonly tests: readonly TestCode[];
}

export interface DietStage extends Grounds {
  /** Only a clinic sets stages of eating. */
  readonly entry: ProtocolEntry;
  /** From 1. */
  readonly stage: number;
  readonly fromDay: number;
  /** Null: for good. */
  readonly toDay: number | null;
  readonly starts: string;
  readonly lastDay: string | null;
}

/** A day on which something is due. */
export interface Due {
  /** Time after day 0; null where weeks and months would have to be added. */
  readonly after: Span | null;
  /** The day that the calendar gives. */
  readonly counted: string;
  /** The day on which the clinic sees people: the same or the next such day. */
  readonly date: string;
  /** Where a source allows a range of time, its first day; else null. */
  readonly earliest: string | null;
}

export interface Repetition {
  readonly every: Span;
  /** The first day after the two years. */
  readonly next: Due;
  /** The last day of it; null: for life. */
  readonly lastDay: string | null;
}

interface Meeting extends Grounds {
  /** Empty where a guideline does not say. */
  readonly with: readonly StaffCode[];
  readonly way: 'in-person' | 'phone' | 'video';
}

export interface Visit extends Meeting, Due {
  /** Whether it is one of a repeated series, the first not counted. */
  readonly isRepeat: boolean;
}

export interface LaterVisit extends Meeting {
  readonly then: Repetition;
}

export interface SupplementPlan extends Grounds {
  readonly supplement: SupplementCode | AftercareSubject;
  readonly who: WhoCode;
  /** Of the clinic: what is taken at one time. */
  readonly dose: Dose | null;
  readonly timesADay: number;
  /** Of a guideline; see `DatedRule`. */
  readonly amounts: readonly Amount[];
  /** From one day of taking to the next. */
  readonly every: Span;
  readonly starts: string;
  /** Null: for life. */
  readonly lastDay: string | null;
  /** Days of taking within two years, where there is a month or more from one to the next; they do not move. */
  readonly due: readonly Due[];
  readonly then: Repetition | null;
}

export interface TestPlan extends Grounds {
  readonly tests: readonly TestCode[];
  readonly who: WhoCode;
  /** Due at each visit in person; `due` are then those of the visits. */
  readonly atEachVisit: boolean;
  /** Within two years. */
  readonly due: readonly Due[];
  readonly then: Repetition | null;
}

export interface WarningSign extends Grounds {
  /** Null: the clinic's own words. */
  readonly sign: SignCode | AftercareSubject | null;
  /** Whom it is for, so far as the case does not tell; `adults` is everybody. */
  readonly who: WhoCode;
  /** The clinic's number for a fever or a fast pulse. */
  readonly threshold: Threshold | null;
  /** Days that the source speaks of, from day 0; never a day on which a sign stops to count. */
  readonly days: { readonly from: number; readonly to: number | null } | null;
}

export interface Threshold {
  readonly value: number;
  readonly unit: 'celsius' | 'beats/minute';
}

/** Whom to call. */
export interface Contact {
  readonly urgency: Urgency;
  /** The clinic's entry; null: one of its phones. */
  readonly entry: ProtocolEntry | null;
  readonly phone: keyof ClinicProfile['clinic']['phones'] | null;
}

/**
 * Why no rule prints. A reason of a fact, or: `not-for-person`: the fact excepts people like this one; `no-entry`: neither
 * clinic nor guideline says anything; `not-listed`: a guideline names it, and the clinic's own list does not; `slower`: the
 * clinic lets a sign wait for longer than the sources do.
 */
export type UndecidedReason =
  Exclude<WithheldReason, 'context'> | 'not-for-person' | 'no-entry' | 'not-listed' | 'slower';

export interface Undecided {
  readonly topic: keyof Protocol | AftercareTopic;
  /** Null where nothing is said of the topic at all. */
  readonly subject: AftercareSubject | null;
  readonly who: WhoCode;
  /** The weightiest of its reasons. */
  readonly reason: UndecidedReason;
  readonly facts: readonly { readonly id: string; readonly reasons: readonly UndecidedReason[] }[];
  readonly sources: readonly string[];
}

/** Reasons that leave nothing to ask: the clinic has decided, or the person is not meant. */
const settled: readonly UndecidedReason[] = ['not-listed', 'not-for-person', 'slower'];

/** What is left for the clinic to say about everybody who is treated so. */
export function openMatters({ undecided }: Pick<AftercarePlan, 'undecided'>): readonly Undecided[] {
  return undecided.filter(({ who, reason }) => isForAll(who) && !settled.includes(reason));
}

/** Whether a line is for everybody. */
export function isForAll(who: WhoCode): boolean {
  return who === 'adults' || who === 'everyone';
}
