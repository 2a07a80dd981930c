import { InternalError } from '../../diagnostics/diagnostic.ts';
import { isForAll } from '../../model/aftercare-plan.ts';
import type { AftercarePlan, ProtocolEntry, Repetition } from '../../model/aftercare-plan.ts';
import type { WhoCode } from '../../model/aftercare-codes.ts';
import type { Amount } from '../../model/aftercare.ts';
import type { Protocol } from '../../model/clinic-protocol.ts';
import type { Markup } from '../../model/locale.ts';
import type { AfterTopic } from '../../model/protocol-of.ts';
import type { LocalText } from '../../model/scalars.ts';
import type { Span } from '../../model/span.ts';
import type { Scene } from './scene.ts';
import { afterColon, asMarkup, bold, endsSentence, freeText, inLanguage, makeWords } from './words.ts';

/** The plan of the time after the treatment. Without one the input stage has refused the documents that need it. */
export function planOf({ aftercare }: Scene): AftercarePlan {
  if (aftercare === null) throw new InternalError('a document on the time after a treatment has no plan');
  return aftercare;
}

/** Topics of the protocol that are lists. */
export type ListTopic = Exclude<AfterTopic, 'warnings'>;

/** A line of such a list. */
export type LineOf<K extends ListTopic> = Protocol[K][string][number];

/** What the clinic wrote at a place of its protocol. */
export function writtenAt<K extends ListTopic>(
  scene: Scene,
  topic: K,
  { option, index }: ProtocolEntry,
): LineOf<K> {
  const line: LineOf<K> | undefined = scene.clinic.protocol[topic][option]?.[index ?? 0];
  if (line === undefined) throw new InternalError('a plan names a line that the clinic did not write');
  return line;
}

/** Free text as a sentence, with the mark at its end that the language has in which it is given. */
export function freeSentence({ locale, otherLocales = [], words }: Scene, text: LocalText): Markup {
  const [language, said] = freeText(text, locale.tag);
  const other = otherLocales.find(({ tag }) => tag === language);
  const own = language === locale.tag || other === undefined ? words : makeWords(other);
  const ended = endsSentence(said) ? said : own.plain('common.sentence', { text: said });
  return inLanguage(ended, { language, document: locale.tag });
}

/** A day with its year only where that is not the year of day 0. */
export function sayDay(scene: Scene, iso: string): string {
  const { format } = scene;
  return yearOf(iso) === yearOf(planOf(scene).date) ? format.monthDay(iso) : format.date(iso);
}

function yearOf(iso: string): string {
  return iso.slice(0, 4);
}

/**
 * "From January 28 until February 24."; empty where it holds from day 0 for good. Days are ISO; both have their year where
 * they are not of one.
 */
export function sayPeriod(scene: Scene, starts: string | null, lastDay: string | null): string {
  const first = starts === planOf(scene).date ? null : starts;
  const isOverNewYear = first !== null && lastDay !== null && yearOf(first) !== yearOf(lastDay);
  const say = (iso: string): string => (isOverNewYear ? scene.format.date(iso) : sayDay(scene, iso));
  const from = first === null ? null : say(first);
  const until = lastDay === null ? null : say(lastDay);
  if (from === null) return until === null ? '' : scene.words.plain('aftercare.period.until', { until });
  if (until === null) return scene.words.plain('aftercare.period.from', { from });
  return scene.words.plain('aftercare.period.from_until', { from, until });
}

/** Words with their time before them in bold, if they have one. */
export function dated({ words }: Scene, period: string, said: Markup): Markup {
  return period === '' ? said : words.say('common.labelled', { label: bold(asMarkup(period)), text: said });
}

/** "If you have diabetes: …", unless it is for everybody. What the clinic wrote stays as it is written. */
export function forWhom({ words }: Scene, who: WhoCode, what: Markup): Markup {
  return isForAll(who)
    ? what
    : words.say('aftercare.for_them', { who: words.plain(`aftercare.who.${who}`), what });
}

/** The same of words of the program's own, which go on after the colon. */
export function saidForWhom(scene: Scene, who: WhoCode, what: Markup): Markup {
  return isForAll(who) ? what : forWhom(scene, who, afterColon(scene.words, what));
}

/** "at least 12 mg a day", "8 to 11 mg a day". */
export function sayAmount({ words, format }: Scene, { low, high, unit }: Amount): string {
  const written = (number: string): string => words.plain(`aftercare.amounts.${unit}`, { number });
  if (low === null) return words.plain('aftercare.at_most', { amount: written(format.number(high ?? 0)) });
  if (high === null) return words.plain('aftercare.at_least', { amount: written(format.number(low)) });
  return written(low === high ? format.number(low) : format.range(format.number(low), format.number(high)));
}

/** "2 weeks". */
export function saySpan({ words }: Scene, { count, unit }: Span): string {
  return words.plain(`aftercare.spans.${unit}`, { count });
}

/** "After that every 12 months, for life. The next: January 14, 2030." */
export function sayRepetition(scene: Scene, { every, next, lastDay }: Repetition): Markup {
  const { words, format } = scene;
  const given = sayNext(scene, { every, next });
  return lastDay === null
    ? words.say('aftercare.later_for_life', given)
    : words.say('aftercare.later_until', { ...given, until: format.date(lastDay) });
}

export function upperFirst(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1);
}

export function lowerFirst(said: string): string {
  return said.charAt(0).toLowerCase() + said.slice(1);
}

/** How long until the next time, and its day. */
export function sayNext(
  scene: Scene,
  { every, next }: Pick<Repetition, 'every' | 'next'>,
): { readonly span: string; readonly next: string } {
  return { span: saySpan(scene, every), next: scene.format.date(next.date) };
}
