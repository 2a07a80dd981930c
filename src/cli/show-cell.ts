import type {
  Bounds,
  Cell,
  CellValue,
  Horizon,
  KnownCell,
  MatchReason,
  MissingReason,
} from '../model/comparison.ts';
import { countOf } from './align-columns.ts';

/** Columns of a cell for a clinician: value, people, size, certainty, record and what else is known. */
export function showCell(cell: Cell): readonly string[] {
  switch (cell.state) {
    case 'known':
      return showKnown(cell);
    case 'not-known':
      return ['not known', showReason(cell.reason), '', '', '', showSetAside(cell)];
    case 'not-possible':
      return ['not possible', '', '', '', '', ''];
  }
}

function showKnown(cell: KnownCell): readonly string[] {
  const { lead, others } = cell;
  const near =
    lead.match === 'near' ? `near: ${lead.reasons.map(showReason).join(', ')}` : 'like this person';
  const more = [
    lead.dose ?? '',
    others === undefined ? '' : `others ${showBounds(others, cell.value)} (${String(others.records.length)})`,
    cell.own === undefined ? '' : `own ${String(cell.own.events)} of ${String(cell.own.n)}`,
    showSetAside(cell),
  ];
  return [
    showValue(cell.value),
    near,
    lead.n === undefined ? '' : `n ${String(lead.n)}`,
    lead.certainty,
    lead.record,
    more.filter((part) => part !== '').join('; '),
  ];
}

function showSetAside({ setAside }: Cell): string {
  return setAside.length === 0 ? '' : `${String(setAside.length)} set aside`;
}

/** A value with its spread or uncertainty; the two are told apart by their words. */
export function showValue(value: CellValue): string {
  switch (value.kind) {
    case 'proportion':
      if (value.zero !== undefined)
        return `0 of ${String(value.zero.n)}, up to ${percent(value.zero.upper)} %`;
      return `${percent(value.value)} %${showInterval(value.interval, value)}`;
    case 'weight': {
      const share = value.spread === undefined ? '' : `, ${value.spread.share}`;
      const sure = value.uncertainty === undefined ? '' : ', average';
      const change = `${value.averageKg.toFixed(0)} kg (${String(Math.round(value.changeKg) + 0)} kg)`;
      return `${change}${share}${showInterval(value.spread, value)}${sure}${showInterval(value.uncertainty, value)}`;
    }
    case 'amount': {
      const { low, high, meaning = '' } = value;
      const bounds = low === undefined || high === undefined ? undefined : { low, high };
      return `${short(value.value)} ${value.unit}${showInterval(bounds, value)} ${meaning}`.trim();
    }
  }
}

function showInterval(bounds: Bounds | undefined, value: CellValue): string {
  return bounds === undefined ? '' : ` (${showBounds(bounds, value)})`;
}

function showBounds({ low, high }: Bounds, { kind }: CellValue): string {
  const write = (bound: number): string =>
    kind === 'proportion' ? percent(bound) : kind === 'weight' ? bound.toFixed(0) : short(bound);
  const ends = [...new Set([write(low), write(high)])];
  return `${ends.join('–')}${kind === 'proportion' ? ' %' : ''}`;
}

/** At most two decimals, none that say nothing. */
function short(value: number): string {
  return String(Number(value.toFixed(2)));
}

/** Two significant places under 10 percent, so that a small risk does not become nothing. */
function percent(share: number): string {
  const value = share * 100;
  return value === 0 || value >= 10 ? value.toFixed(0) : value.toPrecision(2);
}

/** A reason by its code and its own numbers, for example `bmi-outside low 35 yours 27.2`. */
export function showReason({ code, ...details }: MissingReason | MatchReason): string {
  const parts = Object.entries(details).map(([key, value]: [string, unknown]) => {
    const written = typeof value === 'number' ? short(value) : String(value);
    return `${key} ${written}`;
  });
  return [code, ...parts].join(' ');
}

/** "30 days", "5 years", "18 months". */
export function showHorizon({ days, months }: Horizon): string {
  if (days !== undefined) return countOf(days, 'day');
  if (months === undefined) return 'any time';
  return months % 12 === 0 ? countOf(months / 12, 'year') : countOf(months, 'month');
}
