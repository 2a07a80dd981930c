export { compareOptions } from './compare-options.ts';
export type { CompareInput } from './compare-options.ts';
