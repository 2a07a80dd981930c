import type { Diagnostic } from './diagnostic.ts';

/**
 * An error that nobody foresaw, as a diagnostic. Its message is left out, because it may quote the case; its kind and
 * the line of plainleaf it came from are enough to find it.
 */
export function describeFault(error: unknown): Diagnostic {
  if (isMissingPackage(error)) {
    return {
      code: 'INTERNAL',
      severity: 'error',
      message: 'a package that plainleaf needs is not installed',
      hint: 'Run "npm ci" in the folder of plainleaf, then the command again.',
    };
  }
  const kind = error instanceof Error ? error.name : typeof error;
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  const place = /[\\/](src[\\/][\w\\/.-]+:\d+):\d+/.exec(stack)?.[1] ?? 'an unknown place';
  return { code: 'INTERNAL', severity: 'error', message: `plainleaf is at fault: ${kind} at ${place}` };
}

/** As after a newer version of plainleaf was fetched and its packages were not. */
function isMissingPackage(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ERR_MODULE_NOT_FOUND';
}
