import type { DiagnosticCode } from '../../diagnostics/codes.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { ruleOf } from '../markup/vocabulary.ts';
import type { Shape } from '../view/shape.ts';
import { elseOf, isBlock, isContent, writtenText } from './parse-template.ts';
import type { ParsedTemplate } from './parse-template.ts';
import { resolvePath } from './resolve-path.ts';
import type { Scope } from './resolve-path.ts';

/** What a lint needs to know beside the template. */
export interface LintSetting {
  readonly shape: Shape;
  readonly partials: ReadonlyMap<string, ParsedTemplate>;
  /** Whether the base language has these words; left out when no locale is at hand. */
  readonly hasWords?: (key: string) => boolean;
}

interface Lint extends LintSetting {
  readonly file: string;
  readonly found: Diagnostic[];
  readonly within: readonly string[];
}

/** The closed list of helpers: which kinds of value each takes. */
const valueHelpers: Readonly<Record<string, readonly string[]>> = { say: ['markup'] };
const blockHelpers = ['if', 'unless', 'each'];

/**
 * Checks a template against the shape of the view model: every path exists and is of a kind that can be printed,
 * only the closed list of helpers is used, and nothing is printed raw. Partials are checked in the context in which
 * they are called. All findings, in the order of the file.
 */
export function lintTemplate(template: ParsedTemplate, setting: LintSetting): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const lint: Lint = { ...setting, file: template.file, found, within: [] };
  lintProgram(template.program, { root: setting.shape, stack: [setting.shape] }, lint);
  const places = found.map((one) =>
    [one.span?.file, one.span?.line, one.span?.column, one.message].join(':'),
  );
  return found.filter((_, index) => places.indexOf(places[index] ?? '') === index);
}

function lintProgram(program: hbs.AST.Program, scope: Scope, lint: Lint): void {
  for (const statement of program.body) lintStatement(statement, scope, lint);
}

function lintStatement(statement: hbs.AST.Statement, scope: Scope, lint: Lint): void {
  switch (statement.type) {
    case 'CommentStatement':
      return;
    case 'ContentStatement':
      if (isContent(statement)) lintElements(statement, lint);
      return;
    case 'MustacheStatement':
      lintMustache(statement as hbs.AST.MustacheStatement, scope, lint);
      return;
    case 'BlockStatement':
      if (isBlock(statement)) lintBlock(statement, scope, lint);
      return;
    case 'PartialStatement':
      lintPartial(statement as hbs.AST.PartialStatement, scope, lint);
      return;
    default:
      report(lint, statement, ['TEMPLATE_SYNTAX', 'This kind of Handlebars tag is not used in templates.']);
  }
}

function lintElements(statement: hbs.AST.ContentStatement, lint: Lint): void {
  const { start } = statement.loc;
  const written = writtenText(statement);
  for (const match of written.matchAll(/<([A-Za-z][A-Za-z0-9-]*)/g)) {
    const name = match[1] ?? '';
    if (name !== 'document' && ruleOf(name) !== undefined) continue;
    const before = written.slice(0, match.index).split('\n');
    const column = (before.at(-1)?.length ?? 0) + (before.length === 1 ? start.column : 0);
    const at = { line: start.line + before.length - 1, column };
    const loc = { ...statement.loc, start: at, end: { ...at, column: column + name.length + 1 } };
    report(lint, { ...statement, loc }, ['TEMPLATE_UNKNOWN_BLOCK', `<${name}> is not in the vocabulary.`]);
  }
}

function lintMustache(statement: hbs.AST.MustacheStatement, scope: Scope, lint: Lint): void {
  // Handlebars' own type says boolean, its parser gives `escaped: false` for {{{ }}} and {{& }}.
  if (!statement.escaped)
    report(lint, statement, ['TEMPLATE_RAW_OUTPUT', 'Something is printed without escaping.']);
  const hasArguments = statement.params.length > 0 || pairsOf(statement).length > 0;
  const name = nameOf(statement.path);
  if (name === 't') lintWords(statement, scope, lint);
  else if (name !== null && Object.hasOwn(valueHelpers, name) && hasArguments) {
    lintValueHelper(statement, { name, scope }, lint);
  } else if (hasArguments) {
    report(lint, statement, ['TEMPLATE_UNKNOWN_PATH', `There is no helper ${name ?? 'of that name'}.`]);
  } else {
    lintValue(statement.path, { scope, kinds: ['text', 'count', 'flag'] }, lint);
  }
}

function lintWords(statement: hbs.AST.MustacheStatement, scope: Scope, lint: Lint): void {
  const [key, ...rest] = statement.params;
  if (key?.type !== 'StringLiteral' || rest.length > 0) {
    report(lint, statement, ['TEMPLATE_UNKNOWN_PATH', 'The helper t takes one key of words in quotes.']);
    return;
  }
  const { value } = key as hbs.AST.StringLiteral;
  if (lint.hasWords?.(value) === false) {
    report(lint, statement, ['LOCALE_KEY_MISSING', `The base language has no words under ${value}.`]);
  }
  for (const pair of pairsOf(statement))
    lintValue(pair.value, { scope, kinds: ['text', 'count', 'flag'] }, lint);
}

