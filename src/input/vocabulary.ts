import { z } from 'zod';
import { CaseSchema } from '../model/case.ts';
import { ClinicProfileSchema } from '../model/clinic.ts';
import type { KnownCodes } from '../model/known-codes.ts';

/** Every key of the two formats. */
export const formatKeys: ReadonlySet<string> = new Set([
  ...keysOf(CaseSchema),
  ...keysOf(ClinicProfileSchema),
]);

/** Words that may stand in a path of a message: keys of the formats, and codes that are keys. */
export function wordsOf(known: KnownCodes): ReadonlySet<string> {
  return new Set([
    ...formatKeys,
    ...known.languages,
    ...known.options.map(({ code }) => code),
    ...(known.cautions ?? []),
  ]);
}

function keysOf(schema: z.core.$ZodType): string[] {
  if (schema instanceof z.ZodObject) {
    const shape = schema.shape as Record<string, z.core.$ZodType>;
    return Object.entries(shape).flatMap(([key, child]) => [key, ...keysOf(child)]);
  }
  if (schema instanceof z.ZodArray) return keysOf(schema.element);
  if (schema instanceof z.ZodRecord) return keysOf(schema.valueType);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => keysOf(option));
  const isWrapper =
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodPrefault;
  return isWrapper ? keysOf(schema.unwrap()) : [];
}
