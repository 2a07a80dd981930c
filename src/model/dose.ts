import type { SupplementCode } from './protocol-codes.ts';

export const doseUnits = [
  'mg',
  'microgram',
  'g',
  'IU',
  'mL',
  'tablet',
  'capsule',
  'drop',
  'spray',
  'scoop',
] as const;
export type DoseUnit = (typeof doseUnits)[number];

/** What is taken at one time, as the clinic wrote it, for example 500 mg. */
export interface Dose {
  readonly amount: number;
  readonly unit: DoseUnit;
}

/** Forms that are counted and not weighed; what is in one depends on the product. */
const counted: readonly DoseUnit[] = ['mL', 'tablet', 'capsule', 'drop', 'spray', 'scoop'];

/** Amounts over this are taken for a slip of the pen. */
export const largestDose = 100_000;

const doseForm =
  /^(\d{1,6}(?:\.\d{1,3})?) (mg|micrograms?|g|IU|mL|tablets?|capsules?|drops?|sprays?|scoops?)$/;

/** A dose in the written form, of whatever size; undefined in another form. */
export function readDoseForm(text: string): Dose | undefined {
  const match = doseForm.exec(text);
  const unit = doseUnits.find((one) => match?.[2] === one || match?.[2] === `${one}s`);
  return match === null || unit === undefined ? undefined : { amount: Number(match[1]), unit };
}

/** A dose in the written form, over nothing and within bounds. */
export function parseDose(text: string): Dose | undefined {
  const dose = readDoseForm(text);
  return dose !== undefined && dose.amount > 0 && dose.amount <= largestDose ? dose : undefined;
}

/** Weights in which each supplement is dosed. B12 and vitamin K in milligrams would be a thousand times too much. */
const weighedIn: Readonly<Record<SupplementCode, readonly DoseUnit[]>> = {
  'multivitamin-mineral': [],
  thiamine: ['mg'],
  'vitamin-b12': ['microgram'],
  'folic-acid': ['microgram', 'mg'],
  iron: ['mg'],
  'iron-as-ferrous-sulfate': ['mg'],
  'iron-as-ferrous-fumarate': ['mg'],
  'iron-as-ferrous-gluconate': ['mg'],
  calcium: ['mg'],
  'vitamin-d3': ['IU', 'microgram'],
  'vitamin-a': ['IU', 'microgram'],
  'vitamin-e': ['mg', 'IU'],
  'vitamin-k': ['microgram'],
  zinc: ['mg'],
  copper: ['mg'],
  protein: ['g'],
  other: ['mg', 'microgram', 'g', 'IU'],
};

/** Units in which a supplement may be dosed. */
export function doseUnitsOf(supplement: SupplementCode): readonly DoseUnit[] {
  return [...weighedIn[supplement], ...counted];
}
