import type { AftercarePlan } from '../model/aftercare-plan.ts';
import { planAftercare } from './plan-aftercare.ts';
import type { AftercareInput } from './setting.ts';

/** The plan for the treatment that was chosen, from its day on; null until both are known. */
export function planChosen(input: Omit<AftercareInput, 'option' | 'date'>): AftercarePlan | null {
  const { decision, plan } = input.case;
  const { operation_date: date } = plan;
  if (decision.chosen === null || decision.chosen === 'no-operation' || date === undefined) return null;
  return planAftercare({ ...input, option: decision.chosen, date });
}
