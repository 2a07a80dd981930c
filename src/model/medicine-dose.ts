import { z } from 'zod';

/** How much of a medicine the people of a figure took. */
export const MedicineDoseSchema = z
  .union([
    z.literal('unstated'),
    z.strictObject({
      mg: z
        .array(z.number().positive())
        .min(1)
        .describe('milligrams at a time; several where some people took one and some another'),
      per: z.enum(['day', 'week']).describe('how often'),
    }),
  ])
  .describe('how much of the medicine the people took, as the source says');
export type MedicineDose = z.infer<typeof MedicineDoseSchema>;

/**
 * Whether two figures are for certain of the same dose, or both of no medicine. Of a dose that is not stated nobody
 * can say so.
 */
export function sameDose(a: MedicineDose | undefined, b: MedicineDose | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return a !== 'unstated' && b !== 'unstated' && writeDose(a) === writeDose(b);
}

/** "10 or 15 mg/week", for clinicians and machines; the pages say it in words. */
export function writeDose(dose: MedicineDose): string {
  if (dose === 'unstated') return dose;
  return `${dose.mg.toSorted((a, b) => a - b).join(' or ')} mg/${dose.per}`;
}
