export { checkConsent, conditionsOf } from './check-consent.ts';
export { scoreDocuments } from './score-documents.ts';
export type { ScoreInput } from './score-documents.ts';
