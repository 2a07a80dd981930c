const number = '-?\\d+(?:\\.\\d+)?';
const point = `${number} ${number}`;
const corner = new RegExp(`^(${number}) (${number})$`);
const closedShape = new RegExp(`^(?:l${point}|c${point} ${point} ${point})+z$`);

/** Figures of one shape at equal distances. Points, y downwards. */
export interface FigureRow {
  /** Path data after the move: relative lines and curves, closed. */
  readonly shape: string;
  readonly x: number;
  readonly y: number;
  readonly stepX: number;
  readonly stepY: number;
  readonly count: number;
}

/**
 * Path data made of closed figures, each an absolute move and relative lines and curves, as rows of like figures: a
 * picture of 1,000 marks is a hundred rows of ten. Gives undefined for data of any other form.
 */
export function readRows(data: string): readonly FigureRow[] | undefined {
  const rows: FigureRow[] = [];
  for (const part of data.split('M').slice(1)) {
    const last = rows.at(-1);
    const next = readFigure(part, last?.shape);
    if (next === undefined) return undefined;
    const longer = last === undefined ? undefined : lengthen(last, next);
    rows.splice(longer === undefined ? rows.length : rows.length - 1, 1, longer ?? next);
  }
  return data.startsWith('M') ? rows : undefined;
}

/** One figure as a row of its own; a shape like the one before need not be looked through again. */
function readFigure(part: string, knownShape: string | undefined): FigureRow | undefined {
  const start = part.search(/[lc]/);
  const shape = part.slice(start);
  const [, x, y] = corner.exec(part.slice(0, start)) ?? [];
  if (x === undefined || (shape !== knownShape && !closedShape.test(shape))) return undefined;
  return { shape, x: Number(x), y: Number(y), stepX: 0, stepY: 0, count: 1 };
}

/** The row with one figure more, if that is of its shape and stands where the row would go on. */
function lengthen(row: FigureRow, next: FigureRow): FigureRow | undefined {
  if (next.shape !== row.shape) return undefined;
  const stepX = round(next.x - row.x - row.stepX * (row.count - 1));
  const stepY = round(next.y - row.y - row.stepY * (row.count - 1));
  if (row.count > 1 && (stepX !== row.stepX || stepY !== row.stepY)) return undefined;
  return { ...row, stepX, stepY, count: row.count + 1 };
}

/** PDF operators that build the figures of a row, the first one at the origin, and the box around them. */
export function drawRow({ shape, stepX, stepY, count }: Omit<FigureRow, 'x' | 'y'>): {
  path: string;
  box: readonly [number, number, number, number];
} {
  const steps = readSteps(shape);
  const lines: string[] = [];
  const xs: number[] = [];
  const ys: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const [x, y] = [index * stepX, index * stepY];
    lines.push(`${round(x)} ${round(y)} m`);
    for (const { operator, offsets } of steps) {
      const places = offsets.map((offset, at) => round(offset + (at % 2 === 0 ? x : y)));
      places.forEach((place, at) => (at % 2 === 0 ? xs : ys).push(place));
      lines.push(`${places.join(' ')} ${operator}`);
    }
    lines.push('h');
  }
  const box = [Math.min(0, ...xs), Math.min(0, ...ys), Math.max(0, ...xs), Math.max(0, ...ys)] as const;
  return { path: lines.join('\n'), box };
}

/** Commands of a figure; their points as distances from where it begins. */
function readSteps(shape: string): readonly { operator: string; offsets: readonly number[] }[] {
  let x = 0;
  let y = 0;
  return [...shape.matchAll(/([lc])([^lcz]+)/g)].map(([, operator = '', points = '']) => {
    const offsets = points.split(' ').map((value, at) => Number(value) + (at % 2 === 0 ? x : y));
    x = offsets.at(-2) ?? x;
    y = offsets.at(-1) ?? y;
    return { operator, offsets };
  });
}

/** A thousandth of a point is finer than any printer. */
function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
