/** An object whose values are worked out when they are first asked for, once each. */
export function lazyView<T extends object>(parts: { readonly [K in keyof T]: () => T[K] }): T {
  const view = {};
  for (const name of Object.keys(parts)) {
    Object.defineProperty(view, name, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value: unknown = parts[name as keyof T]();
        Object.defineProperty(view, name, { enumerable: true, value });
        return value;
      },
    });
  }
  return view as T;
}
