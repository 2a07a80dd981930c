import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { caseJsonSchema, clinicJsonSchema } from '../../../src/input/index.ts';
import { readdirSync } from 'node:fs';
import { open } from '../../helpers/check-file.ts';
import { context, sampleCase } from '../../helpers/sample-case.ts';

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly additionalProperties?: Node | false;
  readonly propertyNames?: Node;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  readonly description?: string;
  readonly required?: readonly string[];
  readonly default?: unknown;
}

const asked = caseJsonSchema(context) as Node;
const clinic = clinicJsonSchema(context) as Node;

/** Every property of a schema that has no description, by path. */
function undescribed(node: Node | undefined, path = ''): string[] {
  if (node === undefined) return [];
  const own = Object.entries(node.properties ?? {}).flatMap(([key, child]) => [
    ...(child.description === undefined ? [`${path}.${key}`] : []),
    ...undescribed(child, `${path}.${key}`),
  ]);
  const inside = [
    node.items,
    ...(node.anyOf ?? []),
    ...(typeof node.additionalProperties === 'object' ? [node.additionalProperties] : []),
  ];
  return [...own, ...inside.flatMap((child) => undescribed(child, `${path}[]`))];
}

/** The node at a path; [] stands for the entries of a list, * for the values of a record. */
function inside(node: Node, path: string): Node {
  return path.split('.').reduce((outer: Node, key) => {
    const found = key === '*' ? valuesOf(outer) : key === '[]' ? outer.items : outer.properties?.[key];
    if (found === undefined) throw new Error(`nothing at ${path}`);
    return found;
  }, node);
}

function valuesOf({ additionalProperties: values }: Node): Node | undefined {
  return values === false ? undefined : values;
}

describe('the JSON Schema for editors', () => {
  it('describes every key of both formats', () => {
    expect(undescribed(asked)).toEqual([]);
    expect(undescribed(clinic)).toEqual([]);
  });

  it('lists the options, languages and earlier operations that can be written', () => {
    expect(inside(asked, 'decision.options.[]').enum).toContain('sleeve');
    expect(inside(asked, 'decision.options.[]').enum).not.toContain('any-surgery');
    expect(inside(asked, 'languages.[]').enum).toEqual(['en', 'es']);
    expect(inside(asked, 'health.earlier_operations.[].operation').enum).not.toContain('semaglutide');
    const trouble = inside(asked, 'health.earlier_operations.[].trouble').enum;
    expect(trouble).toEqual(expect.arrayContaining(['reflux', 'slippage']));
    expect(inside(clinic, 'protocol.stay').propertyNames?.enum).toContain('bypass');
    expect(inside(clinic, 'cautions').propertyNames?.enum).toContain('reflux-sleeve');
    const supplement = inside(clinic, 'protocol.supplements.*.[].supplement');
    expect(supplement.enum).toContain('vitamin-b12');
  });

  it('without known codes it lists none, and still holds the forms', () => {
    const bare = caseJsonSchema() as Node;
    expect(inside(bare, 'languages.[]').enum).toBeUndefined();
    expect(inside(bare, 'patient.weight').pattern).toBeDefined();
  });

  it('is about what is written, not what is read: forms of weight and height', () => {
    const weight = new RegExp(inside(asked, 'patient.weight').pattern ?? 'none');
    const height = new RegExp(inside(asked, 'patient.height').pattern ?? 'none');
    for (const form of ['114.5 kg', '252 lb']) expect(form).toMatch(weight);
    for (const form of ['114,5 kg', '114.5', '114.5kg']) expect(form).not.toMatch(weight);
    for (const form of ['163 cm', '1.63 m', '5 ft 4 in', '6 ft']) expect(form).toMatch(height);
    for (const form of ['163', `5'4"`]) expect(form).not.toMatch(height);
    const after = new RegExp(inside(clinic, 'protocol.follow_up.*.[].after').pattern ?? 'none');
    for (const form of ['2 weeks', '1 day', '18 months']) expect(form).toMatch(after);
    for (const form of ['2', '2weeks', '0 days']) expect(form).not.toMatch(after);
  });

  it('says which keys may be left out, and that no others may be written', () => {
    expect(inside(asked, 'patient').required).toEqual(['name', 'born', 'sex', 'height', 'weight']);
    expect(asked.required).not.toContain('example');
    expect(asked.additionalProperties).toBe(false);
  });

  it('accepts every example, and refuses one with an unknown key, when read back as a schema', () => {
    type Input = Parameters<typeof z.fromJSONSchema>[0];
    const [forCase, forClinic] = [z.fromJSONSchema(asked as Input), z.fromJSONSchema(clinic as Input)];
    for (const name of readdirSync(new URL('../../../examples/cases/', import.meta.url))) {
      expect(forCase.safeParse(parse(open(`examples/cases/${name}`).text)).error).toBeUndefined();
    }
    expect(forClinic.safeParse(parse(open('examples/clinic.yaml').text)).error).toBeUndefined();
    expect(forCase.safeParse({ ...(parse(sampleCase) as object), extra: 1 }).success).toBe(false);
    expect(forCase.safeParse(parse(sampleCase.replace('sleeve', 'sleve'))).success).toBe(false);
  });
});
