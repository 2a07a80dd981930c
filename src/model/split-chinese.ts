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

/** Nor a range: 1至2人, nor what makes sense only with its number: 每1,000人. */
const leaning = /(?:\p{Nd}[至到]|每)$/u;

function mayEnd(before: string, after: string): boolean {
  if (after === '') return true;
  if (counting.test(before)) return false;
  return !(/^\p{Nd}/u.test(after) && (inDate.test(before) || leaning.test(before)));
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
  const words: string[] = [];
  let at = 0;
  let joins = true;
  pieces.forEach((piece, index) => {
    if (index > 0 && joins) words.push((words.pop() ?? '') + piece);
    else words.push(piece);
    at += piece.length;
    joins = !ends.has(at);
  });
  return words;
}

function endsOfWords(text: string): ReadonlySet<number> {
  const found = [...segmenter.segment(text)];
  const ends = found.filter(({ segment }, index) => {
    const next = found[index + 1]?.segment ?? '';
    return !ending.test(next) && !(lone.test(segment) && lone.test(next));
  });
  return new Set(ends.map(({ segment, index }) => index + segment.length));
}
