import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { palette } from '../theme.ts';
import type { Theme } from '../theme.ts';
import { Hairline } from './primitives.tsx';

/** Distance of writing lines. */
const WRITING_PITCH = 31;

/** Lines close under a question: room for a pen above the first, then the distance of the others. */
const closeLines = { first: 24, pitch: 30 } as const;

interface WritingLinesProps {
  readonly theme: Theme;
  readonly indent: number;
  readonly count: number;
  /** The first line stands beside the box when there are no words there. */
  readonly beside: boolean;
  readonly close?: boolean;
}

/** Lines to write on. */
export function WritingLines(props: WritingLinesProps): ReactElement {
  const { theme, indent, count, beside, close = false } = props;
  const pitch = (close ? closeLines.pitch : WRITING_PITCH) * theme.scale;
  const first = beside ? -1 : (close ? closeLines.first : WRITING_PITCH) * theme.scale - 1;
  const height = count === 0 || (beside && count === 1) ? 0 : first + (count - 1) * pitch + 1;
  return (
    <View style={{ width: theme.width, height }}>
      {Array.from({ length: count }, (_, index) => (
        <Hairline
          key={index}
          direction={theme.direction}
          start={indent}
          width={theme.width - indent}
          top={first + index * pitch}
          thickness={0.6}
          color={palette.ink}
        />
      ))}
    </View>
  );
}
