import { z } from 'zod';

import { drawnLooks, drawnPathPattern, drawnWidth } from '../../model/drawing.ts';

/** What a file of `templates/drawings` holds. A clinician reviews it together with the words it names. */
const name = z.string().regex(/^[a-z0-9-]+$/);
/** Last part of a key of the locale. */
const wordsKey = z.string().regex(/^[a-z_]+$/);
const path = z.string().regex(drawnPathPattern, 'a path takes absolute M, L, C and Z with spaces between');

const OutlineSchema = z.strictObject({ path, width: z.number().positive().optional() });

const labels = z
  .array(
    z.strictObject({
      words: wordsKey,
      at: z.tuple([z.number().min(0).max(drawnWidth), z.number().min(0)]),
      side: z.enum(['left', 'right']),
    }),
  )
  .min(1);

const ViewSchema = z.strictObject({
  height: z.number().positive(),
  layers: z.array(z.strictObject({ look: z.enum(drawnLooks), parts: z.array(name).min(1) })).min(1),
  food: path,
  labels,
});

/** A view of the same file with other labels, for example as the body was before a later operation. */
const LikeSchema = z.strictObject({ like: name, labels });

const PictureSchema = z.strictObject({
  /** Operation that is in place before this one. */
  earlier: name,
  before: name,
  after: name,
  steps: z.array(wordsKey).min(1),
});

const shared = {
  outlines: z.record(name, OutlineSchema).default({}),
  views: z.record(name, z.union([ViewSchema, LikeSchema])).default({}),
};

export const SharedFileSchema = z.strictObject(shared);
export const OperationFileSchema = z.strictObject({
  option: name,
  /** What the words stand on: no source was read for how a trade does its operations. */
  basis: z.literal('common practice'),
  pictures: z.array(PictureSchema).min(1),
  ...shared,
});

export type ViewFile = z.infer<typeof ViewSchema>;
export type AnyViewFile = ViewFile | z.infer<typeof LikeSchema>;
export type OutlineFile = z.infer<typeof OutlineSchema>;
export type OperationFile = z.infer<typeof OperationFileSchema>;
