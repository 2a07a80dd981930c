import type { Case } from '../model/case.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { scoredFactors } from '../model/mortality-score.ts';
import type { FactorState, MortalityScore, ScoreClass, ScoredFactor } from '../model/mortality-score.ts';
import type { OptionDesk } from './describe-option.ts';
import type { Subject } from './subject.ts';

/** kg/m² and years from which each gives a point, both included (DeMaria 2007, abstracts of both papers). */
const highBmi = 50;
const olderAge = 45;

/** Points from which a class holds: 0 and 1 are A, 2 and 3 are B, 4 and 5 are C (DeMaria 2007, validation). */
const classes: readonly { readonly from: number; readonly name: ScoreClass }[] = [
  { from: 4, name: 'C' },
  { from: 2, name: 'B' },
  { from: 0, name: 'A' },
];

export interface ScoreInput {
  readonly health: Case['health'];
  readonly subject: Subject;
  readonly desks: readonly OptionDesk[];
  readonly evidence: Pick<EvidenceBase, 'riskFactors'>;
}

/**
 * The mortality score of 2007, where the case asks about an option it was made for. Null for other options, for a
 * second operation, under 18 and in pregnancy: its people were adults without an earlier weight-loss operation. Null
 * too where the evidence holds none of its studies.
 */
export function scoreMortality({ health, subject, desks, evidence }: ScoreInput): MortalityScore | null {
  const rows = evidence.riskFactors.filter(({ factor }) => factor.startsWith('osmrs-'));
  const graded = rows.filter(({ factor }) => factor.startsWith('osmrs-class-'));
  const options = desks.filter((desk) => graded.some(({ option }) => option === desk.figuresFrom));
  const sizes = graded.flatMap(({ factor, n }) => (factor === 'osmrs-class-c' && n !== undefined ? [n] : []));
  if (options.length === 0 || sizes.length === 0 || !isMeant(subject)) return null;
  const factors = readFactors(health, subject);
  return {
    options: options.map(({ code }) => code),
    factors,
    ...tallyFactors(factors),
    highestClass: { low: Math.min(...sizes), high: Math.max(...sizes) },
    studies: [...new Set(rows.map(({ study }) => study))],
  };
}

/** Points and class, without and with what is not told. */
export function tallyFactors(
  factors: Readonly<Record<ScoredFactor, FactorState>>,
): Pick<MortalityScore, 'points' | 'classes'> {
  const count = (...states: readonly FactorState[]): number =>
    scoredFactors.filter((factor) => states.includes(factors[factor])).length;
  const [low, high] = [count('yes'), count('yes', 'not-told')];
  return { points: { low, high }, classes: { low: classOf(low), high: classOf(high) } };
}

function classOf(points: number): ScoreClass {
  return classes.find(({ from }) => points >= from)?.name ?? 'A';
}

function isMeant({ person, operatedBefore, operations }: Subject): boolean {
  return !operatedBefore && operations === 0 && person.age >= 18 && !person.pregnantNow;
}

function readFactors(
  health: Case['health'],
  { person, bmi, conditions }: Subject,
): MortalityScore['factors'] {
  return {
    'bmi-50-or-more': yesOrNo(bmi >= highBmi),
    male: person.sex === 'not-stated' ? 'not-told' : yesOrNo(person.sex === 'male'),
    hypertension: pressureOf(health, conditions),
    // A filter, hypoventilation, pulmonary hypertension or a failing right heart count as well; no case can say those.
    'clot-risk': conditions.has('previous-clot') ? 'yes' : 'not-told',
    'age-45-or-more': yesOrNo(person.age >= olderAge),
  };
}

/** Tablets for blood pressure are taken for the heart too, so alone they do not tell. */
function pressureOf({ medicines }: Case['health'], conditions: ReadonlySet<string>): FactorState {
  if (conditions.has('high-blood-pressure')) return 'yes';
  return medicines.includes('blood-pressure-medicine') ? 'not-told' : 'no';
}

function yesOrNo(holds: boolean): FactorState {
  return holds ? 'yes' : 'no';
}
