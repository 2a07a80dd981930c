import { z } from 'zod';

import { DocumentKindSchema } from './codes.ts';
import type { DocumentKind } from './codes.ts';

export const ReviewScopeSchema = z
  .union([z.literal('all'), z.array(DocumentKindSchema).min(1)])
  .describe('all: every word of the language; else the documents whose words were read');

/** Whose words a person has read: those of some documents, or all. */
export type ReviewScope = z.infer<typeof ReviewScopeSchema>;

/** Files of words that any document may print. */
const shared = [
  'locale',
  'common',
  'codes',
  'options',
  'outcomes',
  'missing',
  'comparison',
  'cautions',
  'aftercare',
  'web',
];

/** Files of words beside that of its own name that a document prints. */
const further: Partial<Record<DocumentKind, readonly string[]>> = {
  consent: ['operation'],
  operation: ['consent'],
  homecare: ['sources'],
  'warning-signs': ['sources'],
  vitamins: ['sources'],
  'clinician-sheet': ['reason-checks', 'document-score', 'consent-check', 'consent-elements', 'criteria'],
  contents: [
    'homecare',
    'warning-signs',
    'vitamins',
    'language-notice',
    'questions',
    'sources',
    'operation',
    'consent',
  ],
};

/** Whether the words of a key (`comparison.title`) are printed by the documents of a scope. */
export function isInScope(key: string, scope: ReviewScope): boolean {
  if (scope === 'all') return true;
  const [file = ''] = key.split('.');
  return (
    shared.includes(file) || scope.some((kind) => kind === file || further[kind]?.includes(file) === true)
  );
}
