import type { EvidenceRecord, ShareValue } from '../../model/evidence-record.ts';
import type { StudyDesign } from '../../model/study.ts';

export const arithmeticCheckNames = [
  'count',
  'followed',
  'change',
  'whole-people',
  'interval-width',
  'interval-centre',
] as const;
export type ArithmeticCheckName = (typeof arithmeticCheckNames)[number];

type Check = (record: EvidenceRecord, design: StudyDesign | undefined) => string | undefined;

/** Each returns what does not add up in a record, or nothing. */
export const arithmeticChecks: Readonly<Record<ArithmeticCheckName, Check>> = {
  count: (record) => (isShare(record) ? countFault(record.value) : undefined),
  followed: followedFault,
  change: changeFault,
  'whole-people': wholePeopleFault,
  'interval-width': (record) => (isShare(record) ? widthFault(record.value) : undefined),
  'interval-centre': centreFault,
};

/** Half a unit of the last printed decimal: how far the printed number may be from the true one. */
function rounding(printed: number): number {
  const [, decimals = ''] = String(printed).split('.');
  return 0.5 * 10 ** -decimals.length;
}

function agrees(printed: number, computed: number, slack = 0): boolean {
  return Math.abs(printed - computed) <= rounding(printed) + slack + 1e-9;
}

function isShare(record: EvidenceRecord): record is Extract<EvidenceRecord, { kind: 'risk' | 'benefit' }> {
  return record.kind === 'risk' || record.kind === 'benefit';
}

function countFault({ events, n, percent }: ShareValue): string | undefined {
  if (events === undefined) return undefined;
  if (n !== undefined && events > n) return `${String(events)} events in ${String(n)} people`;
  if (percent === undefined) return undefined;
  if ((events === 0) !== (percent === 0)) return `${String(events)} events, but ${String(percent)} percent`;
  if (n === undefined || agrees(percent, (100 * events) / n)) return undefined;
  return `${String(events)} of ${String(n)} is not ${String(percent)} percent`;
}

function followedFault({ followed = {}, value }: EvidenceRecord): string | undefined {
  const { seen, of, percent } = followed;
  if (of === undefined) return undefined;
  const n = peopleThen(value);
  if (n > of) return `n (${String(n)}) is more than the people followed (${String(of)})`;
  if (seen === undefined) return undefined;
  if (seen > of) return `${String(seen)} seen of ${String(of)}`;
  const fits = percent === undefined || agrees(percent, (100 * seen) / of);
  return fits ? undefined : `${String(seen)} of ${String(of)} is not ${String(percent)} percent followed`;
}

/** People at the start do not count: they may be more than could still be followed, as some have died. */
function peopleThen(value: EvidenceRecord['value']): number {
  return 'n' in value && value.n_is !== 'start' ? (value.n ?? 0) : 0;
}

function changeFault(record: EvidenceRecord): string | undefined {
  if (record.kind !== 'score' || record.value.average === 'median') return undefined;
  const { before, after, estimate } = record.value;
  if (before === undefined || after === undefined) return undefined;
  return agrees(estimate, after - before, rounding(before) + rounding(after))
    ? undefined
    : 'before and after do not make the change';
}

/**
 * A percent of a known number of people must come from a whole number of them: the granularity test of Brown and
 * Heathers (Soc Psychol Personal Sci 2017;8:363-369). Not for pooled percents, which are weighted, nor where n counts
 * people at the start.
 */
function wholePeopleFault(record: EvidenceRecord, design: StudyDesign | undefined): string | undefined {
  if (!isShare(record) || design === 'meta-analysis' || design === 'systematic-review') return undefined;
  const { percent, n, n_is } = record.value;
  if (percent === undefined || n === undefined || n_is === 'start') return undefined;
  const nearest = Math.round((percent * n) / 100);
  return agrees(percent, (100 * nearest) / n)
    ? undefined
    : `no whole number of ${String(n)} people is ${String(percent)} percent`;
}

const z95 = 1.959964;

/** A 95% interval of a plain share cannot be much narrower than chance alone makes it (score interval of Wilson 1927). */
function widthFault({ percent, n, low, high, interval }: ShareValue): string | undefined {
  if (
    interval !== 'ci95' ||
    percent === undefined ||
    n === undefined ||
    low === undefined ||
    high === undefined
  )
    return undefined;
  const share = percent / 100;
  const spread = Math.sqrt((share * (1 - share)) / n + z95 ** 2 / (4 * n ** 2));
  const width = (200 * z95 * spread) / (1 + z95 ** 2 / n);
  return high - low + rounding(low) + rounding(high) < width / 2
    ? `the interval is less than half as wide as ${String(n)} people allow`
    : undefined;
}

const confidence: ReadonlySet<string | undefined> = new Set(['ci95', 'ci98']);

/** Confidence intervals lie about evenly round their estimate; ratios do so on a log scale. */
function centreFault(record: EvidenceRecord): string | undefined {
  if (record.kind !== 'contrast' && record.kind !== 'weight' && record.kind !== 'score') return undefined;
  const { estimate, low, high, interval } = record.value;
  if (!confidence.has(interval)) return undefined;
  if (estimate === undefined || low === undefined || high === undefined) return undefined;
  const isRatio = record.kind === 'contrast' && record.value.measure.endsWith('-ratio');
  return isRatio ? ratioFault([low, estimate, high]) : evenFault([low, estimate, high].map(plainly));
}

function ratioFault(printed: readonly number[]): string | undefined {
  return printed.some((value) => value <= 0)
    ? 'a ratio cannot be zero or less'
    : evenFault(printed.map(onLogScale));
}

/** A printed number on the scale on which intervals are even, with its rounding on that scale. */
interface Mark {
  readonly at: number;
  readonly slack: number;
}

function plainly(value: number): Mark {
  return { at: value, slack: rounding(value) };
}

function onLogScale(value: number): Mark {
  return { at: Math.log(value), slack: rounding(value) / value };
}

/** A tenth of the half width is left to methods whose intervals are not quite even, such as the bootstrap. */
function evenFault([low, estimate, high]: readonly Mark[]): string | undefined {
  if (low === undefined || estimate === undefined || high === undefined) return undefined;
  const off = Math.abs(estimate.at - (low.at + high.at) / 2);
  const allowed = estimate.slack + (low.slack + high.slack) / 2 + (high.at - low.at) / 20;
  return off <= allowed ? undefined : 'the estimate is not near the middle of its interval';
}
