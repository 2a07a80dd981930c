import { writePath } from './describe-value.ts';
import type { Path } from './finding.ts';
import { spanOf } from './locate-findings.ts';
import { parseYaml } from './parse-yaml.ts';
import type { SourceFile } from './read-file.ts';

/** A place in a file for a person to open. */
export interface FieldPlace {
  readonly file: string;
  /** From 1; of the nearest parent where nothing stands at the path itself. */
  readonly line: number;
  /** For example `protocol.stay.sleeve`. */
  readonly field: string;
}

/** Finds paths in a file that has been read and checked: its keys are then known, and may be shown. */
export function locatePath(source: SourceFile): (path: Path) => FieldPlace {
  const { tree, lines } = parseYaml(source.text, source.file);
  return (path) => {
    const line = tree === undefined ? 1 : spanOf(path, 'key', { tree, lines }).line;
    return { file: source.file, line, field: writePath(path) };
  };
}
