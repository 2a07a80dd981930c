import { conditionCodes, historyCodes, medicineCodes } from '../../model/codes.ts';
import { comparisonGroups } from '../../model/evidence.ts';
import type { OutcomeDefinition } from '../../model/evidence.ts';
import type { Caution } from '../../model/evidence-rules.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Reference {
  readonly entry: object;
  readonly at: DataPath;
  readonly what: 'option' | 'outcome' | 'metric' | 'study' | 'versus' | 'condition' | 'medicine' | 'history';
  readonly code: string | undefined;
}

export const codeKnown: EvidenceRule = {
  name: 'code-known',
  description: 'every option, outcome, metric, study and case code that is named is defined',
  check: (evidence) => {
    const options = evidence.options.map(({ code }) => code);
    const known: Readonly<Record<Reference['what'], ReadonlySet<string>>> = {
      option: new Set(options),
      outcome: new Set(evidence.outcomes.map(({ code }) => code)),
      metric: new Set(evidence.metrics.map(({ code }) => code)),
      study: new Set(evidence.studies.map(({ id }) => id)),
      versus: new Set([...options, ...comparisonGroups]),
      condition: new Set(conditionCodes),
      medicine: new Set(medicineCodes),
      history: new Set(historyCodes),
    };
    return [
      ...recordReferences(evidence),
      ...pageReferences(evidence),
      ...ruleReferences(evidence),
      ...evidence.cautions.flatMap(cautionReferences),
    ]
      .filter(({ what, code }) => code !== undefined && !known[what].has(code))
      .map(({ entry, at, what, code }) =>
        faultIn(evidence, entry, {
          code: 'EVIDENCE_UNKNOWN_CODE',
          message: `the ${what} "${String(code)}" is not defined`,
          hint: 'Define it, or correct the spelling.',
          at,
        }),
      );
  },
};

function recordReferences({ options, records, riskFactors, definitions }: EvidenceSet): readonly Reference[] {
  return [
    ...options.map((entry): Reference => ({
      entry,
      at: ['figures_from'],
      what: 'option',
      code: entry.figures_from,
    })),
    ...records.flatMap((entry): Reference[] => [
      { entry, at: ['option'], what: 'option', code: entry.option },
      ...(entry.together ?? []).map((code, index): Reference => ({
        entry,
        at: ['together', index],
        what: 'option',
        code,
      })),
      { entry, at: ['outcome'], what: 'outcome', code: entry.outcome },
      { entry, at: ['study'], what: 'study', code: entry.study },
      { entry, at: ['versus'], what: 'versus', code: entry.kind === 'contrast' ? entry.versus : undefined },
      {
        entry,
        at: ['value', 'metric'],
        what: 'metric',
        code: 'metric' in entry.value ? entry.value.metric : undefined,
      },
    ]),
    ...riskFactors.flatMap((entry): Reference[] => [
      { entry, at: ['option'], what: 'option', code: entry.option },
      { entry, at: ['outcome'], what: 'outcome', code: entry.outcome },
      { entry, at: ['study'], what: 'study', code: entry.study },
    ]),
    ...definitions.map((entry): Reference => ({ entry, at: ['study'], what: 'study', code: entry.study })),
  ];
}

/** Where the pages take outcomes from, and the conditions that decide about them. */
function pageReferences({ outcomes, topics }: EvidenceSet): readonly Reference[] {
  const harms = (['first-month', 'later-years', 'living-with-it'] as const).flatMap((id) =>
    listOf(topics, [id, 'rows'], { what: 'outcome', codes: topics[id].rows }),
  );
  const pictures = (['first-month', 'later-years'] as const).flatMap((id) =>
    listOf(topics, [id, 'picture'], { what: 'outcome', codes: topics[id].picture }),
  );
  const benefits = topics.benefits.flatMap(({ condition, outcomes: named }, index): readonly Reference[] => [
    { entry: topics, at: ['benefits', index, 'condition'], what: 'condition', code: condition },
    ...listOf(topics, ['benefits', index, 'outcomes'], { what: 'outcome', codes: named }),
  ]);
  return [...harms, ...pictures, ...benefits, ...outcomes.flatMap(outcomeReferences)];
}

function outcomeReferences(entry: OutcomeDefinition): readonly Reference[] {
  const parts = (entry.parts ?? []).flatMap(({ outcomes }, index) =>
    listOf(entry, ['parts', index, 'outcomes'], { what: 'outcome', codes: outcomes }),
  );
  return [
    { entry, at: ['new_without'], what: 'condition', code: entry.new_without },
    { entry, at: ['never_after'], what: 'history', code: entry.never_after },
    ...parts,
  ];
}

function ruleReferences({
  reversibility,
  standing,
  cautionCoverage,
  reasons,
}: EvidenceSet): readonly Reference[] {
  return [
    ...reasons.flatMap((entry) =>
      entry.looks.flatMap((look, index) =>
        'outcomes' in look
          ? listOf(entry, ['looks', index, 'outcomes'], { what: 'outcome', codes: look.outcomes })
          : [],
      ),
    ),
    ...reversibility.flatMap((entry): Reference[] => [
      { entry, at: ['option'], what: 'option', code: entry.option },
      { entry, at: ['undo', 'weight_after', 'study'], what: 'study', code: entry.undo.weight_after.study },
      ...listOf(entry, ['change_to'], { what: 'option', codes: entry.change_to }),
      ...entry.undo.data.map((figure, index): Reference => ({
        entry,
        at: ['undo', 'data', index, 'study'],
        what: 'study',
        code: figure.study,
      })),
      ...sourcesOf(entry),
    ]),
    ...standing.map((entry): Reference => ({ entry, at: ['option'], what: 'option', code: entry.option })),
    ...cautionCoverage.flatMap((entry): Reference[] => [
      ...listOf(entry, ['by_row'], { what: 'option', codes: entry.by_row }),
      ...entry.others.flatMap((other, index) =>
        listOf(entry, ['others', index, 'options'], { what: 'option', codes: other.options }),
      ),
    ]),
  ];
}

function cautionReferences(entry: Caution): readonly Reference[] {
  const coded = (['condition', 'medicine', 'history'] as const).flatMap((what) =>
    [entry.when[what] ?? []].flat().map((code): Reference => ({ entry, at: ['when', what], what, code })),
  );
  return [
    ...coded,
    ...listOf(entry, ['options'], { what: 'option', codes: entry.options }),
    ...listOf(entry, ['favours'], { what: 'option', codes: entry.favours ?? [] }),
    ...sourcesOf(entry),
  ];
}

function listOf(
  entry: object,
  at: DataPath,
  { what, codes }: { readonly what: Reference['what']; readonly codes: readonly string[] },
): readonly Reference[] {
  return codes.map((code, index) => ({ entry, at: [...at, index], what, code }));
}

function sourcesOf(entry: {
  readonly sources: readonly { readonly study?: string | undefined }[];
}): readonly Reference[] {
  return entry.sources.map(({ study }, index) => ({
    entry,
    at: ['sources', index, 'study'],
    what: 'study',
    code: study,
  }));
}
