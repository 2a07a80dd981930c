/** Keeps two words on one line. */
export const tie = '\u00A0';

/** No typeface here has the narrow no-break space (U+202F) that some languages put between groups of digits. */
export function printable(text: string): string {
  return text.replace(/[\u202F\u2009]/g, tie);
}
