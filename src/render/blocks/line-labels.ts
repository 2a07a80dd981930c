import type { WeightLine } from '../../model/document.ts';
import { textWidth } from '../measure-text.ts';
import { placeLineLabels } from '../../pictures/line-labels.ts';
import type { LabelSize, LineLabels } from '../../pictures/line-labels.ts';
import type { LineSizes } from '../../pictures/weight-line.ts';
import { measureLines } from '../text.tsx';
import type { Theme, TypeRole } from '../theme.ts';
import { runsFor } from './primitives.tsx';

export interface LinePicture {
  readonly theme: Theme;
  readonly line: WeightLine;
  readonly sizes: LineSizes;
}

export function widthOf(text: string, role: TypeRole): number {
  return textWidth(text, { weight: role.weight, size: role.size });
}

function sizeInLines(text: string, role: TypeRole, most: number): LabelSize {
  const set = measureLines({ runs: runsFor(text, role), size: role.size, width: most, setting: 'balanced' });
  return { width: Math.ceil(set.width) + 1, height: set.lines * role.lineHeight };
}

/** Where every label of a weight line stands, in the type of this page. */
export function placeLabels({ theme, line, sizes }: LinePicture): LineLabels {
  const roles = { today: theme.type.labelStrong, after: theme.type.small };
  const value = valueRole(theme);
  return placeLineLabels({
    line,
    sizes,
    sizeOf: (label, text, measure) =>
      label === 'value'
        ? { width: widthOf(text, value), height: value.lineHeight }
        : sizeInLines(text, roles[label], measure),
  });
}

/** Type of the measured values. */
export function valueRole(theme: Theme): TypeRole {
  const { name } = theme.type;
  return { ...name, lineHeight: Math.round(1.15 * name.size) };
}
