import type {
  Bounds,
  Cell,
  CellValue,
  ComparisonTable,
  Horizon,
  KnownCell,
  OptionColumn,
  OutcomeRow,
  Proportion,
  Topic,
  WeightAt,
} from '../../src/model/comparison.ts';
import type { GoldenPerson } from './golden-people.ts';

type Printed = GoldenPerson['printed'];

/**
 * A comparison as text that a person can read beside the records: one line an option and outcome. What stands in «» is
 * printed on the patient's page; the number after it is rounded to six places, weights in kg, shares from 0 to 1.
 */
export function describeComparison({ open, printed }: GoldenPerson): string {
  const { comparison, case: asked, clinic } = open;
  const { person, weight, topics } = comparison;
  const who = [
    asked.case,
    `${person.age} years`,
    person.sex,
    `${short(person.weightKg)} kg`,
    `${short(person.heightM)} m`,
    `BMI ${short(person.bmi)}`,
    `${person.threshold} cut-offs`,
    person.asked,
    `clinic ${clinic.clinic.jurisdiction}`,
  ];
  const lines = [
    who.join(', '),
    '\nOPTIONS',
    ...comparison.options.flatMap((option) => describeOption(option, printed)),
    `\nWEIGHT, mainly at ${weight.mainMonths} months`,
    ...weight.over.flatMap((row) => describeRow(row, printed)),
    ...describeCourses(comparison),
    ...topics.flatMap((topic) => describeTopic(topic, printed)),
    '\nCAUTIONS',
    ...describeCautions(comparison),
    '\nNOTES',
    `  ${comparison.notes.join(', ') || 'none'}`,
  ];
  return lines.join('\n') + '\n';
}

function describeOption(option: OptionColumn, printed: Printed): readonly string[] {
  const { code, kind, indication, standing, reversibility: way, stay } = option;
  return [
    `  ${code}: ${kind}, people ${indication}`,
    `    standing ${standing.maturity}: ${standing.entries.join('; ') || 'nothing recorded'}`,
    `    undone ${way.possible}, weight after ${way.weightAfterKnown ? 'known' : 'not known'}, becomes ${way.changeTo.join(', ') || 'nothing'}${way.goneBefore.length === 0 ? '' : `, never back: ${way.goneBefore.join(', ')}`}`,
    `    stay ${describeCell(stay, printed)}`,
  ];
}

function describeCourses({ weight }: ComparisonTable): readonly string[] {
  return weight.courses.map(({ option, study, points }) => {
    const said = points.map(
      ({ months, value, record }) => `${short(months)} mo ${short(value.averageKg)} kg ${record}`,
    );
    return `  course of ${option} in ${study}: ${said.join('; ')}`;
  });
}

function describeTopic({ id, denominator, picture, rows }: Topic, printed: Printed): readonly string[] {
  return [
    `\n${id.replaceAll('-', ' ').toUpperCase()}, table out of ${denominator}`,
    ...(picture === null ? [] : describeRow(picture, printed, `, picture out of ${picture.denominator}`)),
    ...rows.flatMap((row) => describeRow(row, printed)),
  ];
}

function describeRow({ outcome, asked, cells }: OutcomeRow, printed: Printed, more = ''): readonly string[] {
  const head = `  ${outcome} at ${describeTime(asked)}${more}`;
  return [head, ...cells.map((cell) => `    ${cell.option} ${describeCell(cell, printed)}`)];
}

function describeCell(cell: Cell, printed: Printed): string {
  const aside = cell.setAside.length === 0 ? '' : ` | aside ${countAside(cell)}`;
  const own = cell.own === undefined ? '' : ` | own ${cell.own.events} of ${cell.own.n}`;
  switch (cell.state) {
    case 'not-possible':
      return 'not possible';
    case 'not-known':
      return `not known: ${describeReason(cell.reason)}${own}${aside}`;
    case 'known':
      return `${describeKnown(cell, printed)}${own}`;
  }
}

