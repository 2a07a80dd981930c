import { z } from 'zod';

/** Sex as a case states it. */
type Sex = 'female' | 'male' | 'not-stated';

const limits = z.strictObject({
  low: z.number().positive().optional().describe('lower limit'),
  high: z.number().positive().optional().describe('upper limit'),
});

/** Limits of BMI (kg/m²) that a study set otherwise for women and for men. */
export const BmiBySexSchema = z
  .strictObject({ female: limits.describe('of women'), male: limits.describe('of men') })
  .describe('limits of BMI where women and men had others; bmi then states what holds for both');
export type BmiBySex = z.infer<typeof BmiBySexSchema>;

/** What a study states of BMI, with the limits of this person's sex; of a sex that is not stated what holds for both. */
export function bmiFor<S extends object>(
  { bmi, bmi_by_sex: bySex }: { readonly bmi?: S | undefined; readonly bmi_by_sex?: BmiBySex | undefined },
  sex: Sex,
): (S & BmiBySex['male']) | undefined {
  if (bmi === undefined || bySex === undefined || sex === 'not-stated') return bmi;
  return { ...bmi, ...bySex[sex] };
}
