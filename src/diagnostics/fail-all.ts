import { failure } from './diagnostic.ts';
import type { Result } from './diagnostic.ts';

/** One failure of several results, with all that is wrong, each thing once. */
export function failAll(results: readonly Result<unknown>[]): Result<never> {
  const all = results.flatMap((result) => (result.ok ? [] : result.diagnostics));
  return failure([...new Map(all.map((one) => [JSON.stringify(one), one])).values()]);
}
