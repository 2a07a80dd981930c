import type { Amount, Bounds, KnownCell, Proportion, WeightAt } from '../../model/comparison.ts';
import { knownCells } from './cells-shown.ts';
import type { ShownCell } from './cells-shown.ts';
import type { Markup } from '../../model/locale.ts';
import { denseTable, groupRow, labels } from './dense-table.ts';
import { saySetAside } from './say-reason.ts';
import { isShare, sourceOf } from './say-share.ts';
import { sayTime } from './say-time.ts';
import { isWeight } from './say-weight.ts';
import type { Scene } from './scene.ts';
import type { TableView } from './shared-shapes.ts';
import { asMarkup, attached, figure, joined } from './words.ts';

type Shown = ShownCell<KnownCell>;

const columns = [
  { key: 'record', width: 27 },
  { key: 'outcome', width: 20 },
  { key: 'figure', width: 7, align: 'end' },
  { key: 'interval', width: 15 },
  { key: 'n', width: 6, align: 'end' },
  { key: 'design', width: 9 },
  { key: 'match', width: 16 },
];

/** The figures shown, option by option, exact and unrounded for readers. */
export function clinicianFigures(scene: Scene): TableView {
  const cells = knownCells(scene.comparison);
  const rows = scene.options.flatMap((option) => {
    const mine = cells.filter(({ cell }) => cell.option === option.code);
    const records = mine.map(({ cell }) => cell.lead.record);
    const rows = [...mine.map((shown) => cellsOf(scene, shown)), ...courseCells(scene, option.code, records)];
    return rows.length === 0
      ? []
      : [groupRow(option.name), ...rows.map((row) => ({ group: '', cells: row }))];
  });
  return denseTable(labels(scene, 'figures', columns), rows);
}

function cellsOf(scene: Scene, shown: Shown): readonly Markup[] {
  const { cell } = shown;
  return [
    asMarkup(cell.lead.record),
    asMarkup(outcomeOf(scene, shown)),
    figure(exactValue(scene, shown), sourceOf(cell)),
    attached(asMarkup(intervalOf(scene, shown)), ...othersOf(scene, shown), ...pooledOf(scene, shown)),
    asMarkup(sizeOf(scene, cell.lead.n)),
    asMarkup(designOf(scene, cell.lead)),
    matchOf(scene, shown),
  ];
}

/** The points of a weight line whose records lead in no cell. */
function courseCells(scene: Scene, code: string, shown: readonly string[]): readonly (readonly Markup[])[] {
  const course = scene.comparison.weight.courses.find(({ option }) => option === code);
  const points = (course?.points ?? []).filter(({ record }) => !shown.includes(record));
  return points.map(({ months, value, record: id, cell }) => {
    const record = scene.records.get(id);
    const time = sayTime(scene, { months }, 'at');
    const n = record !== undefined && 'n' in record.value ? record.value.n : undefined;
    return [
      asMarkup(id),
      asMarkup(scene.words.plain('clinician-sheet.outcome_weight', { metric: value.metric, time })),
      figure(`${scene.format.number(value.averageKg, 1)}\u00a0kg`, { cell, records: [id] }),
      asMarkup(weightInterval(scene, value) ?? scene.words.plain('clinician-sheet.not_stated')),
      asMarkup(sizeOf(scene, n)),
      asMarkup(designOf(scene, { record: id, study: course?.study ?? '' })),
      asMarkup(scene.words.plain('clinician-sheet.led_by.course')),
    ];
  });
}

function sizeOf(scene: Scene, n: number | undefined): string {
  return n === undefined ? scene.words.plain('clinician-sheet.no_number') : scene.format.number(n);
}

/** "RCT, 2021". */
function designOf(scene: Scene, source: { readonly record: string; readonly study: string }): string {
  const study = scene.evidence.studies.get(source.study);
  const design = scene.records.get(source.record)?.design ?? study?.design ?? 'cohort';
  const year = study?.citation.year;
  return [
    scene.words.plain(`clinician-sheet.designs.${design}`),
    ...(year === undefined ? [] : [String(year)]),
  ].join(', ');
}

/** "A leak, per 1,000, within 30 days". */
function outcomeOf(scene: Scene, { cell, denominator }: Shown): string {
  const time = sayTime(scene, cell.lead.horizon, cell.lead.timeBasis);
  const outcome = scene.words.plain(`outcomes.${cell.outcome}.name`);
  if (isWeight(cell))
    return scene.words.plain('clinician-sheet.outcome_weight', { metric: cell.value.metric, time });
  if (!isShare(cell)) return scene.words.plain('common.table.head', { outcome, time });
  return scene.words.plain('clinician-sheet.outcome_per', {
    outcome,
    of: scene.format.number(denominator),
    time,
  });
}

