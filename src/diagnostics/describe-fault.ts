import type { Diagnostic } from './diagnostic.ts';

/**
 * An error that nobody foresaw, as a diagnostic. Its message is left out, because it may quote the case; its kind and
 * the line of plainleaf it came from are enough to find it.
 */
export function describeFault(error: unknown): Diagnostic {
  const kind = error instanceof Error ? error.name : typeof error;
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  const place = /[\\/](src[\\/][\w\\/.-]+:\d+):\d+/.exec(stack)?.[1] ?? 'an unknown place';
  return { code: 'INTERNAL', severity: 'error', message: `plainleaf is at fault: ${kind} at ${place}` };
}
