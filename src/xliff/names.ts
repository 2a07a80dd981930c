/** Namespaces of XLIFF 2 (OASIS, XLIFF Version 2.0, 2014): its core, and the module for sizes and lengths. */
export const core = 'urn:oasis:names:tc:xliff:document:2.0';
export const sizes = 'urn:oasis:names:tc:xliff:sizerestriction:2.0';

/** An id may hold letters, digits, dots, underscores and hyphens. */
export function idOf(name: string): string {
  return name.replace(/[^A-Za-z0-9._-]/g, '_');
}

/** The first time a variable stands in a text its id is its name, then name.2, name.3. */
export function codeIds(): (name: string) => string {
  const seen = new Map<string, number>();
  return (name) => {
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name}.${String(times)}`;
  };
}
