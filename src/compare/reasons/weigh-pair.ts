import type { KnownPair, PairFinding } from '../../model/reason-check.ts';
import { isPossible } from '../build-cell.ts';
import type { TimeWindows } from '../weigh-time.ts';
import { isDirect } from './hint.ts';
import type { Hint } from './hint.ts';
import { readContrasts } from './read-contrasts.ts';
import type { DeskPair } from './read-contrasts.ts';
import { readFigures } from './read-figures.ts';
import type { RowSource } from './read-figures.ts';

/** What is claimed of the first option of a pair. */
export interface Claim {
  readonly outcomes: readonly string[];
  readonly windows: TimeWindows;
  readonly has: 'fewer' | 'more';
}

/**
 * Whether the first option of a pair clearly has fewer, or more, of an outcome than the second. The first outcome with a
 * clear answer decides. Undefined where the outcome cannot happen with the second option, so that there is nothing to
 * claim; where it cannot with the first alone, that answers it.
 */
export function weighPair(pair: DeskPair, claim: Claim, source: RowSource): PairFinding | undefined {
  const possible = claim.outcomes.filter((outcome) => isPossible(pair.theirs, outcome));
  if (possible.length === 0) return undefined;
  const found = possible
    .map((outcome) => weighOutcome(pair, outcome, { claim, source }))
    .filter((one) => one !== undefined);
  const clear = found.find(({ result }) => result !== 'unclear');
  return clear ?? found[0] ?? { other: pair.theirs.code, result: 'unknown' };
}

function weighOutcome(
  pair: DeskPair,
  outcome: string,
  { claim, source }: { readonly claim: Claim; readonly source: RowSource },
): KnownPair | undefined {
  const other = pair.theirs.code;
  const { windows, has } = claim;
  if (!isPossible(pair.mine, outcome)) {
    const result = has === 'fewer' ? 'yes' : 'no';
    return { other, result, outcome, asked: windows[0].asked, records: [], basis: 'impossible' };
  }
  const hints = [
    ...readContrasts(pair, outcome, windows),
    ...readFigures(pair, outcome, { source, windows }),
  ];
  const direct = hints.filter(isDirect);
  const told = direct.length > 0 ? direct : hints;
  const agreed = agreeOn(told);
  const shown = showHint(told, agreed);
  if (shown === undefined) return undefined;
  const { asked, records, stands } = shown;
  const result = agreed === 'unclear' ? 'unclear' : agreed === has ? 'yes' : 'no';
  return { other, result, outcome, asked, records, ...stands };
}

/** Clear where at least one hint is and none says the opposite. */
function agreeOn(hints: readonly Hint[]): Hint['direction'] {
  const said = hints.map(({ direction }) => direction).filter((direction) => direction !== 'unclear');
  const [one = 'unclear', opposite] = new Set(said);
  return opposite === undefined ? one : 'unclear';
}

/** The longest of those that say what was agreed on; of equals figures, which the pages show, before a contrast. */
function showHint(hints: readonly Hint[], agreed: Hint['direction']): Hint | undefined {
  const speaking = hints.filter(({ direction }) => direction === agreed);
  const [first] = [...(speaking.length > 0 ? speaking : hints)].sort(
    (a, b) => b.months - a.months || Number(isContrast(a)) - Number(isContrast(b)),
  );
  return first;
}

function isContrast({ stands }: Hint): boolean {
  return stands.basis === 'contrast';
}
