/** A case is about 2 KiB, a clinic profile with many languages about 60 KiB. */
export const limits = {
  bytes: 1024 * 1024,
  lines: 20_000,
  /** Words, brackets, spaces and line ends as YAML counts them; a profile in six languages has about 6,000. */
  tokens: 20_000,
  /** Collections inside collections; a case has 6. */
  depth: 32,
  /** Aliases, anchors, tags and directives; more than this is not a slip. */
  refusals: 100,
  /** Unknown keys in one place, and unknown codes in a file, that are described; the rest is the same mistake again. */
  described: 200,
  /** Column of a key or dash outside brackets. Bounds the nesting before anything recursive sees it. */
  column: 200,
} as const;
