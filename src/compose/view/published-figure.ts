import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Formatter } from '../../model/locale.ts';

/** What a record says, as it was published: "22.5%", "7/121", "36.8 kg". Null for kinds that have no single figure. */
export function publishedFigure(record: EvidenceRecord, format: Formatter): string | null {
  switch (record.kind) {
    case 'risk':
    case 'benefit':
      return shareOf(record.value, format);
    case 'weight':
    case 'duration':
      return amountOf(record.value, format);
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

function shareOf({ events, n, percent }: Share, format: Formatter): string | null {
  if (events !== undefined && n !== undefined) return `${format.number(events)}/${format.number(n)}`;
  return percent === undefined ? null : `${format.number(percent, decimalsOf(percent))}%`;
}

interface Measured {
  readonly estimate?: number | undefined;
  readonly unit: string;
}

function amountOf({ estimate, unit }: Measured, format: Formatter): string | null {
  if (estimate === undefined) return null;
  const number = format.number(estimate, decimalsOf(estimate));
  return unit === '%' ? `${number}%` : `${number}\u00a0${unit}`;
}

/** As many decimals as the figure has, two at most. */
function decimalsOf(value: number): number {
  return [0, 1].find((decimals) => Number(value.toFixed(decimals)) === value) ?? 2;
}
