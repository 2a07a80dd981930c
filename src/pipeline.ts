import { checkPlan, planAftercare } from './aftercare/index.ts';
import { compareOptions } from './compare/index.ts';
import { composePacket } from './compose-packet.ts';
import { failure, success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import { attachRecord, identifyPacket } from './identify-packet.ts';
import { checkTogether, readCase, readClinic, withNoOperation } from './input/index.ts';
import { documentsOf } from './model/case.ts';
import type { CaseRequest, FinishedPacket, OpenCase } from './model/packet.ts';
import type { Prepared } from './prepare.ts';
import { recordProvenance } from './provenance/index.ts';
import { renderPdf } from './render/index.ts';
import { verifyPacket } from './verify/index.ts';

/** Case and clinic profile → comparison. Fails with everything that is wrong with either file. */
export function openCase({ evidence, known }: Prepared, request: CaseRequest): Result<OpenCase> {
  const { files, date } = request;
  const read = readCase(files.case.text, files.case.file, { ...known, today: date });
  const profile = readClinic(files.clinic.text, files.clinic.file, { ...known, today: date });
  if (!read.ok || !profile.ok) return failAll([read, profile]);
  const inputs = { case: withNoOperation(read.value), clinic: profile.value };
  const compared = compareOptions({ ...inputs, evidence, date });
  if (!compared.ok) return compared;
  const comparison = compared.value;
  const underStudy = comparison.options.filter(({ standing }) => standing.maturity === 'under-study');
  const together = checkTogether({ ...inputs, files, known, underStudy: underStudy.map(({ code }) => code) });
  if (!together.ok) return together;
  const warnings = [read, profile, compared, together].flatMap((result) => result.warnings);
  const aftercare = planTheTime(inputs, evidence);
  const lacks = aftercare === null ? [] : checkPlan(aftercare, documentsOf(inputs.case));
  const refused = lacks.filter(({ severity }) => severity === 'error');
  if (refused.length > 0) return failure(refused);
  return success({ ...request, ...inputs, comparison, aftercare }, [...warnings, ...lacks]);
}

/** Null until a treatment is chosen and its day is set. */
function planTheTime(
  inputs: Pick<OpenCase, 'case' | 'clinic'>,
  evidence: Prepared['evidence'],
): OpenCase['aftercare'] {
  const { decision, plan } = inputs.case;
  const { operation_date: date } = plan;
  if (decision.chosen === null || decision.chosen === 'no-operation' || date === undefined) return null;
  return planAftercare({ ...inputs, evidence, option: decision.chosen, date });
}

/** Comparison → documents → PDF → read back. What does not come back whole is not handed out. */
export async function makePacket(
  prepared: Prepared,
  open: OpenCase,
  language: string,
): Promise<Result<FinishedPacket>> {
  const identity = identifyPacket(prepared, open, language);
  const composed = composePacket(prepared, open, identity);
  if (!composed.ok) return composed;
  const packet = composed.value;
  const provenance = recordProvenance({ ...identity, packet });
  const attachments = [attachRecord(provenance)];
  const producer = `plainleaf ${prepared.program.version}`;
  const rendered = await renderPdf(packet, { createdOn: open.date, producer, attachments });
  if (!rendered.ok) return rendered;
  const { pdf } = rendered.value;
  const verification = await verifyPacket({ ...identity, ...rendered.value, packet, attachments });
  if (!verification.passed) return failure(verification.findings);
  const { caseReference } = packet;
  const { state } = identity;
  const warnings = [...composed.warnings, ...rendered.warnings];
  return success({ caseReference, language, state, pdf, provenance, verification }, warnings);
}
