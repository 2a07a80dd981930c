import LineBreaker from 'linebreak';

const chinese = /\p{Script=Han}/u;
/** A number stands with what it counts: 69人, 87公斤, 6个月. */
const counting = /\p{Nd}\u00a0?[公个]?$/u;

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
    if (!counting.test(word.slice(0, next.position)) || next.position === word.length)
      ends.push(next.position);
  return ends.map((end, index) => word.slice(ends[index - 1] ?? 0, end));
}
