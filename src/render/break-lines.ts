/** A piece of text that is never broken, as the line breaker sees it. Widths in points. */
export interface Word {
  readonly width: number;
  /** Width of the space before it, which is not set at the start of a line. 0 where a long word may be broken. */
  readonly space: number;
  /** A reader pauses after it, or a sentence ends with it: a good, and a better, place to end a balanced line. */
  readonly pause?: 'mark' | 'sentence';
  /**
   * `stays`: it should stand on one line with the next word, as a number with what it counts, where there is room for
   * both. `leans`: rather, as "fewer than" with its number.
   */
  readonly tie?: 'stays' | 'leans';
}

/**
 * `filled`: as many words a line as fit, but never a last line of one short word.
 * `balanced`: as few lines as `filled` needs, as equal as can be, rather ending after a pause.
 */
export type Setting = 'filled' | 'balanced';

/** A last line of one word is refused when it is narrower than this part of the measure. */
const shortWord = 1 / 3;

/** How much unevenness, in squared measures, a break after a pause is worth. */
const pauseBonus = { mark: 0.03, sentence: 0.08 } as const;

/** A line is ended early for words that only lean on the next where it is then this part of the measure wide at least. */
const leastFilled = 1 / 2;

/** How much unevenness, in squared measures, it costs to part words that should stay together. */
const partedCost = { stays: 0.5, leans: 0.1 } as const;

/** Guards against a sum of widths that is a rounding error over the measure. */
const tolerance = 0.001;

/**
 * Where lines begin: the index of the first word of each line, the first being 0. Pure.
 * No line is wider than the measure unless it holds one word only.
 */
export function breakWords(words: readonly Word[], measure: number, setting: Setting): readonly number[] {
  if (words.length === 0) return [];
  return setting === 'balanced' ? balance(words, measure) : fill(words, measure);
}

/** Width of the words from `start` up to but without `end`, set on one line. */
export function lineWidth(words: readonly Word[], start: number, end: number): number {
  return words
    .slice(start, end)
    .reduce((sum, word, index) => sum + word.width + (index === 0 ? 0 : word.space), 0);
}

function greedy(words: readonly Word[], measure: number, start = startTogether): number[] {
  const starts = [0];
  let width = 0;
  words.forEach((word, index) => {
    const wider = index === 0 ? word.width : width + word.space + word.width;
    if (index > 0 && wider > measure + tolerance) {
      const next = start(words, { start: starts.at(-1) ?? 0, end: index }, measure);
      starts.push(next);
      width = lineWidth(words, next, index + 1);
    } else width = wider;
  });
  return starts;
}

interface Line {
  readonly start: number;
  readonly end: number;
}

/**
 * Where the next line begins, if words up to `end` have room on this one: earlier where some of them should stand with the
 * next, if need be without those that only lean on it.
 */
function startTogether(words: readonly Word[], line: Line, measure: number): number {
  const all = startOfTied(words, line, ['stays', 'leans']);
  const isFilled = lineWidth(words, line.start, all) >= measure * leastFilled;
  return isFilled && hasRoom(words, { ...line, first: all }, measure)
    ? all
    : startUnparted(words, line, measure);
}

/** The same without regard to what only leans: in a narrow column a number goes with what it counts, however short the line. */
function startUnparted(words: readonly Word[], line: Line, measure: number): number {
  const first = startOfTied(words, line, ['stays']);
  return hasRoom(words, { ...line, first }, measure) ? first : line.end;
}

function startOfTied(words: readonly Word[], line: Line, ties: readonly Word['tie'][]): number {
  let first = line.end;
  while (first > line.start && isTied(words[first - 1], ties)) first -= 1;
  return first;
}

function isTied(word: Word | undefined, ties: readonly Word['tie'][]): boolean {
  return word?.tie !== undefined && ties.includes(word.tie);
}

