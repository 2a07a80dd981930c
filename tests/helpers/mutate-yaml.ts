type Random = () => number;
type Mutate = (lines: string[], random: Random) => string[];

function pick<T>(items: readonly T[], random: Random): T {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
}

/** Replaces one line by none, one or several. */
function atLine(change: (line: string, random: Random) => readonly string[]): Mutate {
  return (lines, random) => {
    const at = Math.floor(random() * lines.length);
    return lines.flatMap((line, index) => (index === at ? change(line, random) : [line]));
  };
}

const otherValues = [
  '',
  '~',
  '12',
  '0417',
  '1e3',
  '-1',
  'true',
  'yes',
  '[]',
  '{}',
  '[1, 2]',
  '{a: b}',
  '"x"',
  '2026-02-30',
  '*a',
  '.nan',
  '|',
  '>-',
  '"\\ud800"',
];

function withValue(line: string, change: (value: string) => string): string {
  const match = /^(\s*(?:- )?[^:#]+: ?)(.+)$/.exec(line);
  return match === null ? line : `${match[1] ?? ''}${change(match[2] ?? '')}`;
}

/** Ways in which a file goes wrong by hand, by paste or by malice. */
export const mutators: Readonly<Record<string, Mutate>> = {
  drop: atLine(() => []),
  duplicate: atLine((line) => [line, line]),
  retype: atLine((line, random) => [withValue(line, () => pick(otherValues, random))]),
  indent: atLine((line, random) => [pick(['  ', ' ', '\t', '      '], random) + line]),
  outdent: atLine((line) => [line.replace(/^ {1,2}/, '')]),
  openQuote: atLine((line, random) => [withValue(line, (value) => pick(['"', "'"], random) + value)]),
  closeQuote: atLine((line, random) => [withValue(line, (value) => value + pick(['"', "'"], random))]),
  swapQuote: atLine((line) => [line.replace(/["']/g, (mark) => (mark === '"' ? "'" : '"'))]),
  nest: atLine((line, random) => {
    const depth = pick([2, 20, 40, 5000], random);
    return [withValue(line, (value) => '['.repeat(depth) + value + ']'.repeat(depth))];
  }),
  nestBlock: atLine((line, random) => ['- '.repeat(pick([3, 40, 3000], random)) + line]),
  alias: atLine((line, random) => [
    withValue(line, (value) => pick(['*x', `&x ${value}`, '&x', '<<'], random)),
  ]),
  tag: atLine((line, random) => [
    withValue(line, (value) => `${pick(['!x', '!!int', '!!binary', '!'], random)} ${value}`),
  ]),
  prototype: atLine((line, random) => {
    const space = /^\s*/.exec(line)?.[0] ?? '';
    return [
      line,
      `${space}${pick(['__proto__', 'constructor', 'toString', 'hasOwnProperty'], random)}: {name: x}`,
    ];
  }),
  mark: (lines) => [`\ufeff${lines[0] ?? ''}`, ...lines.slice(1)],
  control: atLine((line, random) => [
    line + pick(['\u0000', '\u001b[31m', '\u202e', '\u2028', '\ud800', '\u0085'], random),
  ]),
  carriage: (lines) => lines.map((line) => `${line}\r`),
  breakLine: atLine((line, random) => {
    const at = Math.floor(random() * line.length);
    return [line.slice(0, at), line.slice(at)];
  }),
  joinLines: (lines, random) => {
    const at = Math.floor(random() * Math.max(1, lines.length - 1));
    return [...lines.slice(0, at), `${lines[at] ?? ''}${lines[at + 1] ?? ''}`, ...lines.slice(at + 2)];
  },
  dropLetter: atLine((line, random) => {
    const at = Math.floor(random() * line.length);
    return [line.slice(0, at) + line.slice(at + 1)];
  }),
  addMark: atLine((line, random) => {
    const at = Math.floor(random() * (line.length + 1));
    return [
      line.slice(0, at) +
        pick([':', ': ', ',', ' #', '[', '}', '?', '- ', '%', '@'], random) +
        line.slice(at),
    ];
  }),
  documents: (lines, random) => {
    const at = Math.floor(random() * lines.length);
    return [...lines.slice(0, at), pick(['---', '...', '%YAML 1.1'], random), ...lines.slice(at)];
  },
};

/** The text after one to three mutations, and their names. */
export function mutateYaml(
  text: string,
  random: Random,
): { readonly text: string; readonly by: readonly string[] } {
  let lines = text.split('\n');
  const by: string[] = [];
  for (let left = 1 + Math.floor(random() * 3); left > 0; left--) {
    const name = pick(Object.keys(mutators), random);
    lines = mutators[name]?.(lines, random) ?? lines;
    by.push(name);
  }
  return { text: lines.join('\n'), by };
}
