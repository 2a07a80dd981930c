import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import type { OpenCase, SourceFile } from '../model/packet.ts';
import { openCase } from '../pipeline.ts';
import type { Prepared } from '../prepare.ts';
import { findClinic } from './find-clinic.ts';

export interface OpenInput {
  readonly workspace: Workspace;
  readonly prepared: Prepared;
  /** Clinic profile; left out, the one nearest to the case. */
  readonly clinic?: string | undefined;
  /** Day that ages and dates count from, ISO. */
  readonly date: string;
  /** Whether an HTML edition is made beside each PDF. */
  readonly html?: boolean;
  /** Large print, also for cases that do not ask for it. */
  readonly largePrint?: boolean;
}

/** Reads a case and its clinic profile from disk, and compares. */
export async function openFile(input: OpenInput, file: string): Promise<Result<OpenCase>> {
  const { workspace, prepared, date, html = false, largePrint = false } = input;
  const caseFile = await readSource(workspace, file);
  if (!caseFile.ok) return caseFile;
  const profile = input.clinic === undefined ? await findClinic(workspace, file) : success(input.clinic);
  if (!profile.ok) return profile;
  const clinicFile = await readSource(workspace, profile.value);
  if (!clinicFile.ok) return clinicFile;
  const files = { case: caseFile.value, clinic: clinicFile.value };
  return openCase(prepared, { files, date, html, largePrint });
}

/** A file as the input stage takes it, or FILE_NOT_FOUND. */
export async function readSource(workspace: Workspace, file: string): Promise<Result<SourceFile>> {
  try {
    return success({ file, text: await workspace.readText(file) });
  } catch {
    const message = `${file} is not there or cannot be read`;
    return failure([{ code: 'FILE_NOT_FOUND', severity: 'error', message }]);
  }
}
