import { comparePositions } from '../diagnostics/compare-positions.ts';
import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Case } from '../model/case.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import type { Finding, Path } from './finding.ts';
import { locateFindings, spanOf } from './locate-findings.ts';
import { parseYaml } from './parse-yaml.ts';
import type { SourceFile } from './read-file.ts';
import { checkClinicForCase } from './rules/check-clinic-for-case.ts';
import { listWords } from './describe-value.ts';
import { nearestWord } from '../diagnostics/suggest.ts';
import { wordsOf } from './vocabulary.ts';

export interface Pairing {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  /** The texts they were read from, so that a place can be given. */
  readonly files: { readonly case: SourceFile; readonly clinic: SourceFile };
  readonly known: KnownCodes;
  /** Codes of options that are under study where this clinic is. */
  readonly underStudy: readonly string[];
}

/**
 * Checks a case against the clinic profile it is printed with. Errors: a surgeon that the profile has not. Warnings: what
 * keeps the packet a draft (no study entry or approval form for an option under study, words absent in a language of the
 * packet, a profile that nobody approved), and what the profile could still say.
 */
export function checkTogether(pairing: Pairing): Result<void> {
  const { files, known } = pairing;
  const inCase = locate([...checkSurgeon(pairing), ...checkStudies(pairing)], files.case, known);
  const inClinic = locate(checkClinicForCase(pairing), files.clinic, known);
  const diagnostics = [...inCase.map((one) => pointAtClinic(one, files.clinic)), ...inClinic].sort(
    comparePositions,
  );
  return diagnostics.some(({ severity }) => severity === 'error')
    ? failure(diagnostics)
    : success(undefined, diagnostics);
}

function checkSurgeon({ case: { plan }, clinic }: Pairing): Finding[] {
  const ids = clinic.surgeons.map(({ id }) => id);
  if (ids.includes(plan.surgeon)) return [];
  const near = nearestWord(plan.surgeon, ids);
  const hint = `${near === undefined ? '' : `Did you mean ${near}? `}Choose one of: ${listWords(ids)}.`;
  return [
    {
      code: 'CASE_UNKNOWN_CODE',
      path: ['plan', 'surgeon'],
      message: 'no surgeon of the clinic profile has this id',
      hint,
    },
  ];
}

function checkStudies({ case: { decision }, clinic, underStudy }: Pairing): Finding[] {
  return decision.options.flatMap((option, index): Finding[] => {
    if (!underStudy.includes(option) || Object.hasOwn(clinic.under_study, option)) return [];
    const message = 'this option is under study, and the clinic profile does not say who watches over it';
    const hint = `Add ${option} to under_study of the clinic profile, or leave the option out.`;
    return [
      { code: 'CASE_DRAFT_ONLY', severity: 'warning', path: ['decision', 'options', index], message, hint },
    ];
  });
}

function locate(findings: readonly Finding[], source: SourceFile, known: KnownCodes): Diagnostic[] {
  const { tree, lines } = parseYaml(source.text, source.file);
  if (tree === undefined) return [];
  return locateFindings(findings, { tree, lines, vocabulary: wordsOf(known) });
}

/** Both checks of the case compare it with a list in the profile: that list is the other place. */
function pointAtClinic(diagnostic: Diagnostic, clinic: SourceFile): Diagnostic {
  const path: Path = diagnostic.code === 'CASE_UNKNOWN_CODE' ? ['surgeons'] : ['under_study'];
  const { tree, lines } = parseYaml(clinic.text, clinic.file);
  if (tree === undefined) return diagnostic;
  return {
    ...diagnostic,
    related: [
      { message: `${String(path[0])} of the clinic profile`, span: spanOf(path, 'key', { tree, lines }) },
    ],
  };
}
