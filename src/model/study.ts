import { z } from 'zod';

import { IsoDateSchema } from './scalars.ts';

/** Id of a publication: kebab-case, never reused. */
export type StudyId = string;

/** How a figure was read: on a page of its source, in a second account, or recalled. */
export const SeenSchema = z
  .enum(['page', 'page-2nd', 'memory'])
  .describe('page: read at the source; page-2nd: in a second account; memory: recalled');
export type Seen = z.infer<typeof SeenSchema>;

export const StudyDesignSchema = z
  .enum([
    'randomised-trial',
    'meta-analysis',
    'systematic-review',
    'registry',
    'matched-cohort',
    'cohort',
    'case-series',
    'survey',
    'guideline',
    'label',
  ])
  .describe('how the study was made');
export type StudyDesign = z.infer<typeof StudyDesignSchema>;

/** The parts of a citation that every study must have, or declare as unseen. */
export const citationFields = ['authors', 'year', 'title', 'journal'] as const;

export const CitationSchema = z
  .strictObject({
    authors: z.string().min(1).optional().describe('as printed, may end in et al.'),
    year: z.int().min(1950).max(2100).optional().describe('year of publication'),
    title: z.string().min(1).optional().describe('title of the publication'),
    journal: z.string().min(1).optional().describe('journal with volume and pages, or the publisher'),
    doi: z
      .string()
      .regex(/^10\.\d{4,9}\/\S+$/)
      .optional()
      .describe('digital object identifier, without address'),
    pmid: z
      .string()
      .regex(/^\d{1,8}$/)
      .optional()
      .describe('PubMed number, as text'),
  })
  .describe('where it was published');

/** When a source was read, and when it is to be read again; see `reviewOf`. */
export const readings = {
  seen_on: IsoDateSchema.optional().describe('day on which it was last read'),
  review_by: IsoDateSchema.optional().describe('day by which to read it again, if not by the interval'),
};

/** What both kinds of sources say of the text that was read: studies, and sources on aftercare. */
export const published = {
  citation: CitationSchema,
  citation_unseen: z
    .array(z.enum(citationFields))
    .min(1)
    .optional()
    .describe('citation fields that are missing, paraphrased or recalled'),
  seen_at: z.array(z.url()).min(1).optional().describe('addresses where it was read'),
  ...readings,
};

export const StudySchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9-]+$/)
      .describe('stable id'),
    design: StudyDesignSchema,
    design_note: z.string().min(1).optional().describe('more words on the design'),
    cohort: z.string().min(1).describe('whose people; equal cohorts are the same people'),
    overlaps: z
      .array(z.string())
      .min(1)
      .optional()
      .describe('studies that hold partly the same people, written both ways'),
    ...published,
    setting: z.string().min(1).optional().describe('country, centre or registry'),
    years: z
      .strictObject({
        from: z.int().min(1950).max(2100).optional().describe('the first of them'),
        to: z.int().min(1950).max(2100).describe('the last of them'),
      })
      .optional()
      .describe('years in which its people were treated, or joined it'),
    note: z.string().min(1).optional().describe('caveats'),
  })
  .describe('one publication');
export type Study = z.infer<typeof StudySchema>;
