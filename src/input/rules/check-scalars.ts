import type { Finding, Path } from '../finding.ts';
import type { Tree } from '../read-tree.ts';
import type { FieldMap } from '../walk-schema.ts';

const plainNumber = /^-?(0|[1-9]\d*)(\.\d+)?$/;

/**
 * What YAML reads in another way than it is written: 012 as 12, 1e3 as 1000, 0x10 as 16; and free words that # cuts short.
 */
export function checkScalars(fields: FieldMap, tree: Tree): Finding[] {
  return [...tree.places].flatMap(([key, { plain, cut }]): Finding[] => {
    const field = fields.values.get(key);
    const path = JSON.parse(key) as Path;
    if (typeof field?.value === 'number' && plain !== undefined && !plainNumber.test(plain)) {
      const message = 'a number is written in a way that is read as another';
      return [
        {
          code: 'CASE_TYPE_MISMATCH',
          path,
          message,
          hint: 'Write plain digits, without a zero before them or an e between them.',
        },
      ];
    }
    const isName = key === JSON.stringify(['patient', 'name']);
    if (cut !== true || (field?.role !== 'words' && !isName)) return [];
    const message = 'what follows # is not read';
    const hint = 'Put the words in quotes, or move the comment to a line of its own.';
    return [{ code: 'CASE_TEXT_CUT', severity: 'warning', path, message, hint }];
  });
}
