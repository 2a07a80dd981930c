const number = '-?\\d+(?:\\.\\d+)?';
const point = `${number} ${number}`;

/** Moves and lines, curves and the end of a figure, every command written out, as plainleaf's pictures are. */
const absolutePath = new RegExp(`^M${point}(?:[ML]${point}|C${point} ${point} ${point}|Z)*$`);
const figure = new RegExp(`^(${number}) (${number})((?:l${point}|c${point} ${point} ${point})+)z$`);

/** The operators of ISO 32000-1, table 59. */
const operatorOf: Readonly<Record<string, string>> = { M: 'm', L: 'l', C: 'c', Z: 'h', l: 'l', c: 'c' };

/** One command of a figure: its points as distances from where the figure begins. */
interface Step {
  readonly operator: string;
  readonly offsets: readonly number[];
}

/**
 * Path data → PDF operators, without parsing every number of it: a picture of 1,000 marks is one small figure at 1,000
 * places. Gives undefined for data of any other form.
 */
export function copyPath(data: string): string | undefined {
  return absolutePath.test(data) ? copyAbsolute(data) : copyFigures(data);
}

function copyAbsolute(data: string): string {
  const write = (_: string, command: string, points: string) => `${points} ${operatorOf[command] ?? ''}\n`;
  return data.replace(/([MLCZ])([^MLCZ]*)/g, write).trim();
}

/** Figures in relative lines and curves, each closed and each beginning with an absolute move. */
function copyFigures(data: string): string | undefined {
  const shapes = new Map<string, readonly Step[]>();
  const lines: string[] = [];
  for (const part of data.split('M').slice(1)) {
    const match = figure.exec(part);
    if (match === null) return undefined;
    const [, x = '', y = '', commands = ''] = match;
    const steps = shapes.get(commands) ?? readSteps(commands);
    shapes.set(commands, steps);
    lines.push(`${x} ${y} m`, ...steps.map((step) => placeStep(step, Number(x), Number(y))), 'h');
  }
  return data.startsWith('M') ? lines.join('\n') : undefined;
}

function placeStep({ operator, offsets }: Step, x: number, y: number): string {
  const places = offsets.map((offset, index) => short(offset + (index % 2 === 0 ? x : y)));
  return `${places.join(' ')} ${operator}`;
}

function readSteps(commands: string): readonly Step[] {
  let x = 0;
  let y = 0;
  return [...commands.matchAll(/([lc])([^lc]+)/g)].map(([, command = '', points = '']) => {
    const numbers = points.split(' ').map(Number);
    const offsets = numbers.map((value, index) => value + (index % 2 === 0 ? x : y));
    x = offsets.at(-2) ?? x;
    y = offsets.at(-1) ?? y;
    return { operator: operatorOf[command] ?? '', offsets };
  });
}

/** A thousandth of a point is finer than any printer. */
function short(value: number): number {
  return Math.round(value * 1000) / 1000;
}
