/** Latin ligatures that a reader may hand back as one character. */
const ligatures: Readonly<Record<string, string>> = {
  ﬀ: 'ff',
  ﬁ: 'fi',
  ﬂ: 'fl',
  ﬃ: 'ffi',
  ﬄ: 'ffl',
  ﬅ: 'st',
  ﬆ: 'st',
};

/** Soft hyphens, zero-width marks and marks of direction: they steer layout and are never seen. */
const unseen = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g;

/** One spelling for what looks alike: NFC, ligatures as letters, no unseen marks, single spaces. */
export function foldText(text: string): string {
  return text
    .replace(/[\ufb00-\ufb06]/g, (ligature) => ligatures[ligature] ?? ligature)
    .replace(unseen, '')
    .normalize('NFC')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * Folded text without spaces, for comparing what was to be printed with what is read back: lines break anywhere
 * and a reader guesses spaces from gaps, so a space says nothing about the words.
 */
export function compactText(text: string): string {
  return foldText(text).replaceAll(' ', '');
}

/** A pattern that finds a figure or a phone number whatever spaces stand in it, but not inside a longer number. */
export function numberPattern(value: string): RegExp {
  const signs = Array.from(compactText(value), (sign) => sign.replace(/[.*+?^${}()|[\]\\]/, '\\$&'));
  return new RegExp(`(?<![\\d])(?<!\\d[.,])${signs.join('\\s*')}(?![\\d])(?![.,]\\d)`, 'u');
}
