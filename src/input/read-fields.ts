import type { Field, FieldMap } from './walk-schema.ts';
import { pathKey } from './finding.ts';
import type { Path } from './finding.ts';

export interface Entry {
  readonly value: string;
  readonly path: Path;
}

/** Looks up what a file says, as far as it says it: the rules across fields run on a file with other errors too. */
export interface FieldReader {
  readonly fields: FieldMap;
  value(path: Path): unknown;
  /** The text at a path; undefined when there is none. */
  text(path: Path): string | undefined;
  /** The texts of a list, each with its path. */
  texts(path: Path): readonly Entry[];
  /** Paths of the items of a list. */
  items(path: Path): readonly Path[];
}

export function readFields(fields: FieldMap): FieldReader {
  const value = (path: Path): unknown => fields.values.get(pathKey(path))?.value;
  const items = (path: Path): Path[] => {
    const list = value(path);
    return Array.isArray(list) ? list.map((_, index) => [...path, index]) : [];
  };
  const text = (path: Path): string | undefined => {
    const found = value(path);
    return typeof found === 'string' ? found : undefined;
  };
  const texts = (path: Path): Entry[] =>
    items(path).flatMap((at) => {
      const found = text(at);
      return found === undefined ? [] : [{ value: found, path: at }];
    });
  return { fields, value, text, texts, items };
}

export function fieldsOfRole(fields: FieldMap, role: Field['role']): Field[] {
  return [...fields.values.values()].filter((field) => field.role === role && field.value !== undefined);
}
