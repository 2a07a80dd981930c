import Handlebars from 'handlebars';

import { failure, success } from '../../diagnostics/diagnostic.ts';
import type { Result } from '../../diagnostics/diagnostic.ts';
import { inlineElements } from '../markup/vocabulary.ts';

/** A template file as a syntax tree in which every element says where it was written. */
export interface ParsedTemplate {
  /** Path under the template folder, for example `comparison/main.hbs`. */
  readonly file: string;
  readonly program: hbs.AST.Program;
}

/**
 * Parses a Handlebars file. White space control is left out on purpose: the markup ignores white space, and line
 * numbers stay those of the file.
 */
export function parseTemplate(text: string, file: string): Result<ParsedTemplate> {
  try {
    const program = Handlebars.parseWithoutProcessing(text, { srcName: file });
    markOrigins(program, file);
    return success({ file, program });
  } catch (error) {
    const line = Number(/on line (\d+)/.exec(messageOf(error))?.[1] ?? 1);
    return failure([
      {
        code: 'TEMPLATE_SYNTAX',
        severity: 'error',
        message: 'This template is not valid Handlebars.',
        hint: 'Check that every {{#…}} is closed and every tag is complete.',
        span: { file, line, column: 1 },
      },
    ]);
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function markOrigins(program: hbs.AST.Program, file: string): void {
  for (const statement of program.body) {
    if (isContent(statement)) {
      statement.value = withOrigins(statement.value, file, statement.loc.start.line);
    }
    for (const inner of blocksOf(statement)) markOrigins(inner, file);
  }
}

/** The programs inside a block statement: its body and its else branch. */
export function blocksOf(statement: hbs.AST.Statement): readonly hbs.AST.Program[] {
  if (!isBlock(statement)) return [];
  const inverse = elseOf(statement);
  return inverse === null ? [statement.program] : [statement.program, inverse];
}

/** The else branch; Handlebars' own type says that there always is one. */
export function elseOf(statement: hbs.AST.BlockStatement): hbs.AST.Program | null {
  const { inverse } = statement as { readonly inverse?: hbs.AST.Program };
  return inverse ?? null;
}

export function isContent(statement: hbs.AST.Node): statement is hbs.AST.ContentStatement {
  return statement.type === 'ContentStatement';
}

/** A content statement as it stands in the file, before origins are put in. */
export function writtenText(statement: hbs.AST.ContentStatement): string {
  const written: unknown = statement.original;
  return typeof written === 'string' ? written : statement.value;
}

export function isBlock(statement: hbs.AST.Node): statement is hbs.AST.BlockStatement {
  return statement.type === 'BlockStatement';
}

function withOrigins(content: string, file: string, firstLine: number): string {
  return content.replace(/<([a-z][a-z0-9-]*)/g, (tag, name: string, offset: number) => {
    if (inlineElements.includes(name)) return tag;
    const line = firstLine + content.slice(0, offset).split('\n').length - 1;
    return `${tag} origin="${file}:${String(line)}"`;
  });
}

/** Whether a template prints anything at all; an empty file is a mistake. */
export function saysSomething(template: ParsedTemplate): boolean {
  return template.program.body.some((statement) => !isContent(statement) || statement.value.trim() !== '');
}
