export { compareOptions } from './compare-options.ts';
export { compareCases } from './find-hidden-cells.ts';
