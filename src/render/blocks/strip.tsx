import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Strip } from '../../model/document.ts';
import { strip } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { AxisFoot, AxisHead } from './strip-axis.tsx';
import { PictureRow, TextRow } from './strip-row.tsx';
import type { RowPlace } from './strip-row.tsx';
import { groupRows, keepLast } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

/** All units of a strip hang under one table in the structure of the file. */
function inTable(id: string, element: ReactElement, theme: Theme): ReactElement {
  return (
    <View sem={{ tag: 'Table', id }} style={{ width: theme.width }}>
      {element}
    </View>
  );
}

function continuation({ axis: scale }: Strip, place: Place): Pick<Unit, 'continuation'> {
  const { theme, title } = place;
  const axis = scale === undefined ? undefined : <AxisHead theme={theme} axis={scale} />;
  if (title === undefined && axis === undefined) return {};
  return { continuation: <ContinuedHead place={place}>{axis}</ContinuedHead> };
}

/** A strip of more rows of words may be divided; a shorter one stays whole. */
const MOST_WHOLE = 3;

function isPictured({ layout }: Strip): boolean {
  return layout === 'range' || layout === 'people';
}

/**
 * Rows of words each stand for themselves, also those on the way back: a long strip of them may be divided for fuller
 * pages. Rows in small type alone are looked up one by one, as in a list of sources: such a strip may be divided however
 * short it is. Rows of the picture column are compared with each other.
 */
function mayBeDivided(block: Strip): boolean {
  const { rows } = block;
  // Numbers to call are chosen from: half of them would pass for all.
  if (isPictured(block) || rows.some(({ words }) => words.some(({ duty }) => duty === 'phone'))) return false;
  return rows.length > MOST_WHOLE || rows.every(({ words }) => words.every(({ role }) => role === 'small'));
}

/** One unit for the axis, one a row, one for the second axis. The pale column runs on between the rows. */
export function stripUnits(block: OfType<'strip'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { axis, rows } = block;
  const id = `${key}.table`;
  const repeated = continuation(block, place);
  const pictured = isPictured(block);
  const Row = pictured ? PictureRow : TextRow;
  // Rows may close up a little to save a page.
  const between = pictured
    ? { gapBefore: strip.pictureGap, gapShrink: strip.pictureGap }
    : { gapBefore: strip.textGap, gapShrink: strip.textShrink };
  const divisible = mayBeDivided(block) ? { divisible: true } : {};
  const base = { origin: block.origin, gapBefore: 0, keepWithNext: false, ...divisible };
  const rowUnits = rows.map((row, index): Unit => {
    const rowPlace: RowPlace = { theme, strip: block, first: index === 0, last: index === rows.length - 1 };
    const element = inTable(id, <Row row={row} place={rowPlace} />, theme);
    const gap = index === 0 ? {} : between;
    return { ...base, ...gap, ...repeated, key: `${key}.row.${index}`, origin: row.origin, element };
  });
  const grouped = groupRows(rowUnits, key);
  if (axis === undefined || rows.length === 0) return grouped;
  const head = inTable(id, <AxisHead theme={theme} axis={axis} />, theme);
  const headUnit: Unit = { ...base, key: `${key}.axis`, element: head, keepWithNext: true, group: key };
  if (axis.bottom === undefined) return [headUnit, ...grouped];
  const foot = inTable(id, <AxisFoot theme={theme} axis={axis} bottom={axis.bottom} />, theme);
  const footUnit: Unit = { ...base, key: `${key}.second-axis`, element: foot, group: key };
  return [headUnit, ...keepLast(grouped), footUnit];
}
