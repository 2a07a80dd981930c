import { View } from '@react-pdf/renderer';
import type { Unit } from '../../unit.ts';
import { ContinuedHead } from '../continued-head.tsx';
import { BodyView } from '../drawing.tsx';
import { groupHighRows } from '../unit-parts.ts';
import type { OfType, Place } from '../unit-parts.ts';

const BETWEEN = 16;

/** Before, and under it after: larger than side by side, and on one page where that has room for both. */
export function stackedDrawingUnits(block: OfType<'drawing'>, place: Place): readonly Unit[] {
  const { theme, key, title } = place;
  const units = block.views.map((view, index): Unit => ({
    key: `${key}.view.${index}`,
    origin: view.origin,
    element: (
      <View style={{ width: theme.width }}>
        <BodyView theme={theme} view={view} />
      </View>
    ),
    gapBefore: index === 0 ? 0 : BETWEEN,
    keepWithNext: false,
    ...(title === undefined ? {} : { continuation: <ContinuedHead place={place} /> }),
  }));
  return groupHighRows(units, key, true);
}
