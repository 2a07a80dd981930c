import type { Finding, Path } from './finding.ts';
import type { Range } from './read-tree.ts';
import type { ListField, OperationsField, SingleField } from './what-if-fields.ts';

/** A code with its place in the argument; `sign` is absent where the whole list is written anew. */
export interface ListedCode {
  readonly code: string;
  readonly sign: '+' | '-' | undefined;
  readonly at: Range;
}

/** An earlier operation, with what became of it where that is written. */
export interface ListedOperation extends ListedCode {
  readonly status: string | undefined;
  readonly statusAt: Range | undefined;
}

/** One thing to change. Ranges count letters from the start of the argument. */
export type WhatIfStep =
  | {
      readonly kind: 'set';
      readonly field: SingleField;
      /** As YAML would read it: a bare number is a number, nothing is null; or a map of keys. */
      readonly value: string | number | null | Readonly<Record<string, unknown>>;
      readonly text: string;
      readonly at: Range;
      readonly key: Range;
    }
  | {
      readonly kind: 'list';
      readonly field: ListField;
      readonly codes: readonly ListedCode[];
      /** Nothing stands after the equals sign. */
      readonly isEmpty: boolean;
      readonly at: Range;
      readonly key: Range;
    }
  | {
      readonly kind: 'operations';
      readonly field: OperationsField;
      readonly operations: readonly ListedOperation[];
      readonly at: Range;
      readonly key: Range;
    };

export interface WhatIfFault extends Omit<Finding, 'path' | 'at'> {
  readonly path?: Path;
  readonly at: Range;
}

export interface ParsedWhatIf {
  readonly steps: readonly WhatIfStep[];
  readonly faults: readonly WhatIfFault[];
}

export function accept(step: WhatIfStep): ParsedWhatIf {
  return { steps: [step], faults: [] };
}

export function refuse(fault: WhatIfFault): ParsedWhatIf {
  return { steps: [], faults: [fault] };
}

/** Codes between commas, spaces or brackets, each with its sign. */
export function listCodes(value: string, start: number): readonly ListedCode[] {
  return [...value.matchAll(/[^\s,[\]]+/g)].map(({ 0: word, index }) => {
    const at: Range = [start + index, start + index + word.length];
    const sign = word.startsWith('+') ? '+' : word.startsWith('-') ? '-' : undefined;
    return { code: sign === undefined ? word : word.slice(1), sign, at };
  });
}

export function mixedSigns({ path, name }: ListField | OperationsField, at: Range): WhatIfFault {
  const message = 'some codes have a sign and some have none';
  const hint = `Write + or - before each code to change the list, or none to write it anew: ${name}=[…].`;
  return { code: 'CASE_TYPE_MISMATCH', path, at, message, hint };
}
