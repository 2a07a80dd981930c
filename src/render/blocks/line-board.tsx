import { View } from '@react-pdf/renderer';
import type { WeightLine } from '../../model/document.ts';
import { withHeadroom } from '../../pictures/line-labels.ts';
import { rowDirection } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { ContinuedHead } from './continued-head.tsx';
import { groupHighRows } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';
import { WeightPicture } from './weight-picture.tsx';

const BETWEEN_ROWS = 14;

/** Weight lines two in a row, the same scale in all; one alone takes the whole width, and so does each in large print. */
export function lineBoardUnits(block: OfType<'line-board'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { direction, width } = theme;
  const { line: alone, lines: several } = pictureSizes[theme.edition];
  const chosen = block.lines.length === 1 ? { sizes: alone, across: 1 } : several;
  const { across } = chosen;
  const sizes = withHeadroom(chosen.sizes, theme.type.labelStrong.lineHeight);
  const rows: readonly (readonly WeightLine[])[] = Array.from(
    { length: Math.ceil(block.lines.length / across) },
    (_, row) => block.lines.slice(row * across, (row + 1) * across),
  );
  const units = rows.map((row, index): Unit => ({
    key: `${key}.row.${index}`,
    origin: block.origin,
    element: (
      <View style={{ width, flexDirection: rowDirection(direction), justifyContent: 'space-between' }}>
        {row.map((line, at) => (
          <WeightPicture key={at} theme={theme} line={line} sizes={sizes} />
        ))}
      </View>
    ),
    gapBefore: index === 0 ? 0 : BETWEEN_ROWS * theme.scale,
    keepWithNext: false,
    ...(theme.flow === 'stacked' ? { divisible: true } : {}),
    ...(place.title === undefined ? {} : { continuation: <ContinuedHead place={place} /> }),
  }));
  return groupHighRows(units, key, theme.flow === 'stacked');
}
