/** A case is about 2 KiB, a clinic profile with many languages about 60 KiB. */
export const limits = {
  bytes: 1024 * 1024,
  /** Words, brackets, spaces and line ends as YAML counts them; a profile in six languages has about 15,000. */
  tokens: 50_000,
  /** Collections inside collections; a case has 6. */
  depth: 32,
  /** Column of a key or dash outside brackets. Bounds the nesting before anything recursive sees it. */
  column: 200,
} as const;
