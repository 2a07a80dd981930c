import { comparePositions } from '../diagnostics/compare-positions.ts';
import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Case } from '../model/case.ts';
import { applyWhatIf } from './apply-what-if.ts';
import type { PlacedStep } from './apply-what-if.ts';
import { describeChanges } from './describe-changes.ts';
import type { CaseChange } from './describe-changes.ts';
import { writePath } from './describe-value.ts';
import { indexLines } from './line-index.ts';
import type { LineIndex } from './line-index.ts';
import { parseWhatIf } from './parse-what-if.ts';
import { parseYaml } from './parse-yaml.ts';
import type { ReadContext } from './read-context.ts';
import { caseKind } from './read-case.ts';
import { checkParsed } from './read-file.ts';
import type { SourceFile } from './read-file.ts';
import type { ParsedWhatIf, WhatIfFault } from './what-if-step.ts';

export interface ChangedCase {
  readonly case: Case;
  /** What is not as it was; empty when the changes ask for what the case says already. */
  readonly changes: readonly CaseChange[];
}

/** One argument, with its place behind the case file and the arguments before it. */
interface Argument extends ParsedWhatIf {
  readonly start: number;
  readonly lines: LineIndex;
}

/**
 * Reads a case as if some of it were written otherwise, with the same checks as `readCase`. What is wrong with a change
 * is located in its argument, which is named by its number: `--what-if 1`. Never throws, and never says again what was
 * written.
 *
 * @param whatIfs as `parseWhatIf` reads them; applied in order
 */
export function changeCase(
  source: SourceFile,
  whatIfs: readonly string[],
  context: ReadContext & { readonly today: string },
): Result<ChangedCase> {
  const parsed = parseYaml(source.text, source.file);
  const present = checkParsed(parsed, caseKind, context);
  if (!present.ok) return present;
  if (parsed.tree === undefined) return failure(parsed.diagnostics);
  const given = placeArguments(whatIfs, source.text.length + 1, context);
  const steps = given.flatMap(({ steps: own, start }) => own.map((step): PlacedStep => ({ step, start })));
  const tree = applyWhatIf(parsed.tree, steps, context.today);
  const lines = joinLines(parsed.lines, given);
  const changed = checkParsed({ ...parsed, lines, tree }, caseKind, context);
  const faults = given.flatMap(({ faults: own, start }) => own.map((fault) => locate(fault, lines, start)));
  if (!changed.ok) return failure([...faults, ...changed.diagnostics].sort(comparePositions));
  if (faults.length > 0) return failure(faults);
  const before = { case: present.value, written: parsed.tree.value };
  const after = { case: changed.value, written: tree.value };
  return success(
    { case: changed.value, changes: describeChanges(before, after, context.today) },
    changed.warnings,
  );
}

function placeArguments(
  whatIfs: readonly string[],
  first: number,
  context: ReadContext,
): readonly Argument[] {
  let start = first;
  return whatIfs.map((text, index) => {
    const argument = {
      ...parseWhatIf(text, context),
      start,
      lines: indexLines(text, `--what-if ${index + 1}`),
    };
    start += text.length + 1;
    return argument;
  });
}

/** The case and the arguments behind it as one text. */
function joinLines(own: LineIndex, given: readonly Argument[]): LineIndex {
  return {
    span: (from, to) => {
      const argument = given.findLast(({ start }) => start <= from);
      return argument === undefined
        ? own.span(from, to)
        : argument.lines.span(from - argument.start, to - argument.start);
    },
  };
}

function locate({ path, at, ...fault }: WhatIfFault, lines: LineIndex, start: number): Diagnostic {
  return {
    code: fault.code,
    severity: 'error',
    message: fault.message,
    hint: fault.hint,
    span: lines.span(at[0] + start, at[1] + start),
    ...(path === undefined ? {} : { path: writePath(path) }),
  };
}
