import LineBreaker from 'linebreak';

const chinese = /\p{Script=Han}/u;

/**
 * A word in the pieces that may stand on different lines. Chinese is written without spaces: a line may end wherever
 * Unicode allows it (UAX #14), never before a comma or within a number. Any other word is one piece, Korean ones too.
 */
export function splitChinese(word: string): readonly string[] {
  if (word === '') return [];
  if (!chinese.test(word)) return [word];
  const breaker = new LineBreaker(word);
  const ends: number[] = [];
  for (let next = breaker.nextBreak(); next !== null; next = breaker.nextBreak()) ends.push(next.position);
  return ends.map((end, index) => word.slice(ends[index - 1] ?? 0, end));
}
