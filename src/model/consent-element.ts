import { z } from 'zod';

import type { ScorePlace } from './document-score.ts';

/** Laws, rules and codes that say what a consent must hold. */
const consentDocuments = [
  'hospital-form',
  'hospital-form-extra',
  'hospital-process',
  'hospital-record',
  'accreditation',
  'ethics-code',
  'court-ruling',
  'professional-guidance',
  'language-rule',
  'research-rule',
  'device-and-drug-rule',
  'own-rule',
] as const;

/** Where in the record of the talk an element can stand: a type of block of the document tree. */
export const consentBlocks = [
  'paragraph',
  'facts',
  'callout',
  'topic',
  'talk',
  'teach-back',
  'checklist',
  'interpreter',
  'signatures',
] as const;
export type ConsentBlock = (typeof consentBlocks)[number];

const PlaceSchema = z
  .strictObject({
    block: z.enum(consentBlocks).describe('type of block of the document tree'),
    words: z
      .string()
      .regex(/^[a-z-]+(\.[a-z_-]+)+$/)
      .describe('key of the locale words by which it is known there'),
    holds: z.array(z.string().min(1)).min(1).optional().describe('variables of these words'),
  })
  .describe('where on the pages it is met; of several, each is needed');
export type ConsentPlace = z.infer<typeof PlaceSchema>;

const SourceSchema = z
  .strictObject({
    document: z.enum(consentDocuments).describe('which document asks for it; its names stand in the locales'),
    place: z.string().min(1).optional().describe('paragraph or number within the document'),
    seen: z
      .enum(['page', 'page-2nd', 'memory', 'own'])
      .describe('where its wording was read; page-2nd: in a second account; own: nobody else wrote it'),
    seen_at: z.array(z.url()).min(1).optional(),
  })
  .describe('who asks for it');

export const ConsentElementSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z]+(-[a-z]+)*$/)
      .describe('stable'),
    says: z.string().min(1).describe('what it asks, in our own words'),
    by: z
      .enum(['pages', 'talk', 'clinic', 'study'])
      .describe(
        'who meets it. pages: these pages alone; talk: only the talk, for which they keep a place where they can; clinic: they print it once they are told; study: its own form',
      ),
    when: z
      .enum(['procedure', 'interpreter', 'under-study'])
      .optional()
      .describe('only where something is done to the body, somebody interprets, the option is under study'),
    where: z.array(PlaceSchema).min(1).optional(),
    sources: z.array(SourceSchema).min(1),
  })
  .describe('one thing that a consent must hold');
export type ConsentElement = z.infer<typeof ConsentElementSchema>;

/**
 * met: the pages say it. lost: they should and do not. talk: the talk alone can do it, and their place for it is there.
 * clinic, study: these must bring it.
 */
export type ConsentOutcome = 'met' | 'lost' | 'talk' | 'clinic' | 'study';

export interface CheckedElement {
  readonly element: ConsentElement;
  readonly outcome: ConsentOutcome;
  /** Where it stands on the pages; none where it is lost or stands on none. */
  readonly places: readonly ScorePlace[];
}