/** Whether something is left on this line without the words from `first` on, and the next has room for them. */
function hasRoom(words: readonly Word[], line: Line & { readonly first: number }, measure: number): boolean {
  return line.first > line.start && lineWidth(words, line.first, line.end + 1) <= measure + tolerance;
}

/** Widths of the lines that hold more than one word. */
function widthsOfSeveral(words: readonly Word[], starts: readonly number[]): readonly number[] {
  return starts.flatMap((start, line) => {
    const end = starts[line + 1] ?? words.length;
    return end - start > 1 ? [lineWidth(words, start, end)] : [];
  });
}

function endsInShortWord(words: readonly Word[], starts: readonly number[], measure: number): boolean {
  const last = starts.at(-1) ?? 0;
  return starts.length > 1 && last === words.length - 1 && (words[last]?.width ?? 0) < measure * shortWord;
}

/** Tightens the measure until a second word stands on the last line, unless that costs a line. */
function fill(words: readonly Word[], measure: number): readonly number[] {
  const loose = greedy(words, measure);
  let starts = loose;
  let limit = Number.POSITIVE_INFINITY;
  while (endsInShortWord(words, starts, measure)) {
    // Only lines of several words can become narrower; a lone word, even one wider than the measure, stays as it is.
    const widest = Math.max(...widthsOfSeveral(words, starts));
    if (widest >= limit || widest <= 0) return loose;
    limit = widest;
    starts = greedy(words, limit - 2 * tolerance);
    if (starts.length > loose.length) return loose;
  }
  return starts;
}

interface Best {
  readonly cost: number;
  readonly starts: readonly number[];
}

/** Unevenness of one line: with the number of lines given, the least sum of squares is the most equal setting. */
function unevenness(words: readonly Word[], line: Line, measure: number): number {
  const width = lineWidth(words, line.start, line.end);
  if (width > measure + tolerance && line.end - line.start > 1) return Number.POSITIVE_INFINITY;
  const last = line.end < words.length ? words[line.end - 1] : undefined;
  const parted = last?.tie === undefined ? 0 : partedCost[last.tie];
  const bonus = last?.pause === undefined ? 0 : pauseBonus[last.pause];
  return (width / measure) ** 2 + parted - bonus;
}

/** As few lines as there is room in, or a line more where words that stay together would else be parted. */
function balance(words: readonly Word[], measure: number): readonly number[] {
  const fewest = greedy(words, measure, (_, line) => line.end).length;
  const starts = balanceIn(words, measure, fewest);
  const tied = greedy(words, measure, startUnparted);
  return tied.length > fewest && countParted(words, starts) > countParted(words, tied)
    ? balanceIn(words, measure, tied.length)
    : starts;
}

function countParted(words: readonly Word[], starts: readonly number[]): number {
  return starts.filter((start) => isTied(words[start - 1], ['stays'])).length;
}

function balanceIn(words: readonly Word[], measure: number, lines: number): readonly number[] {
  // best[end]: the best setting of the words before `end` in the lines so far.
  let best: readonly (Best | undefined)[] = words.map((_, index) =>
    index === 0 ? { cost: 0, starts: [] } : undefined,
  );
  for (let line = 0; line < lines; line += 1) best = addLine(words, best, measure);
  return best[words.length]?.starts ?? greedy(words, measure);
}

function addLine(
  words: readonly Word[],
  best: readonly (Best | undefined)[],
  measure: number,
): (Best | undefined)[] {
  const next = new Array<Best | undefined>(words.length + 1).fill(undefined);
  best.forEach((before, start) => {
    if (before === undefined) return;
    for (let end = start + 1; end <= words.length; end += 1) {
      const cost = before.cost + unevenness(words, { start, end }, measure);
      if (cost === Number.POSITIVE_INFINITY) break;
      if (cost < (next[end]?.cost ?? Number.POSITIVE_INFINITY))
        next[end] = { cost, starts: [...before.starts, start] };
    }
  });
  return next;
}
