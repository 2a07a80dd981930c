import type { DiagnosticCode } from '../diagnostics/codes.ts';
import { nearestWord } from '../diagnostics/suggest.ts';
import { conditionCodes } from '../model/codes.ts';
import type { FieldRole } from '../model/field-roles.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import { listWords } from './describe-value.ts';
import { suggestCode } from './explain-choice.ts';
import type { Finding } from './finding.ts';
import { limits } from './limits.ts';
import type { Field, FieldMap } from './walk-schema.ts';

interface CodeList {
  readonly code: DiagnosticCode;
  readonly codes: readonly string[];
  readonly message: string;
  /** Said where no listed code is near and the list is too long to print. */
  readonly seek?: string;
}

/** Codes that a case may name as an option. */
export function choosableCodes(known: KnownCodes): string[] {
  return known.options.filter(({ choosable }) => choosable).map(({ code }) => code);
}

/** Codes that can stand for an operation a person had; a band that was taken out is still "band". */
export function earlierOperationCodes(known: KnownCodes): string[] {
  const kinds = ['operation', 'endoscopic'];
  const had = known.options.filter(
    ({ choosable, kind, code }) => choosable && kinds.includes(kind) && code !== 'band-removal',
  );
  return had.map(({ code }) => code);
}

/** Every code of the file that names an option, outcome, language, record or caution that is not there. */
export function checkCodes(fields: FieldMap, known: KnownCodes): Finding[] {
  const lists = codeLists(known);
  const unknown = [...fields.values.values(), ...fields.keys].flatMap((field) => {
    const list = field.role === undefined ? undefined : lists[field.role];
    if (list === undefined || typeof field.value !== 'string' || list.codes.includes(field.value)) return [];
    return [{ field, written: field.value, list }];
  });
  return unknown.slice(0, limits.described).map(describeUnknown);
}

interface Unknown {
  readonly field: Field;
  readonly written: string;
  readonly list: CodeList;
}

function describeUnknown({ field, written, list }: Unknown): Finding {
  const near = nearestWord(written, list.codes);
  const meant = near === undefined ? list.seek : `Did you mean ${near}?`;
  const hint = list.seek === undefined ? suggestCode(written, list.codes) : (meant ?? list.seek);
  return {
    isNear: near !== undefined,
    code: list.code,
    path: field.path,
    at: field.isKey ? 'key' : 'value',
    message: list.message,
    hint: special[written] ?? hint,
  };
}

/** Codes that exist but mean something else than a choice. */
const special: Readonly<Record<string, string>> = {
  'usual-care': 'Write no-operation.',
  'band-removal': 'Write operation: band and status: removed.',
};

function codeLists(known: KnownCodes): Partial<Record<FieldRole, CodeList>> {
  const unknown = 'CASE_UNKNOWN_CODE';
  const seek = 'Run plainleaf evidence list to see what there is.';
  return {
    option: {
      code: 'CASE_UNKNOWN_OPTION',
      codes: choosableCodes(known),
      message: 'this option is not one a person can choose',
    },
    'earlier-operation': {
      code: 'CASE_UNKNOWN_OPTION',
      codes: earlierOperationCodes(known),
      message: 'this is not an operation of the evidence',
    },
    outcome: { code: unknown, codes: known.outcomes, message: 'this outcome is not in the evidence', seek },
    trouble: {
      code: unknown,
      codes: [...conditionCodes, ...known.outcomes],
      message: 'this is neither a condition nor an outcome',
      seek: `Choose a condition (${listWords(conditionCodes.slice(0, 3))}, …) or an outcome of the evidence.`,
    },
    language: { code: unknown, codes: known.languages, message: 'this language has no locale' },
    ...(known.records === undefined
      ? {}
      : {
          record: {
            code: unknown,
            codes: known.records,
            message: 'this record is not in the evidence',
            seek,
          },
        }),
    ...(known.cautions === undefined
      ? {}
      : {
          caution: {
            code: unknown,
            codes: known.cautions,
            message: 'this caution is not in the evidence',
            seek,
          },
        }),
  };
}
