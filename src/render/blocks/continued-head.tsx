import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import { spaceBetween } from '../../model/wide-marks.ts';
import { Lines } from '../text.tsx';
import { alignStart, palette } from '../theme.ts';
import { Rule } from './primitives.tsx';
import type { Place } from './unit-parts.ts';

interface ContinuedHeadProps {
  readonly place: Place;
  /** What is repeated under the heading: an axis, the heads of a table. */
  readonly children?: ReactNode;
}

/** What stands again at the top of a page that goes on with a block. Screen readers pass over it. */
export function ContinuedHead({ place, children }: ContinuedHeadProps): ReactElement {
  const { theme, title, smallTitle } = place;
  const { space, type } = theme;
  const role = smallTitle === true ? type.smallHeading : type.continued;
  const ruled = title !== undefined && smallTitle !== true && space.topicRule > 0;
  const below = smallTitle === true ? space.afterSmallHeading : space.headToRows;
  return (
    <View artifact style={{ width: theme.width, paddingBottom: children === undefined ? below : 0 }}>
      {ruled ? <Rule width={theme.width} height={space.topicRule} color={palette.leaf} /> : null}
      {title === undefined ? null : (
        <View
          style={{
            paddingTop: ruled ? space.ruleToQuestion : 0,
            paddingBottom: children === undefined ? 0 : below,
          }}
        >
          <Lines
            runs={[
              { text: title + spaceBetween(title, place.continued), weight: role.weight },
              { text: place.continued, weight: 400 },
            ]}
            size={role.size}
            lineHeight={role.lineHeight}
            width={theme.width}
            setting="balanced"
            align={alignStart(theme.direction)}
            direction={theme.direction}
          />
        </View>
      )}
      {children}
    </View>
  );
}
