import { readFileSync } from 'node:fs';
import type { Diagnostic, Result } from '../../src/diagnostics/diagnostic.ts';
import { checkTogether, readCase, readClinic } from '../../src/input/index.ts';
import type { SourceFile } from '../../src/input/index.ts';
import { readKnownCodes, testDay } from './known-codes.ts';

const known = readKnownCodes();
const context = { ...known, today: testDay };
/** Options that are under study where the example clinic is. */
export const underStudy = ['plication', 'endoscopic-sleeve'];

export function open(file: string): SourceFile {
  return { file, text: readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8') };
}

/** A case is checked together with the example clinic, a clinic profile (by its name) with an example case. */
export function checkFile(source: SourceFile): readonly Diagnostic[] {
  const isClinic = source.file.split('/').at(-1)?.startsWith('clinic') === true;
  const files = isClinic
    ? { clinic: source, case: open('examples/cases/QB-1115.yaml') }
    : { clinic: open('examples/clinic.yaml'), case: source };
  const [asked, clinic] = [
    readCase(files.case.text, files.case.file, context),
    readClinic(files.clinic.text, files.clinic.file, context),
  ];
  const own = isClinic ? clinic : asked;
  if (!asked.ok || !clinic.ok) return said(own);
  return [
    ...said(own),
    ...said(checkTogether({ case: asked.value, clinic: clinic.value, files, known, underStudy })),
  ];
}

function said(result: Result<unknown>): readonly Diagnostic[] {
  return result.ok ? result.warnings : result.diagnostics;
}
