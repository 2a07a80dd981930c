import type { Finding } from '../finding.ts';
import type { ReadContext } from '../read-context.ts';
import type { FieldReader } from '../read-fields.ts';

/** A check across fields. Runs on whatever can be read, so that everything wrong is found at once. */
export type Rule = (read: FieldReader, context: ReadContext) => Finding[];
