import { ClinicProfileSchema } from '../model/clinic.ts';
import { locatePath } from './locate-path.ts';
import type { FieldPlace } from './locate-path.ts';
import { parseYaml } from './parse-yaml.ts';
import type { SourceFile } from './read-file.ts';
import { isPlainMap, walkSchema } from './walk-schema.ts';

/** Words of a clinic's own, where they stand, and the tags of the languages in which they are written. */
export interface LocalTextPlace extends FieldPlace {
  readonly languages: readonly string[];
}

/** Every text of a clinic profile that is written a language at a time, in the order of the file. Pure. */
export function listLocalTexts(source: SourceFile): readonly LocalTextPlace[] {
  const placeOf = locatePath(source);
  const { tree } = parseYaml(source.text, source.file);
  return [...walkSchema(ClinicProfileSchema, tree?.value ?? undefined).values.values()]
    .flatMap(({ role, value, path }) =>
      role === 'local-text' && isPlainMap(value) ? [{ ...placeOf(path), languages: Object.keys(value) }] : [],
    )
    .sort((a, b) => a.line - b.line);
}
