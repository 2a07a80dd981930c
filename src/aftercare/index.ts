export { checkPlan } from './check-plan.ts';
export { planChosen } from './plan-chosen.ts';
export { planAftercare } from './plan-aftercare.ts';
export type { AftercareInput } from './setting.ts';
