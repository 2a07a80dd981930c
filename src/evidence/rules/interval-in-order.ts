import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { RiskFactor, UndoFigure } from '../../model/evidence-rules.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Bracket {
  readonly estimate: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly kind: string | undefined;
}

export const intervalInOrder: EvidenceRule = {
  name: 'interval-in-order',
  description: 'an interval has two ends and a kind, is in order and holds its estimate',
  check: (evidence) => {
    const brackets = [
      ...evidence.records.map((entry) => ({
        entry,
        at: ['value'],
        fault: faultOf(bracketOf(entry)) ?? absenceFault(entry),
      })),
      ...evidence.riskFactors.map((entry) => ({ entry, at: [], fault: faultOf(bracketOfFactor(entry)) })),
      ...evidence.reversibility.flatMap((entry) =>
        entry.undo.data.map((figure, index) => ({
          entry,
          at: ['undo', 'data', index],
          fault: faultOf(bracketOfFigure(figure)),
        })),
      ),
    ];
    return brackets.flatMap(({ entry, at, fault }) =>
      fault === undefined
        ? []
        : [
            faultIn(evidence, entry, {
              code: 'EVIDENCE_INTERVAL_REVERSED',
              message: fault,
              hint: 'Correct it from the source.',
              at,
            }),
          ],
    );
  },
};

function faultOf({ estimate, low, high, kind }: Bracket): string | undefined {
  if (low === undefined || high === undefined) return incompleteFault(low ?? high, kind);
  if (kind === undefined) return 'the interval does not say what it is';
  if (low > high) return `low (${String(low)}) is above high (${String(high)})`;
  if (estimate === undefined || (estimate >= low && estimate <= high)) return undefined;
  return `the estimate (${String(estimate)}) is outside ${String(low)} to ${String(high)}`;
}

function incompleteFault(end: number | undefined, kind: string | undefined): string | undefined {
  if (end !== undefined) return 'the interval has one end only';
  return kind === undefined ? undefined : 'an interval is named, but has no ends';
}

function bracketOf(record: EvidenceRecord): Bracket {
  if (record.kind === 'report')
    return { estimate: undefined, low: undefined, high: undefined, kind: undefined };
  const { low, high, interval } = record.value;
  return { estimate: centreOf(record), low, high, kind: interval };
}

function centreOf(record: Exclude<EvidenceRecord, { kind: 'report' }>): number | undefined {
  if (record.kind !== 'risk' && record.kind !== 'benefit') return record.value.estimate;
  const { percent, rate, events, n } = record.value;
  return percent ?? rate ?? (events !== undefined && n !== undefined ? (100 * events) / n : undefined);
}

/** Without an estimate only a whole range can stand, as when a review names the least and the most. */
function absenceFault(record: EvidenceRecord): string | undefined {
  if (record.kind === 'report' || centreOf(record) !== undefined) return undefined;
  const { low, high } = record.value;
  const isShare = record.kind === 'risk' || record.kind === 'benefit';
  return isShare || (low !== undefined && high !== undefined)
    ? undefined
    : 'there is neither an estimate nor a range';
}

function bracketOfFactor({ estimate, low, high }: RiskFactor): Bracket {
  return { estimate, low, high, kind: low === undefined && high === undefined ? undefined : 'ci95' };
}

function bracketOfFigure({ estimate, percent, low, high, interval }: UndoFigure): Bracket {
  return { estimate: estimate ?? percent, low, high, kind: interval };
}
