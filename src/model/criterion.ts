import { z } from 'zod';

export const criterionSets = [
  'qualifying',
  'certification',
  'quality',
  'understandability',
  'actionability',
  'clear-communication',
] as const;
export type CriterionSet = (typeof criterionSets)[number];

/** How many criteria each set has; that none is left out is what makes a score mean something. */
export const criterionCounts: Readonly<Record<CriterionSet, number>> = {
  qualifying: 6,
  certification: 10,
  quality: 28,
  understandability: 17,
  actionability: 7,
  'clear-communication': 20,
};

/** Checks that look at the pages; `src/score/checks` has one function for each. */
export const criterionChecks = [
  'condition-named',
  'decision-stated',
  'options-listed',
  'good-points',
  'bad-points',
  'life-with-each',
  'equal-detail',
  'side-by-side',
  'nothing-done',
  'studies-cited',
  'dated',
  'review-dated',
  'uncertainty-shown',
  'funding-said',
  'method-said',
  'certainty-said',
  'reading-level-said',
  'chances-given',
  'people-described',
  'counts-of-people',
  'same-time',
  'same-denominator',
  'several-forms',
  'matters-asked',
  'steps-to-decide',
  'worksheet',
  'title-first',
  'everyday-words',
  'terms-explained',
  'active-voice',
  'whole-numbers',
  'no-arithmetic',
  'short-chunks',
  'headings',
  'summary',
  'visual-cues',
  'pictures-titled',
  'simple-tables',
  'action-named',
  'speaks-to-reader',
  'action-in-steps',
  'tool',
  'calculation-steps',
  'charts-explained',
  'one-message',
  'message-first',
  'message-marked',
  'message-pictured',
  'active-message',
  'lists',
  'unknown-said',
  'numbers-explained',
  'risk-explained',
  'risks-and-benefits',
  'chance-shown-twice',
] as const;
export type CriterionCheck = (typeof criterionChecks)[number];

export const CriterionSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z]+-\d{1,2}$/)
      .describe('stable; the letters name the set'),
    set: z.enum(criterionSets),
    says: z.string().min(1).describe('what it asks, in our own words'),
    by: z
      .enum(['generator', 'clinic', 'organisation', 'study', 'none'])
      .describe('who can meet it; none: it is about decisions of another sort and never applies here'),
    check: z
      .enum([...criterionChecks, 'person'])
      .optional()
      .describe('what looks for it on the pages; person: only a reader can judge it'),
    may_not_apply: z.literal(true).optional().describe('the standard lets it be left out of the count'),
    after: z.string().optional().describe('id of a criterion without which it counts as not met'),
    seen: z.enum(['page', 'memory']).describe('where its wording was read'),
    seen_at: z.array(z.url()).min(1).optional(),
  })
  .describe('one criterion of a published standard for documents like these');
export type Criterion = z.infer<typeof CriterionSchema>;
