/** Compact text that stands where nothing, or something else, was expected. */
export interface Gap {
  readonly text: string;
  /** Page of the document, from 0. */
  readonly page: number;
  /** Index of the first sought text that was expected here. */
  readonly before: number;
}

export interface Alignment {
  /** For each sought text the page of the document where it was found in its place, from 0; else null. */
  readonly pages: readonly (number | null)[];
  readonly gaps: readonly Gap[];
}

/** How many texts ahead a search for the next foothold looks; more than any one defect can hide. */
const lookAhead = 80;

interface Printed {
  readonly text: string;
  /** Where each page starts in the text. */
  readonly starts: readonly number[];
  /** Takes what a renderer repeats at a page's foot (continued heads) off the end of a text. */
  readonly strip: (text: string) => string;
}

/**
 * Lays the sought texts over the pages of a document, in order. Where they part, takes up again at the nearest
 * place where a later text fits: the fewest letters passed over on both sides.
 *
 * @param sought compact texts, none empty
 * @param pages compact text of each page, without furniture
 * @param strip takes what the renderer repeats at a page's foot off the end of a text
 */
export function alignText(
  sought: readonly string[],
  pages: readonly string[],
  strip: (text: string) => string,
): Alignment {
  const printed = joinPages(pages, strip);
  const found: (number | null)[] = sought.map(() => null);
  const gaps: Gap[] = [];
  let at = 0;
  let index = 0;
  while (index < sought.length) {
    const foothold =
      stepOn(printed, at, sought[index] ?? '') ?? findFoothold(printed, at, sought.slice(index));
    if (foothold === null) break;
    gaps.push(...gapsBetween(printed, at, foothold.at).map((gap) => ({ ...gap, before: index })));
    index += foothold.skipped;
    found[index] = pageAt(printed, foothold.at);
    at = foothold.at + (sought[index] ?? '').length;
    index += 1;
  }
  gaps.push(...gapsBetween(printed, at, printed.text.length).map((gap) => ({ ...gap, before: index })));
  return { pages: found, gaps };
}

interface Foothold {
  readonly skipped: number;
  readonly at: number;
}

/** The usual case: the text stands here, or at the top of the next page after repeated heads. */
function stepOn(printed: Printed, at: number, text: string): Foothold | null {
  if (printed.text.startsWith(text, at)) return { skipped: 0, at };
  const next = printed.starts.find((start) => start > at);
  if (next === undefined || !printed.text.startsWith(text, next)) return null;
  return printed.strip(printed.text.slice(at, next)) === '' ? { skipped: 0, at: next } : null;
}

/** The cheapest way on, counting letters of passed-over texts and of passed-over print alike. */
function findFoothold(printed: Printed, at: number, sought: readonly string[]): Foothold | null {
  let best: Foothold | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  let skippedLetters = 0;
  for (const [skipped, text] of sought.slice(0, lookAhead).entries()) {
    if (skippedLetters >= bestCost) break;
    const place = printed.text.indexOf(text, at);
    if (place >= 0 && skippedLetters + place - at < bestCost) {
      bestCost = skippedLetters + place - at;
      best = { skipped, at: place };
    }
    skippedLetters += text.length;
  }
  return best;
}

function joinPages(pages: readonly string[], strip: (text: string) => string): Printed {
  const starts: number[] = [];
  let text = '';
  for (const page of pages) {
    starts.push(text.length);
    text += page;
  }
  return { text, starts, strip };
}

function pageAt(printed: Printed, position: number): number {
  return printed.starts.findLastIndex((start) => start <= position);
}

/** What stands from one position to another, page by page, less what is repeated at a page's foot. */
function gapsBetween(printed: Printed, from: number, to: number): Omit<Gap, 'before'>[] {
  return printed.starts.flatMap((start, page) => {
    const end = printed.starts[page + 1] ?? printed.text.length;
    const piece = printed.text.slice(Math.max(from, start), Math.max(from, start, Math.min(to, end)));
    const left = to >= end ? printed.strip(piece) : piece;
    return left === '' ? [] : [{ text: left, page }];
  });
}
