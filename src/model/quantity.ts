/** A body weight as the clinic wrote it, with its value in kilograms (definition: 1 lb = 0.45359237 kg). */
export interface Weight {
  readonly kg: number;
  readonly written: 'kg' | 'lb';
}

/** A height as the clinic wrote it, with its value in metres (definition: 1 in = 2.54 cm). */
export interface Height {
  readonly m: number;
  readonly written: 'cm' | 'm' | 'ft';
}

export const kilogramsPerPound = 0.45359237;
export const metresPerInch = 0.0254;

/** Body-mass index in kg/m². */
export function bodyMassIndex(kg: number, m: number): number {
  return kg / (m * m);
}

/** Whole years between two ISO dates (year-month-day). */
export function ageOn(born: string, day: string): number {
  const [by = 0, bm = 0, bd = 0] = born.split('-').map(Number);
  const [y = 0, m = 0, d = 0] = day.split('-').map(Number);
  return y - by - (m < bm || (m === bm && d < bd) ? 1 : 0);
}
