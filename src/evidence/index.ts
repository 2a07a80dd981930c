export { checkChanges } from './check-changes.ts';
export { diffEvidence } from './diff-evidence.ts';
export type { EvidenceDifference } from './diff-evidence.ts';
export { listRecords, showRecord } from './list-records.ts';
export type { RecordDetails, RecordFilter, RecordRow } from './list-records.ts';
export { checkEvidence, loadEvidence } from './load-evidence.ts';
export { reviewState } from './review-state.ts';
export type { DueSource, ReviewState } from './review-state.ts';
export { evidenceRules } from './rules/index.ts';
