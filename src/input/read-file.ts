import type { z } from 'zod';
import { comparePositions } from '../diagnostics/compare-positions.ts';
import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import { checkCodes } from './check-codes.ts';
import { explainIssue } from './explain-issue.ts';
import { pathKey } from './finding.ts';
import type { Finding } from './finding.ts';
import type { Located } from './locate-findings.ts';
import { locateFindings } from './locate-findings.ts';
import { parseYaml } from './parse-yaml.ts';
import type { Parsed } from './parse-yaml.ts';
import type { ReadContext } from './read-context.ts';
import { readFields } from './read-fields.ts';
import type { Tree } from './read-tree.ts';
import { checkScalars } from './rules/check-scalars.ts';
import type { Rule } from './rules/rule.ts';
import { wordsOf } from './vocabulary.ts';
import { isPlainMap, walkSchema } from './walk-schema.ts';

/** What makes a file of one kind valid. */
export interface FileKind<T> {
  readonly schema: z.ZodType<T>;
  readonly rules: readonly Rule[];
  /** Says so when the file is of another kind; then nothing else is worth saying. */
  readonly mistaken: (value: Record<string, unknown>) => Finding | undefined;
}

export interface SourceFile {
  /** As it is to be named in messages. */
  readonly file: string;
  readonly text: string;
}

/** Reads a file of a kind: everything wrong at once, sorted by position. Never throws. */
export function readFile<T>(source: SourceFile, kind: FileKind<T>, context: ReadContext): Result<T> {
  return checkParsed(parseYaml(source.text, source.file), kind, context);
}

/** The same for a text that is parsed already. */
export function checkParsed<T>(parsed: Parsed, kind: FileKind<T>, context: ReadContext): Result<T> {
  if (parsed.tree === undefined) return failure(parsed.diagnostics);
  const { tree } = parsed;
  const located: Located = { lines: parsed.lines, tree, vocabulary: wordsOf(context) };
  const mistaken = isPlainMap(tree.value) ? kind.mistaken(tree.value) : undefined;
  const read = kind.schema.safeParse(tree.value ?? undefined);
  const findings =
    mistaken === undefined ? findAll({ kind, tree, issues: read.error?.issues ?? [], context }) : [mistaken];
  const diagnostics = [...parsed.diagnostics, ...locateFindings(findings, located)].sort(comparePositions);
  const warnings = diagnostics.filter(({ severity }) => severity === 'warning');
  return read.success && warnings.length === diagnostics.length
    ? success(read.data, warnings)
    : failure(withCause(diagnostics, located));
}

interface Asked<T> {
  readonly kind: FileKind<T>;
  readonly tree: Tree;
  readonly issues: readonly z.core.$ZodIssue[];
  readonly context: ReadContext;
}

function findAll<T>({ kind, tree, issues, context }: Asked<T>): Finding[] {
  const fields = walkSchema(kind.schema, tree.value ?? undefined);
  const read = readFields(fields);
  return [
    ...withoutEchoes(issues.flatMap((issue) => explainIssue(issue, fields, tree))),
    ...checkCodes(fields, context),
    ...kind.rules.flatMap((rule) => rule(read, context)),
    ...checkScalars(fields, tree),
  ];
}

/** A decimal comma in braces leaves a bare number before it; that number needs no complaint of its own. */
function withoutEchoes(findings: readonly Finding[]): Finding[] {
  const split = findings.filter(({ code, at }) => code === 'CASE_DECIMAL_COMMA' && at === 'key');
  const parents = new Set(split.map(({ path }) => pathKey(path.slice(0, -1))));
  return findings.filter(
    ({ code, path }) => code !== 'CASE_BAD_UNIT' || !parents.has(pathKey(path.slice(0, -1))),
  );
}

/** A refusal always says something, even where the only thing wrong was left out as following from another. */
function withCause(diagnostics: readonly Diagnostic[], located: Located): readonly Diagnostic[] {
  if (diagnostics.some(({ severity }) => severity === 'error')) return diagnostics;
  const finding: Finding = {
    code: 'CASE_TYPE_MISMATCH',
    path: [],
    message: 'the file does not fit the format',
    hint: 'Compare it with an example.',
  };
  return [...diagnostics, ...locateFindings([finding], located)];
}
