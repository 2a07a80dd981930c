export { checkReturned } from './check-returned.ts';
export { readXliff } from './read-xliff.ts';
export type { ReturnedTranslation } from './read-xliff.ts';
export { writeXliff } from './write-xliff.ts';
