export { listRecords, reviewState, showRecord } from './list-records.ts';
export type { RecordDetails, RecordFilter, RecordRow, ReviewState } from './list-records.ts';
export { checkEvidence, loadEvidence } from './load-evidence.ts';
export { evidenceRules } from './rules/index.ts';
