import { z } from 'zod';
import { roleWords } from '../model/field-roles.ts';
import type { FieldRole } from '../model/field-roles.ts';
import { describeKind } from './describe-value.ts';
import { explainChoice } from './explain-choice.ts';
import { explainDate } from './explain-date.ts';
import { explainDose, explainSpan, explainTemperature } from './explain-measure.ts';
import { explainMissing } from './explain-missing.ts';
import { explainHeight, explainWeight } from './explain-quantity.ts';
import type { Explanation } from './explain-quantity.ts';
import { explainUnknownKeys } from './explain-unknown-keys.ts';
import { pathKey } from './finding.ts';
import type { Finding, Path } from './finding.ts';
import type { Tree } from './read-tree.ts';
import { objectsOf } from './walk-schema.ts';
import type { Field, FieldMap } from './walk-schema.ts';

type Issue = z.core.$ZodIssue;

/** Roles whose texts are checked against the known codes elsewhere, whatever their form. */
const codeRoles: readonly (FieldRole | undefined)[] = [
  'option',
  'earlier-operation',
  'outcome',
  'trouble',
  'language',
];

/** Puts what the schema found into words for people; several findings for one issue where it holds several. */
export function explainIssue(issue: Issue, fields: FieldMap, tree: Tree): Finding[] {
  const path = issue.path as Path;
  if (issue.code === 'unrecognized_keys') return explainUnknownKeys(path, issue.keys, fields);
  if (issue.code === 'invalid_key') return explainKey(path, fields);
  const field = fields.values.get(pathKey(path));
  return field === undefined ? [] : explainField(issue, field, { fields, tree });
}

interface Whole {
  readonly fields: FieldMap;
  readonly tree: Tree;
}

function explainField(issue: Issue, field: Field, whole: Whole): Finding[] {
  const { path, role, value } = field;
  if (value === undefined || value === null) return [explainMissing(field)];
  if (issue.code === 'invalid_union' && role === undefined) return explainUnion(field, whole);
  if (typeof value === 'string' && codeRoles.includes(role)) return [];
  return [{ path, ...explainValue(issue, field, whole.tree.places.get(pathKey(path))?.plain) }];
}

function explainKey(path: Path, fields: FieldMap): Finding[] {
  const role = fields.keys.find((field) => pathKey(field.path) === pathKey(path))?.role ?? 'language-tag';
  if (codeRoles.includes(role)) return [];
  const { expected, sample } = roleWords[role];
  const words = 'Write {en: "…", es: "…"}. Words that hold a comma or a colon go in quotes.';
  const hint = role === 'language-tag' ? words : `Write for example ${sample}.`;
  return [{ code: 'CASE_UNKNOWN_CODE', path, at: 'key', message: `expected ${expected}`, hint }];
}

/** A reason or a wish is either coded or in words. */
function explainUnion(field: Field, { fields, tree }: Whole): Finding[] {
  const branches = objectsOf(field.schema);
  if (branches.length > 0) {
    const message = `expected code or text, found ${describeKind(field.value)}`;
    return [
      {
        code: 'CASE_TYPE_MISMATCH',
        path: field.path,
        message,
        hint: 'Write {code: …} or {text: {en: "…"}}.',
      },
    ];
  }
  const result = z.safeParse(field.schema, field.value);
  return (result.error?.issues ?? []).flatMap((issue) =>
    explainIssue({ ...issue, path: [...field.path, ...issue.path] }, fields, tree),
  );
}

function explainValue(issue: Issue, field: Field, plain: string | undefined): Explanation {
  switch (field.role) {
    case undefined:
      return explainChoice(issue, field);
    case 'weight':
      return explainWeight(field.value, plain);
    case 'height':
      return explainHeight(field.value, plain);
    case 'span':
      return explainSpan(field.value, plain);
    case 'dose':
      return explainDose(field.value, plain);
    case 'temperature':
      return explainTemperature(field.value, plain);
    case 'date':
    case 'birth-date':
    case 'partial-date':
      return explainDate(field.value, field.role);
    default:
      return explainText(issue, { role: field.role, value: field.value, plain });
  }
}

const quoted: readonly FieldRole[] = ['reference', 'label', 'phone'];

interface Written {
  readonly role: FieldRole;
  readonly value: unknown;
  readonly plain: string | undefined;
}

function explainText(issue: Issue, { role, value, plain }: Written): Explanation {
  if (typeof value === 'number' && quoted.includes(role)) {
    const message = 'YAML reads this as a number, which loses zeros';
    return { code: 'CASE_ID_NOT_TEXT', message, hint: `Put it in quotes: "${plain ?? String(value)}".` };
  }
  switch (issue.code) {
    case 'too_big':
      return { code: 'CASE_OUT_OF_RANGE', message: issue.message, hint: 'Shorten it.' };
    case 'too_small':
      return { code: 'CASE_OUT_OF_RANGE', message: issue.message, hint: 'Write the words.' };
    case 'custom':
      return { code: 'CASE_TYPE_MISMATCH', message: issue.message, hint: hintForWords(role) };
    default:
      return explainForm(role, value);
  }
}

function hintForWords(role: FieldRole): string {
  const isMap = role === 'local-text';
  return isMap ? `Write ${roleWords[role].sample}.` : 'Type the words again, without hidden characters.';
}

function explainForm(role: FieldRole, value: unknown): Explanation {
  const { expected, sample } = roleWords[role];
  const code = 'CASE_TYPE_MISMATCH';
  if (typeof value === 'string' && role !== 'local-text') {
    return { code, message: `expected ${expected}`, hint: `Write for example ${sample}.` };
  }
  const isCollection = typeof value === 'object';
  const message = `expected ${expected}, found ${describeKind(value)}`;
  if (role === 'local-text') return { code, message, hint: `Write ${sample}.` };
  const hint = isCollection
    ? 'Put words that hold a colon, comma or bracket in quotes.'
    : 'Put it in quotes.';
  return { code, message, hint };
}
