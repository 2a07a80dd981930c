import type { EvidenceRecord, RecordOf } from '../../model/evidence-record.ts';
import type { MetricDefinition } from '../../model/evidence.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const unitFitsMetric: EvidenceRule = {
  name: 'unit-fits-metric',
  description: 'the unit of a figure is the unit of what it measures',
  check: (evidence) => {
    const metrics = new Map(evidence.metrics.map((metric) => [metric.code, metric]));
    return evidence.records.flatMap((record) => {
      const wanted = unitsFor(record, metrics);
      const unit = 'unit' in record.value ? record.value.unit : undefined;
      if (wanted === undefined || wanted.includes(unit)) return [];
      const expected = wanted.map((candidate) => candidate ?? 'no unit').join(' or ');
      return [
        faultIn(evidence, record, {
          code: 'EVIDENCE_UNIT',
          message: `the unit is ${unit ?? 'absent'}; ${expected} was expected`,
          hint: 'Correct the unit, or the metric.',
          at: ['value', 'unit'],
        }),
      ];
    });
  },
};

type Metrics = ReadonlyMap<string, MetricDefinition>;

/** Units that may stand; undefined in the list means none. Unknown metrics are another rule's matter. */
function unitsFor(record: EvidenceRecord, metrics: Metrics): readonly (string | undefined)[] | undefined {
  if (record.kind === 'weight' || record.kind === 'score') {
    const metric = metrics.get(record.value.metric);
    return metric && [metric.unit];
  }
  return record.kind === 'contrast' ? unitsForContrast(record.value, metrics) : undefined;
}

type ContrastValue = RecordOf<'contrast'>['value'];

/** Ratios have no unit. */
const unitsByMeasure: Partial<Record<ContrastValue['measure'], readonly (string | undefined)[]>> = {
  'risk-difference': ['percentage points'],
  'relative-difference': ['%'],
  'standardised-difference': [undefined, 'standard deviations'],
};

function unitsForContrast(
  value: ContrastValue,
  metrics: Metrics,
): readonly (string | undefined)[] | undefined {
  if (value.measure !== 'mean-difference') return unitsByMeasure[value.measure] ?? [undefined];
  const metric = metrics.get(value.metric ?? '');
  // The difference of two percents is counted in percentage points.
  return metric && [metric.unit === '%' ? 'percentage points' : metric.unit];
}
