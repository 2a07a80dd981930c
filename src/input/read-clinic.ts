import type { Result } from '../diagnostics/diagnostic.ts';
import { ClinicProfileSchema } from '../model/clinic.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import type { ReadContext } from './read-context.ts';
import { readFile } from './read-file.ts';
import type { FileKind } from './read-file.ts';
import { checkClinic } from './rules/check-clinic.ts';
import { checkProtocol } from './rules/check-protocol.ts';

const clinicKind: FileKind<ClinicProfile> = {
  schema: ClinicProfileSchema,
  rules: [checkClinic, checkProtocol],
  mistaken: (value) =>
    Object.hasOwn(value, 'patient') && Object.hasOwn(value, 'decision') && !Object.hasOwn(value, 'clinic')
      ? {
          code: 'CASE_TYPE_MISMATCH',
          path: ['patient'],
          at: 'key',
          message: 'this is a case, not a clinic profile',
          hint: 'Give it as the case.',
        }
      : undefined,
};

/** Reads a clinic profile, with the same promises as `readCase`. */
export function readClinic(text: string, file: string, context: ReadContext): Result<ClinicProfile> {
  return readFile({ text, file }, clinicKind, context);
}
