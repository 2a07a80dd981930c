import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Formatter } from '../../model/locale.ts';

/** What a record says, as it was published: "22.5%", "7/121", "36.8 kg". Null for kinds that have no single figure. */
export function publishedFigure(record: EvidenceRecord, format: Formatter): string | null {
  switch (record.kind) {
    case 'risk':
    case 'benefit': {
      const { events, n, percent } = record.value;
      if (events !== undefined && n !== undefined) return `${format.number(events)}/${format.number(n)}`;
      return percent === undefined ? null : `${format.number(percent, 2)}%`;
    }
    case 'weight':
    case 'duration': {
      const { estimate, unit } = record.value;
      if (estimate === undefined) return null;
      return unit === '%' ? `${format.number(estimate, 2)}%` : `${format.number(estimate, 2)}\u00a0${unit}`;
    }
    case 'score':
    case 'contrast':
    case 'report':
      return null;
  }
}
