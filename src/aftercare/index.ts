export { checkPlan } from './check-plan.ts';
export { planAftercare } from './plan-aftercare.ts';
export type { AftercareInput } from './setting.ts';
