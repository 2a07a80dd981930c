import type { Bounds, Person, SetAsideReason, WeightAt } from '../model/comparison.ts';
import type { RecordOf } from '../model/evidence-record.ts';
import { bodyMassIndex } from '../model/quantity.ts';
import type { Subject } from './subject.ts';
import { chooseConversion } from './convert-weight.ts';
import type { Conversion } from './convert-weight.ts';
import { standardErrors95 } from './score-interval.ts';

type WeightRecord = RecordOf<'weight'>;

/**
 * A published average weight change worked out for this person, all weights in kg, or why it cannot be.
 * Percent of total weight is applied as it is; everything else is computed and marked so.
 */
export function weightForPerson(record: WeightRecord, subject: Subject): WeightAt | SetAsideReason {
  const { value } = record;
  const { estimate, metric } = value;
  if (record.outcome !== 'weight-loss') return { code: 'other-measure', kind: record.outcome };
  if (estimate === undefined) return { code: 'other-measure', kind: 'range' };
  if (value.reference !== 'before-this-operation') {
    return { code: 'reference-weight', reference: value.reference ?? 'unstated' };
  }
  const convert = chooseConversion(record, subject);
  if (convert === undefined) return { code: 'not-convertible', metric };
  const { person } = subject;
  const averageKg = convert(estimate);
  const bmi = bodyMassIndex(averageKg, person.heightM);
  const warning = warnOf(bmi, subject.bmi);
  return {
    kind: 'weight',
    averageKg,
    changeKg: averageKg - person.weightKg,
    bmi,
    twlPercent: (100 * (person.weightKg - averageKg)) / person.weightKg,
    ...spreadOf(value, convert),
    ...uncertaintyOf(value, convert),
    metric,
    computed: metric !== 'TWL',
    ...(warning === undefined ? {} : { warning }),
  };
}

/** Where people end up: only from a spread of people. */
function spreadOf(
  value: WeightRecord['value'],
  convert: Conversion,
): { readonly spread?: NonNullable<WeightAt['spread']> } {
  const { estimate = 0, sd, low, high, interval } = value;
  if (sd !== undefined) {
    return {
      spread: {
        ...ordered(convert(estimate - sd), convert(estimate + sd)),
        basis: 'sd',
        share: 'two-in-three',
      },
    };
  }
  if (low === undefined || high === undefined) return {};
  const bounds = ordered(convert(low), convert(high));
  if (interval === 'iqr') return { spread: { ...bounds, basis: 'iqr', share: 'half' } };
  return interval === 'range' ? { spread: { ...bounds, basis: 'range', share: 'all' } } : {};
}

/** How sure the average is: only from an interval of the average. */
function uncertaintyOf(value: WeightRecord['value'], convert: Conversion): { readonly uncertainty?: Bounds } {
  const { estimate = 0, se, low, high, interval } = value;
  if (
    low !== undefined &&
    high !== undefined &&
    (interval === 'ci95' || interval === 'ci98' || interval === 'cri95')
  ) {
    return { uncertainty: ordered(convert(low), convert(high)) };
  }
  if (se === undefined) return {};
  return {
    uncertainty: ordered(
      convert(estimate - standardErrors95 * se),
      convert(estimate + standardErrors95 * se),
    ),
  };
}

function ordered(a: number, b: number): Bounds {
  return { low: Math.min(a, b), high: Math.max(a, b) };
}

function warnOf(bmi: number, before: Person['bmi']): WeightAt['warning'] {
  if (bmi < 18.5) return 'under-18-5';
  return before < 30 && bmi < 20 ? 'under-20' : undefined;
}
