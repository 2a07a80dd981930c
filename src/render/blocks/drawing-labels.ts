import type { DrawnView } from '../../model/drawing.ts';
import type { LabelSize } from '../../pictures/line-labels.ts';
import { measureIn, placeView } from '../../pictures/place-view.ts';
import type { PlacedView } from '../../pictures/place-view.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { measureLines } from '../text.tsx';
import type { Theme } from '../theme.ts';
import { runsFor } from './primitives.tsx';

/** A view with its labels in their places, in the type of this page. */
export function placeInType(view: DrawnView, { type: { small }, edition }: Theme): PlacedView {
  const room = pictureSizes[edition].body;
  const sizeOf = (text: string): LabelSize => {
    const set = measureLines({
      runs: runsFor(text, small),
      size: small.size,
      width: measureIn(room),
      setting: 'balanced',
    });
    return { width: Math.ceil(set.width) + 1, height: set.lines * small.lineHeight };
  };
  return placeView(view, sizeOf, room);
}
