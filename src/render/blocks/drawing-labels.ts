import type { DrawnView } from '../../model/drawing.ts';
import { labelMeasure, placeView } from '../../pictures/place-view.ts';
import type { PlacedView } from '../../pictures/place-view.ts';
import { measureLines } from '../text.tsx';
import type { Theme } from '../theme.ts';
import { runsFor } from './primitives.tsx';

/** A view with its labels in their places, in the type of this page. */
export function placeInType(view: DrawnView, { type: { small } }: Theme): PlacedView {
  return placeView(view, (text) => {
    const set = measureLines({
      runs: runsFor(text, small),
      size: small.size,
      width: labelMeasure,
      setting: 'balanced',
    });
    return { width: Math.ceil(set.width) + 1, height: set.lines * small.lineHeight };
  });
}
