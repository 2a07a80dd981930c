export type Point = readonly [number, number];

const command = /([MLCZmlcz])([^MLCZmlcz]*)/g;

/**
 * The subpaths of path data as points on and beside the line (ends and handles), relative steps resolved. Knows only
 * M, L, C and Z in both spellings, and refuses anything else.
 */
export function subpaths(data: string): readonly (readonly Point[])[] {
  const paths: Point[][] = [];
  let at: Point = [0, 0];
  const rest = data.replace(command, (_, letter: string, text: string) => {
    const numbers = (text.match(/-?[\d.]+/g) ?? []).map(Number);
    const points = pairs(numbers).map(([x, y]): Point =>
      letter === letter.toLowerCase() ? [at[0] + x, at[1] + y] : [x, y],
    );
    if (letter.toLowerCase() === 'm') paths.push([]);
    paths.at(-1)?.push(...points);
    at = points.at(-1) ?? at;
    return '';
  });
  if (rest.trim() !== '') throw new Error(`path data not understood: ${rest.slice(0, 40)}`);
  return paths;
}

function pairs(numbers: readonly number[]): Point[] {
  return Array.from({ length: numbers.length / 2 }, (_, index) => [
    numbers[2 * index] ?? NaN,
    numbers[2 * index + 1] ?? NaN,
  ]);
}

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boundsOf(points: readonly Point[]): Bounds {
  const x = points.map((point) => point[0]);
  const y = points.map((point) => point[1]);
  return { left: Math.min(...x), top: Math.min(...y), right: Math.max(...x), bottom: Math.max(...y) };
}
