/**
 * Words, with or without markup after them, that end in a mark of Chinese, maybe within a quotation: it brings its own white,
 * no space follows.
 */
export const endsWide = /[。！？：；，、）][”’]?(?:<[^>]*>)*$/u;

/** Words, with or without markup before them, that begin with a bracket of Chinese: it brings its own white too. */
const startsWide = /^(?:<[^>]*>)*（/u;

/** Korean writes a bracket right after the word that it explains: "내 선택(계속)". */
const endsKorean = /\p{Script=Hangul}(?:<[^>]*>)*$/u;
const startsBracket = /^(?:<[^>]*>)*\(/u;

/** What stands between words on one line: a space, or nothing beside a mark that brings its own white. */
export function spaceBetween(before: string, after: string): '' | ' ' {
  if (endsWide.test(before) || startsWide.test(after)) return '';
  return endsKorean.test(before) && startsBracket.test(after) ? '' : ' ';
}

const doubleWhite = /(?<=[。！？：；，、）][”’]?) +/gu;

/** Words without the spaces that stand after such marks, as templates and other languages have them between sentences. */
export function withoutDoubleWhite(text: string): string {
  return text.replace(doubleWhite, '');
}
