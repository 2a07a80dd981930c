import type { KnownCodes } from '../model/known-codes.ts';
import { earlierOperationCodes } from './check-codes.ts';
import { suggestCode } from './explain-choice.ts';
import type { Range } from './read-tree.ts';
import type { OperationsField, SingleField } from './what-if-fields.ts';
import { accept, listCodes, mixedSigns, refuse } from './what-if-step.ts';
import type { ListedCode, ListedOperation, ParsedWhatIf, WhatIfFault } from './what-if-step.ts';

interface Spot<F> {
  readonly field: F;
  readonly at: Range;
  readonly key: Range;
}

/** `pregnancy=now`, `pregnancy=none`, or the months within which one is planned: `pregnancy=12`. */
export function parsePregnancy(text: string, spot: Spot<SingleField>): ParsedWhatIf {
  const months = /^(\d+)(?: months?)?$/.exec(text)?.[1];
  const value =
    months !== undefined
      ? { planned_within_months: Number(months) }
      : text === 'now'
        ? { now: true }
        : text === 'none'
          ? {}
          : undefined;
  if (value !== undefined) return accept({ kind: 'set', ...spot, value, text });
  const message = 'expected none, now, or the months within which a pregnancy is planned';
  const hint = 'Write pregnancy=none, pregnancy=now or for example pregnancy=12.';
  return refuse({ code: 'CASE_TYPE_MISMATCH', path: spot.field.path, at: spot.at, message, hint });
}

/**
 * `earlier_operations=none`, `earlier_operations=sleeve` (in place), `earlier_operations=band:removed, sleeve`, the
 * oldest first; or with signs: `+sleeve` adds one, `-band` takes one out as if it had never been.
 */
export function parseOperations(text: string, spot: Spot<OperationsField>, known: KnownCodes): ParsedWhatIf {
  const { field, at } = spot;
  if (text === '') return refuse(nothingWritten(spot));
  const operations = text === 'none' ? [] : listCodes(text, at[0]).map(readOperation);
  const signed = operations.filter(({ sign }) => sign !== undefined).length;
  if (signed > 0 && signed < operations.length) return refuse(mixedSigns(field, at));
  const faults = operations.flatMap((one) => (one.sign === '-' ? checkTakenOut(one, field, known) : []));
  return faults.length > 0 ? { steps: [], faults } : accept({ kind: 'operations', ...spot, operations });
}

function readOperation({ code, sign, at: [from, to] }: ListedCode): ListedOperation {
  const colon = code.indexOf(':');
  if (colon < 0) return { code, sign, at: [from, to], status: undefined, statusAt: undefined };
  const middle = to - code.length + colon;
  return {
    code: code.slice(0, colon),
    sign,
    at: [from, middle],
    status: code.slice(colon + 1),
    statusAt: [middle + 1, to],
  };
}

/** What is taken out never meets the schema, so it is checked here. */
function checkTakenOut(
  { code, at, statusAt }: ListedOperation,
  { path, name }: OperationsField,
  known: KnownCodes,
): readonly WhatIfFault[] {
  const codes = earlierOperationCodes(known);
  if (!codes.includes(code)) {
    const message = 'this is not an operation of the evidence';
    return [{ code: 'CASE_UNKNOWN_OPTION', path, at, message, hint: suggestCode(code, codes) }];
  }
  if (statusAt === undefined) return [];
  const message = 'an operation that is taken out has no status';
  const hint = `To say that it was undone, write for example ${name}=+band:removed.`;
  return [{ code: 'CASE_TYPE_MISMATCH', path, at: statusAt, message, hint }];
}

function nothingWritten({ field: { path, name }, key }: Spot<OperationsField>): WhatIfFault {
  const message = 'expected none or the operations before';
  return {
    code: 'CASE_TYPE_MISMATCH',
    path,
    at: key,
    message,
    hint: `Write ${name}=none or for example ${name}=band:removed.`,
  };
}
