import { z } from 'zod';

import { IsoDateSchema, LocalTextSchema } from './scalars.ts';

/** How settled the knowledge of a treatment is; decides how often its figures are read again. */
export const MaturitySchema = z
  .enum(['established', 'newer', 'under-study'])
  .describe('how settled the knowledge of it is; decides how often its figures are read again');
export type Maturity = z.infer<typeof MaturitySchema>;

const version = z
  .string()
  .regex(/^\d{4}\.\d{2}$/)
  .describe('year and month');
const months = z.int().min(1).max(60);

export const ChangesSchema = z
  .strictObject({
    added: z.array(z.string().min(1)).describe('ids of new records'),
    changed: z.array(z.string().min(1)).describe('ids of records of which anything is different'),
    withdrawn: z
      .array(z.strictObject({ record: z.string().min(1), why: z.string().min(1) }))
      .describe('records that are gone, with the reason; their ids are never used again'),
  })
  .describe('what a release changed since the one before');
export type Changes = z.infer<typeof ChangesSchema>;

export const EarlierReleaseSchema = z
  .strictObject({
    version,
    date: IsoDateSchema.describe('date of that release'),
    digest: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe('digest of its data files, as evidence release printed it'),
    changes: ChangesSchema.nullable().describe('null: the first release'),
  })
  .describe('a release before this one');
export type EarlierRelease = z.infer<typeof EarlierReleaseSchema>;

export const ReleaseSchema = z
  .strictObject({
    version,
    date: IsoDateSchema.describe('date of the release'),
    next_review: IsoDateSchema.describe('the whole is to be looked over by then'),
    review_months: z
      .record(MaturitySchema, months)
      .describe('months after which the source of a figure is read again'),
    made_by: LocalTextSchema.describe('who made it, and who has reviewed it, per language'),
    paid_by: LocalTextSchema.describe('who paid, per language'),
    changes: ChangesSchema.nullable().describe('since the release before; null: this is the first'),
    earlier: z.array(EarlierReleaseSchema).describe('releases before this one, the newest first'),
  })
  .describe('release of the evidence');
