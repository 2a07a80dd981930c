import type { CaseChange, ChangedValue } from '../input/index.ts';
import type { CautionConflict, CautionHit, OptionColumn } from '../model/comparison.ts';
import type { Change, TableDifference } from '../model/difference.ts';
import type { MortalityScore } from '../model/mortality-score.ts';
import type { ReasonCheck } from '../model/reason-check.ts';
import { alignColumns, countOf } from './align-columns.ts';
import { withRecords } from './show-reasons.ts';
import { isOnlySetAside, showCellChanges } from './show-cell-change.ts';

/** What a what-if changes, as text: the case, then the comparison cell by cell, cautions and thresholds. */
export function showDifference(
  caseReference: string,
  changes: readonly CaseChange[],
  difference: TableDifference,
): string {
  if (changes.length === 0) return `${caseReference}  Nothing changes: the case says this already.`;
  const head = [`${caseReference}  what if`, ...alignColumns(changes.map(showChange), '  ')];
  if (difference.isSame) return [...head, '', 'Nothing changes in the comparison.'].join('\n');
  const { cells, cellCount, cautions, reasons, notes, options, person } = difference;
  const shown = cells.filter((change) => !isOnlySetAside(change));
  return [
    ...head,
    ...section('PERSON', alignColumns(person.map(showProperty), '  ')),
    ...section('OPTIONS', alignColumns(options.map(showOption), '  ')),
    ...section(`CELLS: ${String(shown.length)} of ${String(cellCount)} change`, [
      ...showCellChanges(shown),
      ...countSetAside(cells.length - shown.length),
    ]),
    ...section('TOPICS AND LINES', showFrames(difference)),
    ...section('CAUTIONS', [
      ...alignColumns(cautions.map(showCaution), '  '),
      ...difference.conflicts.map(showConflict),
      ...difference.score.map(showScore),
    ]),
    ...section("THE SURGEON'S REASONS", alignColumns(reasons.flatMap(showReason), '  ')),
    ...section(
      'THRESHOLDS',
      notes.map((note) => `  ${verbOf(note)}  ${note.id}`),
    ),
    ...section('RECORDS ON PATIENT PAGES', listRecords(difference)),
  ].join('\n');
}

/** A part without a change says so: silence could be a fault. */
function section(title: string, lines: readonly string[]): readonly string[] {
  return ['', title, ...(lines.length === 0 ? ['  no change'] : lines)];
}

function showChange({ field, before, after }: CaseChange): readonly string[] {
  return [field, isList(before) && isList(after) ? showLists(before, after) : showTwo(before, after)];
}

function isList(value: unknown): value is readonly string[] {
  return Array.isArray(value);
}

function showLists(before: readonly string[], after: readonly string[]): string {
  const gone = before.filter((code) => !after.includes(code)).map((code) => `-${code}`);
  const added = after.filter((code) => !before.includes(code)).map((code) => `+${code}`);
  // The same ones in another order, or one of them twice.
  if (gone.length + added.length === 0) return `${before.join(', ')} → ${after.join(', ')}`;
  return [...gone, ...added].join(' ');
}

function showTwo(before: ChangedValue, after: ChangedValue): string {
  return [before, after].map((value) => (value === null ? 'none' : String(value))).join(' → ');
}

const properties: Readonly<Record<string, string>> = {
  weightKg: 'weight, kg',
  heightM: 'height, m',
  bmi: 'BMI',
};

function showProperty({ id, before, after }: Change<unknown>): readonly string[] {
  const name = properties[id] ?? id;
  if (isList(before) && isList(after)) return [name, showLists(before, after)];
  const write = (value: unknown): string =>
    typeof value === 'number' && id !== 'age' ? value.toFixed(id === 'heightM' ? 3 : 1) : String(value);
  return [name, `${write(before)} → ${write(after)}`];
}

function showOption(change: Change<Omit<OptionColumn, 'stay'>>): readonly string[] {
  const { id, before, after } = change;
  const indication =
    before === null || after === null || before.indication === after.indication
      ? []
      : [`${before.indication} → ${after.indication}`];
  return [verbOf(change), id, ...indication];
}

function verbOf({ before, after }: Change<unknown>): string {
  return before === null ? 'appears' : after === null ? 'vanishes' : 'changes';
}

function countSetAside(count: number): readonly string[] {
  return count === 0 ? [] : [`  ${countOf(count, 'cell')} more: only what is set aside, or why (see --json)`];
}

function showFrames({ topics, horizon, courses, elsewhere }: TableDifference): readonly string[] {
  const frames = topics.map(({ id, before, after }) => [
    id,
    [
      arrow(`out of ${String(before?.denominator)}`, `out of ${String(after?.denominator)}`),
      arrow(`picture ${before?.picture ?? 'none'}`, `picture ${after?.picture ?? 'none'}`),
    ].join(', '),
  ]);
  return alignColumns(
    [
      ...horizon.map(({ before, after }) => ['main weight', `${String(before)} → ${String(after)} months`]),
      ...frames,
      ...courses.map((course) => ['weight line', `${course.id} ${verbOf(course)}`]),
      ...elsewhere.map((name) => [name, 'changes']),
    ],
    '  ',
  );
}

/** "a → b", or one of them where they are alike. */
function arrow(before: string, after: string): string {
  return before === after ? after : `${before} → ${after}`;
}

function showCaution(change: Change<CautionHit>): readonly string[] {
  const { id, before, after } = change;
  const [was, is] = [before ?? after, after ?? before];
  if (was === null || is === null) return [];
  return [
    verbOf(change),
    is.effect,
    arrow(was.options.join(', '), is.options.join(', ')),
    `because of ${arrow(was.triggers.join(', '), is.triggers.join(', '))}`,
    is.basis === 'page' ? id : `${id} (needs confirming)`,
  ];
}

function showConflict(change: Change<CautionConflict>): string {
  const { before, after } = change;
  const is = after ?? before;
  if (is === null) return '';
  const against = `${is.caution} points to ${is.to}, against it ${is.against.join(', ')}`;
  return `  ${verbOf(change)}  pulling apart: ${against}`;
}

function showScore({ before, after }: Change<MortalityScore>): string {
  const name = (score: MortalityScore | null): string =>
    score === null ? 'none' : [...new Set([score.classes.low, score.classes.high])].join(' or ');
  return `  mortality score of 2007: class ${arrow(name(before), name(after))}`;
}

function showReason(change: Change<ReasonCheck>): readonly (readonly string[])[] {
  const { before, after } = change;
  const is = after ?? before;
  if (is === null) return [];
  const verdict =
    before === null || after === null
      ? `${verbOf(change)}: ${is.verdict}`
      : arrow(before.verdict, after.verdict);
  return withRecords(is, verdict);
}

function listRecords({ records }: TableDifference): readonly string[] {
  return records.map(({ id, before }) => `  ${before === null ? '+' : '-'} ${id}`);
}
