import type { EvidenceDifference } from '../evidence/index.ts';
import { isPrintable } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { Changes } from '../model/release.ts';
import { alignColumns, countOf } from './align-columns.ts';

/** What the evidence calls itself, what it holds, and what each release changed. */
export function showRelease(evidence: EvidenceBase): string {
  const { reviewMonths: months } = evidence;
  const printable = evidence.records.filter(isPrintable).length;
  const rows = [
    ['release', `${evidence.version}, ${evidence.date}`],
    ['digest', evidence.digest],
    [
      'holds',
      `${countOf(evidence.records.length, 'record')}, ${String(printable)} read at the source; ${countOf(evidence.studies.size, 'study', 'studies')}`,
    ],
    ['whole looked over by', evidence.nextReview],
    [
      'figures read again after',
      Object.entries(months)
        .map(([of, many]) => `${many} months (${of})`)
        .join(', '),
    ],
    ['changed', changesInWords(evidence.changes)],
    ...evidence.earlier.map(({ version, date, changes }) => [
      'before that',
      `${version}, ${date}: ${changesInWords(changes)}`,
    ]),
  ];
  return alignColumns(rows).join('\n');
}

function changesInWords(changes: Changes | null): string {
  if (changes === null) return 'the first release';
  const { added, changed, withdrawn } = changes;
  return countsInWords({ added, changed, withdrawn });
}

function countsInWords(lists: Readonly<Record<string, readonly unknown[]>>): string {
  return Object.entries(lists)
    .map(([what, { length }]) => `${String(length)} ${what}`)
    .join(', ');
}

/** What differs between two releases; the records as release.yaml takes them. */
export function showReleaseDifference({ before, after, lists }: EvidenceDifference): string {
  const head = `From ${before.version} (${before.date}) to ${after.version} (${after.date})`;
  if (lists.length === 0) return `${head}: no entry differs.`;
  const same = before.version === after.version;
  const records = lists.find(({ list }) => list === 'records');
  return [
    `${head}${same ? ': both call themselves the same' : ''}`,
    '',
    ...alignColumns(lists.map(({ list, ...ids }) => [list, countsInWords({ ...ids })])),
    ...lists
      .filter(({ list }) => list !== 'records')
      .flatMap(({ list, ...ids }) => ['', `${list}:`, ...idLines(ids)]),
    ...(records === undefined
      ? []
      : ['', 'As release.yaml says it, once each reason is written:', ...asYaml(records)]),
  ].join('\n');
}

type Ids = Readonly<Record<'added' | 'changed' | 'withdrawn', readonly string[]>>;

function idLines({ added, changed, withdrawn }: Ids): readonly string[] {
  return alignColumns(
    Object.entries({ added, changed, withdrawn }).flatMap(([what, ids]) => ids.map((id) => [what, id])),
    '  ',
  );
}

function asYaml({ added, changed, withdrawn }: Ids): readonly string[] {
  const listed = (what: string, ids: readonly string[]): readonly string[] =>
    ids.length === 0 ? [`  ${what}: []`] : [`  ${what}:`, ...ids.map((id) => `    - ${id}`)];
  return [
    'changes:',
    ...listed('added', added),
    ...listed('changed', changed),
    ...(withdrawn.length === 0 ? ['  withdrawn: []'] : ['  withdrawn:']),
    ...withdrawn.map((id) => `    - { record: ${id}, why: }`),
  ];
}
