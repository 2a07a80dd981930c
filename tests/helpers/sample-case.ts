import type { ReadContext } from '../../src/input/index.ts';
import { readKnownCodes, testDay } from './known-codes.ts';

export const context: ReadContext = { ...readKnownCodes(), today: testDay };

/** A small valid case of an invented person; tests change one thing at a time. */
export const sampleCase = `plainleaf: 1
case: "QB-2001"
example: true
languages: [en, es]
documents: [comparison]
patient:
  name: Oriel Fenwick-Salt
  born: 1984-07-21
  sex: female
  height: 163 cm
  weight: 114.5 kg
health:
  conditions: [reflux]
  medicines: [metformin]
  smoking: never
decision:
  asked: first-operation
  options: [sleeve, bypass, no-operation]
plan: {surgeon: tamsin}
`;

/** A small valid clinic profile of an invented clinic. */
export const sampleClinic = `plainleaf: 1
clinic:
  name: Quillbrook Weight Surgery Center
  address: 41 Saltmarsh Avenue, Tarrow Ferry
  phones: {day: "555-0128", out_of_hours: "555-0134", emergency: "911"}
  paper: letter
  units: both
surgeons:
  - id: tamsin
    name: Dr. Odile Tamsin-Greaves
    results:
      - {option: sleeve, outcome: leak, days: 30, events: 1, n: 128, from: 2022-06, to: 2025-12}
protocol:
  stay:
    sleeve: {en: 1 night, es: 1 noche}
    bypass: {en: 1 night, es: 1 noche}
    no-operation: {en: None, es: Ninguna}
second_opinion:
  - {name: Dunmere Valley Hospital, phone: "555-0191"}
approved: {by: Dr. Harun Velde, on: 2026-10-05}
`;

/** The text with one part replaced; throws when the part is not there, so that a test cannot pass for that reason. */
export function replaceIn(text: string, part: string, by: string): string {
  if (!text.includes(part)) throw new Error(`the sample does not hold: ${part}`);
  return text.replace(part, () => by);
}
