import type { EvidenceRecord } from '../../model/evidence-record.ts';
import { tied } from './clinician-ids.ts';
import type { Scene } from './scene.ts';

type Told = Pick<Scene, 'format' | 'words'>;

/** What a record says, as it was published: "22.5%", "7/121", "36.8 kg". Null for kinds that have no single figure. */
export function publishedFigure(record: EvidenceRecord, scene: Told): string | null {
  switch (record.kind) {
    case 'risk':
    case 'benefit':
      return shareOf(record.value, scene);
    case 'weight':
    case 'duration':
      return record.value.estimate === undefined
        ? null
        : withUnit(scene, record.value.estimate, record.value.unit);
    case 'score':
    case 'contrast':
    case 'report':
      return null;
  }
}

interface Share {
  readonly events?: number | undefined;
  readonly n?: number | undefined;
  readonly percent?: number | undefined;
}

function shareOf({ events, n, percent }: Share, scene: Told): string | null {
  const { format } = scene;
  if (events !== undefined && n !== undefined) return `${format.number(events)}/${format.number(n)}`;
  return percent === undefined ? null : withUnit(scene, shortShare(percent), '%');
}

/** A percent of people to one decimal place, but never so short that a share becomes none. */
function shortShare(percent: number): number {
  const short = Number(percent.toFixed(1));
  return short === 0 ? percent : short;
}

/** "3.09 d", "22.5%": as many decimals as the figure has, two at most; the unit in the words of the language. */
export function withUnit({ format, words }: Told, value: number, unit: string): string {
  const n = format.number(value, decimalsOf(value));
  return tied(words.plain(`clinician-sheet.units.${unit}`, { n }));
}

function decimalsOf(value: number): number {
  return [0, 1].find((decimals) => Number(value.toFixed(decimals)) === value) ?? 2;
}
