import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const shippedData = 'src/evidence/data';

/** The text files below a folder of this checkout, by path from its top: a copy that a test may spoil. */
export function copyOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return Object.fromEntries(
    files.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [path, readFileSync(path, 'utf8')];
    }),
  );
}

/** A text in an entry of a data file: `entry` is the id or code of the entry, or empty for the whole file. */
export interface Spot {
  readonly file: string;
  readonly entry: string;
  readonly text: string;
}

/** Replaces a text of a copied data file; it must stand in its entry exactly once. */
export function spoil(files: Record<string, string>, spot: Spot, by: string): void {
  const path = `${shippedData}/${spot.file}`;
  const whole = files[path] ?? '';
  const [start, end] = boundsOf(whole, spot.entry);
  const parts = whole.slice(start, end).split(spot.text);
  if (parts.length !== 2)
    throw new Error(`${spot.entry} holds ${String(parts.length - 1)} times: ${spot.text}`);
  files[path] = whole.slice(0, start) + parts.join(by) + whole.slice(end);
}

/** The place of a text, as `path:line`. */
export function placeOf(files: Readonly<Record<string, string>>, { file, entry, text }: Spot): string {
  const path = `${shippedData}/${file}`;
  const whole = files[path] ?? '';
  const [start] = boundsOf(whole, entry);
  const at = whole.indexOf(text, start);
  if (at < 0) throw new Error(`${entry} does not hold: ${text}`);
  return `${path}:${String(whole.slice(0, at).split('\n').length)}`;
}

function boundsOf(whole: string, entry: string): readonly [start: number, end: number] {
  if (entry === '') return [0, whole.length];
  const name = new RegExp(`^(- |- \\{\\n? *)(id|code|record): ${entry.replaceAll('.', '\\.')},?$`, 'm');
  const found = name.exec(whole);
  if (found === null) throw new Error(`there is no entry ${entry}`);
  const next = whole.indexOf('\n- ', found.index + 1);
  return [found.index, next < 0 ? whole.length : next + 1];
}
