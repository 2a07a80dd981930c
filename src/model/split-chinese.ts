import LineBreaker from 'linebreak';

const chinese = /\p{Script=Han}/u;
/** A number stands with what it counts: 69人, 87公斤, 6个月. */
const counting = /\p{Nd}\u00a0?[公个]?$/u;

/** Nor is a date parted: 2026年12月17日. */
const inDate = /\p{Nd}[年月]$/u;

/**
 * A word in the pieces that may stand on different lines. Chinese is written without spaces: a line may end wherever
 * Unicode allows it (UAX #14), never before a comma or within a number, nor between a number and its counter. Any other
 * word is one piece, Korean ones too.
 */
export function splitChinese(word: string): readonly string[] {
  if (word === '') return [];
  if (!chinese.test(word)) return [word];
  const breaker = new LineBreaker(word);
  const ends: number[] = [];
  for (let next = breaker.nextBreak(); next !== null; next = breaker.nextBreak())
    if (mayEnd(word.slice(0, next.position), word.slice(next.position))) ends.push(next.position);
  return ends.map((end, index) => word.slice(ends[index - 1] ?? 0, end));
}

/** A date in its year and the rest, for where no line holds both: 2026年 12月17日. */
export function splitYear(word: string): readonly string[] {
  return word.split(/(?<=\p{Nd}年)(?=\p{Nd})/u);
}

/** Nor a range: 1至2人, nor what makes sense only with its number: 每1,000人, 研究13, 注4. */
const leaning = /(?:\p{Nd}[至到]|[每注]|研究)$/u;

/** Within a word and its number, a unit (kg/m²), or before the mark of a footnote. */
const withinOne: readonly (readonly [before: RegExp, after: RegExp])[] = [
  [/研$/u, /^究\p{Nd}/u],
  [/(?:^|[\p{Nd}\u00a0])\p{Script=Latin}{1,3}\/$/u, /^\p{Script=Latin}/u],
  [/./u, /^[*†‡]/u],
];

function mayEnd(before: string, after: string): boolean {
  if (after === '') return true;
  if (counting.test(before)) return false;
  if (withinOne.some(([last, first]) => last.test(before) && first.test(after))) return false;
  return !(/^\p{Nd}/u.test(after) && (inDate.test(before) || leaning.test(before)));
}

/**
 * A term as lists have them, between marks: "（死亡，渗漏）", or a longer one before the space that parts it from an id:
 * "糖尿病缓解 24m". A reader stops at a torn one.
 */
const term = /(?<=^|\p{P})\p{Script=Han}{2,}(?=\p{P}|$)/gu;
const longest = { beforeMark: 4, beforeSpace: 6 } as const;

/** The same for running text: a short term that stands between marks or spaces is one piece. */
export function splitChineseProse(word: string): readonly string[] {
  const terms = [...word.matchAll(term)]
    .map(({ 0: found, index }) => ({ start: index, end: index + found.length }))
    .filter(({ start, end }) => end - start <= longest[end === word.length ? 'beforeSpace' : 'beforeMark']);
  return joinPieces(splitChinese(word), (at) => !terms.some(({ start, end }) => start < at && at < end));
}

function joinPieces(pieces: readonly string[], mayPart: (at: number) => boolean): readonly string[] {
  const joined: string[] = [];
  let at = 0;
  for (const piece of pieces) {
    if (at > 0 && !mayPart(at)) joined.push((joined.pop() ?? '') + piece);
    else joined.push(piece);
    at += piece.length;
  }
  return joined;
}

const segmenter = new Intl.Segmenter('zh', { granularity: 'word' });
const lone = /^\p{Script=Han}$/u;
/** What ends a word and never begins a line by itself: of an operation, of a time, of a place. */
const ending = /^[术症期率后前里内外中上下者们]$/;

/**
 * The same, parted between words only, for names, headings and heads of columns, in which a word in two lines is read
 * twice. The words are those of the dictionary of Unicode's own library, which knows few of medicine: letters that it finds
 * alone stay together.
 */
export function splitChineseWords(word: string): readonly string[] {
  const pieces = splitChinese(word);
  if (pieces.length <= 1) return pieces;
  const ends = endsOfWords(word);
  return joinPieces(pieces, (at) => ends.has(at));
}

function endsOfWords(text: string): ReadonlySet<number> {
  const found = [...segmenter.segment(text)];
  const ends = found.filter(({ segment }, index) => {
    const next = found[index + 1]?.segment ?? '';
    return !ending.test(next) && !(lone.test(segment) && lone.test(next));
  });
  return new Set(ends.map(({ segment, index }) => index + segment.length));
}
