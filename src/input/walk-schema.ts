import { z } from 'zod';
import { fieldRoles } from '../model/field-roles.ts';
import type { FieldRole } from '../model/field-roles.ts';
import type { Path } from './finding.ts';
import { pathKey } from './finding.ts';

/** A field of the format met along a value: its schema, what it stands for, and what was written there. */
export interface Field {
  readonly path: Path;
  readonly schema: z.core.$ZodType;
  readonly role: FieldRole | undefined;
  readonly value: unknown;
  /** The key of a record (option code, language) rather than a value. */
  readonly isKey: boolean;
}

/** Fields by path; keys of records apart, for a key and its value share a path. */
export interface FieldMap {
  readonly values: ReadonlyMap<string, Field>;
  readonly keys: readonly Field[];
}

/**
 * Goes through a value along its schema, right or wrong as the value may be, and lists every field met; fields of an
 * object that are absent are listed with value undefined.
 */
export function walkSchema(schema: z.core.$ZodType, value: unknown): FieldMap {
  const values = new Map<string, Field>();
  const keys: Field[] = [];
  visit({ path: [], schema, role: undefined, value, isKey: false }, (field) => {
    if (field.isKey) keys.push(field);
    else values.set(pathKey(field.path), field);
  });
  return { values, keys };
}

function visit(outer: Field, meet: (field: Field) => void): void {
  const schema = unwrap(outer.schema, outer.value);
  const field: Field = { ...outer, schema, role: roleOf(outer.schema) };
  meet(field);
  for (const child of childrenOf(field)) visit(child, meet);
}

function childrenOf({ schema, value, path }: Field): Field[] {
  if (schema instanceof z.ZodArray && Array.isArray(value)) {
    const { element } = schema;
    return value.map((item: unknown, index) => fieldAt(element, [...path, index], item));
  }
  if (!isPlainMap(value)) return [];
  if (schema instanceof z.ZodObject) {
    return Object.entries(schema.shape as Record<string, z.core.$ZodType>).map(([key, child]) =>
      fieldAt(child, [...path, key], Object.hasOwn(value, key) ? value[key] : undefined),
    );
  }
  if (!(schema instanceof z.ZodRecord)) return [];
  return Object.entries(value).flatMap(([key, item]) => [
    { ...fieldAt(schema.keyType, [...path, key], key), isKey: true },
    fieldAt(schema.valueType, [...path, key], item),
  ]);
}

function fieldAt(schema: z.core.$ZodType, path: Path, value: unknown): Field {
  return { schema, path, value, role: undefined, isKey: false };
}

export function isPlainMap(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isWrapper(
  schema: z.core.$ZodType,
): schema is z.ZodOptional | z.ZodNullable | z.ZodDefault | z.ZodPrefault {
  return (
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodPrefault
  );
}

/** The schema inside optional, nullable and default; of a union of objects, the one whose key the value has. */
function unwrap(schema: z.core.$ZodType, value: unknown): z.core.$ZodType {
  if (isWrapper(schema)) return unwrap(schema.unwrap(), value);
  if (!(schema instanceof z.ZodUnion) || !isPlainMap(value)) return schema;
  return (
    objectsOf(schema).find((option) => Object.keys(option.shape).some((key) => Object.hasOwn(value, key))) ??
    schema
  );
}

export function objectsOf(schema: z.core.$ZodType): z.ZodObject[] {
  return schema instanceof z.ZodUnion ? schema.options.filter((option) => option instanceof z.ZodObject) : [];
}

function roleOf(schema: z.core.$ZodType): FieldRole | undefined {
  const own = fieldRoles.get(schema)?.role;
  return own ?? (isWrapper(schema) ? roleOf(schema.unwrap()) : undefined);
}
