/** Characters that steer layout and have no mark of their own in the typeface, and what is printed in their place. */
const replacements: readonly (readonly [RegExp, string])[] = [
  // A line feed would pull in a typeface that is not embedded; lines are broken by break-lines.ts only.
  [/[ \t\n\r\v\f\u2028\u2029]+/g, ' '],
  // Thin spaces stand inside numbers and before units: kept together by the no-break space that every face has.
  [/[\u202f\u2009\u200a]/g, '\u00a0'],
  // Lines are never broken at a hyphen, so the plain one does for both.
  [/[\u2010\u2011]/g, '-'],
  // Joiners, soft hyphens and byte order marks print nothing.
  [/[\u00ad\u2060\ufeff]/g, ''],
];

const needsWork = /[\t\n\r\v\f\u2028\u2029\u202f\u2009\u200a\u2010\u2011\u00ad\u2060\ufeff]| {2}/;

/** The text as it is measured and set: white space is one space, characters that only steer layout are resolved. */
export function printable(text: string): string {
  const composed = text.normalize('NFC');
  if (!needsWork.test(composed)) return composed;
  return replacements.reduce((result, [pattern, by]) => result.replace(pattern, by), composed);
}
