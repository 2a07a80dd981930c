import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import { spaceBetween } from '../../model/wide-marks.ts';
import { Lines } from '../text.tsx';
import { alignStart, palette } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Rule } from './primitives.tsx';
import type { Place } from './unit-parts.ts';

interface ContinuedHeadProps {
  readonly place: Place;
  /** What is repeated under the heading: an axis, the heads of a table. */
  readonly children?: ReactNode;
}

/**
 * What stands again at the top of a page that goes on with a block: the question, a small heading, both where the one
 * stands under the other. Screen readers pass over it.
 */
export function ContinuedHead({ place, children }: ContinuedHeadProps): ReactElement {
  const { theme, title, smallTitle, question } = place;
  const { space, type } = theme;
  const isSmall = smallTitle === true;
  const large = isSmall ? question : title;
  const small = isSmall ? title : undefined;
  const below = isSmall ? space.afterSmallHeading : space.headToRows;
  const white = children !== undefined && title === undefined ? 0 : below;
  return (
    <View artifact style={{ width: theme.width }}>
      {large === undefined ? null : <RepeatedQuestion place={place} text={large} />}
      {small === undefined ? null : (
        <View style={{ paddingTop: large === undefined ? 0 : space.questionToIntro }}>
          <Repeated
            theme={theme}
            role={type.smallHeading}
            text={small}
            {...(large === undefined ? { continued: place.continued } : {})}
          />
        </View>
      )}
      <View style={{ height: white }} />
      {children}
    </View>
  );
}

/** The question under its rule, as on the page where it is asked. */
function RepeatedQuestion({ place, text }: { readonly place: Place; readonly text: string }): ReactElement {
  const { theme, continued } = place;
  const { space, type, width } = theme;
  const ruled = space.topicRule > 0;
  return (
    <>
      {ruled ? <Rule width={width} height={space.topicRule} color={palette.leaf} /> : null}
      <View style={{ paddingTop: ruled ? space.ruleToQuestion : 0 }}>
        <Repeated theme={theme} role={type.continued} text={text} continued={continued} />
      </View>
    </>
  );
}

interface RepeatedProps {
  readonly theme: Theme;
  readonly role: TypeRole;
  readonly text: string;
  /** The word after it that says that it is repeated. */
  readonly continued?: string;
}

function Repeated({ theme, role, text, continued }: RepeatedProps): ReactElement {
  const { weight, size, lineHeight } = role;
  const after = continued === undefined ? [] : [{ text: continued, weight: 400 as const }];
  return (
    <Lines
      runs={[
        { text: continued === undefined ? text : text + spaceBetween(text, continued), weight },
        ...after,
      ]}
      size={size}
      lineHeight={lineHeight}
      width={theme.width}
      setting="balanced"
      align={alignStart(theme.direction)}
      direction={theme.direction}
    />
  );
}
