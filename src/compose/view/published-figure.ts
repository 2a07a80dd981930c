import type { EvidenceRecord, RecordOf } from '../../model/evidence-record.ts';
import type { Formatter } from '../../model/locale.ts';

/** What a record says, as it was published: "22.5%", "7/121", "36.8 kg". Null for kinds that have no single figure. */
export function publishedFigure(record: EvidenceRecord, format: Formatter): string | null {
  switch (record.kind) {
    case 'risk':
    case 'benefit':
      return publishedShare(record.value, format);
    case 'weight':
    case 'duration':
      return publishedSize(record.value, format);
    case 'score':
    case 'contrast':
    case 'report':
      return null;
  }
}

function publishedShare({ events, n, percent }: RecordOf<'risk'>['value'], format: Formatter): string | null {
  if (events !== undefined && n !== undefined) return `${format.number(events)}/${format.number(n)}`;
  return percent === undefined ? null : `${format.number(percent, 2)}%`;
}

function publishedSize(
  { estimate, unit }: RecordOf<'weight' | 'duration'>['value'],
  format: Formatter,
): string | null {
  if (estimate === undefined) return null;
  const size = format.number(estimate, 2);
  return unit === '%' ? `${size}%` : `${size}\u00a0${unit}`;
}
