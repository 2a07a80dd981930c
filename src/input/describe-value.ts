/** The kind of a value in words, never the value. */
export function describeKind(value: unknown): string {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  switch (typeof value) {
    case 'string':
      return 'text';
    case 'number':
    case 'bigint':
      return 'a number';
    case 'boolean':
      return 'true or false';
    default:
      return 'a map of keys';
  }
}

/** "a, b or c" would read better, but codes are copied: plain commas. */
export function listWords(words: readonly (string | number)[]): string {
  return words.join(', ');
}

/** The paths in words, for a hint: decision.options[2]. */
export function writePath(path: readonly (string | number)[]): string {
  return path
    .map((part, index) => (typeof part === 'number' ? `[${part}]` : index === 0 ? part : `.${part}`))
    .join('');
}
