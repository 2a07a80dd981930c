export { scoreDocuments } from './score-documents.ts';
export type { ScoreInput } from './score-documents.ts';
