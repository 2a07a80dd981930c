import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { measureLines } from '../text.tsx';
import { inset, leafPath } from '../../pictures/draw-path.ts';
import type { Mark } from '../../pictures/marks.ts';
import { fromStart, palette, strip } from '../theme.ts';
import type { Theme } from '../theme.ts';
import { Drawing, Words, runsFor } from './primitives.tsx';

const SIDE = 8;
const ABOVE = 2.5;
const CORNER = 7;

/** "Under study" and the like, in a small leaf below a name. A long text takes more lines, never more width. */
export function Tag({ theme, text }: { readonly theme: Theme; readonly text: string }): ReactElement {
  const role = theme.type.label;
  const side = theme.density === 'clinician' ? 4 : SIDE;
  const most = theme.nameWidth - 2 * side;
  const runs = runsFor(text, role);
  const set = measureLines({ runs, size: role.size, width: most, setting: 'balanced' });
  const width = Math.min(Math.ceil(set.width), most) + 2 * side;
  const height = set.lines * role.lineHeight + 2 * ABOVE;
  const field = { width, direction: theme.direction };
  const path = leafPath(field, inset({ start: 0, top: 0, width, height }, 0.5), CORNER);
  const frame: Mark = {
    width,
    height,
    strokes: [{ path, fill: palette.white, stroke: palette.ink, strokeWidth: 1 }],
  };
  return (
    <View style={{ width: theme.nameWidth, height: height + strip.tagGap }}>
      <View
        style={{ position: 'absolute', top: strip.tagGap, width, height, ...fromStart(theme.direction, 0) }}
      >
        <View style={{ position: 'absolute', top: 0, left: 0 }}>
          <Drawing mark={frame} />
        </View>
        <View style={{ position: 'absolute', top: ABOVE, left: side }}>
          <Words
            theme={theme}
            text={text}
            role={role}
            width={width - 2 * side}
            measure={most}
            setting="balanced"
            sem={{ tag: 'P' }}
          />
        </View>
      </View>
    </View>
  );
}
