const longestWord = 40;

/**
 * The listed word that a misspelled one most likely stands for: at most two slips (one in short words), where a slip is a
 * letter too many, too few, wrong, or two neighbours swapped. Undefined when nothing is near.
 */
export function nearestWord(word: string, words: Iterable<string>): string | undefined {
  const written = word.toLowerCase().replace(/[ _]/g, '-');
  if (written.length < 2 || written.length > longestWord) return undefined;
  let best: string | undefined;
  let fewest = written.length <= 4 ? 1 : 2;
  for (const candidate of words) {
    if (Math.abs(candidate.length - written.length) > fewest) continue;
    const slips = countSlips(written, candidate.toLowerCase().replace(/_/g, '-'));
    if (slips > fewest || (slips === fewest && best !== undefined)) continue;
    best = candidate;
    fewest = slips;
  }
  return best;
}

/** Optimal string alignment distance. */
function countSlips(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const wrong = at(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwap = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(
        at(last, j) + 1,
        at(row, j - 1) + 1,
        wrong,
        isSwap ? at(beforeLast, j - 2) + 1 : Infinity,
      );
    }
    [beforeLast, last] = [last, row];
  }
  return at(last, b.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Infinity;
}
