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

/** Weights (kg) and heights (m) outside these bounds are taken for slips of the pen. */
export const weightBounds = { low: 30, high: 400 } as const;
export const heightBounds = { low: 1.2, high: 2.3 } as const;

export function poundsToKilograms(pounds: number): number {
  return pounds * kilogramsPerPound;
}

export function kilogramsToPounds(kg: number): number {
  return kg / kilogramsPerPound;
}

export function inchesToMetres(inches: number): number {
  return inches * metresPerInch;
}

export function metresToInches(m: number): number {
  return m / metresPerInch;
}

const weightForm = /^(\d{1,4}(?:\.\d{1,2})?) (kg|lb)$/;
const centimetreForm = /^(\d{1,3}(?:\.\d)?) cm$/;
const metreForm = /^(\d(?:\.\d{1,3})?) m$/;
const footForm = /^(\d) ft(?: (\d{1,2}(?:\.\d)?) in)?$/;

/** A weight in the written form, of whatever size; undefined in another form. */
export function readWeightForm(text: string): Weight | undefined {
  const match = weightForm.exec(text);
  if (match === null) return undefined;
  const value = Number(match[1]);
  return match[2] === 'lb' ? { kg: poundsToKilograms(value), written: 'lb' } : { kg: value, written: 'kg' };
}

/** A height in the written form, of whatever size; undefined in another form or with 12 inches or more. */
export function readHeightForm(text: string): Height | undefined {
  const centimetres = centimetreForm.exec(text);
  if (centimetres !== null) return { m: Number(centimetres[1]) / 100, written: 'cm' };
  const metres = metreForm.exec(text);
  if (metres !== null) return { m: Number(metres[1]), written: 'm' };
  const feet = footForm.exec(text);
  const inches = Number(feet?.[2] ?? 0);
  if (feet === null || inches >= 12) return undefined;
  return { m: inchesToMetres(Number(feet[1]) * 12 + inches), written: 'ft' };
}

/** A weight in the written form and within bounds. */
export function parseWeight(text: string): Weight | undefined {
  const weight = readWeightForm(text);
  return weight !== undefined && weight.kg >= weightBounds.low && weight.kg <= weightBounds.high
    ? weight
    : undefined;
}

/** A height in the written form and within bounds. */
export function parseHeight(text: string): Height | undefined {
  const height = readHeightForm(text);
  return height !== undefined && height.m >= heightBounds.low && height.m <= heightBounds.high
    ? height
    : undefined;
}

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
