export { compareOptions } from './compare-options.ts';
