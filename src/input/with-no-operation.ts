import type { Case } from '../model/case.ts';

/** The case with doing nothing more among its options: at the end unless it is there already. */
export function withNoOperation(given: Case): Case {
  const { options } = given.decision;
  if (options.includes('no-operation')) return given;
  return { ...given, decision: { ...given.decision, options: [...options, 'no-operation'] } };
}
