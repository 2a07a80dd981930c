/** Names of the trade that hold digits but no figure. */
const names = /\b(?:type|tipo) 2\b|\bB1(?:2)?\b|\bMEN 2\b|\bHbA1c\b/gi;
const number = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?`;
const spelled: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
};

function value(text: string): number {
  return Number(text.replaceAll(',', ''));
}

/** All figures of a text in digits. */
export function figuresIn(text: string): readonly number[] {
  return [...text.replace(names, '').matchAll(new RegExp(number, 'g'))].map(([figure]) => value(figure));
}

export function spelledFiguresIn(text: string): readonly number[] {
  return (text.toLowerCase().match(/[a-z]+/g) ?? []).flatMap((word) => spelled[word] ?? []);
}

/** Figures written as percent in a text: "7.8 to 55.5%" holds two. */
export function percentsIn(text: string): readonly number[] {
  const pairs = text.matchAll(new RegExp(`(?:(${number}) to )?(${number})%`, 'g'));
  return [...pairs].flatMap(([, low, high]) =>
    [low, high].flatMap((end) => (end === undefined ? [] : value(end))),
  );
}

export interface Counts {
  /** Counts out of 100 or 1,000, turned into percent. */
  readonly percents: readonly number[];
  /** The text without them. */
  readonly rest: string;
}

/** "83 out of 1,000", "4 to 5 out of 100 people", "208 de cada 1,000". */
export function countsIn(text: string): Counts {
  const form = new RegExp(
    `(?:(${number}) (?:to|a) )?(${number}) (?:out of|de cada) (1,000|100)(?!\\d|,\\d)`,
    'g',
  );
  const percents = [...text.matchAll(form)].flatMap(([, low, high, of = '100']) =>
    [low, high].flatMap((end) => (end === undefined ? [] : rounded((value(end) * 100) / value(of)))),
  );
  return { percents, rest: text.replace(form, '') };
}

function rounded(figure: number): number {
  return Math.round(figure * 1e6) / 1e6;
}
