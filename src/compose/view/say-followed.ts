import type { WeightPoint } from '../../model/comparison.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Markup } from '../../model/locale.ts';
import type { NamedOption, Scene } from './scene.ts';
import { sayLength } from './say-time.ts';
import { bold, figure, joined } from './words.ts';

/** "Sleeve: after 5 years 80 of 180 people were still measured."; null where the study does not say. */
export function followedInWords(
  scene: Scene,
  option: NamedOption,
  point: WeightPoint | undefined,
): Markup | null {
  const record = point === undefined ? undefined : scene.records.get(point.record);
  if (point === undefined || record === undefined) return null;
  const { words } = scene;
  const said = countedAt(scene, record);
  if (said === null) return null;
  const source = { cell: point.cell, records: [point.record] };
  const time = sayLength(scene, { months: point.months });
  const name = bold(words.say('comparison.lines.of_option', { option: option.name }));
  const counted = figure(words.plain(`comparison.lines.${said.key}`, said.counts), source);
  const sentence = said.key === 'began' ? 'counted_began' : 'counted';
  return joined(name, words.say(`comparison.lines.${sentence}`, { time, counted }));
}

interface Counted {
  readonly key: 'seen_of' | 'percent_of' | 'seen' | 'began';
  readonly counts: Record<string, string>;
}

/** The most telling that is stated: those seen of those who began, else a percent of them, else one of both. */
function countedAt({ format }: Scene, { followed, value }: EvidenceRecord): Counted | null {
  const number = (amount: number): string => format.number(amount);
  const { of, seen, percent } = followed ?? {};
  if (of !== undefined && seen !== undefined)
    return { key: 'seen_of', counts: { seen: number(seen), of: number(of) } };
  if (of !== undefined && percent !== undefined) {
    return { key: 'percent_of', counts: { some: number(Math.round(percent)), of: number(of) } };
  }
  if (!('n' in value) || value.n === undefined) return null;
  return { key: value.n_is === 'start' ? 'began' : 'seen', counts: { n: number(value.n) } };
}
