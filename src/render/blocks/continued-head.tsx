import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
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
  const { theme, title } = place;
  const { space, type } = theme;
  return (
    <View
      artifact
      style={{ width: theme.width, paddingBottom: children === undefined ? space.headToRows : 0 }}
    >
      {space.topicRule === 0 ? null : (
        <Rule width={theme.width} height={space.topicRule} color={palette.leaf} />
      )}
      {title === undefined ? null : (
        <View style={{ paddingTop: space.ruleToQuestion, paddingBottom: space.headToRows }}>
          <Lines
            runs={[
              { text: `${title} `, weight: type.topic.weight },
              { text: place.continued, weight: 400 },
            ]}
            size={type.topic.size}
            lineHeight={type.topic.lineHeight}
            width={theme.width}
            setting="balanced"
            align={alignStart(theme.direction)}
          />
        </View>
      )}
      {children}
    </View>
  );
}
