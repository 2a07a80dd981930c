import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { AftercarePlan } from '../model/aftercare-plan.ts';
import { openMatters } from '../model/aftercare-plan.ts';
import { homeDocuments } from '../model/codes.ts';
import type { DocumentKind } from '../model/codes.ts';

/**
 * What the pages on the time after a treatment would lack. A page of warning signs without any, or a list of vitamins
 * without any, is refused; what is only left to ask is a warning.
 */
export function checkPlan(plan: AftercarePlan, documents: readonly DocumentKind[]): readonly Diagnostic[] {
  const asked = new Set(documents);
  return [
    ...(asked.has('warning-signs') ? checkSigns(plan) : []),
    ...(asked.has('vitamins') ? checkVitamins(plan) : []),
    ...(asked.has('homecare') ? checkHomecare(plan) : []),
    ...([...asked].some((kind) => homeDocuments.includes(kind)) ? checkOpen(plan) : []),
  ];
}

function checkSigns({ option, warnings }: AftercarePlan): readonly Diagnostic[] {
  if (warnings.now.length > 0) return [];
  const message = `nothing says after ${option} when to call at once, so there is no page of warning signs`;
  return [incomplete('error', message, `Write protocol.warnings.${option} in the clinic profile.`)];
}

function checkVitamins({ option, supplements, tests }: AftercarePlan): readonly Diagnostic[] {
  if (supplements.length > 0 || tests.length > 0) return [];
  const message = `nothing says what to take or to test after ${option}, so there is no list of vitamins`;
  const hint = `Write protocol.supplements.${option} and protocol.blood_tests.${option} in the clinic profile, or leave this document out.`;
  return [incomplete('error', message, hint)];
}

function checkHomecare({ option, diet, visits }: AftercarePlan): readonly Diagnostic[] {
  return [
    ...(diet.length > 0 ? [] : [missing('diet', `what to eat after ${option}`, option)]),
    ...(visits.length > 0 ? [] : [missing('follow_up', `when to come in after ${option}`, option)]),
  ];
}

function missing(topic: string, what: string, option: string): Diagnostic {
  return incomplete(
    'warning',
    `the clinic profile does not say ${what}, and neither do the pages`,
    `Write protocol.${topic}.${option} in the clinic profile.`,
  );
}

function checkOpen(plan: AftercarePlan): readonly Diagnostic[] {
  const open = openMatters(plan);
  if (open.length === 0) return [];
  const named = [...new Set(open.map(({ topic, subject }) => subject ?? topic))].join(', ');
  const message = `guidelines leave to the clinic, and its profile does not say, after ${plan.option}: ${named}`;
  return [
    incomplete(
      'warning',
      message,
      'Write it under protocol in the clinic profile; until then the pages say to ask.',
    ),
  ];
}

function incomplete(severity: 'error' | 'warning', message: string, hint: string): Diagnostic {
  return { code: 'CLINIC_INCOMPLETE', severity, message, hint };
}
