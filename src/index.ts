/** What a program may use of plainleaf; everything else may change without notice. */
export { listCases, runBatch } from './batch/index.ts';
export type { BatchEvent, BatchInput, Outcome } from './batch/index.ts';
export { diagnosticCatalogue, exitCodes } from './diagnostics/codes.ts';
export type { Diagnostic, Result } from './diagnostics/diagnostic.ts';
export { formatDiagnostics } from './diagnostics/format.ts';
export { createNodeWorkspace } from './io/node-workspace.ts';
export type { Workspace } from './io/workspace.ts';
export type { CaseRequest, FinishedPacket, OpenCase, VerificationReport } from './model/packet.ts';
export type { ProvenanceRecord } from './model/provenance.ts';
export { makePacket, openCase } from './pipeline.ts';
export { prepare } from './prepare.ts';
export type { Prepared } from './prepare.ts';
