import { compareCases, compareOptions } from './compare/index.ts';
import { success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { changeCase, withNoOperation } from './input/index.ts';
import type { CaseChange } from './input/index.ts';
import type { ComparisonTable } from './model/comparison.ts';
import type { TableDifference } from './model/difference.ts';
import type { OpenCase } from './model/packet.ts';
import type { Prepared } from './prepare.ts';

/** What would be otherwise if some of a case were. */
export interface WhatIf {
  /** What of the case is not as it was. */
  readonly changes: readonly CaseChange[];
  readonly comparison: ComparisonTable;
  readonly difference: TableDifference;
}

/**
 * A case with changes → what that does to its comparison. Fails with everything that is wrong with the changes.
 *
 * @param whatIfs for example `weight=140 kg`, `conditions=+reflux`, `-sleeve`
 */
export function openWhatIf(
  { evidence, known }: Prepared,
  open: OpenCase,
  whatIfs: readonly string[],
): Result<WhatIf> {
  const { files, date, clinic } = open;
  const changed = changeCase(files.case, whatIfs, { ...known, today: date });
  if (!changed.ok) return changed;
  const { changes, case: given } = changed.value;
  const input = { case: withNoOperation(given), clinic, evidence, date };
  const compared = compareOptions(input);
  if (!compared.ok) return compared;
  const comparison = compared.value;
  const before = { input: { ...input, case: open.case }, table: open.comparison };
  return success({ changes, comparison, difference: compareCases(before, { input, table: comparison }) });
}
