import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Axis } from '../../../model/document.ts';
import { textWidth } from '../../measure-text.ts';
import { fromStart } from '../../theme.ts';
import type { Theme } from '../../theme.ts';
import { Words } from '../primitives.tsx';
import { Label, axisLabels, tickLabels } from '../strip-axis.tsx';

const GAP = 14;
const BELOW = 6;

/** Where the unit stands: on the line of today, before it or after it, else on a line of its own. */
function placeUnit(unit: number, today: { start: number; end: number }, width: number): number | undefined {
  if (unit + GAP <= today.start) return 0;
  return today.end + GAP + unit <= width ? width - unit : undefined;
}

/** Label of today, ticks and unit over the whole width, a row of the strip's table. */
export function StackedAxis({ theme, axis }: { readonly theme: Theme; readonly axis: Axis }): ReactElement {
  const { small, labelStrong } = theme.type;
  const { width } = theme;
  const [start = 0] = axisLabels([axis.today], { theme, axis }, labelStrong);
  const unit = Math.ceil(textWidth(axis.top.unit, small)) + 1;
  const today = { start, end: start + textWidth(axis.today.label, labelStrong) };
  const beside = placeUnit(unit, today, width);
  const above = beside === undefined ? small.lineHeight : 0;
  const line = labelStrong.lineHeight;
  return (
    <View sem={{ tag: 'TR' }} style={{ width, height: above + line + small.lineHeight + BELOW }}>
      <View sem={{ tag: 'TD' }} style={{ width, height: 0 }} />
      <View sem={{ tag: 'TD' }} style={{ width, height: 0 }}>
        <Label theme={theme} text={axis.today.label} role={labelStrong} start={start} top={above} />
        {tickLabels({ theme, axis }, axis.top.ticks, above + line)}
      </View>
      <View sem={{ tag: 'TD' }} style={{ width, height: 0 }}>
        <View
          style={{ position: 'absolute', top: 0, width: unit, ...fromStart(theme.direction, beside ?? 0) }}
        >
          <Words theme={theme} text={axis.top.unit} role={small} width={unit} sem={{ tag: 'P' }} />
        </View>
      </View>
    </View>
  );
}
