import type { Finding, Path } from '../finding.ts';
import type { Entry } from '../read-fields.ts';
import type { Rule } from './rule.ts';

const listPaths: readonly Path[] = [
  ['languages'],
  ['documents'],
  ['decision', 'options'],
  ['health', 'conditions'],
  ['health', 'medicines'],
  ['health', 'history'],
];

/** No list of a case names a thing twice. */
export const checkDuplicates: Rule = (read) => listPaths.flatMap((path) => findRepeats(read.texts(path)));

export function findRepeats(entries: readonly Entry[], message = 'this stands twice in the list'): Finding[] {
  const first = new Map<string, Path>();
  const findings: Finding[] = [];
  for (const { value, path } of entries) {
    const before = first.get(value);
    if (before === undefined) first.set(value, path);
    else
      findings.push({
        code: 'CASE_CONFLICT',
        path,
        message,
        hint: 'Keep one of the two.',
        related: [{ path: before, message: 'first here' }],
      });
  }
  return findings;
}
