import type { CellValue } from '../model/comparison-value.ts';
import type { FindingOf, PairFinding, ReasonCheck, ReasonFinding } from '../model/reason-check.ts';
import { alignColumns } from './align-columns.ts';
import { showHorizon, showValue } from './show-cell.ts';

/** The surgeon's coded reasons: for or against which option, whether they are borne out, by what; then the records. */
export function showReasons(reasons: readonly ReasonCheck[]): readonly string[] {
  return alignColumns(
    reasons.flatMap((check) => withRecords(check, check.verdict)),
    '  ',
  );
}

/** @param verdict as it is to be said, with what it was before where that is told too */
export function withRecords(check: ReasonCheck, verdict: string): (readonly string[])[] {
  const { stance, option, code, records } = check;
  const row = [`${stance} ${option}`, code, verdict, explainReason(check)];
  const blank = row.slice(1).map(() => '');
  return records.length === 0 ? [row] : [row, [...blank, records.join(', ')]];
}

/** What decided, in a line: the findings that mean something, or where none does all of them. */
function explainReason({ findings }: ReasonCheck): string {
  const telling = findings.filter(({ means }) => means !== 'nothing');
  return (telling.length > 0 ? telling : findings).map(showFinding).join('; ');
}

function showFinding(finding: ReasonFinding): string {
  switch (finding.find) {
    case 'not-in-case':
      return `the case has no such ${finding.needs}`;
    case 'in-case':
      return 'the case says so';
    case 'compare':
      return showPairs(finding);
    case 'recover':
      return showRecover(finding);
    case 'undo':
      return `undone: ${finding.possible}`;
    case 'under-study':
      return [finding.maturity, ...finding.entries].join(' ');
    case 'cautions':
      return [cautionWords[finding.said], ...finding.cautions].join(' ');
    case 'fewer-cautions':
      return showFewer(finding);
    case 'wishes':
      return showWishes(finding);
  }
}

const cautionWords: Readonly<Record<FindingOf<'cautions'>['said'], string>> = {
  warned: 'warned of by',
  favoured: 'held up as better by',
  practice: 'warned of by usual practice only:',
  spared: 'no caution, for a known reason',
  silent: 'no caution speaks of it',
};

function showPairs({ pairs, has }: FindingOf<'compare'>): string {
  return pairs.length === 0 ? 'nothing to compare with' : pairs.map((pair) => showPair(pair, has)).join(', ');
}

const words: Readonly<Record<'fewer' | 'more', Readonly<Record<'yes' | 'no', string>>>> = {
  fewer: { yes: 'fewer than', no: 'more than' },
  more: { yes: 'more than', no: 'fewer than' },
};

/** "fewer than bypass (major-complication, 30 days: 4.0 % against 5.2 %)". */
function showPair(pair: PairFinding, has: 'fewer' | 'more'): string {
  if (pair.result === 'unknown') return `not known against ${pair.other}`;
  const how = pair.result === 'unclear' ? 'not clearly other than' : words[has][pair.result];
  return `${how} ${pair.other} (${pair.outcome}, ${showHorizon(pair.asked)}: ${showBasis(pair)})`;
}

function showBasis(pair: Exclude<PairFinding, { readonly result: 'unknown' }>): string {
  switch (pair.basis) {
    case 'impossible':
      return 'cannot happen';
    case 'contrast': {
      const { of, measure, estimate, low, high } = pair.contrast;
      return `${measure} of ${of} ${String(estimate)}, ${String(low)} to ${String(high)}`;
    }
    case 'one-study':
    case 'two-studies':
      return `${plain(pair.mine)} against ${plain(pair.theirs)}, ${pair.basis.replace('-', ' ')}`;
  }
}

/** A value without its interval. */
function plain(value: CellValue): string {
  return showValue(value).replace(/ \(.*$/, '');
}

function showRecover({ own, untreated, outcome, asked }: FindingOf<'recover'>): string {
  if (untreated !== null) return showPair(untreated, 'more');
  if (own === null) return `no figure of ${outcome}`;
  return `${outcome}, ${showHorizon(asked)}: ${showValue(own.value)}, nothing known without treatment`;
}

function showFewer({ mine, others }: FindingOf<'fewer-cautions'>): string {
  const theirs = others.map(({ option, cautions }) => `${option}: ${cautions.join(', ') || 'none'}`);
  return [`here: ${mine.join(', ') || 'none'}`, ...theirs].join('; ');
}

function showWishes({ met, unmet, open, ownWords }: FindingOf<'wishes'>): string {
  const parts = [
    ['met', met],
    ['not met', unmet],
    ['open', open],
  ] as const;
  return [
    ...parts.filter(([, codes]) => codes.length > 0).map(([name, codes]) => `${name}: ${codes.join(', ')}`),
    ...(ownWords > 0 ? [`${String(ownWords)} in own words`] : []),
  ].join('; ');
}
