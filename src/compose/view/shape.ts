import type { Markup } from '../../model/locale.ts';

/**
 * The shape of what templates see, written once: the type of the view model is derived from it, and the lint of
 * templates walks it.
 */
export type Shape =
  | { readonly kind: 'text' | 'count' | 'flag' | 'markup' }
  | { readonly kind: 'optional' | 'list'; readonly of: Shape }
  | { readonly kind: 'group'; readonly fields: Readonly<Record<string, Shape>> };

/** The value that a shape describes. Absent optional values are null, so that every path exists. */
export type Viewed<S> = S extends { readonly kind: 'group'; readonly fields: infer F }
  ? { readonly [K in keyof F]: Viewed<F[K]> }
  : S extends { readonly kind: 'list'; readonly of: infer O }
    ? readonly Viewed<O>[]
    : S extends { readonly kind: 'optional'; readonly of: infer O }
      ? Viewed<O> | null
      : S extends { readonly kind: 'markup' }
        ? Markup
        : S extends { readonly kind: 'count' }
          ? number
          : S extends { readonly kind: 'flag' }
            ? boolean
            : string;

/** Plain text; Handlebars escapes it. */
export const text = { kind: 'text' } as const;
/** A whole number or a position; never shown to a reader as it is. */
export const count = { kind: 'count' } as const;
export const flag = { kind: 'flag' } as const;
/** Words of a locale with their variables already escaped and put in. */
export const markup = { kind: 'markup' } as const;

export function optional<S extends Shape>(of: S): { readonly kind: 'optional'; readonly of: S } {
  return { kind: 'optional', of };
}

export function list<S extends Shape>(of: S): { readonly kind: 'list'; readonly of: S } {
  return { kind: 'list', of };
}

export function group<F extends Readonly<Record<string, Shape>>>(
  fields: F,
): { readonly kind: 'group'; readonly fields: F } {
  return { kind: 'group', fields };
}
