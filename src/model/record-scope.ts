import { z } from 'zod';

export const ScopeSchema = z
  .enum(['narrower', 'wider'])
  .describe('counts less or more than its outcome names: not the figure of that outcome; see the definition');

export const TogetherSchema = z
  .array(z.string())
  .min(2)
  .describe(
    'operations that a record of a group counts as one, as its definition says; a record of the talk may show it',
  );
