import { z } from 'zod';
import { roleWords } from '../model/field-roles.ts';
import { listWords } from './describe-value.ts';
import type { Finding } from './finding.ts';
import type { Field } from './walk-schema.ts';

/** A required key that is absent, or has nothing after its colon. */
export function explainMissing(field: Field): Finding {
  const key = field.path.at(-1);
  if (key === undefined) return explainEmptyFile();
  const isAbsent = field.value === undefined;
  const name = typeof key === 'number' ? 'this entry' : key;
  return {
    code: 'CASE_MISSING_FIELD',
    path: field.path,
    at: isAbsent ? 'absent' : 'value',
    message: isAbsent ? `${name} is missing` : `${name} has no value`,
    hint:
      typeof key === 'number'
        ? 'Write the entry, or remove its dash or comma.'
        : `Add ${sampleOf(key, field)}.`,
  };
}

function explainEmptyFile(): Finding {
  const hint = 'Start with plainleaf: 1, or copy an example.';
  return { code: 'CASE_MISSING_FIELD', path: [], message: 'the file is empty', hint };
}

/** What could stand there, in words short enough for a hint. */
function sampleOf(key: string, { schema, role }: Field): string {
  if (role !== undefined) return `it, for example ${key}: ${roleWords[role].sample}`;
  if (schema instanceof z.ZodEnum) return `${key}: and one of ${listWords(schema.options)}`;
  if (schema instanceof z.ZodLiteral) return `${key}: ${[...schema.values].join(' or ')}`;
  if (schema instanceof z.ZodBoolean) return `${key}: true or ${key}: false`;
  if (schema instanceof z.ZodNumber) return `${key}: and a whole number`;
  if (schema instanceof z.ZodArray) return `${key}: and a list`;
  if (schema instanceof z.ZodObject) return `${key}: and under it ${listWords(Object.keys(schema.shape))}`;
  return `${key}: and its value`;
}