function lintValueHelper(
  statement: hbs.AST.MustacheStatement,
  call: { readonly name: string; readonly scope: Scope },
  lint: Lint,
): void {
  const [argument, ...rest] = statement.params;
  if (argument === undefined || rest.length > 0 || pairsOf(statement).length > 0) {
    report(lint, statement, ['TEMPLATE_UNKNOWN_PATH', `The helper ${call.name} takes one path.`]);
    return;
  }
  lintValue(argument, { scope: call.scope, kinds: valueHelpers[call.name] ?? [] }, lint);
}

function lintBlock(statement: hbs.AST.BlockStatement, scope: Scope, lint: Lint): void {
  const name = nameOf(statement.path) ?? '';
  const [argument] = statement.params;
  if (!blockHelpers.includes(name) || argument === undefined || statement.params.length > 1) {
    report(lint, statement, [
      'TEMPLATE_UNKNOWN_PATH',
      `Blocks are ${blockHelpers.join(', ')}, with one path.`,
    ]);
    return;
  }
  const shape = lintValue(argument, { scope, kinds: name === 'each' ? ['list'] : null }, lint);
  const inner = name === 'each' ? withElement(scope, shape) : scope;
  if (inner !== null) lintProgram(statement.program, inner, lint);
  const inverse = elseOf(statement);
  if (inverse !== null) lintProgram(inverse, scope, lint);
}

/** The scope inside a list; null where there is no list, which has been reported. */
function withElement(scope: Scope, shape: Shape | null): Scope | null {
  return shape?.kind === 'list' ? { ...scope, stack: [...scope.stack, shape.of] } : null;
}

function lintPartial(statement: hbs.AST.PartialStatement, scope: Scope, lint: Lint): void {
  const name = nameOf(statement.name);
  const partial = name === null ? undefined : lint.partials.get(name);
  const [context, ...rest] = statement.params;
  if (partial === undefined || rest.length > 0 || pairsOf(statement).length > 0) {
    report(lint, statement, [
      'TEMPLATE_UNKNOWN_PATH',
      `There is no partial ${name ?? 'of that name'} that takes this.`,
    ]);
    return;
  }
  if (lint.within.includes(partial.file)) {
    report(lint, statement, ['TEMPLATE_SYNTAX', 'A partial calls itself.']);
    return;
  }
  const shape = context === undefined ? scope.stack.at(-1) : lintValue(context, { scope, kinds: null }, lint);
  if (shape === null || shape === undefined) return;
  const inner = { ...lint, file: partial.file, within: [...lint.within, partial.file] };
  // Handlebars gives a partial no way up to its caller's contexts.
  lintProgram(partial.program, { root: scope.root, stack: [shape] }, inner);
}

interface Wanted {
  readonly scope: Scope;
  /** Kinds that may stand here; null for any. */
  readonly kinds: readonly string[] | null;
}

function lintValue(expression: hbs.AST.Expression, wanted: Wanted, lint: Lint): Shape | null {
  if (expression.type === 'StringLiteral' || expression.type === 'NumberLiteral') {
    if (wanted.kinds?.includes('text') === true) return { kind: 'text' };
  }
  if (expression.type !== 'PathExpression') {
    report(lint, expression, ['TEMPLATE_UNKNOWN_PATH', 'Only a path of the view model may stand here.']);
    return null;
  }
  const path = expression as hbs.AST.PathExpression;
  const shape = resolvePath(path, wanted.scope);
  if (shape === null) {
    report(lint, expression, ['TEMPLATE_UNKNOWN_PATH', `The view model has no ${path.original}.`]);
    return null;
  }
  if (wanted.kinds !== null && !wanted.kinds.includes(shape.kind)) {
    const message = `${path.original} is of kind ${shape.kind}; ${wanted.kinds.join(' or ')} may stand here.`;
    report(lint, expression, ['TEMPLATE_UNKNOWN_PATH', message]);
    return null;
  }
  return shape;
}

/** The name that a tag calls, if it is a plain one. */
function nameOf(expression: hbs.AST.Expression): string | null {
  return expression.type === 'PathExpression' ? (expression as hbs.AST.PathExpression).original : null;
}

function pairsOf(statement: { readonly hash?: hbs.AST.Hash }): readonly hbs.AST.HashPair[] {
  return statement.hash?.pairs ?? [];
}

function report(lint: Lint, node: hbs.AST.Node, [code, message]: readonly [DiagnosticCode, string]): void {
  const { start, end } = node.loc;
  lint.found.push({
    code,
    severity: 'error',
    message,
    hint: 'Correct the template; DEVELOPERS.md lists what templates may use.',
    span: {
      file: lint.file,
      line: start.line,
      column: start.column + 1,
      endLine: end.line,
      endColumn: end.column + 1,
    },
  });
}
