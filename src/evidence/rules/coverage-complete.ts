import { coverageCodes } from '../../model/evidence-rules.ts';
import type { CautionCoverage } from '../../model/evidence-rules.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** The entry whose reasons stand for every code that does not name the option itself; for an option new to the data. */
const everyCode = 'every-code';

/** Silence about an option would read as "safe", so every caution code accounts for every option. */
export const coverageComplete: EvidenceRule = {
  name: 'coverage-complete',
  description: 'for every caution code each option either has a row, or a reason why it has none',
  check: (evidence) => {
    const rows = optionsByCode(evidence);
    const accountable = evidence.options
      .filter((option) => option.figures_from === option.code && !option.code.startsWith('any-'))
      .map(({ code }) => code);
    const general = evidence.cautionCoverage.find(({ code }) => code === everyCode);
    const asked = accountable.filter(
      (option) => general?.others.every(({ options }) => !options.includes(option)) ?? true,
    );
    const faults = evidence.cautionCoverage.flatMap((coverage) =>
      faultsOf(coverage, rows.get(coverage.code) ?? new Set(), coverage === general ? [] : asked).map(
        ({ message, at }) =>
          faultIn(evidence, coverage, {
            code: 'EVIDENCE_INVALID',
            message,
            hint: 'Make the rows and the coverage agree.',
            at,
          }),
      ),
    );
    return [...faults, ...uncoveredCautions(evidence)];
  },
};

function optionsByCode(evidence: EvidenceSet): ReadonlyMap<string, ReadonlySet<string>> {
  const rows = new Map<string, Set<string>>();
  for (const { when, options } of evidence.cautions) {
    for (const code of coverageCodes(when)) {
      rows.set(
        code,
        new Set([...(rows.get(code) ?? []), ...options.filter((option) => !option.startsWith('any-'))]),
      );
    }
  }
  return rows;
}

function faultsOf(
  { by_row, others }: CautionCoverage,
  rows: ReadonlySet<string>,
  accountable: readonly string[],
) {
  const named = [...by_row, ...others.flatMap(({ options }) => options)];
  const twice = named.filter((option, index) => named.indexOf(option) !== index);
  const absent = accountable.filter((option) => !named.includes(option));
  return [
    ...by_row
      .filter((option) => !rows.has(option))
      .map((option) => ({ message: `no caution row names ${option}`, at: ['by_row'] })),
    ...[...rows]
      .filter((option) => !by_row.includes(option))
      .map((option) => ({ message: `a caution row names ${option}, by_row does not`, at: ['by_row'] })),
    ...twice.map((option) => ({ message: `${option} stands twice`, at: ['others'] })),
    ...absent.map((option) => ({ message: `nothing is said about ${option}`, at: ['others'] })),
  ];
}

function uncoveredCautions(evidence: EvidenceSet) {
  const covered = new Set(evidence.cautionCoverage.map(({ code }) => code));
  return evidence.cautions.flatMap((caution) =>
    coverageCodes(caution.when)
      .filter((code) => !covered.has(code))
      .map((code) =>
        faultIn(evidence, caution, {
          code: 'EVIDENCE_INVALID',
          message: `${code} is not in the coverage of cautions`,
          hint: 'Add it to caution-coverage.yaml, with every option.',
          at: ['when'],
        }),
      ),
  );
}
