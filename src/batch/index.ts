export { isClinicProfile, listCases } from './list-cases.ts';
export { openFile, readSource } from './open-file.ts';
export { runBatch } from './run-batch.ts';
export type { BatchEvent, BatchInput, Outcome } from './run-batch.ts';
export { packetsOf, summarizeOutcomes } from './summarize-outcomes.ts';
export type { BatchSummary, Failure, LanguageCount, OpenGroup, UnwrittenIn } from './summarize-outcomes.ts';
