import type { Stage } from './code-entry.ts';
import { dataCodes } from './codes-of-data.ts';
import { inputCodes } from './codes-of-input.ts';
import { outputCodes } from './codes-of-output.ts';

export type { Stage } from './code-entry.ts';

/** Exit code of the command line per stage. 0 is success. */
export const exitCodes: Readonly<Record<Stage, number>> = {
  usage: 2,
  case: 3,
  evidence: 4,
  words: 5,
  render: 6,
  verify: 7,
  batch: 8,
  internal: 70,
};

/** The closed list of codes. A code is never reused for another meaning. */
export const diagnosticCatalogue = { ...inputCodes, ...dataCodes, ...outputCodes };

export type DiagnosticCode = keyof typeof diagnosticCatalogue;

export function stageOf(code: DiagnosticCode): Stage {
  return diagnosticCatalogue[code].stage;
}