function exactValue(scene: Scene, { cell, denominator }: Shown): string {
  const { format, words } = scene;
  if (isWeight(cell)) return `${format.number(cell.value.averageKg, 1)}\u00a0kg`;
  if (!isShare(cell))
    return cell.value.kind === 'amount' ? `${format.number(cell.value.value)}\u00a0${cell.value.unit}` : '';
  const { zero } = cell.value;
  if (zero !== undefined)
    return words.plain('common.share.counted', { events: '0', n: format.number(zero.n) });
  return format.number(cell.value.value * denominator, cell.value.value * denominator < 10 ? 2 : 1);
}

/** Lowest and highest of the records beside the lead, in the unit of the figure. */
function othersOf(scene: Scene, { cell, denominator }: Shown): readonly Markup[] {
  if (cell.others === undefined) return [];
  const scale = isShare(cell) ? denominator : 1;
  const { format } = scene;
  const range = format.range(
    format.number(cell.others.low * scale, 1),
    format.number(cell.others.high * scale, 1),
  );
  const { records } = cell.others;
  return [
    scene.words.say('clinician-sheet.others', {
      range: figure(range, { cell: cell.id, records }),
      count: records.length,
    }),
  ];
}

/** "pooled 31 (22 to 43), 5 studies, I² 96%". */
function pooledOf(scene: Scene, { cell, denominator }: Shown): readonly Markup[] {
  const { pooled, others, lead } = cell;
  if (pooled === undefined) return [];
  const { format, words } = scene;
  const number = (share: number): string => format.number(share * denominator, 1);
  const value = figure(`${number(pooled.value)} (${format.range(number(pooled.low), number(pooled.high))})`, {
    cell: cell.id,
    records: [lead.record, ...(others?.records ?? [])],
  });
  const expected = format.range(number(pooled.expected.low), number(pooled.expected.high));
  const heterogeneity = format.number(pooled.heterogeneity);
  return [words.say('clinician-sheet.pooled', { value, expected, heterogeneity, count: pooled.studies })];
}

function intervalOf(scene: Scene, shown: Shown): string {
  const { cell, denominator } = shown;
  const none = scene.words.plain('clinician-sheet.not_stated');
  if (isWeight(cell)) return weightInterval(scene, cell.value) ?? none;
  if (isShare(cell)) return shareInterval(scene, cell.value, denominator) ?? none;
  return (cell.value.kind === 'amount' ? amountInterval(scene, cell.value) : null) ?? none;
}

function weightInterval(scene: Scene, { spread, uncertainty }: WeightAt): string | null {
  if (spread !== undefined) return sayInterval(scene, spread.basis, spread);
  return uncertainty === undefined ? null : sayInterval(scene, 'uncertainty', uncertainty);
}

function shareInterval(scene: Scene, { interval, zero }: Proportion, denominator: number): string | null {
  if (zero !== undefined) {
    return scene.words.plain('clinician-sheet.interval.zero', {
      upper: scene.format.number(zero.upper * denominator, 1),
    });
  }
  if (interval === undefined) return null;
  return sayInterval(scene, interval.basis, {
    low: interval.low * denominator,
    high: interval.high * denominator,
  });
}

function amountInterval(scene: Scene, { low, high, meaning }: Amount): string | null {
  return low === undefined || high === undefined
    ? null
    : sayInterval(scene, meaning ?? 'unknown', { low, high });
}

function sayInterval(scene: Scene, kind: string, { low, high }: Bounds): string {
  const { format, words } = scene;
  return words.plain(`clinician-sheet.interval.${kind}`, {
    range: format.range(format.number(low, 1), format.number(high, 1)),
  });
}

/** Why the record leads; how its people differ where they do; that their BMI was assumed; a projected low weight. */
function matchOf(scene: Scene, { cell }: Shown): Markup {
  const { words } = scene;
  const [difference] = cell.lead.reasons;
  const near = difference === undefined ? [] : [asMarkup(saySetAside(scene, difference))];
  const assumed = cell.lead.bmiBasis === 'assumed' ? [words.say('clinician-sheet.bmi_assumed')] : [];
  const warning =
    isWeight(cell) && cell.value.warning !== undefined
      ? [words.say(`clinician-sheet.warning.${cell.value.warning}`)]
      : [];
  const why = words.plain(`clinician-sheet.led_by.${cell.lead.ledBy}`);
  const fit = attached(words.say(`clinician-sheet.match.${cell.lead.match}`, { why }), ...assumed);
  return joined(fit, ...near, ...warning);
}
