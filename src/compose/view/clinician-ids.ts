import type { Horizon } from '../../model/comparison.ts';
import { lengthOf } from './say-time.ts';
import type { Scene } from './scene.ts';

/** What follows option and outcome, which stand beside it already: `30d.mbsaqip-2015-2020`. */
export function shortId(record: string): string {
  return record.split('.').slice(2).join('.');
}

/**
 * Short ids of one outcome in a run of text. Those of one study and group that differ in time alone are said together:
 * `12m/24m.kaiser-2020.twl`.
 */
export function idsTogether(ids: readonly string[]): readonly string[] {
  const times = new Map<string, string[]>();
  for (const id of ids) {
    const [time = '', ...rest] = id.split('.');
    const study = rest.join('.');
    times.set(study, [...(times.get(study) ?? []), time]);
  }
  return [...times].map(([study, all]) => [all.join('/'), study].filter((part) => part !== '').join('.'));
}

/** "5 y", "30 d": on one line, short enough for a narrow column. */
export function shortLength(scene: Scene, horizon: Horizon): string {
  const length = lengthOf(horizon);
  if (length === null) return scene.words.plain('clinician-sheet.time.not_stated');
  const { unit, count } = length;
  return tied(scene.words.plain(`clinician-sheet.time.${unit}`, { n: scene.format.number(count), count }));
}

/** The same with how it was counted: "≤ 30 d" any time up to then, "5 y" at that time, "mean 2 y", "≈ 4 y". */
export function shortTime(scene: Scene, horizon: Horizon, basis: string): string {
  if (basis === 'peri-operative') return scene.words.plain('clinician-sheet.time.around');
  if (lengthOf(horizon) === null) return scene.words.plain('clinician-sheet.time.not_stated');
  return tied(scene.words.plain(`clinician-sheet.time.${basis}`, { time: shortLength(scene, horizon) }));
}

/** The term of the trade where there is one, else the name that patients read. */
export function outcomeName({ words }: Scene, outcome: string): string {
  const term = `clinician-sheet.outcomes.${outcome}`;
  return words.plain(words.has(term) ? term : `outcomes.${outcome}.name`);
}

/** On one line: a number and what belongs to it. */
export function tied(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
