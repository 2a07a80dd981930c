import type { ComparisonTable, OutcomeRow } from '../model/comparison.ts';
import { alignColumns } from './align-columns.ts';
import { showCell, showHorizon } from './show-cell.ts';
import { showReasons } from './show-reasons.ts';

/** The whole comparison as text: who, then topic by topic every option under the other. */
export function showComparison(caseReference: string, table: ComparisonTable): string {
  const { person, evidence } = table;
  const who = [
    caseReference,
    `${String(person.age)} years`,
    `${person.weightKg.toFixed(1)} kg`,
    `BMI ${person.bmi.toFixed(1)}`,
    person.asked,
    `evidence ${evidence.version}`,
  ];
  const topics = table.topics.flatMap(({ id, picture, rows }) => {
    const all = picture === null || rows.some((row) => isSameRow(row, picture)) ? rows : [picture, ...rows];
    return [`\n${id.replaceAll('-', ' ').toUpperCase()}`, ...all.flatMap(showRow)];
  });
  return [
    who.join('  '),
    '\nOPTIONS',
    ...showOptions(table),
    '\nWEIGHT',
    ...table.weight.over.flatMap(showRow),
    ...topics,
    '\nCAUTIONS',
    ...showCautions(table),
    ...(table.reasons.length === 0 ? [] : ["\nTHE SURGEON'S REASONS", ...showReasons(table.reasons)]),
  ].join('\n');
}

function isSameRow(a: OutcomeRow, b: OutcomeRow): boolean {
  return a.outcome === b.outcome && a.asked.days === b.asked.days && a.asked.months === b.asked.months;
}

function showRow({ outcome, asked, cells }: OutcomeRow): readonly string[] {
  const lines = alignColumns(
    cells.map((cell) => [cell.option, ...showCell(cell)]),
    '    ',
  );
  return [`  ${outcome}, ${showHorizon(asked)}`, ...lines];
}

function showOptions({ options }: ComparisonTable): readonly string[] {
  const rows = options.map(({ code, standing, reversibility, stay }) => [
    code,
    standing.maturity,
    `undone: ${reversibility.possible}`,
    stay.state === 'known' ? `stay ${showCell(stay)[0] ?? ''}` : 'stay not known',
  ]);
  return alignColumns(rows, '  ');
}

function showCautions({ cautions, notes }: ComparisonTable): readonly string[] {
  const rows = cautions.map(({ id, effect, basis, options, triggers }) => [
    effect,
    options.join(', '),
    `because of ${triggers.join(', ')}`,
    basis === 'page' ? id : `${id} (needs confirming)`,
  ]);
  const said = [...alignColumns(rows, '  '), ...notes.map((note) => `  note: ${note}`)];
  return said.length > 0 ? said : ['  none'];
}
