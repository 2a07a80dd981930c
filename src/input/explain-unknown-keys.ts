import { z } from 'zod';
import { isMisspelling } from '../diagnostics/redact.ts';
import { nearestWord } from '../diagnostics/suggest.ts';
import { listWords, writePath } from './describe-value.ts';
import { pathKey } from './finding.ts';
import type { Finding, Path } from './finding.ts';
import { limits } from './limits.ts';
import type { FieldMap } from './walk-schema.ts';

/** Keys that are not part of the format. A key may be words that lost their quotes, so it is never said again. */
export function explainUnknownKeys(path: Path, keys: readonly string[], fields: FieldMap): Finding[] {
  const schema = fields.values.get(pathKey(path))?.schema;
  const allowed = schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
  return keys.slice(0, limits.described).map((key) => explainUnknownKey([...path, key], allowed, fields));
}

function explainUnknownKey(path: Path, allowed: readonly string[], fields: FieldMap): Finding {
  const key = String(path.at(-1));
  // In braces, {weight_before: 131,5 kg} is two entries to YAML: weight_before: 131 and a key "5 kg".
  if (/^\d+( ?(kg|lbs?|cm|m|in))?$/.test(key)) {
    const hint = 'Write a decimal point, for example 131.5 kg.';
    return { code: 'CASE_DECIMAL_COMMA', path, at: 'key', message: 'a number is written with a comma', hint };
  }
  const isNear = isMisspelling(key, allowed);
  const hint = hintFor(path, allowed, fields);
  return {
    code: 'CASE_UNKNOWN_FIELD',
    path,
    at: 'key',
    isNear,
    message: 'this key is not part of the format',
    hint,
  };
}

function hintFor(path: Path, allowed: readonly string[], fields: FieldMap): string {
  const key = String(path.at(-1));
  if ((key === 'code' && allowed.includes('text')) || (key === 'text' && allowed.includes('code'))) {
    return 'Write either code or text, in an entry of its own.';
  }
  const near = nearestWord(key, allowed);
  if (near !== undefined) return `Did you mean ${near}?`;
  const home = [...fields.values.values()].find(
    ({ path: at }) => at.length > 1 && at.at(-1) === key && isFixedKey(at, fields),
  );
  if (home !== undefined) return `Move it: ${key} belongs under ${writePath(home.path.slice(0, -1))}.`;
  return `Remove it, or choose one of: ${listWords(allowed)}.`;
}

/** Whether the format itself, not the file, names the last key of the path. */
function isFixedKey(path: Path, fields: FieldMap): boolean {
  return fields.values.get(pathKey(path.slice(0, -1)))?.schema instanceof z.ZodObject;
}
