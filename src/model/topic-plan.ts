import { z } from 'zod';

const outcome = z.string().min(1);
const table = {
  most: z.int().min(1).max(40).describe('how many outcomes the table shows'),
  rows: z.array(outcome).min(1).describe('outcomes that it may show, in the order of the page'),
};
const picture = z.array(outcome).min(1).describe('the first of these that any option has is drawn');

/** Which outcomes each topic of the comparison may show, in the order of the page. Keys are those of topics.yaml. */
export const TopicPlansSchema = z
  .strictObject({
    'first-month': z.strictObject({ picture, ...table }).describe('harm up to 90 days'),
    'later-years': z.strictObject({ picture, ...table }).describe('harm after that'),
    'living-with-it': z.strictObject(table).describe('things to live with'),
    benefits: z
      .array(
        z.strictObject({
          condition: z.string().min(1).describe('condition of the person, a code of the case file'),
          outcomes: z
            .array(outcome)
            .min(1)
            .describe('the first of these with a figure is shown, else the first'),
        }),
      )
      .min(1)
      .describe('benefits, only for conditions that the person has'),
  })
  .describe('what the topics of a comparison may show');
export type TopicPlans = z.infer<typeof TopicPlansSchema>;
