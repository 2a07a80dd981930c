import { z } from 'zod';
import { CaseSchema } from '../model/case.ts';
import { ClinicProfileSchema } from '../model/clinic.ts';
import { conditionCodes } from '../model/codes.ts';
import { fieldRoles, roleWords } from '../model/field-roles.ts';
import type { FieldRole } from '../model/field-roles.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import { choosableCodes, earlierOperationCodes } from './check-codes.ts';

export type JsonSchema = Readonly<Record<string, unknown>>;

/** JSON Schema (2020-12) of a case as it is written; with known codes, options and languages are listed. */
export function caseJsonSchema(known?: KnownCodes): JsonSchema {
  return toJsonSchema(CaseSchema, { title: 'plainleaf case', known });
}

/** JSON Schema (2020-12) of a clinic profile as it is written. */
export function clinicJsonSchema(known?: KnownCodes): JsonSchema {
  return toJsonSchema(ClinicProfileSchema, { title: 'plainleaf clinic profile', known });
}

interface Extras {
  readonly title: string;
  readonly known: KnownCodes | undefined;
}

function toJsonSchema(schema: z.ZodType, { title, known }: Extras): JsonSchema {
  const made = z.toJSONSchema(schema, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      const role = fieldRoles.get(zodSchema)?.role;
      if (role !== undefined) Object.assign(jsonSchema, extrasOf(role, known));
    },
  });
  return { ...made, title };
}

// The forms that a transform or a check in code accepts, written once more for editors.
const patterns: Partial<Record<FieldRole, string>> = {
  weight: '^\\d{1,4}(\\.\\d{1,2})? (kg|lb)$',
  height: '^(\\d{1,3}(\\.\\d)? cm|\\d(\\.\\d{1,3})? m|\\d ft( \\d{1,2}(\\.\\d)? in)?)$',
  date: '^\\d{4}-\\d{2}-\\d{2}$',
  span: '^[1-9]\\d{0,3} (day|week|month|year)s?$',
  dose: '^\\d{1,6}(\\.\\d{1,3})? (mg|micrograms?|g|IU|mL|tablets?|capsules?|drops?|sprays?|scoops?)$',
  temperature: '^\\d{2,3}(\\.\\d)? (C|F)$',
  'birth-date': '^\\d{4}-\\d{2}-\\d{2}$',
};

function extrasOf(role: FieldRole, known: KnownCodes | undefined): JsonSchema {
  const pattern = patterns[role];
  const codes = known === undefined ? undefined : codesOf(role, known);
  const sample = roleWords[role].sample.replace(/^"|"$/g, '');
  return {
    ...(pattern === undefined ? {} : { pattern }),
    ...(codes === undefined ? {} : { enum: codes }),
    ...(role === 'local-text' ? {} : { examples: [sample] }),
  };
}

function codesOf(role: FieldRole, known: KnownCodes): readonly string[] | undefined {
  switch (role) {
    case 'option':
      return choosableCodes(known);
    case 'earlier-operation':
      return earlierOperationCodes(known);
    case 'outcome':
      return known.outcomes;
    case 'trouble':
      return [...new Set([...conditionCodes, ...known.outcomes])];
    case 'language':
      return known.languages;
    case 'caution':
      return known.cautions;
    default:
      return undefined;
  }
}
