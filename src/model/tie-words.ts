const tie = '\u00a0';
/** A number by itself, with the marks that stand before it: "24", "1,000", "≤ 30" after a tie, "(555)". */
const bareNumber = /^[^\p{L}\p{Nd}]*\p{Nd}[\p{Nd}.,:-]*\)?$/u;
/** Years are names of a time: what follows is not what they count. */
const year = /^(?:19|20)\d\d$/;
/** Titles that stand before a name, as clinics write them. */
const title = /^(?:(?:Dra|Prof|Profa|Mrs?|Ms|BS|проф|د)\.|(?:Dr|Pr|д-р|Д-р|डॉ)\.?)$/u;

/** A letter that is the rest of a name, as in "vitamin D,". */
const loneLetter = /^[A-HJ-NP-Z]\p{P}*$/u;

/** A dash between words, which no line begins with. */
const dash = /^[–—]$/;

/** The Hindi "not", which turns the word before it into its contrary: "पक्का नहीं". */
const hindiNot = /^नहीं\P{L}*$/u;

/**
 * Whether a word should stand on one line with the next: a dash after it, a number with what it counts ("24 months",
 * "6 человек") or with the rest of its range, a part of a phone number with the next part, a title with the name, a
 * vitamin with its letter, a Hindi word with the "not" after it, "एक और" ("another") as a whole.
 */
export function staysWithNext(word: string, next: string): boolean {
  const last = word.slice(word.lastIndexOf(tie) + 1);
  if (dash.test(next) || hindiNot.test(next)) return true;
  if (last.endsWith('एक') && /^और(?!\p{L}|\p{M})/u.test(next)) return true;
  if (title.test(last)) return /^\p{L}/u.test(next);
  if (loneLetter.test(next)) return /\p{L}{4}$/u.test(last);
  return countsNext(last, next);
}

function countsNext(word: string, next: string): boolean {
  if (!bareNumber.test(word) || year.test(word) || /[.,:-]$/.test(word)) return false;
  return (
    /^\p{Nd}/u.test(next) ||
    (word.startsWith('+') && next.startsWith('(')) ||
    (/^\p{L}/u.test(next) && !word.endsWith(')'))
  );
}

/** A short word or a name of something numbered, without a mark after it: "than", "sur", "(Study". */
const leaning = /^\p{Ps}?(?:\p{Lu}[\p{L}\p{M}-]*|(?:\p{L}\p{M}*){1,6})$/u;

/** The end of a Chinese sentence is no word of its own: what stands after its space is not what it leans on. */
const chineseEnd = /\p{Script=Han}$/u;

/** A letter of a Cyrillic text by itself: a preposition or "and". */
const cyrillicLetter = /^[\p{Ps}«]?\p{Script=Cyrillic}$/u;

/**
 * Whether a word should rather not end a line before the next: one that makes sense only with the number after it
 * ("fewer than 1", "sur 1 000", "Study 9"), or a Russian preposition of one letter. Weaker than `staysWithNext`.
 */
export function leansOnNext(word: string, next: string): boolean {
  const last = word.slice(word.lastIndexOf(tie) + 1);
  if (cyrillicLetter.test(last)) return true;
  if (chineseEnd.test(last)) return false;
  return leaning.test(last) && /^[^\p{L}\p{Nd}]*\p{Nd}/u.test(next) && !/^\p{Ps}/u.test(next);
}
