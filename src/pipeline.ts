import { checkPlan, planChosen } from './aftercare/index.ts';
import { compareOptions } from './compare/index.ts';
import { composePacket } from './compose-packet.ts';
import { failure, success } from './diagnostics/diagnostic.ts';
import type { Result } from './diagnostics/diagnostic.ts';
import { failAll } from './diagnostics/fail-all.ts';
import { attachRecord, describePacket, identifyPacket, withFonts } from './identify-packet.ts';
import type { PacketIdentity } from './identify-packet.ts';
import { checkTogether, readCase, readClinic, withNoOperation } from './input/index.ts';
import { makeHtml } from './make-html.ts';
import { documentsOf } from './model/case.ts';
import type { CaseRequest, FinishedPacket, OpenCase, PacketTree } from './model/packet.ts';
import type { Prepared } from './prepare.ts';
import { recordProvenance } from './provenance/index.ts';
import { reflowPacket } from './reflow/index.ts';
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
  const aftercare = planChosen({ ...inputs, evidence });
  const lacks = aftercare === null ? [] : checkPlan(aftercare, documentsOf(inputs.case));
  const refused = lacks.filter(({ severity }) => severity === 'error');
  if (refused.length > 0) return failure(refused);
  return success({ ...request, ...inputs, comparison, aftercare }, [...warnings, ...lacks]);
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
  const { value: packet, warnings } = composed;
  const finished = await finishPacket(prepared, open, { name: 'packet', identity, packet });
  return finished.ok ? success(finished.value, [...warnings, ...finished.warnings]) : finished;
}

export interface Composed {
  readonly name: FinishedPacket['name'];
  readonly identity: PacketIdentity;
  readonly packet: PacketTree;
}

/** Documents → pages of the edition asked for → PDF, and HTML if asked → read back. */
export async function finishPacket(
  { program }: Prepared,
  open: OpenCase,
  { name, identity, packet: composed }: Composed,
): Promise<Result<FinishedPacket>> {
  const page = open.html === true ? makeHtml(composed, identity) : null;
  if (page?.ok === false) return page;
  const html = page === null ? {} : { html: page.value };
  const packet = reflowPacket(composed, identity.edition);
  const provenance = recordProvenance({ ...(await withFonts(identity, packet)), ...html, packet });
  const attachments = [attachRecord(provenance)];
  const made = { createdOn: open.date, producer: `plainleaf ${program.version}`, attachments };
  const rendered = await renderPdf(packet, { ...made, written: [open.files.case, open.files.clinic] });
  if (!rendered.ok) return rendered;
  const verification = await verifyPacket({ ...identity, ...rendered.value, packet, attachments });
  if (!verification.passed) return failure(verification.findings);
  const about = { name, ...describePacket(identity, packet) };
  return success({ ...about, pdf: rendered.value.pdf, ...html, provenance, verification }, rendered.warnings);
}