function describeKnown(cell: KnownCell, printed: Printed): string {
  const { lead, others, pooled } = cell;
  const shown = [...(printed.get(cell.id) ?? [])].join(' · ').replaceAll('\u00a0', ' ');
  const match =
    lead.reasons.length === 0 ? lead.match : `${lead.match} (${lead.reasons.map(describeReason).join(', ')})`;
  const parts = [
    `«${shown}» ${describeValue(cell.value)}`,
    `${lead.timeBasis} ${describeTime(lead.horizon)}${lead.n === undefined ? '' : `, n ${lead.n}`}`,
    lead.record,
    `${match}, ${describeCovered(lead)}, by ${lead.ledBy}`,
    others === undefined ? '' : `others ${short(others.low)} to ${short(others.high)}: ${listOthers(cell)}`,
    pooled === undefined
      ? ''
      : `pooled ${short(pooled.value, 4)} (${short(pooled.low, 4)} to ${short(pooled.high, 4)}), next ${short(pooled.expected.low, 4)} to ${short(pooled.expected.high, 4)}, I2 ${short(pooled.heterogeneity, 3)} %`,
  ];
  return parts.filter((part) => part !== '').join(' | ');
}

/** Ids without the option and outcome that the lead's own id begins with. */
function listOthers({ lead, others }: KnownCell): string {
  const prefix = lead.record.split('.').slice(0, 2).join('.');
  return (others?.records ?? [])
    .map((id) => (id.startsWith(`${prefix}.`) ? id.slice(prefix.length) : id))
    .join(' ');
}

/** How the BMI of the people is known, then BMI and ages as far as they are. */
function describeCovered({ bmiBasis, covered }: KnownCell['lead']): string {
  const { bmiLow, bmiHigh, ageLow, ageHigh } = covered;
  const range = (name: string, ends: readonly (number | undefined)[]): string[] =>
    ends.every((end) => end === undefined)
      ? []
      : [`${name} ${ends.map((end) => (end === undefined ? '' : short(end))).join('-')}`];
  return [bmiBasis, ...range('BMI', [bmiLow, bmiHigh]), ...range('age', [ageLow, ageHigh])].join(' ');
}

function describeValue(value: CellValue): string {
  switch (value.kind) {
    case 'proportion':
      return describeShare(value);
    case 'weight':
      return describeWeight(value);
    case 'amount': {
      const { low, high, meaning = '' } = value;
      const around = low === undefined || high === undefined ? undefined : { low, high };
      return `${short(value.value)} ${value.unit}${describeBounds(meaning, around)}`;
    }
  }
}

function describeShare({ value, events, n, interval, zero }: Proportion): string {
  const counted = events === undefined ? '' : ` = ${events} of ${n ?? '?'}`;
  const none = zero === undefined ? '' : ` (none of ${zero.n}, up to ${short(zero.upper)})`;
  return `${short(value)}${counted}${describeBounds(interval?.basis, interval)}${none}`;
}

function describeWeight(value: WeightAt): string {
  const { averageKg, changeKg, bmi, metric, computed, spread, uncertainty, warning } = value;
  return [
    `${short(averageKg)} kg, ${short(changeKg)} kg, BMI ${short(bmi, 4)} from ${metric}`,
    computed ? ' computed' : '',
    describeBounds(spread?.share, spread),
    describeBounds('average', uncertainty),
    warning === undefined ? '' : ` WARNING ${warning}`,
  ].join('');
}

function describeBounds(name: string | undefined, bounds: Bounds | undefined): string {
  return bounds === undefined ? '' : ` (${name ?? ''} ${short(bounds.low)} to ${short(bounds.high)})`;
}

function describeReason({ code, ...details }: { readonly code: string }): string {
  return [
    code,
    ...Object.entries(details).map(([key, value]: [string, unknown]) => `${key} ${String(value)}`),
  ].join(' ');
}

function countAside({ setAside }: Cell): string {
  const counts = new Map<string, number>();
  for (const { reason } of setAside) counts.set(reason.code, (counts.get(reason.code) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([code, count]) => `${code} ${count}`)
    .join(', ');
}

function describeCautions({ cautions }: ComparisonTable): readonly string[] {
  return cautions.map(
    ({ id, effect, strength, basis, options, triggers }) =>
      `  ${id}: ${effect}, ${strength}, ${basis} | ${options.join(', ')} | ${triggers.join(', ')}`,
  );
}

function describeTime({ days, months }: Horizon): string {
  if (days !== undefined) return `${days} d`;
  return months === undefined ? 'any time' : `${short(months)} mo`;
}

function short(value: number, places = 6): string {
  return String(Number(value.toPrecision(places)));
}
