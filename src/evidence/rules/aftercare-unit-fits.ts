import type { AftercareFact, Amount } from '../../model/aftercare.ts';
import { unitsOfSubject } from '../../model/aftercare-units.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule, Fault } from './rule.ts';

/** A dose in the wrong unit can be a thousand times too much. */
export const aftercareUnitFits: EvidenceRule = {
  name: 'aftercare-unit-fits',
  description: 'an amount on aftercare has a unit of its subject and limits in order',
  check: (evidence) =>
    evidence.aftercare.flatMap((fact) =>
      faultsOf(fact).map((fault) => faultIn(evidence, fact, { ...fault, at: ['value'] })),
    ),
};

function faultsOf({ value, subject }: AftercareFact): readonly Fault[] {
  if (typeof value === 'string' || 'tests' in value) return [];
  const units = unitsOfSubject[subject] ?? [];
  const expected = units.length === 0 ? 'no amount' : units.join(' or ');
  const message = `${subject} is counted in ${value.unit}; ${expected} was expected`;
  const fits = units.includes(value.unit);
  return [
    ...(fits ? [] : [{ code: 'EVIDENCE_UNIT' as const, message, hint: 'Correct the unit from the source.' }]),
    ...limitFaults(value),
  ];
}

function limitFaults({ low, high }: Amount): readonly Fault[] {
  const code = 'EVIDENCE_INTERVAL_REVERSED';
  const hint = 'Correct from the source.';
  if (low === null && high === null)
    return [{ code, message: 'the amount has no limit on either side', hint }];
  return low !== null && high !== null && low > high ? [{ code, message: 'low is above high', hint }] : [];
}
